package haftline.store;

import haftline.adjust.takeoff.Reading;
import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.Quote;
import haftline.measure.Units;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of calliper readings: a heading that names the columns {@code x} and {@code diameter}
 * with their unit in round or square brackets, one reading a line; commas, or semicolons with
 * decimal commas.
 */
final class ReadingsTable {
    private static final List<String> PLACES = List.of("x", "place", "from shoulder");
    private static final List<String> SIZES = List.of("diameter", "d", "finished diameter");

    private final Problems problems;
    private final Optional<Units> units;

    ReadingsTable(Problems problems, Optional<Units> units) {
        this.problems = problems;
        this.units = units;
    }

    private record Column(int index, String name, Units units) {}

    List<Reading> read(String text) {
        boolean semicolons = firstLine(text).contains(";");
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setDelimiter(semicolons ? ';' : ',')
                        .setCommentMarker('#')
                        .setIgnoreEmptyLines(true)
                        .setTrim(true)
                        .get();
        List<Reading> readings = new ArrayList<>();
        int read = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Column x = null;
            Column d = null;
            for (CSVRecord row : parser) {
                int line = (int) parser.getCurrentLineNumber();
                read = line;
                if (x == null) {
                    x = column(row, PLACES, line);
                    d = column(row, SIZES, line);
                    if (x == null || d == null) {
                        return List.of();
                    }
                } else {
                    reading(row, x, d, line).ifPresent(readings::add);
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            problems.add(
                    read + 1,
                    0,
                    "",
                    "quotes are not closed, or text stands behind them, from this line on");
        }
        if (readings.isEmpty() && problems.isEmpty()) {
            problems.addToFile("holds no reading; expected a heading \"x (mm),diameter (mm)\"");
        }
        return readings;
    }

    private static String firstLine(String text) {
        return text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
    }

    private Column column(CSVRecord heading, List<String> names, int line) {
        for (int i = 0; i < heading.size(); i++) {
            String cell = heading.get(i).toLowerCase(Locale.ROOT).replace("\uFEFF", "");
            int round = cell.indexOf('(');
            int bracket = round < 0 ? cell.indexOf('[') : round;
            String name = (bracket < 0 ? cell : cell.substring(0, bracket)).strip();
            if (names.contains(name)) {
                String unit =
                        bracket < 0
                                ? ""
                                : cell.substring(bracket + 1).replaceAll("[)\\]]", "").strip();
                Optional<Units> size = units(unit);
                if (size.isEmpty()) {
                    problems.add(
                            line, 0, name, "unit " + Quote.plain(unit) + ": expected (mm) or (in)");
                    return null;
                }
                return new Column(i, name, size.get());
            }
        }
        problems.add(
                line,
                0,
                names.get(0),
                "no such column in the heading; expected one called " + String.join(" or ", names));
        return null;
    }

    private Optional<Units> units(String unit) {
        if (unit.isEmpty()) {
            return Optional.of(units.orElse(Units.MM));
        }
        for (Units one : Units.values()) {
            if (one.symbol().equals(unit)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    private Optional<Reading> reading(CSVRecord row, Column x, Column d, int line) {
        OptionalDouble place = length(row, x, -Reading.LONGEST_MM, 2 * Reading.LONGEST_MM, line);
        OptionalDouble size = length(row, d, 0, Reading.WIDEST_MM, line);
        return place.isPresent() && size.isPresent()
                ? Optional.of(new Reading(place.getAsDouble(), size.getAsDouble(), line))
                : Optional.empty();
    }

    private OptionalDouble length(CSVRecord row, Column column, double low, double high, int line) {
        String cell = column.index() < row.size() ? row.get(column.index()) : "";
        OptionalDouble mm = Length.parse(cell, column.units());
        if (mm.isPresent() && mm.getAsDouble() >= low && mm.getAsDouble() <= high) {
            return mm;
        }
        double unit = column.units().millimetres();
        problems.add(
                line,
                0,
                column.name(),
                (cell.isEmpty() ? "an empty cell" : Quote.plain(cell))
                        + ": expected a number from "
                        + NumberText.upTo(low / unit, 2)
                        + " to "
                        + NumberText.upTo(high / unit, 2)
                        + " "
                        + column.units().symbol());
        return OptionalDouble.empty();
    }
}
