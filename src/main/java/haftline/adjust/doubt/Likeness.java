package haftline.adjust.doubt;

import haftline.curve.BattenNode;
import haftline.curve.BattenRuns;
import haftline.curve.EndSlope;
import haftline.curve.Moments;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.Brief;
import haftline.handle.Dressing;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Measured;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A drawn handle, ready to be made many times over: the drills, depths and places as drawn, the
 * diameters, the parts and the bores' axes as chance has them.
 *
 * <p>The wall is taken at stations every half millimetre along the bores and at every joint and
 * corner: between two of them the outline dips by no more than h²/8 of its curvature, a micron or
 * two on a handle.
 */
final class Likeness {
    private static final double STATION_MM = 0.5;

    /** Two places nearer than this are one station, mm. */
    private static final double SAME_MM = 1e-6;

    /** Half-width of a 95 % interval to standard deviation. */
    private static final double OF_DOUBT = 1.959963984540054;

    private static final int BORE_FIGURES = 4;

    private final Handle handle;
    private final Scatter scatter;
    private final Outline drawn;
    private final Figures figures;
    private final int inner;
    private final int count;
    private final double[] stationX;
    private final double[] stationDepth;
    private final double[] stationBore;
    private final int[] stationSegment;
    private final int[] stationZone;
    private final int[] stationWhich;
    private final List<Zone> zones;
    private final double[] limits;
    private final double ferruleOutside;
    private final double ferruleBore;
    private final double capHead;
    private final double mouth;
    private final double drift;
    private final double removed;
    private final double removedMoment;
    private final double gramsPerMm3;

    Likeness(Handle handle, Scatter scatter) {
        this.handle = handle;
        this.scatter = scatter;
        this.drawn = handle.outline();
        this.figures = Figures.of(handle);
        this.inner = handle.nodes().size();
        Brief brief = handle.brief();
        ferruleOutside = deviation(brief.kit().ferrule().outside());
        ferruleBore = deviation(brief.kit().ferrule().bore());
        capHead = brief.kit().cap().map(cap -> deviation(cap.headDiameter())).orElse(0.0);
        mouth = scatter.componentMm(handle.wander().startMm());
        drift = scatter.componentMm(handle.wander().slope());
        count = FIRST_NODE + inner + 2 * BORE_FIGURES + 2;
        zones = new ArrayList<>();
        limits = new double[figures.walls().size()];
        for (Wall wall : figures.walls()) {
            limits[zones.size()] = wall.limitMm();
            zones.add(wall.zone());
        }
        Stations stations = new Stations();
        stations.along(handle.tangBore(), 0);
        handle.capBore().ifPresent(bore -> stations.along(bore, 1));
        stationX = stations.array(stations.x);
        stationDepth = stations.array(stations.depth);
        stationBore = stations.array(stations.bore);
        stationSegment = stations.segment.stream().mapToInt(Integer::intValue).toArray();
        stationZone = stations.zone.stream().mapToInt(Integer::intValue).toArray();
        stationWhich = stations.which.stream().mapToInt(Integer::intValue).toArray();
        Moments solid = drawn.moments();
        double left = figures.wood().finishedMm3();
        removed = solid.volume() - left;
        removedMoment = solid.firstX() - left * figures.wood().centroidX();
        gramsPerMm3 = share(haftline.figures.Share.Part.WOOD).massG() / left;
    }

    private haftline.figures.Share share(haftline.figures.Share.Part part) {
        return figures.balance().shares().stream()
                .filter(one -> one.part() == part)
                .findFirst()
                .orElseThrow();
    }

    /**
     * How one part differs from the mean of those measured: from part to part, and by the doubt of
     * that mean.
     */
    private static double deviation(Measured measured) {
        return Math.hypot(measured.deviation(), measured.doubt() / OF_DOUBT);
    }

    /** Places of the normal figures of one handle. */
    private static final int OUTSIDE = 0;

    private static final int BORE = 1;
    private static final int HEAD = 2;
    private static final int TENON = 3;
    private static final int FIRST_NODE = 4;

    /** How many normal figures one handle needs. */
    int figures() {
        return count;
    }

    /** Which input a figure belongs to. */
    Input input(int figure) {
        if (figure <= BORE) {
            return Input.FERRULE;
        }
        if (figure == HEAD) {
            return Input.CAP;
        }
        if (figure == TENON) {
            return Input.TENON;
        }
        if (figure < FIRST_NODE + inner) {
            return Input.TURNING;
        }
        int bore = figure - FIRST_NODE - inner;
        if (bore < 2 * BORE_FIGURES) {
            return bore % BORE_FIGURES < 2 ? Input.MOUTH : Input.DRIFT;
        }
        return bore == 2 * BORE_FIGURES ? Input.DENSITY : Input.RECKONED;
    }

    List<Zone> zones() {
        return zones;
    }

    double limitMm(int zone) {
        return limits[zone];
    }

    int stations() {
        return stationX.length;
    }

    double stationX(int station) {
        return stationX[station];
    }

    /** One handle: its walls at the stations, and what follows. */
    final class Made {
        final double[] wall = new double[stationX.length];
        final double[] zoneWall = new double[limits.length];
        double leastMargin;
        double least;
        double mass;
        double balance;

        /** Makes one from normal figures of deviation 1. */
        void make(double[] normal) {
            Outline outline = outline(normal);
            walls(outline, normal);
            weigh(outline, normal);
        }

        private void walls(Outline outline, double[] normal) {
            java.util.Arrays.fill(zoneWall, Double.POSITIVE_INFINITY);
            int bores = FIRST_NODE + inner;
            List<Segment> segments = outline.segments();
            for (int s = 0; s < stationX.length; s++) {
                int at = bores + stationWhich[s] * BORE_FIGURES;
                double z = stationDepth[s];
                double across = mouth * normal[at] + drift * normal[at + 2] * z;
                double along = mouth * normal[at + 1] + drift * normal[at + 3] * z;
                double off = Math.sqrt(across * across + along * along);
                double r = segments.get(stationSegment[s]).r(stationX[s]);
                wall[s] = r - stationBore[s] - off;
                zoneWall[stationZone[s]] = Math.min(zoneWall[stationZone[s]], wall[s]);
            }
            leastMargin = Double.POSITIVE_INFINITY;
            least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < limits.length; k++) {
                leastMargin = Math.min(leastMargin, zoneWall[k] - limits[k]);
                least = Math.min(least, zoneWall[k]);
            }
        }

        private void weigh(Outline outline, double[] normal) {
            Moments solid = outline.moments();
            double volume = solid.volume() - removed;
            double moment = solid.firstX() - removedMoment;
            double density = gramsPerMm3 * (1 + scatter.densityShare() * normal[count - 2]);
            double reckoned = 1 + scatter.reckonedShare() * normal[count - 1];
            Balance drawnBalance = figures.balance();
            mass = density * volume;
            double sum = density * moment;
            for (haftline.figures.Share share : drawnBalance.shares()) {
                if (share.part() != haftline.figures.Share.Part.WOOD) {
                    double grams = share.massG() * (share.estimated() ? reckoned : 1);
                    mass += grams;
                    sum += grams * share.x();
                }
            }
            balance = sum / mass - handle.ferruleFaceX();
        }
    }

    Made made() {
        return new Made();
    }

    /** The outline as turned; as drawn where chance makes one that cannot be. */
    private Outline outline(double[] normal) {
        Brief brief = handle.brief();
        Shape shape = brief.shape();
        List<PlacedNode> placed = handle.nodes();
        List<BattenNode> batten = new ArrayList<>(placed.size());
        for (int i = 0; i < placed.size(); i++) {
            PlacedNode node = placed.get(i);
            double r = node.radiusMm() + scatter.turnedMm() * normal[FIRST_NODE + i] / 2;
            if (i == 0) {
                r += ferruleOutside * normal[OUTSIDE] / 2;
                batten.add(BattenNode.smooth(node.x(), r, slope(shape.shoulderSlopeDeg())));
            } else if (i == placed.size() - 1) {
                r += capHead * normal[HEAD] / 2;
                batten.add(BattenNode.smooth(node.x(), r, slope(shape.seatSlopeDeg())));
            } else {
                Node asked = shape.nodes().get(i - 1);
                batten.add(
                        node.join() == Join.CRISP
                                ? BattenNode.crisp(node.x(), r)
                                : BattenNode.smooth(node.x(), r, slope(asked.slopeDeg())));
            }
        }
        try {
            Optional<Outline> wood =
                    Dressing.of(
                            BattenRuns.through(batten).outline(),
                            shape.details(),
                            shape.butt(),
                            handle.buttX());
            if (wood.isEmpty() || wood.get().segments().size() + 1 != drawn.segments().size()) {
                return drawn;
            }
            double tenon =
                    handle.tenon().diameterMm() / 2
                            + (ferruleBore * normal[BORE] + scatter.tenonMm() * normal[TENON]) / 2;
            List<Segment> all = new ArrayList<>(drawn.segments().size());
            all.add(new StraightLine(handle.tenonEndX(), tenon, 0, tenon));
            all.addAll(wood.get().segments());
            return new Outline(all);
        } catch (IllegalArgumentException cannotBeTurned) {
            return drawn;
        }
    }

    private static EndSlope slope(OptionalDouble degrees) {
        return degrees.isPresent() ? EndSlope.ofDegrees(degrees.getAsDouble()) : EndSlope.FREE;
    }

    /** Collects the places along the bores where the wall is taken. */
    private final class Stations {
        final List<Double> x = new ArrayList<>();
        final List<Double> depth = new ArrayList<>();
        final List<Double> bore = new ArrayList<>();
        final List<Integer> segment = new ArrayList<>();
        final List<Integer> zone = new ArrayList<>();
        final List<Integer> which = new ArrayList<>();

        double[] array(List<Double> values) {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }

        void along(Bore one, int number) {
            double end = one.xAt(one.reachMm());
            double from = Math.max(drawn.startX(), Math.min(one.faceX(), end));
            double to = Math.min(drawn.endX(), Math.max(one.faceX(), end));
            for (int i = 0; i < drawn.segments().size(); i++) {
                Segment piece = drawn.segments().get(i);
                Zone under = number == 1 ? Zone.CAP : piece.endX() <= 0 ? Zone.TENON : Zone.BODY;
                double low = Math.max(from, piece.startX());
                double high = Math.min(to, piece.endX());
                if (low < high && zones.contains(under) && !(number == 1 && high <= 0)) {
                    List<Double> places = new ArrayList<>(List.of(low, high));
                    for (double at = low + STATION_MM; at < high - SAME_MM; at += STATION_MM) {
                        places.add(at);
                    }
                    one.steps().stream()
                            .flatMap(
                                    step ->
                                            List.of(step.depthMm(), step.depthMm() + step.pointMm())
                                                    .stream())
                            .map(one::xAt)
                            .filter(at -> at > low && at < high)
                            .forEach(places::add);
                    places.sort(null);
                    for (double at : places) {
                        add(one, number, i, zones.indexOf(under), at);
                    }
                }
            }
        }

        private void add(Bore one, int number, int piece, int under, double at) {
            double z = Math.max(0, one.depthAt(at));
            x.add(at);
            depth.add(z);
            bore.add(one.radiusAt(at));
            segment.add(piece);
            zone.add(under);
            which.add(number);
        }
    }
}
