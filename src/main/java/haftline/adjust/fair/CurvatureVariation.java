package haftline.adjust.fair;

import haftline.curve.GraphCubic;
import haftline.curve.Segment;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.shape.Shape;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How unevenly a line bends: the integral of the square of the curvature's rate along the line, the
 * measure of minimum variation curves (Moreton and Sequin, Functional optimization for fair surface
 * design, SIGGRAPH 1992; from memory), and its jumps at the nodes. A circle and a straight line
 * have none.
 *
 * <p>A jump would make the integral infinite; it is counted as if the curvature went from one value
 * to the other evenly over {@link #JUMP_LENGTH_MM}.
 *
 * @param within integral of (d kappa / d s)² d s over all pieces, 1/mm³
 * @param jumps sum of the squares of the jumps over the length of one, 1/mm³
 */
public record CurvatureVariation(double within, double jumps) {
    /** Shorter than this the eye takes a change of curvature for a jump (our own measure), mm. */
    public static final double JUMP_LENGTH_MM = 1;

    /** Slopes that differ by more make a corner, which is meant. */
    private static final double CORNER = 1e-7;

    /**
     * A cubic of a handle bends so gently that 16 points an integral give ten digits; see
     * CurvatureVariationTest.
     */
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16);

    /**
     * Both parts together.
     *
     * @return 1/mm³
     */
    public double total() {
        return within + jumps;
    }

    /**
     * The variation of a handle's body from ferrule to seat, details left off.
     *
     * @param handle the handle
     * @return its variation
     */
    public static CurvatureVariation of(Handle handle) {
        Handle plain = plain(handle);
        Shape shape = plain.brief().shape();
        double seatX = plain.buttX() - shape.butt().lengthMm();
        List<Segment> all = plain.outline().segments();
        int from = plain.outline().indexAt(0);
        int to = from;
        while (to < all.size() && all.get(to).startX() < seatX) {
            to++;
        }
        return of(all.subList(from, to));
    }

    /** The handle without details, which are meant to break the line. */
    private static Handle plain(Handle handle) {
        if (handle.brief().shape().details().isEmpty()) {
            return handle;
        }
        Brief b = handle.brief();
        Brief plain =
                new Brief(
                        b.name(),
                        b.kit(),
                        b.metals(),
                        b.stock(),
                        b.adhesive(),
                        b.shape().withDetails(List.of()),
                        b.rules(),
                        b.rack(),
                        b.choices());
        return Resolve.of(plain) instanceof Resolution.Resolved resolved
                ? resolved.handle()
                : handle;
    }

    /**
     * The variation of a chain of segments that abut.
     *
     * @param segments in order of x
     * @return their variation
     */
    public static CurvatureVariation of(List<Segment> segments) {
        double within = 0;
        double jumps = 0;
        for (int i = 0; i < segments.size(); i++) {
            if (segments.get(i) instanceof GraphCubic cubic) {
                within += within(cubic);
            }
            if (i > 0) {
                double jump = jump(segments.get(i - 1), segments.get(i));
                jumps += jump * jump / JUMP_LENGTH_MM;
            }
        }
        return new CurvatureVariation(within, jumps);
    }

    private static double jump(Segment before, Segment after) {
        double x = after.startX();
        return Math.abs(after.slope(x) - before.slope(x)) > CORNER
                ? 0
                : after.curvature(x) - before.curvature(x);
    }

    /**
     * With w = 1 + r'², kappa = r'' w^-3/2, so d kappa / dx = r''' w^-3/2 - 3 r' r''² w^-5/2, and
     * (d kappa / ds)² ds = (d kappa / dx)² w^-1/2 dx.
     */
    private static double within(GraphCubic cubic) {
        double a = cubic.x0();
        double h = cubic.x1() - a;
        double third = (cubic.endSecond() - cubic.startSecond()) / h;
        double sum = 0;
        for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
            double x = a + h * (1 + RULE.getPoint(i)) / 2;
            double slope = cubic.slope(x);
            double second = cubic.startSecond() + third * (x - a);
            double w = 1 + slope * slope;
            double root = Math.sqrt(w);
            double rate = (third - 3 * slope * second * second / w) / (w * root);
            sum += RULE.getWeight(i) * rate * rate / root;
        }
        return sum * h / 2;
    }
}
