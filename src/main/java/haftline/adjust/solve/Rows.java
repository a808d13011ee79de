package haftline.adjust.solve;

import java.util.Arrays;

/**
 * The smooth pieces of one demand's margin on one handle: the margin is the least of them. Each has
 * a key that says which piece it is, so that it is found again on a handle that differs a little.
 */
final class Rows {
    private int[] keys = new int[16];
    private double[] values = new double[16];
    private int size;

    /** Keys of the rows that are asked for, rising; null for all. */
    private final int[] asked;

    /** Rows of all pieces. */
    Rows() {
        this(null);
    }

    private Rows(int[] asked) {
        this.asked = asked;
    }

    /** Rows in which only some keys are asked for; what is dear to find is left out else. */
    static Rows of(int[] risingKeys) {
        return new Rows(risingKeys);
    }

    /** Whether a key is asked for. */
    boolean asks(int key) {
        return asked == null || Arrays.binarySearch(asked, key) >= 0;
    }

    void add(int key, double value) {
        if (size == keys.length) {
            keys = Arrays.copyOf(keys, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        keys[size] = key;
        values[size++] = value;
    }

    /** The same margins, reckoned from a goal; returns these rows. */
    Rows from(double goal) {
        for (int i = 0; i < size && goal != 0; i++) {
            values[i] -= goal;
        }
        return this;
    }

    int size() {
        return size;
    }

    int key(int i) {
        return keys[i];
    }

    double value(int i) {
        return values[i];
    }

    /** The value of a key, usually at the same place as in the rows that it was taken from. */
    double valueOf(int key, int guess) {
        if (guess < size && keys[guess] == key) {
            return values[guess];
        }
        for (int i = 0; i < size; i++) {
            if (keys[i] == key) {
                return values[i];
            }
        }
        return Double.NaN;
    }

    /** The margin, mm; infinite where nothing is demanded. */
    double least() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            least = Math.min(least, values[i]);
        }
        return least;
    }
}
