package haftline.ui.words;

import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.regex.Pattern;

/**
 * Figures as they stand on the screen, each with its unit.
 *
 * @param units unit of lengths
 */
public record Shown(Units units) {
    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=[0-9]) (?=(mm|in|g|ml|%)(?![\\w]))|(?<=\u00b1) (?=[0-9])");

    /** An inch wants this many decimals more than a millimetre for the same worth. */
    private static final int INCH_DECIMALS = 2;

    /** A wall that is a whole number of steps but for rounding is that number. */
    private static final double ROUNDING = 1e-9;

    /**
     * A length to a tenth of a millimetre or a thousandth of an inch.
     *
     * @param mm mm
     * @return such as {@code 12.5 mm}
     */
    public String length(double mm) {
        return length(mm, 1);
    }

    /**
     * A length.
     *
     * @param mm mm
     * @param decimals decimals of a millimetre; an inch gets two more
     * @return the number and its unit
     */
    public String length(double mm, int decimals) {
        if (!Double.isFinite(mm)) {
            return "none";
        }
        return Length.text(mm, units, units == Units.MM ? decimals : decimals + INCH_DECIMALS);
    }

    /**
     * A wall, rounded down: none is called thicker than it is.
     *
     * @param mm mm
     * @return the number and its unit
     */
    public String wall(double mm) {
        double step = units == Units.MM ? 0.1 : Units.INCH.millimetres() / 1000;
        return length(Math.floor(mm / step + ROUNDING) * step, 1);
    }

    /**
     * A sentence for a label that wraps: no number is parted from its unit.
     *
     * @param sentence with a plain space between each number and its unit
     * @return the same with no-break spaces there
     */
    public static String unbroken(String sentence) {
        return BEFORE_UNIT.matcher(sentence).replaceAll("\u00a0");
    }

    /**
     * A mass.
     *
     * @param grams g
     * @return such as {@code 61.4 g}
     */
    public String mass(double grams) {
        return NumberText.fixed(grams, 1) + " g";
    }

    /**
     * An angle.
     *
     * @param degrees degrees
     * @return such as {@code 4.2°}
     */
    public String angle(double degrees) {
        return NumberText.said(NumberText.fixed(degrees, 1)) + "°";
    }
}
