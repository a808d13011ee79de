package haftline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Arc;
import haftline.drawing.Cubic;
import haftline.drawing.EllipseArc;
import haftline.drawing.Segment;
import haftline.drawing.Vertex;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RoundCubicsTest {
    private static final long SEED = 31;

    @Test
    void arcs_stayWithinTheToleranceAndKeepTheirEnds() {
        SplittableRandom random = new SplittableRandom(SEED);
        double worst = 0;
        for (int round = 0; round < 300; round++) {
            double radius = Math.exp(random.nextDouble(-1, 7));
            Arc arc =
                    Arc.of(
                            new Vertex(random.nextDouble(-99, 99), random.nextDouble(-99, 99)),
                            radius,
                            random.nextDouble(0, 360),
                            random.nextDouble(1, 350) * (random.nextBoolean() ? 1 : -1));
            List<Segment> cubics = RoundCubics.of(arc);
            assertThat(cubics.get(0).start()).isEqualTo(arc.start());
            assertThat(cubics.get(cubics.size() - 1).end()).isEqualTo(arc.end());
            for (Segment cubic : cubics) {
                for (int i = 0; i <= 20; i++) {
                    Vertex at = ((Cubic) cubic).at(i / 20.0);
                    double off = at.distanceMm(arc.centre()) - arc.radiusMm();
                    worst = Math.max(worst, Math.abs(off));
                }
            }
        }
        assertThat(worst).as("seed %d", SEED).isBetween(1e-5, RoundCubics.TOLERANCE_MM);
    }

    @Test
    void ellipses_stayWithinTheTolerance() {
        EllipseArc dome =
                new EllipseArc(new Vertex(0, 8), new Vertex(5, 0), new Vertex(0, 0), 5, 8, false);
        for (Segment cubic : RoundCubics.of(dome)) {
            for (int i = 0; i <= 50; i++) {
                Vertex at = ((Cubic) cubic).at(i / 50.0);
                // First-order distance: the implicit function over its gradient.
                double f = at.xMm() * at.xMm() / 25 + at.yMm() * at.yMm() / 64 - 1;
                double gradient = 2 * Math.hypot(at.xMm() / 25, at.yMm() / 64);
                assertThat(Math.abs(f / gradient)).isLessThan(RoundCubics.TOLERANCE_MM);
            }
        }
    }

    /** 2.7253e-4 is the known error of the quarter circle drawn with 4/3 (sqrt 2 - 1). */
    @Test
    void error_ofAQuarterCircle() {
        assertThat(RoundCubics.offMm(Math.PI / 2, 1)).isCloseTo(2.7253e-4, within(1e-7));
    }
}
