package haftline.adjust.takeoff;

import java.util.Arrays;

/**
 * The readings that count, in order.
 *
 * @param rows of the table
 * @param x their places, mm
 * @param d their diameters, mm
 */
record Kept(int[] rows, double[] x, double[] d) {
    static Kept of(Table table, boolean[] counts) {
        int[] rows = new int[counts.length];
        int n = 0;
        for (int j = 0; j < counts.length; j++) {
            if (counts[j]) {
                rows[n++] = j;
            }
        }
        rows = Arrays.copyOf(rows, n);
        return new Kept(
                rows,
                Arrays.stream(rows).mapToDouble(table::x).toArray(),
                Arrays.stream(rows).mapToDouble(table::d).toArray());
    }

    int count() {
        return rows.length;
    }

    /** The first few of them. */
    Kept first(int n) {
        return new Kept(Arrays.copyOf(rows, n), Arrays.copyOf(x, n), Arrays.copyOf(d, n));
    }

    Segmentation segmentation(double deviation) {
        return new Segmentation(x, d, deviation, Fitting.PLACE_MM, Math.log(x.length));
    }
}
