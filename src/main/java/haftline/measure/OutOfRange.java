package haftline.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A value that is no number or not within its range; tells the range in either unit. */
public final class OutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Places after the point to which a bound is told, mm and inches. */
    private static final int MM_DECIMALS = 3;

    private static final int INCH_DECIMALS = 4;

    /** What a bound may lie off a round figure by the arithmetic of doubles, mm. */
    private static final double ROUNDING_MM = 1e-9;

    /** Finer than anything that is measured or typed. */
    private static final int FEW_DECIMALS = 6;

    private final String field;
    private final double value;
    private final double low;
    private final double high;
    private final boolean isLength;

    /**
     * A value out of its range.
     *
     * @param field name of the field
     * @param value the value
     * @param low least that is allowed
     * @param high greatest that is allowed
     * @param of what the value is of
     */
    OutOfRange(String field, double value, double low, double high, Of of) {
        super(
                field
                        + " "
                        + refused(value, low, high)
                        + of.unit
                        + ": expected "
                        + of.noun
                        + " from "
                        + text(low)
                        + " to "
                        + text(high)
                        + of.unit);
        this.field = field;
        this.value = value;
        this.low = low;
        this.high = high;
        isLength = of == Of.LENGTH;
    }

    /** What a value is of, and the unit behind it. */
    enum Of {
        NUMBER("a number", ""),
        LENGTH("a length", " mm"),
        MASS("a mass", " g"),
        ANGLE("an angle", "°");

        private final String noun;
        private final String unit;

        Of(String noun, String unit) {
            this.noun = noun;
            this.unit = unit;
        }
    }

    /**
     * The same words, lengths in the unit in use.
     *
     * @param units the unit
     * @return what is wrong and what is expected, without a full stop
     */
    public String words(Units units) {
        if (!isLength || !Double.isFinite(value)) {
            return getMessage();
        }
        int decimals = units == Units.MM ? MM_DECIMALS : INCH_DECIMALS;
        return field
                + " "
                + NumberText.upTo(value / units.millimetres(), decimals)
                + " "
                + units.symbol()
                + ": expected a length "
                + range(low, high, units);
    }

    /**
     * A range of lengths, each bound rounded into the range: what is told can be typed.
     *
     * @param lowMm least that is allowed, mm
     * @param highMm greatest that is allowed, mm
     * @param units the unit
     * @return such as {@code from 1 to 60 mm} or {@code from 0.0394 to 2.3622 in}
     */
    public static String range(double lowMm, double highMm, Units units) {
        return "from "
                + bound(lowMm - ROUNDING_MM, units, RoundingMode.CEILING)
                + " to "
                + bound(highMm + ROUNDING_MM, units, RoundingMode.FLOOR)
                + " "
                + units.symbol();
    }

    private static String bound(double mm, Units units, RoundingMode inwards) {
        int decimals = units == Units.MM ? MM_DECIMALS : INCH_DECIMALS;
        BigDecimal exact = BigDecimal.valueOf(mm / units.millimetres());
        return NumberText.upTo(exact.setScale(decimals, inwards).doubleValue(), decimals);
    }

    private static String text(double value) {
        return Double.isFinite(value) ? NumberText.shortest(value) : Double.toString(value);
    }

    /**
     * A value that is refused, without digits that only reckoning brought in, unless it would then
     * seem to be within its limits.
     */
    private static String refused(double value, double low, double high) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String shown = NumberText.upTo(value, FEW_DECIMALS);
        double read = Double.parseDouble(shown);
        return read >= low && read <= high || read == 0 ? NumberText.shortest(value) : shown;
    }
}
