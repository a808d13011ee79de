package haftline.measure;

import haftline.measure.OutOfRange.Of;

/**
 * Checks of values at construction; each names the field, the value and the range that is allowed.
 */
public final class Checks {
    private Checks() {}

    /**
     * Requires a finite number within a closed range.
     *
     * @param field name of the field, for the message
     * @param value the value
     * @param low least that is allowed
     * @param high greatest that is allowed
     * @return the value
     * @throws OutOfRange where the value is not a number or out of range
     */
    public static double within(String field, double value, double low, double high) {
        return within(field, value, low, high, Of.NUMBER);
    }

    private static double within(String field, double value, double low, double high, Of of) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRange(field, value, low, high, of);
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
     * @throws OutOfRange where the length is not a number or out of range
     */
    public static double withinMm(String field, double mm, double low, double high) {
        return within(field, mm, low, high, Of.LENGTH);
    }

    /**
     * Requires every reading of a length within a closed range.
     *
     * @param field name of the field, for the message
     * @param value the measured length, mm
     * @param low least that is allowed, mm
     * @param high greatest that is allowed, mm
     * @return the length
     * @throws OutOfRange where a reading is out of range
     */
    public static Measured withinMm(String field, Measured value, double low, double high) {
        withinMm(field, value.least(), low, high);
        withinMm(field, value.greatest(), low, high);
        return value;
    }

    /**
     * Requires a mass within a closed range.
     *
     * @param field name of the field, for the message
     * @param grams the mass, g
     * @param low least that is allowed, g
     * @param high greatest that is allowed, g
     * @return the mass
     * @throws OutOfRange where the mass is not a number or out of range
     */
    public static double withinGrams(String field, double grams, double low, double high) {
        return within(field, grams, low, high, Of.MASS);
    }

    /**
     * Requires an angle within a closed range.
     *
     * @param field name of the field, for the message
     * @param degrees the angle, degrees
     * @param low least that is allowed, degrees
     * @param high greatest that is allowed, degrees
     * @return the angle
     * @throws OutOfRange where the angle is not a number or out of range
     */
    public static double withinDegrees(String field, double degrees, double low, double high) {
        return within(field, degrees, low, high, Of.ANGLE);
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
