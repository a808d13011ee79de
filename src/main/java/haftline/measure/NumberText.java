package haftline.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as they are written to files and, by {@link #said}, to people: always a decimal point,
 * never a grouping mark, ASCII digits, the same on every machine whatever its locale.
 *
 * <p>{@link java.text.NumberFormat} and {@link String#format} follow the default locale unless told
 * otherwise, and one forgotten argument makes a file that other programs misread; every writer
 * therefore goes through here, and nothing here looks at a locale.
 *
 * <p>Rounding is half up (away from zero) on the shortest decimal form, so that 2.675 becomes 2.68
 * as it does on paper, although the nearest double lies just under it.
 */
public final class NumberText {
    /** A text of more decimals than a double can carry would pretend to an accuracy it has not. */
    private static final int MOST_DECIMALS = 15;

    /** Any decimal of 15 digits survives the way into a normal double and back (IEEE 754). */
    private static final int SAFE_DIGITS = 15;

    /** No double needs more than 17 significant digits to be read back as itself (IEEE 754). */
    private static final int ENOUGH_DIGITS = 17;

    /**
     * From this power of ten on, and below {@link #LEAST_PLAIN_EXPONENT}, an exponent is shorter.
     */
    private static final int FIRST_EXPONENT = 17;

    private static final int LEAST_PLAIN_EXPONENT = -6;

    private NumberText() {}

    /**
     * A number with exactly so many decimals, as in a table.
     *
     * @param value a finite number
     * @param decimals digits after the point, 0 to 15
     * @return for instance {@code 12.50}; never {@code -0.00}
     * @throws IllegalArgumentException where the value is not finite or the decimals out of range
     */
    public static String fixed(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /**
     * A number with at most so many decimals, trailing zeros left off, as on a drawing.
     *
     * @param value a finite number
     * @param decimals greatest count of digits after the point, 0 to 15
     * @return for instance {@code 12.5} or {@code 12}; never {@code -0}
     * @throws IllegalArgumentException where the value is not finite or the decimals out of range
     */
    public static String upTo(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return rounded.signum() == 0 ? "0" : plain(rounded.stripTrailingZeros());
    }

    /**
     * A number as people read it: with the minus sign proper, as wide as a plus and not to be taken
     * for a dash. Files that other programs read keep the hyphen.
     *
     * @param number the number, as any of the other methods writes it
     * @return the same, such as {@code −3.0}
     */
    public static String said(String number) {
        return number.startsWith("-") ? "\u2212" + number.substring(1) : number;
    }

    /**
     * The shortest decimal that is read back as the very same double.
     *
     * <p>{@link Double#toString} of Java 17 is not always the shortest (it prints 2.0E-3 as {@code
     * 0.002} but 2.0E23 with seventeen digits); this is. Very large and very small numbers carry an
     * exponent ({@code 1e300}), which JSON and YAML read.
     *
     * @param value a finite number
     * @return the text; {@code 0} for both zeros
     * @throws IllegalArgumentException where the value is not finite
     */
    public static String shortest(double value) {
        requireFinite(value);
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal text = exact;
        int first = Math.abs(value) < Double.MIN_NORMAL ? 1 : SAFE_DIGITS;
        for (int digits = first; digits <= ENOUGH_DIGITS; digits++) {
            text = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (text.doubleValue() == value) {
                break;
            }
        }
        text = text.stripTrailingZeros();
        int exponent = text.precision() - text.scale() - 1;
        if (exponent >= FIRST_EXPONENT || exponent < LEAST_PLAIN_EXPONENT) {
            BigDecimal mantissa = text.scaleByPowerOfTen(-exponent).stripTrailingZeros();
            return plain(mantissa) + "e" + exponent;
        }
        return plain(text);
    }

    private static BigDecimal rounded(double value, int decimals) {
        requireFinite(value);
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException(
                    "decimals " + decimals + ": expected 0 to " + MOST_DECIMALS);
        }
        // BigDecimal has no negative zero, so "-0.00" cannot come out.
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + ": expected a finite number");
        }
    }
}
