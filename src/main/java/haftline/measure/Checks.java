package haftline.measure;

/**
 * Checks of values at construction; each names the field, the value and the range that is allowed.
 */
public final class Checks {
    /** Finer than anything that is measured or typed. */
    private static final int FEW_DECIMALS = 6;

    private Checks() {}

    /**
     * Requires a finite number within a closed range.
     *
     * @param field name of the field, for the message
     * @param value the value
     * @param low least that is allowed
     * @param high greatest that is allowed
     * @return the value
     * @throws IllegalArgumentException where the value is not a number or out of range
     */
    public static double within(String field, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    field
                            + " "
                            + refused(value, low, high)
                            + ": expected a number from "
                            + text(low)
                            + " to "
                            + text(high));
        }
        return value;
    }

    /**
     * Requires a length within a closed range, for a message that says its unit.
     *
     * @param field name of the field, for the message
     * @param mm the length, mm
     * @param low least that is allowed, mm
     * @param high greatest that is allowed, mm
     * @return the length
     * @throws IllegalArgumentException where the length is not a number or out of range
     */
    public static double withinMm(String field, double mm, double low, double high) {
        if (!(mm >= low && mm <= high)) {
            throw new IllegalArgumentException(
                    field
                            + " "
                            + refused(mm, low, high)
                            + " mm: expected a length from "
                            + text(low)
                            + " to "
                            + text(high)
                            + " mm");
        }
        return mm;
    }

    /** A limit, as it was set. */
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

    /**
     * Requires every reading of a measured value within a closed range.
     *
     * @param field name of the field, for the message
     * @param value the measured value
     * @param low least that is allowed
     * @param high greatest that is allowed
     * @return the value
     * @throws IllegalArgumentException where a reading is out of range
     */
    public static Measured within(String field, Measured value, double low, double high) {
        within(field, value.least(), low, high);
        within(field, value.greatest(), low, high);
        return value;
    }

    /**
     * Requires a text that is not blank.
     *
     * @param field name of the field, for the message
     * @param text the text
     * @return the text
     * @throws IllegalArgumentException where the text is blank
     */
    public static String named(String field, String text) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException(field + ": expected a text that is not blank");
        }
        return text;
    }
}
