package haftline.adjust.takeoff;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * How two neighbouring stretches meet, and where.
 *
 * @param kind smoothly, in a corner or with a step
 * @param x mm
 */
record Cut(Kind kind, double x) {
    /** How an outline passes a place. */
    enum Kind {
        /** The row begins or ends here. */
        END,
        /** With one slope. */
        SMOOTH,
        /** With two slopes. */
        CORNER,
        /** With two diameters. */
        STEP,
        /** Where a reading was taken for its sake. */
        MARKED
    }

    /** Readings looked at on either side. */
    private static final int WINDOW = 12;

    /** Order of a line that bends. */
    private static final int BENT = 2;

    /** Readings in a stretch long enough for its bend to show. */
    private static final int LONG = 6;

    /** Places tried for a corner between the two readings beside the cut and their neighbours. */
    private static final int PLACES = 25;

    boolean isCrisp() {
        return kind == Kind.CORNER || kind == Kind.STEP;
    }

    /**
     * Tells how two stretches meet.
     *
     * @param clear how much more, in squares over the variance, a simpler way to meet may cost
     */
    static Cut between(
            Stretch before, Stretch after, double[] x, double[] d, double deviation, double clear) {
        int from = Math.max(before.from(), before.to() - WINDOW + 1);
        int to = Math.min(after.to(), after.from() + WINDOW - 1);
        Polynomial left = new Polynomial(x, d, from, before.to());
        Polynomial right = new Polynomial(x, d, after.from(), to);
        double parameter = Math.log(x.length) * deviation * deviation;
        int orderBefore = left.cheapest(parameter);
        int orderAfter = right.cheapest(parameter);
        // A smooth line bends on either side, however straight each side looks by itself.
        int smoothBefore = before.count() < LONG ? orderBefore : Math.max(orderBefore, BENT);
        int smoothAfter = after.count() < LONG ? orderAfter : Math.max(orderAfter, BENT);
        double apart = left.sum(orderBefore) + right.sum(orderAfter);
        double limit = apart + clear * deviation * deviation;
        double low = x[Math.max(from, before.to() - 1)];
        double high = x[Math.min(to, after.from() + 1)];
        double smooth = Double.POSITIVE_INFINITY;
        double smoothX = low;
        double corner = Double.POSITIVE_INFINITY;
        double cornerX = low;
        for (int k = 0; k <= PLACES; k++) {
            double place = low + (high - low) * k / PLACES;
            double sum = joined(x, d, from, to, place, smoothBefore, smoothAfter, 1);
            if (sum < smooth) {
                smooth = sum;
                smoothX = place;
            }
            sum = joined(x, d, from, to, place, orderBefore, orderAfter, 0);
            if (sum < corner) {
                corner = sum;
                cornerX = place;
            }
        }
        if (smooth < limit) {
            return new Cut(Kind.SMOOTH, smoothX);
        }
        return corner < limit
                ? new Cut(Kind.CORNER, cornerX)
                : new Cut(Kind.STEP, (x[before.to()] + x[after.from()]) / 2);
    }

    /**
     * Squares left by two polynomials that share their value at a place, and with one common order
     * their slope too.
     */
    private static double joined(
            double[] x,
            double[] d,
            int from,
            int to,
            double place,
            int orderBefore,
            int orderAfter,
            int common) {
        double size = Math.max(x[to] - x[from], 1e-3);
        int shared = 1 + common;
        int left = Math.max(0, orderBefore - common);
        int right = Math.max(0, orderAfter - common);
        int columns = shared + left + right;
        int count = to - from + 1;
        if (columns > count) {
            // As many figures as readings fit anything.
            return Double.POSITIVE_INFINITY;
        }
        double[][] rows = new double[count][columns];
        double[] values = new double[count];
        for (int j = from; j <= to; j++) {
            double t = (x[j] - place) / size;
            double[] row = rows[j - from];
            row[0] = 1;
            if (common == 1) {
                row[1] = t;
            }
            boolean before = t < 0;
            int first = before ? shared : shared + left;
            double power = common == 1 ? t * t : t;
            for (int k = 0; k < (before ? left : right); k++) {
                row[first + k] = power;
                power *= t;
            }
            values[j - from] = d[j];
        }
        try {
            var vector = new ArrayRealVector(values, false);
            var matrix = new Array2DRowRealMatrix(rows, false);
            var answer = new QRDecomposition(matrix).getSolver().solve(vector);
            double off = matrix.operate(answer).getDistance(vector);
            return off * off;
        } catch (SingularMatrixException tooFew) {
            return Double.POSITIVE_INFINITY;
        }
    }
}
