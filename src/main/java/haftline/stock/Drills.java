package haftline.stock;

import haftline.measure.Checks;
import haftline.measure.NearestWord;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The series of drills that are sold, and the reading of a drill's name. Immutable. */
public final class Drills {
    private static final Pattern NUMBER_SIZE = Pattern.compile("(?:#|no\\.?|number)\\s*(\\d{1,3})");
    private static final Pattern LETTER_SIZE = Pattern.compile("(?:letter\\s+)?([a-z])");
    private static final Pattern INCH_FRACTION =
            Pattern.compile("(?:(\\d{1,2})\\s+)?(\\d{1,3})/(\\d{1,3})\\s*(?:\"|in|inch)?");
    private static final Pattern DECIMAL =
            Pattern.compile("(\\d{1,3}(?:\\.\\d+)?|\\.\\d+)\\s*(\"|in|inch|mm)?");
    private static final double LEAST_MM = 0.1;
    private static final double GREATEST_MM = 100;

    private final Catalogue<DrillSeries> series;
    private final List<FluteBand> flutes;

    /**
     * Flute length of the drills of a band of diameters.
     *
     * @param overMm drills above this
     * @param upToMm up to and with this
     * @param fluteLengthMm mm
     */
    record FluteBand(double overMm, double upToMm, double fluteLengthMm) {
        FluteBand {
            Checks.within("up_to_mm", upToMm, overMm, GREATEST_MM);
        }

        boolean holds(double diameterMm) {
            return diameterMm > overMm && diameterMm <= upToMm;
        }
    }

    Drills(Catalogue<DrillSeries> series, List<FluteBand> flutes) {
        this.series = series;
        this.flutes = List.copyOf(flutes);
    }

    /**
     * The series.
     *
     * @return the series by key
     */
    public Catalogue<DrillSeries> series() {
        return series;
    }

    /**
     * A drill by its name: millimetres ({@code 6.2}, {@code 6.2 mm}), inches ({@code 17/64}, {@code
     * 0.281 in}), a number size ({@code #7}, {@code no 7}) or a letter size ({@code F}, {@code
     * letter F}). It has the flutes of its band where they are known.
     *
     * @param text the name
     * @return the drill
     * @throws IllegalArgumentException where the text names no drill; the message says what would
     */
    public Drill parse(String text) {
        String name = text.strip().toLowerCase(Locale.ROOT);
        Matcher number = NUMBER_SIZE.matcher(name);
        if (number.matches()) {
            String key = "#" + Integer.parseInt(number.group(1));
            return named(key).orElseThrow(() -> unknown(text, "number sizes run from #1 to #80"));
        }
        Matcher letter = LETTER_SIZE.matcher(name);
        if (letter.matches()) {
            String key = letter.group(1).toUpperCase(Locale.ROOT);
            return named(key).orElseThrow(() -> unknown(text, "letter sizes run from A to Z"));
        }
        Matcher fraction = INCH_FRACTION.matcher(name);
        if (fraction.matches()) {
            return inchFraction(text, fraction);
        }
        Matcher decimal = DECIMAL.matcher(name);
        if (decimal.matches()) {
            double value = Double.parseDouble(decimal.group(1));
            boolean metric = decimal.group(2) == null || decimal.group(2).equals("mm");
            return metric
                    ? drill(text, value, decimal.group(1))
                    : drill(text, value * Units.INCH.millimetres(), decimal.group(1) + " in");
        }
        throw unknown(
                text,
                "expected millimetres (6.2), inches (17/64 or 0.281 in), a number size (#7) or a"
                        + " letter size (letter F)");
    }

    private Drill inchFraction(String text, Matcher fraction) {
        int whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
        int numerator = Integer.parseInt(fraction.group(2));
        int denominator = Integer.parseInt(fraction.group(3));
        boolean binary = denominator > 1 && Integer.bitCount(denominator) == 1;
        if (!binary || denominator > 128 || numerator == 0 || numerator >= denominator) {
            throw unknown(text, "expected a fraction of an inch such as 17/64 or 1 1/16");
        }
        double inches = whole + (double) numerator / denominator;
        String prefix = whole == 0 ? "" : whole + " ";
        return drill(
                text, inches * Units.INCH.millimetres(), prefix + numerator + "/" + denominator);
    }

    private Drill drill(String text, double diameterMm, String name) {
        if (!(diameterMm >= LEAST_MM && diameterMm <= GREATEST_MM)) {
            throw unknown(text, "expected a diameter from 0.1 to 100 mm");
        }
        return withFlutes(Drill.of(diameterMm, name));
    }

    private Optional<Drill> named(String name) {
        for (DrillSeries one : series.entries()) {
            for (Drill drill : one.drills()) {
                if (drill.name().equals(name)) {
                    return Optional.of(withFlutes(drill));
                }
            }
        }
        return Optional.empty();
    }

    private Drill withFlutes(Drill drill) {
        OptionalDouble length =
                flutes.stream()
                        .filter(band -> band.holds(drill.diameterMm()))
                        .mapToDouble(FluteBand::fluteLengthMm)
                        .findFirst();
        return length.isPresent() ? drill.withFluteLengthMm(length.getAsDouble()) : drill;
    }

    /**
     * A rack from names of series and of drills.
     *
     * @param items keys of series such as {@code metric-0.5}, and drills such as {@code 17/64}
     * @return the rack
     * @throws IllegalArgumentException where an item names neither
     */
    public Rack rack(List<String> items) {
        List<Drill> drills = new ArrayList<>();
        for (String item : items) {
            Optional<DrillSeries> whole = series.find(item.strip());
            if (whole.isPresent()) {
                whole.get().drills().forEach(drill -> drills.add(withFlutes(drill)));
            } else {
                drills.add(parseOrSuggest(item));
            }
        }
        return Rack.of(drills);
    }

    private Drill parseOrSuggest(String item) {
        try {
            return parse(item);
        } catch (IllegalArgumentException e) {
            Optional<String> near = NearestWord.to(series.keys(), item);
            if (near.isPresent()) {
                throw unknown(item, "did you mean the series \"" + near.get() + "\"?");
            }
            throw e;
        }
    }

    private static IllegalArgumentException unknown(String text, String expected) {
        return new IllegalArgumentException("drill \"" + text + "\": " + expected);
    }
}
