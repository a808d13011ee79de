package haftline.adjust.takeoff;

import haftline.curve.Outline;
import haftline.curve.Segment;
import java.util.Arrays;
import java.util.List;

/**
 * Readings in order of x, counted from the shoulder. Of two at one place the first is the side
 * towards the ferrule.
 */
final class Table {
    /** Places nearer than this are one, mm: the rounding of a detail's edge. */
    private static final double SAME_MM = 1e-6;

    /** Share of the spacing by which a reading stands beside the marks of the rule. */
    private static final double BETWEEN = 0.08;

    /** Two crisp nodes no further apart stand for a step of the body, mm. */
    private static final double STEP_MM = FirstDraft.STEP_MM + 0.02;

    private final double[] x;
    private final double[] d;
    private final double spacing;

    /** For each reading the step that was read so near to it, NaN for none. */
    private final double[] step;

    /** For each reading whether no other was taken at its place. */
    private final boolean[] alone;

    private final Ends ends;

    Table(double[] x, double[] d, Ends ends) {
        this.ends = ends;
        this.x = x.clone();
        this.d = d.clone();
        double[] gaps = new double[x.length - 1];
        int count = 0;
        for (int j = 1; j < x.length; j++) {
            if (x[j] > x[j - 1]) {
                gaps[count++] = x[j] - x[j - 1];
            }
        }
        spacing = Noise.median(Arrays.copyOf(gaps, count));
        alone = new boolean[x.length];
        for (int j = 0; j < x.length; j++) {
            boolean twin = j > 0 && x[j - 1] == x[j] || j + 1 < x.length && x[j + 1] == x[j];
            alone[j] = !twin;
        }
        step = new double[x.length];
        Arrays.fill(step, Double.NaN);
        for (int j = 1; j < x.length; j++) {
            for (int k = 0; x[j] == x[j - 1] && k < x.length; k++) {
                if (Math.abs(x[k] - x[j]) < STEP_MM / 2) {
                    step[k] = x[j];
                }
            }
        }
    }

    /** What is known of the ends besides. */
    Ends ends() {
        return ends;
    }

    int count() {
        return x.length;
    }

    double x(int j) {
        return x[j];
    }

    double d(int j) {
        return d[j];
    }

    double[] places() {
        return x.clone();
    }

    double[] diameters() {
        return d.clone();
    }

    /** Median distance between neighbours. */
    double spacingMm() {
        return spacing;
    }

    /** The segment of an outline that a reading was taken on. */
    private Segment segment(Outline outline, int j) {
        int i = outline.indexAt(Math.max(outline.startX(), Math.min(outline.endX(), x[j])));
        return segment(outline.segments(), i, j);
    }

    /** The same, where the segment is known that a place belongs to; at a joint the later one. */
    private Segment segment(List<Segment> all, int i, int j) {
        Segment segment = all.get(i);
        boolean before = j + 1 < x.length && x[j + 1] == x[j];
        boolean after = j > 0 && x[j - 1] == x[j];
        if (before && i > 0 && Math.abs(segment.startX() - x[j]) < SAME_MM) {
            return all.get(i - 1);
        }
        if (after && i + 1 < all.size() && Math.abs(segment.endX() - x[j]) < SAME_MM) {
            return all.get(i + 1);
        }
        if (segment.endX() - segment.startX() < STEP_MM
                && segment.startX() < step[j]
                && step[j] < segment.endX()) {
            // A shape's step leans by its nodes' distance; the wood was read on either side of it.
            int side = before || x[j] < step[j] ? -1 : 1;
            return all.get(Math.max(0, Math.min(all.size() - 1, i + side)));
        }
        return segment;
    }

    private double within(Segment segment, int j) {
        return Math.max(segment.startX(), Math.min(segment.endX(), x[j]));
    }

    /**
     * The reading between two marks of the rule that is nearest to a place: whoever reads every so
     * many mm and once between does so for the sake of an edge.
     *
     * @return its place; NaN where none is within half of the spacing
     */
    double markNear(double place) {
        double mark = Double.NaN;
        for (double one : x) {
            double steps = one / spacing;
            boolean between = Math.abs(steps - Math.rint(steps)) > BETWEEN;
            boolean near = Math.abs(one - place) <= spacing / 2;
            if (between && near && !(Math.abs(mark - place) < Math.abs(one - place))) {
                mark = one;
            }
        }
        return mark;
    }

    /** Whether both sides of a step were read at a place. */
    boolean isStep(double place) {
        return Arrays.stream(step).anyMatch(one -> Math.abs(one - place) < SAME_MM);
    }

    /** The fitted diameter where a reading was taken. */
    double fitted(Outline outline, int j) {
        Segment segment = segment(outline, j);
        return 2 * segment.r(within(segment, j));
    }

    /** Slope of the diameter there. */
    double slope(Outline outline, int j) {
        Segment segment = segment(outline, j);
        return 2 * segment.slope(within(segment, j));
    }

    /** Read less fitted, each times its weight. */
    double[] residuals(Outline outline, double[] weights) {
        double[] residuals = new double[x.length];
        List<Segment> all = outline.segments();
        int j = 0;
        // A fit asks thousands of times: walking along beats looking each place up.
        for (int i = 0; i < all.size(); i++) {
            Segment segment = all.get(i);
            double start = segment.startX();
            double end = segment.endX();
            double next = i + 1 < all.size() ? all.get(i + 1).startX() : Double.POSITIVE_INFINITY;
            boolean wide = end - start >= STEP_MM;
            for (; j < x.length && x[j] < next; j++) {
                if (!(weights[j] > 0)) {
                    continue;
                }
                double fitted;
                if (alone[j] && (wide || Double.isNaN(step[j]))) {
                    fitted = 2 * segment.r(Math.max(start, Math.min(end, x[j])));
                } else {
                    Segment meant = segment(all, i, j);
                    fitted = 2 * meant.r(within(meant, j));
                }
                residuals[j] = (d[j] - fitted) * weights[j];
            }
        }
        return residuals;
    }
}
