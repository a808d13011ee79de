package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineDeviationTest {
    private static Outline line(double x0, double r0, double x1, double r1) {
        return Outline.of(new StraightLine(x0, r0, x1, r1));
    }

    @Test
    void ofTheSame_isNone() {
        Outline one = line(0, 8, 60, 12);
        assertThat(OutlineDeviation.between(one, one, 0, 60).mm()).isZero();
    }

    @Test
    void ofTapers_isAtAnEnd() {
        OutlineDeviation off =
                OutlineDeviation.between(line(0, 8, 60, 12), line(0, 8, 60, 11), 0, 60);
        assertThat(off).isEqualTo(new OutlineDeviation(60, -1));
    }

    /** A cubic with level ends from r to r against its own chord: h^2/8 k for a parabola. */
    @Test
    void ofABowAndItsChord_isInTheMiddle() {
        // r = 10 + 0.1 x - x^2/600 from 0 to 60: a parabola, its top 1.5 over the chord at x = 30.
        Outline bow = Outline.of(new GraphCubic(0, 60, 10, 0.1, 10, -0.1));
        OutlineDeviation off = OutlineDeviation.between(line(0, 10, 60, 10), bow, 0, 60);
        assertThat(off.mm()).isCloseTo(1.5, within(1e-12));
        assertThat(off.atX()).isCloseTo(30, within(1e-9));
    }

    /** Two turns of opposite sign: x (30 - x) (60 - x) / 18000 is greatest at 30 -/+ 10 root 3. */
    @Test
    void ofAnS_isAtOneOfItsTurns() {
        double d = 30.0 * 60 / 18000;
        Outline s = Outline.of(new GraphCubic(0, 60, 10, d, 10, d));
        OutlineDeviation off = OutlineDeviation.between(line(0, 10, 60, 10), s, 0, 60);
        double x = 30 - 10 * Math.sqrt(3);
        assertThat(Math.abs(off.mm())).isCloseTo(x * (30 - x) * (60 - x) / 18000, within(1e-12));
        assertThat(Math.abs(off.atX() - 30)).isCloseTo(10 * Math.sqrt(3), within(1e-9));
    }

    /** An arc over its chord: its sagitta. */
    @Test
    void ofAnArc_isItsSagitta() {
        double bulge = 0.2;
        Outline arc = Outline.of(new CircularArc(0, 10, 40, 10, -bulge));
        OutlineDeviation off = OutlineDeviation.between(line(0, 10, 40, 10), arc, 0, 40);
        // The sagitta is bulge times half of the chord.
        assertThat(off.mm()).isCloseTo(bulge * 20, within(OutlineDeviation.NARROWED_MM));
        assertThat(off.atX()).isCloseTo(20, within(0.1));
    }

    /** A cove cut in a cylinder: its depth, though a coarse grid would step over it. */
    @Test
    void findsANarrowGroove() {
        Outline plain = line(0, 10, 100, 10);
        Outline grooved =
                plain.replaced(
                        41.03,
                        41.33,
                        List.of(
                                new StraightLine(41.03, 10, 41.18, 9.5),
                                new StraightLine(41.18, 9.5, 41.33, 10)));
        OutlineDeviation off = OutlineDeviation.between(plain, grooved, 0, 100);
        assertThat(off.mm()).isCloseTo(-0.5, within(1e-12));
        assertThat(off.atX()).isEqualTo(41.18);
    }

    @Test
    void aStep_countsOnBothSides() {
        Outline low = line(0, 10, 40, 10);
        Outline step = Outline.of(StraightLine.level(0, 20, 10), StraightLine.level(20, 40, 11));
        assertThat(OutlineDeviation.between(low, step, 0, 40).mm()).isEqualTo(1);
        assertThat(OutlineDeviation.between(low, step, 0, 20).mm()).isZero();
    }

    @Test
    void aStretchOutsideOfBoth_isRefused() {
        Outline one = line(0, 10, 40, 10);
        assertThatThrownBy(() -> OutlineDeviation.between(one, one, 0, 41))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> OutlineDeviation.between(one, one, 10, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Nothing that dense sampling finds is larger, and what is told is there. */
    @Test
    void randomChains_haveNoGreaterDeviation() {
        long seed = 5;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 200; i++) {
            Outline a = chain(random);
            Outline b = chain(random);
            double end = Math.min(a.endX(), b.endX());
            OutlineDeviation off = OutlineDeviation.between(a, b, 0, end);
            double sampled = 0;
            for (int k = 0; k <= 2000; k++) {
                double x = Math.min(end, end * k / 2000);
                sampled = Math.max(sampled, Math.abs(b.rAfter(x) - a.rAfter(x)));
            }
            assertThat(Math.abs(off.mm()))
                    .as("seed %d case %d", seed, i)
                    .isGreaterThanOrEqualTo(sampled - OutlineDeviation.NARROWED_MM);
            double before = b.rBefore(off.atX()) - a.rBefore(off.atX());
            double after = b.rAfter(off.atX()) - a.rAfter(off.atX());
            double mixed = b.rBefore(off.atX()) - a.rAfter(off.atX());
            assertThat(List.of(before, after, mixed))
                    .as("seed %d case %d", seed, i)
                    .anySatisfy(there -> assertThat(there).isCloseTo(off.mm(), within(1e-9)));
        }
    }

    private static Outline chain(RandomCurves random) {
        List<Segment> segments = new ArrayList<>();
        double x = 0;
        int count = random.count(1, 5);
        for (int i = 0; i < count; i++) {
            Segment next = random.segment(x);
            segments.add(next);
            x = next.endX();
        }
        return new Outline(segments);
    }
}
