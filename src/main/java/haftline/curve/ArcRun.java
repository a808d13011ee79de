package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * One smooth run of an outline as a chain of tangent arcs. The places where it is level are hard:
 * the chain goes through them level. It is fitted stretch by stretch between them; where it can,
 * the last arc of a stretch goes on through the level place into the next one, so that a swell gets
 * one arc and not two.
 */
final class ArcRun {
    /** Two level places this close, mm, are one that was found twice. */
    private static final double SAME_PLACE_MM = 1e-7;

    /** Grid cells for each arc, and shares of the tolerance there, tried in turn. */
    private static final int[] CELLS_EACH_ARC = {20, 20, 40, 40};

    private static final double[] GRID_SHARES = {0.985, 0.93, 0.985, 0.95};

    /** Halvings after which a crossing is known to the last bit. */
    private static final int MOST_HALVINGS = 80;

    private final List<Segment> run;
    private final double tolerance;
    private final FitStretch whole;
    private final List<Segment> arcs = new ArrayList<>();

    /** An arc carried on through a level place: where it ends and its tangent there. */
    private record Carry(List<Segment> chain, CircularArc last, double x, double tangent) {}

    ArcRun(List<Segment> run, double toleranceMm, boolean tiedBefore, boolean tiedAfter) {
        this.run = run;
        tolerance = toleranceMm;
        Segment first = run.get(0);
        Segment last = run.get(run.size() - 1);
        whole = new FitStretch(run, first.startX(), last.endX(), toleranceMm, 1);
        fit(
                hardPlaces(),
                tiedBefore || isFixed(first, first.startX()),
                tiedAfter || isFixed(last, last.endX()));
    }

    List<Segment> arcs() {
        return arcs;
    }

    /** Greatest distance between run and chain, either way, mm. */
    double deviation() {
        double greatest = 0;
        for (Segment arc : arcs) {
            greatest = Math.max(greatest, whole.departure(arc));
        }
        return greatest;
    }

    private void fit(List<Double> hard, boolean startFixed, boolean endFixed) {
        int stretches = hard.size() - 1;
        Carry carry = null;
        for (int k = 0; k < stretches; k++) {
            double from = hard.get(k);
            double to = hard.get(k + 1);
            boolean toFixed = k + 1 < stretches || endFixed;
            List<List<Segment>> chains =
                    stretch(from, to, new ArcChain.Ends(k > 0 || startFixed, 0, toFixed));
            if (carry != null) {
                FitStretch at = new FitStretch(run, carry.x, to, tolerance, 1);
                List<List<Segment>> carried =
                        stretch(
                                carry.x,
                                to,
                                new ArcChain.Ends(true, carry.tangent - at.angle[0], toFixed));
                if (!carried.isEmpty()
                        && (chains.isEmpty() || carried.get(0).size() <= chains.get(0).size())) {
                    chains = carried;
                    arcs.set(arcs.size() - 1, carry.last);
                }
            }
            if (chains.isEmpty()) {
                FitStretch grid = new FitStretch(run, from, to, tolerance, CELLS_EACH_ARC[0]);
                chains = List.of(BiarcChain.over(grid, tolerance));
            }
            if (chains.get(0).isEmpty()) {
                throw new IllegalStateException(
                        "no chain of arcs from x " + from + " to " + to + " within " + tolerance);
            }
            carry = k + 1 < stretches ? carry(chains, to, hard.get(k + 2)) : null;
            arcs.addAll(carry == null ? chains.get(0) : carry.chain);
        }
    }

    /**
     * Chains over one stretch, all of the fewest arcs that were found; none where there is none.
     */
    private List<List<Segment>> stretch(double from, double to, ArcChain.Ends ends) {
        List<List<Segment>> best = List.of();
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < CELLS_EACH_ARC.length; i++) {
            FitStretch grid = new FitStretch(run, from, to, tolerance, CELLS_EACH_ARC[i]);
            ArcChain chain = ArcChain.over(grid, tolerance, GRID_SHARES[i], ends);
            fewest = Math.min(fewest, chain.fewest());
            List<List<Segment>> found = chain.chains();
            if (!found.isEmpty() && (best.isEmpty() || found.get(0).size() < best.get(0).size())) {
                best = found;
            }
            if (!best.isEmpty() && best.get(0).size() <= fewest) {
                return best;
            }
        }
        return best;
    }

    /** Of the chains up to a level place the one whose last arc goes on the farthest through it. */
    private Carry carry(List<List<Segment>> chains, double level, double next) {
        FitStretch beyond = new FitStretch(run, level, next, tolerance, CELLS_EACH_ARC[0]);
        Carry best = null;
        for (List<Segment> chain : chains) {
            if (chain.get(chain.size() - 1) instanceof CircularArc last) {
                Carry found = carry(chain, last, beyond);
                if (found != null && (best == null || found.x > best.x)) {
                    best = found;
                }
            }
        }
        return best;
    }

    /** Follows the arc's circle to where it meets the curve again. */
    private Carry carry(List<Segment> chain, CircularArc last, FitStretch beyond) {
        double k = last.curvature();
        int met = 2;
        boolean above = height(last, k, beyond, 1) > 0;
        while (met <= beyond.last() && height(last, k, beyond, met) > 0 == above) {
            met++;
        }
        if (met > beyond.last() || Double.isNaN(height(last, k, beyond, met))) {
            return null;
        }
        double low = met - 1;
        double high = met;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double mid = 0.5 * (low + high);
            if (height(last, k, beyond, mid) > 0 == above) {
                low = mid;
            } else {
                high = mid;
            }
        }
        double x = beyond.xAt(high);
        double sine = k * (x - last.x1());
        double tangent = Math.atan2(sine, Math.sqrt((1 - sine) * (1 + sine)));
        ArcFrame frame = ArcFrame.of(last);
        double start = Math.atan2(frame.sin0(), frame.cos0());
        CircularArc longer =
                new CircularArc(
                        last.x0(), last.r0(), x, beyond.rAt(high), Math.tan((tangent - start) / 4));
        return whole.departure(longer) > tolerance ? null : new Carry(chain, longer, x, tangent);
    }

    /**
     * Height of the curve over the arc's circle, which is level at the arc's end; NaN beyond it.
     */
    private static double height(CircularArc last, double k, FitStretch beyond, double place) {
        double d = beyond.xAt(place) - last.x1();
        double circle = k * d * d / (1 + Math.sqrt(1 - k * k * d * d));
        return beyond.rAt(place) - last.r1() - circle;
    }

    private List<Double> hardPlaces() {
        List<Double> hard = new ArrayList<>();
        hard.add(run.get(0).startX());
        for (Segment segment : run) {
            addLevelPlaces(segment, hard);
        }
        addHard(run.get(run.size() - 1).endX(), hard);
        return hard;
    }

    /** Where an end of a run is level or square to the axis its tangent is kept. */
    private static boolean isFixed(Segment segment, double x) {
        double slope = segment.slope(x);
        return slope == 0 || Double.isInfinite(slope);
    }

    private static void addLevelPlaces(Segment segment, List<Double> hard) {
        double[] places = new double[2];
        int count = 0;
        if (segment instanceof GraphCubic cubic) {
            count = cubic.placesOfSlope(0, places);
            if (count == 2 && places[1] < places[0]) {
                double swap = places[0];
                places[0] = places[1];
                places[1] = swap;
            }
        } else if (segment instanceof EllipseQuarter ellipse) {
            places[0] = ellipse.centreX();
            count = places[0] > segment.startX() && places[0] < segment.endX() ? 1 : 0;
        }
        boolean levelStart = segment.slope(segment.startX()) == 0;
        boolean levelEnd = segment.slope(segment.endX()) == 0;
        if (levelStart) {
            addHard(segment.startX(), hard);
        }
        // A root that is a level end but for rounding is that end.
        double low = segment.startX() + (levelStart ? SAME_PLACE_MM : 0);
        double high = segment.endX() - (levelEnd ? SAME_PLACE_MM : 0);
        for (int i = 0; i < count; i++) {
            if (places[i] > low && places[i] < high) {
                addHard(places[i], hard);
            }
        }
        if (levelEnd) {
            addHard(segment.endX(), hard);
        }
    }

    private static void addHard(double x, List<Double> hard) {
        if (x > hard.get(hard.size() - 1)) {
            hard.add(x);
        }
    }
}
