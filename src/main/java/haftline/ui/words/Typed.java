package haftline.ui.words;

import haftline.measure.Length;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Readings and plain numbers as they are typed. */
public final class Typed {
    private Typed() {}

    /**
     * Readings of one thing, parted by semicolons.
     *
     * @param text such as {@code 6.5; 6.6; 6,55 mm}
     * @param units unit of numbers that name none
     * @param resolution the least step of the tool, mm
     * @return the readings, or empty where one of them is no length
     */
    public static Optional<Measured> readings(String text, Units units, double resolution) {
        List<Double> readings = new ArrayList<>();
        for (String part : text.split(";")) {
            OptionalDouble mm = Length.parse(part, units);
            if (mm.isEmpty() || mm.getAsDouble() < 0) {
                return Optional.empty();
            }
            readings.add(mm.getAsDouble());
        }
        return Optional.of(Measured.of(readings, resolution));
    }

    /**
     * Readings as they would be typed.
     *
     * @param size the readings
     * @param units unit to show
     * @return such as {@code 6.5; 6.6; 6.55 mm}
     */
    public static String readings(Measured size, Units units) {
        StringBuilder text = new StringBuilder();
        for (double mm : size.readings()) {
            text.append(text.isEmpty() ? "" : "; ")
                    .append(NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 2 : 4));
        }
        return text + " " + units.symbol();
    }

    /**
     * A plain number, with a decimal point or comma.
     *
     * @param text the text, a multiplication sign and words behind it aside
     * @return the number, or empty
     */
    public static OptionalDouble number(String text) {
        String plain = text.strip().replace(',', '.').replaceAll("\\s*(×|x)\\s*blade$|\\s*×$", "");
        return plain.matches("[0-9]{1,6}(\\.[0-9]{0,6})?")
                ? OptionalDouble.of(Double.parseDouble(plain))
                : OptionalDouble.empty();
    }
}
