package haftline.store;

import java.math.BigDecimal;

/** Numbers as they stand in documents and messages: the shortest decimal that means the double. */
final class Numbers {
    /** Within these, a hand would not write an exponent. */
    private static final double LEAST_PLAIN = 1e-6;

    private static final double GREATEST_PLAIN = 1e12;

    private Numbers() {}

    static String text(double value) {
        double size = Math.abs(value);
        boolean plain = size == 0 || size >= LEAST_PLAIN && size < GREATEST_PLAIN;
        if (!plain || Double.isNaN(value)) {
            return Double.toString(value);
        }
        BigDecimal decimal = new BigDecimal(Double.toString(value));
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
