package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Nearest distances against brute force at fine steps and against distances known on paper. */
class NearestDistanceTest {
    private static final int STEPS = 3000;

    @Test
    void points_matchBruteForceOnRandomSegments() {
        long seed = 51;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 3000; i++) {
            Segment s = random.segment(random.between(-10, 50));
            double px = random.between(s.startX() - 10, s.endX() + 10);
            double pr = random.coin() ? random.between(0, 6) : random.between(0, 60);
            Nearest found = NearestDistance.ofPoint(s, px, pr);
            compare("seed " + seed + " " + px + " " + pr + " " + s, found, s, px, pr, px, pr);
            if (found.outlineX() > s.startX() && found.outlineX() < s.endX()) {
                // The line to the foot stands square on the curve.
                double slope = s.slope(found.outlineX());
                double along = found.outlineX() - px + slope * (found.outlineR() - pr);
                double curving = 1 + slope * slope + Math.abs(s.curvature(found.outlineX())) * 60;
                assertThat(along / Math.sqrt(1 + slope * slope))
                        .as("seed " + seed + " " + px + " " + pr + " " + s)
                        .isCloseTo(0, within(1e-6 * curving));
            }
        }
    }

    @Test
    void edges_matchBruteForceOnRandomSegments() {
        long seed = 52;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 2000; i++) {
            Segment s = random.segment(random.between(-10, 50));
            double x0 = random.between(s.startX() - 10, s.endX() + 10);
            double r0 = random.between(0, 8);
            boolean bottom = i % 4 == 0;
            double x1 = bottom ? x0 : random.between(s.startX() - 10, s.endX() + 10);
            double r1 = i % 4 == 1 ? r0 : random.between(0, 8);
            Edge edge = new Edge(x0, r0, x1, r1);
            Nearest found = NearestDistance.ofEdge(s, edge);
            compare("seed " + seed + " " + edge + " " + s, found, s, x0, r0, x1, r1);
        }
    }

    /** The edge's side is exact, so one loop over the curve is enough. */
    private static void compare(
            String what, Nearest found, Segment s, double x0, double r0, double x1, double r1) {
        Edge edge = new Edge(x0, r0, x1, r1);
        double least = Double.POSITIVE_INFINITY;
        double mid = 0.5 * (s.startX() + s.endX());
        double half = 0.5 * (s.endX() - s.startX());
        double longest = 0;
        double fromX = s.startX();
        double fromR = s.r(fromX);
        for (int k = 0; k <= STEPS; k++) {
            double x = k == STEPS ? s.endX() : mid - half * Math.cos(Math.PI * k / STEPS);
            double r = s.r(x);
            double share = edge.footShare(x, r);
            least = Math.min(least, Math.hypot(x - edge.xAt(share), r - edge.rAt(share)));
            longest = Math.max(longest, Math.hypot(x - fromX, r - fromR));
            fromX = x;
            fromR = r;
        }
        // Never thicker than the truth; never thinner than the steps can tell.
        assertThat(found.distance()).as(what).isLessThanOrEqualTo(least + 1e-12);
        assertThat(found.distance()).as(what).isGreaterThan(least - longest);
        assertThat(found.outlineX()).as(what).isBetween(s.startX(), s.endX());
        double slope = Math.min(1e4, Math.abs(s.slope(found.outlineX())));
        assertThat(s.r(found.outlineX()))
                .as(what)
                .isCloseTo(found.outlineR(), within(1e-12 * (1 + slope * 10)));
        double share = edge.footShare(found.otherX(), found.otherR());
        assertThat(Math.hypot(edge.xAt(share) - found.otherX(), edge.rAt(share) - found.otherR()))
                .as(what)
                .isLessThan(1e-12);
        double apart =
                Math.hypot(found.outlineX() - found.otherX(), found.outlineR() - found.otherR());
        assertThat(found.distance()).as(what).isCloseTo(apart, within(1e-13));
    }

    @Test
    void outlines_findTheNearestOfTheirSegmentsAndFaces() {
        long seed = 53;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 2000; i++) {
            Outline outline = random.outline();
            double x0 = random.between(outline.startX() - 5, outline.endX() + 5);
            double x1 = i % 3 == 0 ? x0 : random.between(outline.startX() - 5, outline.endX() + 5);
            Edge edge = new Edge(x0, random.between(0, 8), x1, random.between(0, 8));
            double segments = Double.POSITIVE_INFINITY;
            for (Segment s : outline.segments()) {
                segments = Math.min(segments, NearestDistance.ofEdge(s, edge).distance());
            }
            String what = "seed " + seed + " " + edge + " " + outline;
            assertThat(NearestDistance.ofEdge(outline, edge, false).distance())
                    .as(what)
                    .isEqualTo(segments);
            double faces = segments;
            for (Joint joint : outline.joints()) {
                for (int k = 0; k <= 200; k++) {
                    double r = joint.rBefore() + joint.step() * k / 200;
                    double share = edge.footShare(joint.x(), r);
                    double gap = Math.hypot(joint.x() - edge.xAt(share), r - edge.rAt(share));
                    faces = Math.min(faces, gap);
                }
            }
            double found = NearestDistance.ofEdge(outline, edge, true).distance();
            assertThat(found).as(what).isLessThanOrEqualTo(faces + 1e-12);
            assertThat(found).as(what).isGreaterThan(faces - 0.07);
        }
    }

    @Test
    void knownDistances_areMet() {
        GraphCubic parabola = new GraphCubic(-2, 2, 4, -4, 4, 4);
        // From (0, p) to r = x^2 the distance is sqrt(p - 1/4) for p >= 1/2.
        assertThat(NearestDistance.ofPoint(parabola, 0, 2).distance())
                .isCloseTo(Math.sqrt(1.75), within(1e-15));
        assertThat(NearestDistance.ofPoint(parabola, 0, 0.5).distance())
                .isCloseTo(0.5, within(1e-9));
        CircularArc ball = CircularArc.about(20, 0, 10, 10, 30, true);
        assertThat(NearestDistance.ofPoint(ball, 20, 0).distance()).isCloseTo(10, within(1e-14));
        assertThat(NearestDistance.ofPoint(ball, 23, 4).distance()).isCloseTo(5, within(1e-14));
        assertThat(NearestDistance.ofPoint(ball, 36, 8).distance())
                .isCloseTo(Math.hypot(16, 8) - 10, within(1e-14));
        // A bore with its bottom edge near a dome: the corner is nearest.
        Outline butt = Outline.of(StraightLine.level(0, 20, 10), ball.part(20, 30));
        Nearest corner =
                NearestDistance.ofEdges(
                        butt, List.of(new Edge(0, 4, 26, 4), new Edge(26, 0, 26, 4)), false);
        assertThat(corner.distance()).isCloseTo(10 - Math.hypot(6, 4), within(1e-14));
        assertThat(corner.onOther()).isEqualTo(new Point(26, 4));
        assertThat(corner.onOutline().x()).isCloseTo(20 + 60 / Math.hypot(6, 4), within(1e-13));
        // A groove's wall is nearer than the groove's bottom.
        Outline groove =
                Outline.of(
                        StraightLine.level(0, 10, 12),
                        StraightLine.level(10, 12, 9),
                        StraightLine.level(12, 30, 12));
        Edge inside = new Edge(9.5, 10, 9.5, 10);
        assertThat(NearestDistance.ofEdge(groove, inside, true).distance()).isEqualTo(0.5);
        assertThat(NearestDistance.ofEdge(groove, inside, false).distance())
                .isCloseTo(Math.hypot(0.5, 1), within(1e-15));
        // Through the face.
        assertThat(NearestDistance.ofEdge(groove, new Edge(5, 10, 11, 10), true).distance())
                .isZero();
        assertThat(NearestDistance.ofPoint(groove, 5, 12, true).distance()).isZero();
    }

    @Test
    void shallowArcs_areAsExactAsTheLinesTheyNearlyAre() {
        CircularArc arc = new CircularArc(0, 10, 100, 12, 1e-12);
        StraightLine line = new StraightLine(0, 10, 100, 12);
        for (double x : new double[] {-5, 0, 33, 77, 100, 140}) {
            double a = NearestDistance.ofPoint(arc, x, 3).distance();
            assertThat(a).isCloseTo(NearestDistance.ofPoint(line, x, 3).distance(), within(1e-9));
        }
        assertThatThrownBy(() -> NearestDistance.ofEdges(Outline.of(line), List.of(), false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
