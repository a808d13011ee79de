package haftline.curve;

/**
 * How far one outline stands from another, square to the axis, and where that is most.
 *
 * <p>Lines and graph cubics differ by a cubic, whose extremes are roots of a quadratic: exact to
 * rounding. A pair with an arc or an ellipse is narrowed down between bounds that are themselves
 * exact, until they leave no more than {@value #NARROWED_MM} mm open.
 *
 * @param atX where the deviation is greatest, mm; at a step the side where it is
 * @param mm second radius less first radius there, mm, negative where the second is thinner
 */
public record OutlineDeviation(double atX, double mm) {
    /** What the search between arcs may leave open, mm: a thousandth of what a calliper reads. */
    static final double NARROWED_MM = 1e-5;

    /** Halvings after which rounding is all that is left. */
    private static final int DEEPEST = 40;

    /**
     * The greatest deviation over a stretch.
     *
     * @param from the outline that is measured from
     * @param to the outline that is measured
     * @param fromX start of the stretch, mm, within both
     * @param toX end of the stretch, mm, within both, greater than fromX
     * @return the deviation of the greatest size
     */
    public static OutlineDeviation between(Outline from, Outline to, double fromX, double toX) {
        Checks.increasing(fromX, toX);
        Checks.inside("fromX", fromX, Math.max(from.startX(), to.startX()), toX);
        Checks.inside("toX", toX, fromX, Math.min(from.endX(), to.endX()));
        OutlineDeviation greatest = new OutlineDeviation(fromX, 0);
        double x = fromX;
        while (x < toX) {
            Segment first = from.segmentAt(x);
            Segment second = to.segmentAt(x);
            double end = Math.min(toX, Math.min(first.endX(), second.endX()));
            greatest =
                    isPolynomial(first) && isPolynomial(second)
                            ? polynomial(first, second, x, end, greatest)
                            : narrowed(first, second, x, end, greatest, 0);
            x = end;
        }
        return greatest;
    }

    private static boolean isPolynomial(Segment segment) {
        return segment instanceof StraightLine || segment instanceof GraphCubic;
    }

    private OutlineDeviation greater(Segment first, Segment second, double x) {
        double here = second.r(x) - first.r(x);
        return Math.abs(here) > Math.abs(mm) ? new OutlineDeviation(x, here) : this;
    }

    private static OutlineDeviation polynomial(
            Segment first, Segment second, double a, double b, OutlineDeviation so) {
        double middle = a + (b - a) / 2;
        double start = second.slope(a) - first.slope(a);
        double half = second.slope(middle) - first.slope(middle);
        double end = second.slope(b) - first.slope(b);
        // The quadratic through three slopes, in t from 0 to 1.
        double[] slope = {start, 4 * half - 3 * start - end, 2 * (start + end) - 4 * half};
        double[] turns = new double[2];
        int count = RealRoots.within(slope, 2, 0, 1, turns);
        OutlineDeviation greatest = so.greater(first, second, a).greater(first, second, b);
        for (int i = 0; i < count; i++) {
            double x = Math.min(b, Math.max(a, a + turns[i] * (b - a)));
            greatest = greatest.greater(first, second, x);
        }
        return greatest;
    }

    /** Over one line both segments have exact greatest and least heights, which bound the rest. */
    private static OutlineDeviation narrowed(
            Segment first, Segment second, double a, double b, OutlineDeviation so, int depth) {
        double middle = a + (b - a) / 2;
        OutlineDeviation greatest =
                so.greater(first, second, a)
                        .greater(first, second, b)
                        .greater(first, second, middle);
        double m = (first.r(b) - first.r(a)) / (b - a);
        double c = first.r(a) - m * a;
        double most =
                second.greatestAbove(c, m, a, b).height() - first.leastAbove(c, m, a, b).height();
        double least =
                second.leastAbove(c, m, a, b).height() - first.greatestAbove(c, m, a, b).height();
        double bound = Math.max(most, -least);
        if (depth == DEEPEST || bound <= Math.abs(greatest.mm) + NARROWED_MM) {
            return greatest;
        }
        OutlineDeviation left = narrowed(first, second, a, middle, greatest, depth + 1);
        return narrowed(first, second, middle, b, left, depth + 1);
    }
}
