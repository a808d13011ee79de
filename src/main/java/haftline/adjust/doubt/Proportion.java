package haftline.adjust.doubt;

import java.util.Locale;

/**
 * A share that was counted, with its interval.
 *
 * @param count how many
 * @param of out of how many
 */
public record Proportion(int count, int of) {
    /** Two-sided 95 %. */
    private static final double Z = 1.959963984540054;

    /** Refuses a count that is no part of the whole. */
    public Proportion {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException(
                    "share " + count + " of " + of + ": expected a count from 0 to the whole");
        }
    }

    /**
     * The share.
     *
     * @return 0 to 1
     */
    public double value() {
        return (double) count / of;
    }

    /**
     * Lower end of the 95 % score interval (Wilson, Probable inference, the law of succession, and
     * statistical inference, J. Amer. Statist. Assoc. 22, 1927).
     *
     * @return 0 to 1
     */
    public double low() {
        return count == 0 ? 0 : middle() - half();
    }

    /**
     * Upper end of that interval.
     *
     * @return 0 to 1
     */
    public double high() {
        return count == of ? 1 : middle() + half();
    }

    private double middle() {
        return (value() + Z * Z / (2.0 * of)) / (1 + Z * Z / of);
    }

    private double half() {
        double p = value();
        return Z * Math.sqrt(p * (1 - p) / of + Z * Z / (4.0 * of * of)) / (1 + Z * Z / of);
    }

    /**
     * Such as {@code about 3 in 100}, no finer than chance lets it be told.
     *
     * @return in words
     */
    public String inWords() {
        if (count == 0) {
            return String.format(Locale.ROOT, "none of %,d", of);
        }
        if (count == of) {
            return String.format(Locale.ROOT, "all of %,d", of);
        }
        boolean isNearlyAll = Math.round(100 * value()) == 100;
        return isNearlyAll ? "all but " + new Proportion(of - count, of).about() : about();
    }

    private String about() {
        for (int whole = 100; whole < of; whole *= 10) {
            long part = Math.round(value() * whole);
            if (part > 0 && part < whole) {
                return String.format(Locale.ROOT, "about %,d in %,d", part, whole);
            }
        }
        return String.format(Locale.ROOT, "about %,d in %,d", count, of);
    }
}
