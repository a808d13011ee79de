package haftline.cli;

import haftline.handle.Handle;
import haftline.measure.Length;
import haftline.measure.NearestWord;
import haftline.measure.NumberText;
import haftline.measure.Quote;
import haftline.measure.Units;
import haftline.set.CheckBack;
import haftline.shape.Shape;
import haftline.write.FileName;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Readings of turned pieces: tables of stations that were filled in, or typed. Every mistake is
 * told with its file, line and column.
 */
final class TurnedReadings {
    /** A table of stations is a few kilobytes. */
    private static final long GREATEST_BYTES = 4_000_000;

    private static final double LEAST_MM = 0.5;
    private static final double GREATEST_MM = 200;

    private static final String PIECE = "piece";
    private static final String STATION = "station";
    private static final List<String> PLACE = List.of("from shoulder", "x", "x from shoulder");
    private static final List<String> MEASURED =
            List.of("measured diameter", "measured", "diameter");

    private static final Pattern BRACKETED = Pattern.compile("\\[\\s*([^\\]]*?)\\s*\\]?\\s*$");
    private static final List<String> UNITS = List.of("mm", "in", "inch", "inches");

    /** What a file made by {@code make} ends in behind the piece's name. */
    private static final String STATIONS = "-stations";

    private final List<Handle> handles;
    private final Optional<String> piece;
    private final List<CheckBack.Reading> readings = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    /** Last line of the table that was read whole. */
    private long lineRead;

    private TurnedReadings(List<Handle> handles, Optional<String> piece) {
        this.handles = handles;
        this.piece = piece;
    }

    /** What was typed makes no sense: the first thing that is wrong with it. */
    static final class UsageException extends Exception {
        private static final long serialVersionUID = 1L;

        UsageException(String message) {
            super(message);
        }
    }

    /** A column of a table and the unit that its head names. */
    private record Column(int index, String head, Units units) {}

    /**
     * Reads tables and typed readings.
     *
     * @param handles the pieces as designed
     * @param files the tables
     * @param typed readings as {@code piece, place, diameter}
     * @param piece the piece of tables that do not say so
     * @param units unit of typed lengths that name none
     * @throws ReadingsException where a table is wrong, with all that is
     * @throws UsageException where no piece is called as asked, or what is typed is wrong
     */
    static List<CheckBack.Reading> read(
            List<Handle> handles,
            List<Path> files,
            List<String> typed,
            Optional<String> piece,
            Units units)
            throws ReadingsException, UsageException {
        TurnedReadings reader = new TurnedReadings(handles, piece);
        if (piece.isPresent() && reader.handle(piece.get()).isEmpty()) {
            throw new UsageException("--piece: " + reader.unknown(piece.get()));
        }
        for (String text : typed) {
            reader.typed(text, units);
        }
        if (!reader.problems.isEmpty()) {
            throw new UsageException(reader.problems.get(0));
        }
        for (Path file : files) {
            reader.table(file);
        }
        if (!reader.problems.isEmpty()) {
            throw new ReadingsException(reader.problems);
        }
        return List.copyOf(reader.readings);
    }

    private void typed(String text, Units units) {
        String where = "--reading \"" + text + "\"";
        int last = text.lastIndexOf(',');
        int middle = last < 0 ? -1 : text.lastIndexOf(',', last - 1);
        if (middle < 0) {
            problems.add(where + ": expected piece, place and diameter with commas between");
            return;
        }
        add(
                where,
                where,
                text.substring(0, middle).strip(),
                text.substring(middle + 1, last).strip(),
                Optional.empty(),
                text.substring(last + 1).strip(),
                units,
                units);
    }

    private void table(Path file) {
        String text;
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                problems.add(file + ": is not a plain file");
                return;
            }
            if (Files.size(file) > GREATEST_BYTES) {
                problems.add(file + ": larger than 4 MB");
                return;
            }
            text = Files.readString(file);
        } catch (NoSuchFileException e) {
            problems.add(file + ": no such file");
            return;
        } catch (CharacterCodingException e) {
            problems.add(file + ": is not UTF-8 text; save it as \"CSV UTF-8\"");
            return;
        } catch (IOException e) {
            problems.add(file + ": cannot be read: " + e.getMessage());
            return;
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        lineRead = 0;
        try (CSVParser rows = format(plain).parse(new StringReader(plain))) {
            rows(file, rows);
        } catch (UncheckedIOException | IllegalStateException | IOException e) {
            problems.add(
                    file
                            + ":"
                            + (lineRead + 1)
                            + ": quotes are not closed, or text stands behind them, from this"
                            + " line on");
        }
    }

    /** Spreadsheets where the comma is the decimal mark write semicolons between cells. */
    private static CSVFormat format(String text) {
        String head = text.lines().findFirst().orElse("");
        char between = head.indexOf(';') >= 0 ? ';' : head.indexOf('\t') >= 0 ? '\t' : ',';
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(between)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
    }

    private void rows(Path file, CSVParser rows) {
        Optional<Column> place = Optional.empty();
        Optional<Column> measured = Optional.empty();
        int named = -1;
        int station = -1;
        boolean isHead = true;
        int before = readings.size();
        int faults = problems.size();
        for (CSVRecord row : rows) {
            lineRead = rows.getCurrentLineNumber();
            if (isHead) {
                isHead = false;
                place = column(row, PLACE);
                measured = column(row, MEASURED);
                named = column(row, List.of(PIECE)).map(Column::index).orElse(-1);
                station = column(row, List.of(STATION)).map(Column::index).orElse(-1);
                if (place.isEmpty() || measured.isEmpty()) {
                    problems.add(
                            file
                                    + ":1: "
                                    + (place.isEmpty()
                                            ? "no column says where: expected \"from shoulder [mm]\""
                                            : "no column for what was measured: expected"
                                                    + " \"measured diameter [mm]\""));
                    return;
                }
                if (!unitsAreKnown(file, place.get(), measured.get())) {
                    return;
                }
                continue;
            }
            String diameter = cell(row, measured.get().index());
            if (!diameter.isEmpty()) {
                String where = file + ":" + lineRead + ": ";
                String name = cell(row, named);
                if (named < 0 && handle(piece(file)).isEmpty()) {
                    // Every row would say the same.
                    problems.add(where + place.get().head() + ": " + unknown(piece(file)));
                    return;
                }
                add(
                        where + place.get().head(),
                        where + measured.get().head(),
                        name.isEmpty() ? piece(file) : name,
                        cell(row, place.get().index()),
                        side(cell(row, station)),
                        diameter,
                        place.get().units(),
                        measured.get().units());
            }
        }
        if (readings.size() == before && problems.size() == faults) {
            problems.add(file + ": no diameter is filled in");
        }
    }

    /** A unit that is not known must not pass for mm. */
    private boolean unitsAreKnown(Path file, Column... columns) {
        boolean known = true;
        for (Column column : columns) {
            Matcher unit = BRACKETED.matcher(column.head());
            if (unit.find() && !UNITS.contains(unit.group(1).toLowerCase(Locale.ROOT))) {
                problems.add(file + ":1: " + column.head() + ": expected the unit [mm] or [in]");
                known = false;
            }
        }
        return known;
    }

    /** Two stations stand at x = 0, the tenon's and the wood's; their names tell them apart. */
    private static Optional<CheckBack.Side> side(String station) {
        if (station.startsWith("tenon")) {
            return Optional.of(CheckBack.Side.TENON);
        }
        return station.equals(Shape.SHOULDER) ? Optional.of(CheckBack.Side.WOOD) : Optional.empty();
    }

    private Optional<Handle> handle(String name) {
        return handles.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    private static String cell(CSVRecord row, int index) {
        return index >= 0 && index < row.size() ? row.get(index).strip() : "";
    }

    private static Optional<Column> column(CSVRecord head, List<String> names) {
        for (String name : names) {
            for (int i = 0; i < head.size(); i++) {
                String cell = head.get(i).strip();
                String plain = cell.toLowerCase(Locale.ROOT);
                int bracket = plain.indexOf('[');
                String bare = bracket < 0 ? plain : plain.substring(0, bracket).strip();
                if (bare.equals(name)) {
                    Units units = plain.contains("[in") ? Units.INCH : Units.MM;
                    return Optional.of(new Column(i, cell, units));
                }
            }
        }
        return Optional.empty();
    }

    /** The piece of a table that does not say so: as asked, else by the file's name. */
    private String piece(Path file) {
        if (piece.isPresent()) {
            return piece.get();
        }
        String name = String.valueOf(file.getFileName());
        List<String> names = FileName.unique(handles.stream().map(Handle::name).toList());
        for (int i = 0; i < names.size(); i++) {
            if (name.equals(names.get(i) + ".csv")
                    || name.equals(names.get(i) + STATIONS + ".csv")) {
                return handles.get(i).name();
            }
        }
        return "";
    }

    private void add(
            String atPlace,
            String atDiameter,
            String name,
            String place,
            Optional<CheckBack.Side> side,
            String diameter,
            Units placeUnits,
            Units diameterUnits) {
        Optional<Handle> handle = handle(name);
        OptionalDouble x = Length.parse(place, placeUnits);
        OptionalDouble d = Length.parse(diameter, diameterUnits);
        if (handle.isEmpty()) {
            problems.add(atPlace + ": " + unknown(name));
        } else if (x.isEmpty()) {
            problems.add(
                    atPlace
                            + ": found "
                            + Quote.of(place)
                            + ", expected a length on the wood of "
                            + name
                            + ", "
                            + reach(handle.get()));
        } else if (!CheckBack.isOn(handle.get(), x.getAsDouble())) {
            problems.add(
                    atPlace
                            + ": "
                            + NumberText.upTo(x.getAsDouble(), 2)
                            + " mm is not on the wood of "
                            + name
                            + ", which reaches "
                            + reach(handle.get()));
        } else if (d.isEmpty()
                || !(d.getAsDouble() >= LEAST_MM && d.getAsDouble() <= GREATEST_MM)) {
            problems.add(
                    atDiameter
                            + ": found "
                            + Quote.of(diameter)
                            + ", expected a diameter from 0.5 to 200 mm");
        } else {
            readings.add(new CheckBack.Reading(name, x.getAsDouble(), d.getAsDouble(), side));
        }
    }

    private static String reach(Handle handle) {
        return "from "
                + NumberText.fixed(handle.outline().startX(), 2)
                + " to "
                + NumberText.fixed(handle.outline().endX(), 2)
                + " mm";
    }

    private String unknown(String name) {
        List<String> names = handles.stream().map(Handle::name).toList();
        return name.isEmpty()
                ? "which piece? add a column \"piece\", or say --piece"
                : "there is no piece "
                        + Quote.of(name)
                        + " that can be drawn; there are "
                        + String.join(", ", names)
                        + NearestWord.to(names, name)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse("");
    }
}
