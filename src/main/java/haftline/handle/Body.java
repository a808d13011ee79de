package haftline.handle;

import haftline.curve.BattenNode;
import haftline.curve.BattenRuns;
import haftline.curve.BattenSpline;
import haftline.curve.EndSlope;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.SlopeOutsideRangeException;
import haftline.curve.StraightLine;
import haftline.measure.NumberText;
import haftline.shape.Butt;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The visible wood: nodes at their places, the batten through them, details over it, the butt
 * behind it.
 */
final class Body {
    /** A range is told in tenths of a degree, rounded inwards: what is told may be typed. */
    private static final double TOLD = 10;

    private final Brief brief;
    private final double visibleWood;
    private final List<PlacedNode> nodes = new ArrayList<>();
    private Outline outline;
    private Resolution.Impossible problem;

    Body(Brief brief, double visibleWood) {
        this.brief = brief;
        this.visibleWood = visibleWood;
        build();
    }

    Optional<Resolution> impossible() {
        return Optional.ofNullable(problem);
    }

    List<PlacedNode> nodes() {
        return nodes;
    }

    /** The turned wood from the tenon's end to the butt. */
    Outline outline(Tenon tenon) {
        double r = tenon.diameterMm() / 2;
        List<Segment> all = new ArrayList<>(outline.segments().size() + 1);
        all.add(new StraightLine(-tenon.lengthMm(), r, 0, r));
        all.addAll(outline.segments());
        return new Outline(all);
    }

    private void build() {
        Shape shape = brief.shape();
        double seatX = visibleWood - shape.butt().lengthMm();
        List<Node> free = shape.nodes();
        double[] x = new double[free.size() + 2];
        double[] r = new double[x.length];
        r[0] = brief.kit().ferrule().outside().greatest() / 2 + shape.shadowLineMm();
        x[x.length - 1] = seatX;
        r[x.length - 1] = seatDiameter() / 2;
        for (int i = 1; i < x.length - 1; i++) {
            Node node = free.get(i - 1);
            Double share = brief.choices().nodePlaces().get(node.name());
            x[i] = (share == null ? node.place() : new Place.Share(share)).x(visibleWood);
            Double chosen = brief.choices().nodeDiametersMm().get(node.name());
            r[i] = (chosen == null ? diameter(node.size()) : chosen) / 2;
        }
        for (int i = 1; i < x.length; i++) {
            if (x[i] - x[i - 1] < PlacedNode.LEAST_SPACING_MM) {
                problem =
                        new Resolution.Impossible(
                                "nodes-out-of-order",
                                x[i] - x[i - 1],
                                PlacedNode.LEAST_SPACING_MM,
                                "mm",
                                "Node "
                                        + name(i)
                                        + " does not stand behind "
                                        + name(i - 1)
                                        + " on a handle of this length");
                return;
            }
        }
        lay(x, r);
    }

    private String name(int i) {
        List<Node> free = brief.shape().nodes();
        return i == 0
                ? Shape.SHOULDER
                : i > free.size() ? Shape.SEAT : "\"" + free.get(i - 1).name() + "\"";
    }

    private void lay(double[] x, double[] r) {
        Shape shape = brief.shape();
        List<BattenNode> batten = battenNodes(x, r);
        BattenRuns runs;
        try {
            runs = settled(batten, x);
        } catch (SlopeOutsideRangeException refused) {
            problem = slopeRefused(refused);
            return;
        }
        Details.Laid laid = Details.lay(runs.outline(), shape.details(), visibleWood);
        if (laid.problem().isPresent()) {
            problem = laid.problem().get();
            return;
        }
        List<Segment> butt = butt(x[x.length - 1], r[r.length - 1]);
        if (problem != null) {
            return;
        }
        outline = butt.isEmpty() ? laid.body() : laid.body().followedBy(new Outline(butt));
        place(x, r, runs);
    }

    /**
     * The batten through the nodes, widest and narrowest nodes slid to where their flat spots are
     * least; x follows.
     */
    private BattenRuns settled(List<BattenNode> batten, double[] x) {
        double reach = brief.rules().lengths().slideShare() * visibleWood;
        double[] slide = new double[x.length];
        for (int i = 1; i < x.length - 1; i++) {
            Node node = brief.shape().nodes().get(i - 1);
            boolean slides =
                    node.slides() && !brief.choices().nodePlaces().containsKey(node.name());
            slide[i] = slides ? reach : 0;
        }
        BattenRuns runs = BattenRuns.settled(batten, slide, slide, PlacedNode.LEAST_SPACING_MM);
        int i = 0;
        for (BattenSpline run : runs.splines()) {
            for (int k = 0; k < run.nodes() - 1; k++) {
                x[i++] = run.x(k);
            }
        }
        return runs;
    }

    private Resolution.Impossible slopeRefused(SlopeOutsideRangeException refused) {
        double least = Math.toDegrees(Math.atan(refused.allowed().least()));
        double greatest = Math.toDegrees(Math.atan(refused.allowed().greatest()));
        double asked = Math.toDegrees(Math.atan(refused.slope()));
        return new Resolution.Impossible(
                "slope-breaks-the-shape",
                asked,
                asked > greatest ? greatest : least,
                "deg",
                "The slope at "
                        + name(refused.node())
                        + " would make the outline leave the range of its neighbours; from "
                        + NumberText.said(NumberText.fixed(Math.ceil(least * TOLD) / TOLD, 1))
                        + "° to "
                        + NumberText.said(NumberText.fixed(Math.floor(greatest * TOLD) / TOLD, 1))
                        + "° is possible");
    }

    private List<BattenNode> battenNodes(double[] x, double[] r) {
        Shape shape = brief.shape();
        List<BattenNode> batten = new ArrayList<>(x.length);
        batten.add(BattenNode.smooth(x[0], r[0], slope(shape.shoulderSlopeDeg())));
        for (int i = 1; i < x.length - 1; i++) {
            Node node = shape.nodes().get(i - 1);
            batten.add(
                    node.join() == Join.CRISP
                            ? BattenNode.crisp(x[i], r[i])
                            : BattenNode.smooth(x[i], r[i], slope(node.slopeDeg())));
        }
        batten.add(
                BattenNode.smooth(x[x.length - 1], r[x.length - 1], slope(shape.seatSlopeDeg())));
        return batten;
    }

    private static EndSlope slope(OptionalDouble degrees) {
        return degrees.isPresent() ? EndSlope.ofDegrees(degrees.getAsDouble()) : EndSlope.FREE;
    }

    private void place(double[] x, double[] r, BattenRuns runs) {
        double[] jumps = jumps(x.length, runs);
        for (int i = 0; i < x.length; i++) {
            if (i == 0) {
                nodes.add(
                        new PlacedNode(
                                Shape.SHOULDER,
                                x[i],
                                r[i],
                                Join.CRISP,
                                "the ferrule's outside diameter fixes it",
                                0));
            } else if (i == x.length - 1) {
                nodes.add(
                        new PlacedNode(
                                Shape.SEAT,
                                x[i],
                                r[i],
                                Join.CRISP,
                                brief.kit().cap().isPresent()
                                        ? "the cap's head fixes it"
                                        : "the butt's diameter of the set fixes it",
                                0));
            } else {
                Node node = brief.shape().nodes().get(i - 1);
                nodes.add(new PlacedNode(node.name(), x[i], r[i], node.join(), "", jumps[i]));
            }
        }
    }

    private static double[] jumps(int count, BattenRuns runs) {
        double[] jumps = new double[count];
        int start = 0;
        for (var spline : runs.splines()) {
            for (int i = 1; i < spline.nodes() - 1; i++) {
                jumps[start + i] = spline.curvatureJump(i);
            }
            start += spline.nodes() - 1;
        }
        return jumps;
    }

    private double seatDiameter() {
        return brief.referenceMm(Reference.SEAT);
    }

    private double diameter(Size size) {
        if (size instanceof Size.Plain plain) {
            return plain.diameterMm();
        }
        Size.Times times = (Size.Times) size;
        return times.factor() * brief.referenceMm(times.reference());
    }

    /** The form of the butt, from the seat node to the wood's end. */
    private List<Segment> butt(double x, double r) {
        Butt butt = brief.shape().butt();
        double length = butt.lengthMm();
        if (length > 0 && length >= r && !(butt instanceof Butt.Domed)) {
            problem =
                    new Resolution.Impossible(
                            "butt-too-small",
                            r,
                            length,
                            "mm",
                            "The butt is too thin for its form; make the form smaller");
            return List.of();
        }
        return Dressing.buttSegments(butt, x, r, visibleWood);
    }
}
