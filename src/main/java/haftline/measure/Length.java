package haftline.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as people write it: {@code 12.5}, {@code 12,5 mm}, {@code 31/64 in}, {@code 1 3/8"}.
 *
 * <p>Read and written the same under every locale.
 */
public final class Length {
    /** Drills and rules of the inch trade are marked in sixty-fourths. */
    private static final int PARTS_PER_INCH = 64;

    /** Longer texts are no length, and would cost time to match. */
    private static final int LONGEST_TEXT = 40;

    private static final String UNIT = "(?<unit>mm|in|inch|inches|\"|\u2033|'')?";

    private static final Pattern DECIMAL =
            Pattern.compile(
                    "(?<sign>[+\u2212-]?)(?<number>[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)\\s*" + UNIT);

    private static final Pattern FRACTION =
            Pattern.compile(
                    "(?<sign>[+\u2212-]?)(?:(?<whole>[0-9]{1,6})(?:\\s+|\\s*-\\s*))?"
                            + "(?<over>[0-9]{1,6})\\s*/\\s*(?<under>[0-9]{1,6})\\s*"
                            + UNIT);

    private Length() {}

    /**
     * Reads a length. A decimal comma is as good as a point; there are no thousands separators. A
     * fraction is one of an inch whatever the unit in use, for nobody divides a millimetre so; with
     * {@code mm} behind it, it is no length.
     *
     * @param text the text
     * @param unitWhereNone unit of a decimal number that names none
     * @return mm, or empty where the text is no length
     */
    public static OptionalDouble parse(String text, Units unitWhereNone) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.length() > LONGEST_TEXT) {
            return OptionalDouble.empty();
        }
        Matcher decimal = DECIMAL.matcher(plain);
        if (decimal.matches()) {
            BigDecimal number = new BigDecimal(decimal.group("number").replace(',', '.'));
            Units unit = unit(decimal.group("unit"), unitWhereNone);
            // In decimals, an inch is 25.4 mm exactly: 6 in are 152.4 mm and no hair less.
            double mm = number.multiply(BigDecimal.valueOf(unit.millimetres())).doubleValue();
            return OptionalDouble.of(signed(decimal.group("sign"), mm));
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches() && !"mm".equals(fraction.group("unit"))) {
            return inches(fraction);
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble inches(Matcher fraction) {
        int under = Integer.parseInt(fraction.group("under"));
        if (under == 0) {
            return OptionalDouble.empty();
        }
        String whole = fraction.group("whole");
        int over = Integer.parseInt(fraction.group("over"));
        long parts = (whole == null ? 0 : Long.parseLong(whole)) * under + over;
        // One division of whole numbers, 254 tenths of a millimetre to the inch: the nearest
        // double to the fraction.
        double mm = (double) (parts * 254) / (10L * under);
        return OptionalDouble.of(signed(fraction.group("sign"), mm));
    }

    private static Units unit(String symbol, Units unitWhereNone) {
        if (symbol == null) {
            return unitWhereNone;
        }
        return symbol.equals("mm") ? Units.MM : Units.INCH;
    }

    private static double signed(String sign, double value) {
        return sign.isEmpty() || sign.equals("+") ? value : -value;
    }

    /**
     * Writes a length for people to read, as a decimal number with its unit, rounded half away from
     * zero.
     *
     * @param mm the length, mm, finite
     * @param units the unit to show
     * @param decimals places after the point, 0 to 15
     * @return such as {@code 12.50 mm} or {@code 0.492 in}
     */
    public static String text(double mm, Units units, int decimals) {
        return NumberText.said(NumberText.fixed(mm / units.millimetres(), decimals))
                + " "
                + units.symbol();
    }

    /**
     * The nearest sixty-fourth of an inch.
     *
     * @param mm the length, mm, 0 to 100,000
     * @return the fraction and how far off it is
     */
    public static Fraction nearest64th(double mm) {
        Checks.within("length", mm, 0, 100_000);
        long parts = Math.round(mm / Units.INCH.millimetres() * PARTS_PER_INCH);
        double fractionMm = (double) parts / PARTS_PER_INCH * Units.INCH.millimetres();
        return new Fraction(parts, fractionMm - mm);
    }

    /**
     * A length in whole sixty-fourths of an inch.
     *
     * @param sixtyFourths how many
     * @param errorMm the fraction less the length that it stands for, mm
     */
    public record Fraction(long sixtyFourths, double errorMm) {
        /**
         * The fraction in its lowest terms with its unit.
         *
         * @return such as {@code 1 3/8 in}, {@code 31/64 in} or {@code 2 in}
         */
        public String text() {
            long whole = sixtyFourths / PARTS_PER_INCH;
            long over = sixtyFourths % PARTS_PER_INCH;
            if (over == 0) {
                return whole + " in";
            }
            // 64 is a power of two, so the lowest set bit is the greatest common divisor.
            long divisor = Long.lowestOneBit(over);
            String fraction = over / divisor + "/" + PARTS_PER_INCH / divisor + " in";
            return whole == 0 ? fraction : whole + " " + fraction;
        }
    }
}
