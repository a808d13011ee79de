package haftline.adjust.solve;

import haftline.curve.Extreme;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.figures.AdhesiveNeed;
import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Grip;
import haftline.figures.Walls;
import haftline.figures.WoodVolume;
import haftline.figures.Zone;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Reference;
import haftline.shape.Shape;
import java.util.List;

/**
 * The margins of one piece, mm each, positive where a demand is met, in smooth pieces.
 *
 * @param wish what is asked, for its bands
 * @param rising for each stretch between nodes 1 where it rose at the start, -1 where it fell, 0
 *     where it ran level
 * @param commonSwell whether the piece goes by the set's swell
 */
record PieceRows(Wish wish, int[] rising, boolean commonSwell) {
    /** Diameters that differ by no more look alike in a row of pieces (common practice), mm. */
    static final double SAME_SWELL_MM = 0.1;

    /** Nodes that differ by less run level, mm: rounding of a multiple. */
    private static final double LEVEL_MM = 1e-9;

    private static final int LOW = -1;
    private static final int HIGH = -2;
    private static final int RUN = 1000;

    static PieceRows of(Wish wish, Handle start, boolean commonSwell) {
        List<PlacedNode> nodes = start.nodes();
        int[] rising = new int[nodes.size() - 1];
        for (int i = 0; i < rising.length; i++) {
            double step = nodes.get(i + 1).radiusMm() - nodes.get(i).radiusMm();
            rising[i] = Math.abs(step) < LEVEL_MM ? 0 : step > 0 ? 1 : -1;
        }
        return new PieceRows(wish, rising, commonSwell);
    }

    /** Adds the margin of a need to rows, in its smooth pieces, and returns them. */
    Rows add(Handle handle, Need need, Rows rows) {
        switch (need) {
            case TENON_WALL, BODY_WALL, CAP_WALL -> WallRows.add(handle, need, rows);
            case BORE_ENDS -> rows.add(0, boreEnds(handle));
            case BALANCE -> balance(handle, rows);
            case GRIP -> grip(handle, rows);
            case COVES -> coves(handle, rows);
            case COMMON_SWELL -> commonSwell(handle, rows);
            case CHARACTER -> character(handle, rows);
        }
        return rows;
    }

    /** What a need wants of its figure; infinite where it sets no limit. */
    Band wanted(Handle handle, Need need) {
        double swell = handle.brief().referenceMm(Reference.SWELL);
        return switch (need) {
            case TENON_WALL, BODY_WALL, CAP_WALL ->
                    Band.from(Walls.limitMm(handle, WallRows.zone(need)));
            case BORE_ENDS ->
                    Band.from(
                            Walls.web(handle)
                                    .map(Walls.Web::limitMm)
                                    .orElseGet(() -> Walls.limitMm(handle, Zone.BODY)));
            case BALANCE -> balanceBand(handle);
            case GRIP -> gripBand(handle);
            case COVES -> Band.from(handle.brief().rules().copying().noseMm());
            case COMMON_SWELL -> new Band(swell - SAME_SWELL_MM, swell + SAME_SWELL_MM);
            case CHARACTER -> Band.from(0);
        };
    }

    /** The figure that a need is about. */
    double figure(Handle handle, Need need, double marginMm) {
        return switch (need) {
            case BALANCE -> balanceMm(handle);
            case GRIP, COMMON_SWELL -> greatestMm(handle);
            case COVES -> hollowMm(handle);
            default -> marginMm + wanted(handle, need).lowMm();
        };
    }

    /** What is left between the bores, or to the butt's face, over what is wanted, mm. */
    static double boreEnds(Handle handle) {
        return Walls.web(handle)
                .map(web -> web.mm() - web.limitMm())
                .orElseGet(
                        () -> {
                            double tip = handle.tangBore().xAt(handle.tangBore().reachMm());
                            return handle.buttX() - tip - Walls.limitMm(handle, Zone.BODY);
                        });
    }

    static double balanceMm(Handle handle) {
        WoodVolume wood = WoodVolume.of(handle);
        return Balance.of(handle, wood, AdhesiveNeed.of(handle), Figures.HANDBOOK_MOISTURE)
                .fromFerruleFaceMm();
    }

    Band balanceBand(Handle handle) {
        var rule = handle.brief().rules().balance();
        return wish.balance().orElseGet(() -> new Band(rule.lowMm(), rule.highMm()));
    }

    private void balance(Handle handle, Rows rows) {
        Band band = balanceBand(handle);
        double mm = balanceMm(handle);
        rows.add(LOW, mm - band.lowMm());
        rows.add(HIGH, band.highMm() - mm);
    }

    Band gripBand(Handle handle) {
        return wish.grip()
                .orElseGet(
                        () -> {
                            Grip grip = Grip.of(handle);
                            return new Band(grip.diameterLowMm(), grip.diameterHighMm());
                        });
    }

    private static double seatX(Handle handle) {
        return handle.buttX() - handle.brief().shape().butt().lengthMm();
    }

    static double greatestMm(Handle handle) {
        return 2 * handle.outline().greatest(0, seatX(handle)).r();
    }

    private void grip(Handle handle, Rows rows) {
        Band band = gripBand(handle);
        within(handle, band.lowMm(), band.highMm(), rows);
    }

    /**
     * Every segment under the high end, the widest place over the low one. Where the two fixed ends
     * are not wide enough, that has to be a place between them: an end has no slope that would show
     * which way to go.
     */
    private static void within(Handle handle, double low, double high, Rows rows) {
        Outline outline = handle.outline();
        List<Segment> segments = outline.segments();
        double seatX = seatX(handle);
        double ends = 2 * Math.max(outline.rAfter(0), outline.rBefore(seatX));
        double between = 0;
        for (int s = outline.indexAt(0); s < segments.size(); s++) {
            Segment segment = segments.get(s);
            double from = Math.max(0, segment.startX());
            double to = Math.min(seatX, segment.endX());
            if (from < to) {
                Extreme most = segment.greatest(from, to);
                rows.add(s, high - 2 * most.r());
                if (most.x() > 0 && most.x() < seatX) {
                    between = Math.max(between, 2 * most.r());
                }
            }
        }
        for (PlacedNode node : handle.nodes()) {
            between = node.isFree() ? Math.max(between, 2 * node.radiusMm()) : between;
        }
        rows.add(LOW, (ends >= low ? Math.max(ends, between) : between) - low);
    }

    private void commonSwell(Handle handle, Rows rows) {
        if (commonSwell) {
            double swell = handle.brief().referenceMm(Reference.SWELL);
            within(handle, swell - SAME_SWELL_MM, swell + SAME_SWELL_MM, rows);
        }
    }

    /** Tightest radius of a hollow that is no corner, mm; infinite without one. */
    static double hollowMm(Handle handle) {
        double least = Double.POSITIVE_INFINITY;
        Outline outline = handle.outline();
        for (int s = outline.indexAt(0); s < outline.segments().size(); s++) {
            least = Math.min(least, hollowMm(handle, outline.segments().get(s)));
        }
        return least;
    }

    private static double hollowMm(Handle handle, Segment segment) {
        double from = Math.max(0, segment.startX());
        double to = Math.min(seatX(handle), segment.endX());
        return from < to ? segment.tightestConcave(from, to).radius() : Double.POSITIVE_INFINITY;
    }

    /** By curvature, which follows the nodes more evenly than the radius; scaled to mm. */
    private static void coves(Handle handle, Rows rows) {
        double nose = handle.brief().rules().copying().noseMm();
        Outline outline = handle.outline();
        for (int s = outline.indexAt(0); s < outline.segments().size(); s++) {
            double radius = hollowMm(handle, outline.segments().get(s));
            rows.add(s, nose * (1 - nose / radius));
        }
    }

    private void character(Handle handle, Rows rows) {
        List<PlacedNode> nodes = handle.nodes();
        for (int i = 0; i < rising.length; i++) {
            if (rising[i] != 0) {
                rows.add(i, rising[i] * step(nodes, i));
            }
        }
        int run = RUN;
        for (Shape.Run each : handle.brief().shape().monotone()) {
            int from = index(nodes, each.from());
            int to = index(nodes, each.to());
            double way = Math.signum(nodes.get(to).radiusMm() - nodes.get(from).radiusMm());
            for (int i = from; i < to; i++) {
                rows.add(run + i, way * step(nodes, i));
            }
            run += RUN;
        }
    }

    private static double step(List<PlacedNode> nodes, int i) {
        return 2 * (nodes.get(i + 1).radiusMm() - nodes.get(i).radiusMm());
    }

    private static int index(List<PlacedNode> nodes, String name) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no node \"" + name + "\"");
    }
}
