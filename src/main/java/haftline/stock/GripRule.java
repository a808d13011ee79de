package haftline.stock;

import haftline.measure.Checks;

/**
 * Published guidance for a handle's size.
 *
 * @param key catalogue key
 * @param statement the guidance in words
 * @param quantity what it bounds
 * @param least lower bound, mm, or a factor of the hand's length
 * @param greatest upper bound in the same unit; a single figure is both bounds
 * @param source whose guidance it is
 */
public record GripRule(
        String key,
        String statement,
        Quantity quantity,
        double least,
        double greatest,
        Source source)
        implements Keyed {
    /** What a rule bounds. */
    public enum Quantity {
        /** Diameter of the handle, mm. */
        DIAMETER,
        /** Diameter of the handle as a factor of the hand's length. */
        DIAMETER_PER_HAND_LENGTH,
        /** Length of the handle, mm. */
        LENGTH
    }

    public GripRule {
        Checks.named("key", key);
        Checks.named("statement", statement);
        Checks.within("least", least, 0, 1000);
        Checks.within("greatest", greatest, least, 1000);
    }
}
