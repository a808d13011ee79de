package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * The batten spline: graph cubics through given nodes, with the slopes that bend the batten least
 * among those that keep every piece monotone.
 *
 * <p>The slopes d minimise the sum over pieces of (4/h)(a^2 + a b + b^2), a = d_i - S, b = d_i+1 -
 * S, S the chord's slope and h its length; that is int r''^2 dx of the cubic less a constant. Each
 * d_i lies between 0 and 3 S of both neighbouring chords (Fritsch and Carlson, Monotone piecewise
 * cubic interpolation, SIAM J. Numer. Anal. 17, 1980), and is 0 where the chords differ in sign or
 * one is level. Where no bound is active this is the natural cubic spline. So the widest node is
 * the widest point and nothing ripples.
 */
public final class BattenSpline {
    /**
     * A piece whose departure from its chord is under this share of its radius is a straight line
     * as far as doubles can tell.
     */
    private static final double STRAIGHT_TO_ROUNDING = 1e-15;

    /** What holds the slope at a node. */
    public enum Bound {
        /** Nothing: the batten lies as it likes. */
        NONE,
        /** Level, because the outline turns here or runs level on one side. */
        TURN,
        /** Level, at the lower bound of a run that rises or falls throughout. */
        LEVEL,
        /** At three times the slope of the flatter neighbouring chord. */
        STEEPEST,
        /** Given by the maker. */
        GIVEN
    }

    private final double[] x;
    private final double[] r;
    private final double[] d;
    private final byte[] state;
    private final boolean firstGiven;
    private final boolean lastGiven;

    private BattenSpline(
            double[] x,
            double[] r,
            double[] d,
            byte[] state,
            boolean firstGiven,
            boolean lastGiven) {
        this.x = x;
        this.r = r;
        this.d = d;
        this.state = state;
        this.firstGiven = firstGiven;
        this.lastGiven = lastGiven;
    }

    /**
     * Lays the batten through the nodes.
     *
     * @param x places, mm, rising, at least two
     * @param r radii, mm, as many
     * @param first what is asked of the slope at the first node
     * @param last what is asked of the slope at the last node
     * @return the spline
     * @throws SlopeOutsideRangeException where a given end slope would break the shape
     * @throws IllegalArgumentException where the nodes are too few, not rising or no numbers
     */
    public static BattenSpline through(double[] x, double[] r, EndSlope first, EndSlope last) {
        int n = x.length;
        if (n < 2 || r.length != n) {
            throw new IllegalArgumentException(
                    "x and r must hold the same number of nodes, two or more; got "
                            + n
                            + " and "
                            + r.length);
        }
        double[] xs = x.clone();
        double[] rs = r.clone();
        for (int i = 0; i < n; i++) {
            Checks.finite("x", xs[i]);
            Checks.radius("r", rs[i]);
            if (i > 0 && !(xs[i] > xs[i - 1])) {
                throw new IllegalArgumentException(
                        "x must rise from node to node; node "
                                + i
                                + " at "
                                + xs[i]
                                + " follows "
                                + xs[i - 1]);
            }
        }
        double[] d = new double[n];
        byte[] state = new byte[n];
        slopes(xs, rs, first, last, d, state);
        return new BattenSpline(xs, rs, d, state, !first.free(), !last.free());
    }

    /** Finds the slopes; the arrays are trusted. */
    static void slopes(
            double[] x, double[] r, EndSlope first, EndSlope last, double[] d, byte[] state) {
        int n = x.length;
        if (n == 2 && first.free() && last.free()) {
            d[0] = (r[1] - r[0]) / (x[1] - x[0]);
            d[1] = d[0];
            return;
        }
        double[] diagonal = new double[n];
        double[] off = new double[n];
        double[] b = new double[n];
        double[] least = new double[n];
        double[] greatest = new double[n];
        double before = Double.NaN;
        double pullBefore = 0;
        double stiffBefore = 0;
        for (int i = 0; i < n; i++) {
            double stiff = i + 1 < n ? 1 / (x[i + 1] - x[i]) : 0;
            double after = i + 1 < n ? (r[i + 1] - r[i]) / (x[i + 1] - x[i]) : Double.NaN;
            double pull = i + 1 < n ? 3 * after * stiff : 0;
            // A quarter of the gradient: rows of 2 (1/h + 1/h') d_i + d_i-1 / h + d_i+1 / h'.
            diagonal[i] = 2 * (stiffBefore + stiff);
            off[i] = stiff;
            b[i] = pullBefore + pull;
            if (i == 0) {
                bound(i, after, after, first, least, greatest);
            } else if (i + 1 < n) {
                bound(i, before, after, EndSlope.FREE, least, greatest);
            } else {
                bound(i, before, before, last, least, greatest);
            }
            before = after;
            pullBefore = pull;
            stiffBefore = stiff;
        }
        BoundedTridiagonal.solve(diagonal, off, b, least, greatest, d, state);
    }

    private static void bound(
            int i, double before, double after, EndSlope wish, double[] least, double[] greatest) {
        double low = 0;
        double high = 0;
        if (before > 0 && after > 0) {
            high = 3 * Math.min(before, after);
        } else if (before < 0 && after < 0) {
            low = 3 * Math.max(before, after);
        }
        if (!wish.free()) {
            SlopeRange allowed = new SlopeRange(low, high);
            if (!allowed.holds(wish.slope())) {
                throw new SlopeOutsideRangeException(i, wish.slope(), allowed);
            }
            low = allowed.held(wish.slope());
            high = low;
        }
        least[i] = low;
        greatest[i] = high;
    }

    /**
     * Returns the number of nodes.
     *
     * @return two or more
     */
    public int nodes() {
        return x.length;
    }

    /**
     * Returns the place of a node; after sliding it may differ from what was asked.
     *
     * @param i node, from 0
     * @return x, mm
     */
    public double x(int i) {
        return x[i];
    }

    /**
     * Returns the radius at a node.
     *
     * @param i node, from 0
     * @return r, mm
     */
    public double r(int i) {
        return r[i];
    }

    /**
     * Returns the slopes at the nodes.
     *
     * @return dr/dx, one a node
     */
    public double[] slopes() {
        return d.clone();
    }

    /**
     * Returns the slope at a node.
     *
     * @param i node, from 0
     * @return dr/dx
     */
    public double slope(int i) {
        return d[i];
    }

    /**
     * Tells which bound holds the slope at a node.
     *
     * @param i node, from 0
     * @return the bound, or {@link Bound#NONE}
     */
    public Bound bound(int i) {
        boolean given = i == 0 && firstGiven || i == x.length - 1 && lastGiven;
        if (given) {
            return Bound.GIVEN;
        }
        switch (state[i]) {
            case BoundedTridiagonal.FREE:
                return Bound.NONE;
            case BoundedTridiagonal.FIXED:
                return Bound.TURN;
            default:
                return d[i] == 0 ? Bound.LEVEL : Bound.STEEPEST;
        }
    }

    /**
     * Returns the slopes that may be asked for at a node without a ripple.
     *
     * @param i node, from 0
     * @return the range
     */
    public SlopeRange allowed(int i) {
        double before = i > 0 ? chord(i - 1) : chord(0);
        double after = i + 1 < x.length ? chord(i) : before;
        return SlopeRange.between(before, after);
    }

    private double chord(int piece) {
        return (r[piece + 1] - r[piece]) / (x[piece + 1] - x[piece]);
    }

    private GraphCubic cubic(int piece) {
        return new GraphCubic(
                x[piece], x[piece + 1], r[piece], d[piece], r[piece + 1], d[piece + 1]);
    }

    /**
     * Returns the pieces as graph cubics.
     *
     * @return one fewer than nodes
     */
    public List<GraphCubic> cubics() {
        List<GraphCubic> pieces = new ArrayList<>(x.length - 1);
        for (int i = 0; i + 1 < x.length; i++) {
            pieces.add(cubic(i));
        }
        return List.copyOf(pieces);
    }

    /**
     * Returns the pieces, each that is straight to rounding as a straight line.
     *
     * @return one fewer than nodes
     */
    public List<Segment> segments() {
        List<Segment> pieces = new ArrayList<>(x.length - 1);
        for (int i = 0; i + 1 < x.length; i++) {
            pieces.add(isStraight(i) ? new StraightLine(x[i], r[i], x[i + 1], r[i + 1]) : cubic(i));
        }
        return List.copyOf(pieces);
    }

    /** A cubic leaves its chord by at most 8/27 h max(|a|, |b|). */
    private boolean isStraight(int piece) {
        double s = chord(piece);
        double most = Math.max(Math.abs(d[piece] - s), Math.abs(d[piece + 1] - s));
        double size = Math.max(r[piece], r[piece + 1]);
        return most * (x[piece + 1] - x[piece]) <= STRAIGHT_TO_ROUNDING * size;
    }

    /**
     * Returns the spline as an outline.
     *
     * @return the outline
     */
    public Outline outline() {
        return new Outline(segments());
    }

    /**
     * Returns the bending energy int r''^2 dx.
     *
     * @return 1/mm
     */
    double bendingEnergy() {
        double sum = 0;
        for (int i = 0; i + 1 < x.length; i++) {
            double s = chord(i);
            double a = d[i] - s;
            double b = d[i + 1] - s;
            sum += 4 / (x[i + 1] - x[i]) * (a * a + a * b + b * b);
        }
        return sum;
    }

    /**
     * Returns the jump of the signed curvature at an inner node: what shows as a flat spot.
     *
     * @param i node, from 1 to the last but one
     * @return curvature after less before, 1/mm
     */
    public double curvatureJump(int i) {
        if (i < 1 || i > x.length - 2) {
            throw new IllegalArgumentException(
                    "i must be an inner node, 1 to " + (x.length - 2) + ", not " + i);
        }
        double w = 1 + d[i] * d[i];
        return (startSecond(i) - endSecond(i - 1)) / (w * Math.sqrt(w));
    }

    private double startSecond(int piece) {
        return 2 * (3 * chord(piece) - 2 * d[piece] - d[piece + 1]) / (x[piece + 1] - x[piece]);
    }

    private double endSecond(int piece) {
        return 2 * (2 * d[piece + 1] + d[piece] - 3 * chord(piece)) / (x[piece + 1] - x[piece]);
    }
}
