package haftline.adjust.doubt;

import haftline.curve.BattenNode;
import haftline.curve.BattenRuns;
import haftline.curve.EndSlope;
import haftline.curve.Moments;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.figures.AdhesiveNeed;
import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.figures.Wall;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.Brief;
import haftline.handle.Dressing;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Spreads;
import haftline.measure.Measured;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Shape;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A drawn handle, ready to be made many times over: the drills and places as drawn, the diameters,
 * the parts, the bores' axes, depths and widths as chance has them.
 */
final class Likeness {
    /** Half-width of a 95 % interval to standard deviation. */
    private static final double OF_DOUBT = 1.959963984540054;

    /** A bore is drilled deeper than by this many deviations once in 30,000 times. */
    private static final double DEEPEST = 4;

    /** Places of the normal figures of one handle; after the nodes come those of each bore. */
    private static final int OUTSIDE = 0;

    private static final int BORE = 1;
    private static final int HEAD = 2;
    private static final int TENON = 3;
    private static final int FIRST_NODE = 4;

    /** Of one bore: mouth across and along, drift across and along, depth, width. */
    private static final int DEPTH = 4;

    private static final int WIDTH = 5;
    private static final int BORE_FIGURES = 6;
    private static final int MOST_BORES = 2;

    private final Handle handle;
    private final Spreads spreads;
    private final Outline drawn;
    private final Figures figures;
    private final int firstBore;
    private final int count;
    private final List<Hole> holes = new ArrayList<>();
    private final Stations stations;
    private final List<Zone> zones = new ArrayList<>();
    private final double[] limits;
    private final double endLimit;
    private final double ferruleOutside;
    private final double ferruleBore;
    private final double capHead;
    private final double mouth;
    private final double drift;
    private final double densityShare;
    private final double removed;
    private final double removedMoment;
    private final double gramsPerMm3;

    /** What fills a bore round its tang or spigot, g/mm³; 0 where it stays empty. */
    private final double[] filling;

    Likeness(Handle handle) {
        this.handle = handle;
        this.drawn = handle.outline();
        this.figures = Figures.of(handle);
        Brief brief = handle.brief();
        spreads = brief.rules().spreads();
        ferruleOutside = deviation(brief.kit().ferrule().outside());
        ferruleBore = deviation(brief.kit().ferrule().bore());
        capHead = brief.kit().cap().map(cap -> deviation(cap.headDiameter())).orElse(0.0);
        mouth = spreads.componentMm(handle.wander().startMm());
        drift = spreads.componentMm(handle.wander().slope());
        boolean isWood = brief.stock() instanceof Wood;
        densityShare = isWood ? spreads.densityWood() : spreads.densityPlastic();
        firstBore = FIRST_NODE + handle.nodes().size();
        count = firstBore + MOST_BORES * BORE_FIGURES + 2;
        limits = new double[figures.walls().size()];
        for (Wall wall : figures.walls()) {
            limits[zones.size()] = wall.limitMm();
            zones.add(wall.zone());
        }
        holes.add(new Hole(handle.tangBore()));
        handle.capBore().ifPresent(bore -> holes.add(new Hole(bore)));
        endLimit =
                figures.web()
                        .map(Walls.Web::limitMm)
                        .orElseGet(() -> Walls.limitMm(handle, Zone.BODY));
        stations = Stations.of(drawn, zones, holes, DEEPEST * spreads.depthMm());
        Moments solid = drawn.moments();
        double left = figures.wood().finishedMm3();
        removed = solid.volume() - left;
        removedMoment = solid.firstX() - left * figures.wood().centroidX();
        gramsPerMm3 = share(Share.Part.WOOD).massG() / left;
        AdhesiveNeed adhesive = figures.adhesive();
        double glue = brief.adhesive().densityKgM3().value() * 1e-6;
        filling =
                new double[] {adhesive.tangMm3() > 0 ? glue : 0, adhesive.capMm3() > 0 ? glue : 0};
    }

    private Share share(Share.Part part) {
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
        if (figure < firstBore) {
            return Input.TURNING;
        }
        int bore = figure - firstBore;
        if (bore < MOST_BORES * BORE_FIGURES) {
            return switch (bore % BORE_FIGURES) {
                case 0, 1 -> Input.MOUTH;
                case DEPTH -> Input.DEPTH;
                case WIDTH -> Input.OVERSIZE;
                default -> Input.DRIFT;
            };
        }
        return bore == MOST_BORES * BORE_FIGURES ? Input.DENSITY : Input.RECKONED;
    }

    /** Whether an input scatters at all in this handle. */
    boolean scatters(Input input) {
        return switch (input) {
            case FERRULE -> ferruleOutside > 0 || ferruleBore > 0;
            case CAP -> capHead > 0;
            case TURNING -> spreads.turnedMm() > 0;
            case TENON -> spreads.tenonMm() > 0;
            case MOUTH -> mouth > 0;
            case DRIFT -> drift > 0;
            case DEPTH -> spreads.depthMm() > 0;
            case OVERSIZE -> spreads.oversizeMm() > 0;
            case DENSITY -> densityShare > 0;
            case RECKONED ->
                    spreads.reckoned() > 0
                            && figures.balance().shares().stream().anyMatch(Share::massEstimated);
        };
    }

    List<Zone> zones() {
        return zones;
    }

    double limitMm(int zone) {
        return limits[zone];
    }

    /** Whether the wood beyond the tang's bore ends at another bore. */
    boolean isWeb() {
        return holes.size() > 1;
    }

    /** Least wood that is wanted there, mm. */
    double endLimitMm() {
        return endLimit;
    }

    Stations stations() {
        return stations;
    }

    /** One handle: its walls at the stations, and what follows. */
    final class Made {
        final double[] wall = new double[stations.size()];
        final double[] zoneWall = new double[limits.length];
        double leastMargin;
        double least;
        double end;
        double mass;
        double balance;
        private final double[] deeper = new double[holes.size()];
        private final double[] wider = new double[holes.size()];

        /** Makes one from normal figures of deviation 1. */
        void make(double[] normal) {
            for (int h = 0; h < deeper.length; h++) {
                int at = firstBore + h * BORE_FIGURES;
                deeper[h] = spreads.depthMm() * normal[at + DEPTH];
                wider[h] = spreads.oversizeMm() * Math.abs(normal[at + WIDTH]) / 2;
            }
            Outline outline = outline(normal);
            walls(outline, normal);
            end(outline);
            weigh(outline, normal);
        }

        private void walls(Outline outline, double[] normal) {
            Arrays.fill(zoneWall, Double.POSITIVE_INFINITY);
            List<Segment> segments = outline.segments();
            for (int s = 0; s < wall.length; s++) {
                int h = stations.hole()[s];
                double z = stations.depth()[s];
                double bore = holes.get(h).radiusAt(z, deeper[h], wider[h]);
                double r = segments.get(stations.segment()[s]).r(stations.x()[s]);
                wall[s] = r - Math.max(0, bore) - off(h, z, normal);
                if (bore >= 0) {
                    take(stations.zone()[s], wall[s]);
                }
            }
            for (int h = 0; h < holes.size(); h++) {
                corners(h, outline, normal);
            }
            leastMargin = Double.POSITIVE_INFINITY;
            least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < limits.length; k++) {
                leastMargin = Math.min(leastMargin, zoneWall[k] - limits[k]);
                least = Math.min(least, zoneWall[k]);
            }
        }

        /** The edge's corners move with the depth, away from the stations. */
        private void corners(int h, Outline outline, double[] normal) {
            Hole hole = holes.get(h);
            for (int c = 0; c < hole.corners(); c++) {
                double z = hole.cornerDepth(c) + deeper[h];
                double x = hole.bore().xAt(z);
                int zone = zones.indexOf(hole.zoneAt(x));
                boolean isUnderTenon = hole.bore().end() == Bore.End.BUTT && x <= 0;
                if (z > 0
                        && zone >= 0
                        && !isUnderTenon
                        && x > outline.startX()
                        && x < outline.endX()) {
                    double bore = hole.radiusAt(z, deeper[h], wider[h]);
                    take(zone, outline.segmentAt(x).r(x) - bore - off(h, z, normal));
                }
            }
        }

        private void take(int zone, double mm) {
            zoneWall[zone] = Math.min(zoneWall[zone], mm);
        }

        private double off(int h, double z, double[] normal) {
            int at = firstBore + h * BORE_FIGURES;
            double across = mouth * normal[at] + drift * normal[at + 2] * z;
            double along = mouth * normal[at + 1] + drift * normal[at + 3] * z;
            return Math.sqrt(across * across + along * along);
        }

        private void end(Outline outline) {
            double beyond = outline.endX();
            if (holes.size() > 1) {
                beyond = holes.get(1).bore().xAt(holes.get(1).tipDepth(deeper[1], wider[1]));
            }
            end = beyond - holes.get(0).bore().xAt(holes.get(0).tipDepth(deeper[0], wider[0]));
        }

        private void weigh(Outline outline, double[] normal) {
            Moments solid = outline.moments();
            double volume = solid.volume() - removed;
            double moment = solid.firstX() - removedMoment;
            double filled = 0;
            double filledMoment = 0;
            for (int h = 0; h < deeper.length; h++) {
                double more = holes.get(h).moreVolume(deeper[h], wider[h]);
                double moreMoment = holes.get(h).moreMoment(deeper[h], wider[h]);
                volume -= more;
                moment -= moreMoment;
                filled += filling[h] * more;
                filledMoment += filling[h] * moreMoment;
            }
            double density = gramsPerMm3 * (1 + densityShare * normal[count - 2]);
            double reckoned = 1 + spreads.reckoned() * normal[count - 1];
            Balance drawnBalance = figures.balance();
            mass = density * volume + filled;
            double sum = density * moment + filledMoment;
            for (Share share : drawnBalance.shares()) {
                if (share.part() != Share.Part.WOOD) {
                    double grams = share.massG() * (share.massEstimated() ? reckoned : 1);
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
            double r = node.radiusMm() + spreads.turnedMm() * normal[FIRST_NODE + i] / 2;
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
                            + (ferruleBore * normal[BORE] + spreads.tenonMm() * normal[TENON]) / 2;
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
}
