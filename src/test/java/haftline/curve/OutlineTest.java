package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {
    /** Tenon, shoulder step, cone, dome. */
    private final Outline handle =
            Outline.of(
                    StraightLine.level(-11.5, 0, 8),
                    new StraightLine(0, 10, 60, 14),
                    new GraphCubic(60, 90, 14, 0, 12, -0.1),
                    new EllipseQuarter(90, 0, 6, 12, 90, 96, true));

    @Test
    void atAStep_bothSidesAreKnown() {
        assertThat(handle.rBefore(0)).isEqualTo(8);
        assertThat(handle.rAfter(0)).isEqualTo(10);
        assertThat(handle.r(0)).isEqualTo(8);
        assertThat(handle.rBefore(-11.5)).isEqualTo(8);
        assertThat(handle.rAfter(96)).isZero();
        assertThat(handle.segmentAt(60)).isInstanceOf(GraphCubic.class);
        assertThat(handle.indexAt(-11.5)).isZero();
        assertThat(handle.indexAt(96)).isEqualTo(3);
    }

    @Test
    void aStretchThatBeginsAtAStep_seesOnlyItsOwnSide() {
        assertThat(handle.leastAbove(4, 0, 0, 50)).isEqualTo(new Gap(0, 6));
        assertThat(handle.leastAbove(4, 0, -5, 50)).isEqualTo(new Gap(-5, 4));
        assertThat(handle.leastAbove(4, 0, -5, 0)).isEqualTo(new Gap(-5, 4));
        assertThat(handle.greatestAbove(4, 0, -5, 0).height()).isEqualTo(4);
        assertThat(handle.leastAbove(4, 0, -50, 0).x()).isEqualTo(-11.5);
    }

    @Test
    void joints_tellStepBendAndJump() {
        List<Joint> joints = handle.joints();
        assertThat(joints).hasSize(3);
        assertThat(joints.get(0).step()).isEqualTo(2);
        assertThat(joints.get(1).step()).isZero();
        assertThat(joints.get(1).bendDegrees())
                .isCloseTo(-Math.toDegrees(Math.atan(4.0 / 60)), within(1e-12));
        assertThat(joints.get(2).bendDegrees())
                .isCloseTo(Math.toDegrees(Math.atan(0.1)), within(1e-12));
        assertThat(joints.get(2).curvatureAfter()).isCloseTo(-12.0 / 36, within(1e-12));
    }

    @Test
    void extremes_areTheSegmentsExtremes() {
        assertThat(handle.greatest()).isEqualTo(new Extreme(60, 14));
        assertThat(handle.least()).isEqualTo(new Extreme(96, 0));
        assertThat(handle.least(-11.5, 60).r()).isEqualTo(8);
        assertThat(handle.steepest(-11.5, 90)).isCloseTo(0.1, within(1e-15));
        assertThat(handle.tightestConvex(90, 96).radius()).isCloseTo(3, within(1e-12));
        assertThat(handle.tightestConcave(-11.5, 60)).isEqualTo(BendRadius.NONE);
    }

    @Test
    void lengthAndArea_countTheStepFaces() {
        Outline stepped = Outline.of(StraightLine.level(0, 10, 5), StraightLine.level(10, 20, 8));
        assertThat(stepped.arcLength(1e-9)).isEqualTo(23);
        double area = 2 * Math.PI * (50 + 80) + Math.PI * (64 - 25);
        assertThat(stepped.surfaceArea(1e-9)).isCloseTo(area, within(1e-10));
    }

    @Test
    void aDetail_replacesItsStretchOnly() {
        List<Segment> vee =
                List.of(new StraightLine(29, 11.9, 30, 11), new StraightLine(30, 11, 31, 12));
        Outline cut = handle.replaced(29, 31, vee);
        assertThat(cut.segments()).hasSize(7);
        assertThat(cut.r(30)).isEqualTo(11);
        assertThat(cut.r(28)).isCloseTo(handle.r(28), within(1e-13));
        assertThat(cut.r(70)).isEqualTo(handle.r(70));
        assertThat(cut.least(10, 50).r()).isEqualTo(Math.min(11, handle.r(10)));
        assertThat(handle.replaced(-11.5, 96, handle.segments())).isEqualTo(handle);
        assertThatThrownBy(() -> handle.replaced(28, 31, vee))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("29");
    }

    @Test
    void gapsOverlapsAndNothing_areRefused() {
        StraightLine line = StraightLine.level(0, 10, 5);
        assertThatThrownBy(() -> new Outline(List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Outline.of(line, StraightLine.level(10.001, 20, 5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("10.001");
        assertThatThrownBy(() -> Outline.of(line, StraightLine.level(9.999, 20, 5)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> handle.r(97)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> handle.leastAbove(0, 0, 97, 99))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Outline.of(line).followedBy(Outline.of(StraightLine.level(10, 12, 3))).endX())
                .isEqualTo(12);
    }
}
