package haftline.adjust.takeoff;

/**
 * Sums of squares that least-squares polynomials of order 0 to {@link Polynomial#HIGHEST} leave of
 * a run of readings that grows by one at a time: each reading is turned into the triangle of an
 * orthogonal decomposition by plane rotations (Gentleman, Least squares computations by Givens
 * transformations without square roots, J. Inst. Maths Applics 12, 1973), so that a reading more
 * costs the same however many there are.
 */
final class GrowingFit {
    private static final int COLUMNS = Polynomial.HIGHEST + 1;

    private final double[][] triangle = new double[COLUMNS][COLUMNS];
    private final double[] right = new double[COLUMNS];
    private final double[] row = new double[COLUMNS];
    private double rest;
    private int count;

    private final double originX;
    private final double originD;

    /**
     * A run without readings.
     *
     * @param originX its first place, mm
     * @param originD its first diameter, mm; both keep the numbers small
     */
    GrowingFit(double originX, double originD) {
        this.originX = originX;
        this.originD = originD;
    }

    /** Takes in one more reading. */
    void add(double x, double d) {
        double power = 1;
        for (int k = 0; k < COLUMNS; k++) {
            row[k] = power;
            power *= x - originX;
        }
        double left = d - originD;
        for (int i = 0; i < COLUMNS; i++) {
            if (row[i] != 0) {
                double[] diagonal = triangle[i];
                double length = Math.sqrt(diagonal[i] * diagonal[i] + row[i] * row[i]);
                double c = diagonal[i] / length;
                double s = row[i] / length;
                diagonal[i] = length;
                for (int k = i + 1; k < COLUMNS; k++) {
                    double above = diagonal[k];
                    diagonal[k] = c * above + s * row[k];
                    row[k] = c * row[k] - s * above;
                }
                double above = right[i];
                right[i] = c * above + s * left;
                left = c * left - s * above;
            }
        }
        rest += left * left;
        count++;
    }

    /**
     * The order at which squares and the price of the parameters are least, of those that there are
     * places enough for.
     *
     * @param parameter price of one, in squares
     */
    int cheapest(double parameter) {
        double least = sum(0);
        int order = 0;
        for (int k = 1; k < COLUMNS && k < count && isTold(k); k++) {
            double price = sum(k) + k * parameter;
            if (price < least) {
                least = price;
                order = k;
            }
        }
        return order;
    }

    /** Whether the places tell an order from the one before, by the norm of its polynomial. */
    private boolean isTold(int order) {
        double norm = triangle[order][order] * triangle[order][order];
        return norm > Polynomial.NO_NORM * triangle[1][1] * triangle[1][1];
    }

    /** Sum of the squares that an order leaves. */
    double sum(int order) {
        double sum = rest;
        for (int k = COLUMNS - 1; k > order; k--) {
            sum += right[k] * right[k];
        }
        return sum;
    }
}
