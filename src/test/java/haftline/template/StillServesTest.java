package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import haftline.curve.StraightLine;
import haftline.measure.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tapers whose differences can be reckoned in the head. */
class StillServesTest {
    private static final double FERRULE = 12;

    /** A taper from the shoulder to the butt, with a station at either end. */
    private static Workpiece taper(
            double shoulder, double butt, double length, double ferruleMm, double tenon) {
        return new Workpiece(
                "taper",
                "B1",
                Outline.of(new StraightLine(0, shoulder / 2, length, butt / 2)),
                length,
                ferruleMm,
                14,
                tenon,
                11,
                List.of(
                        new GaugeStation("shoulder", 0, shoulder, GaugeStation.Kind.END),
                        new GaugeStation("seat", length, butt, GaugeStation.Kind.END)),
                false);
    }

    private static StillServes judged(StillServes.Kind kind, Workpiece now) {
        Workpiece cut = taper(14, 22, 80, FERRULE, 11.8);
        return StillServes.of(cut, now, GaugeRules.COMMON_PRACTICE, 0.2).stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSame_servesAllRound() {
        Workpiece same = taper(14, 22, 80, FERRULE, 11.8);
        assertThat(StillServes.of(same, same, GaugeRules.COMMON_PRACTICE, 0.2))
                .hasSize(5)
                .allSatisfy(
                        each -> {
                            assertThat(each.serves()).isTrue();
                            assertThat(each.offMm()).isZero();
                        });
    }

    @Test
    void aTenonOf030Less_wantsItsSlotsAnew_andNothingElse() {
        Workpiece now = taper(14, 22, 80, FERRULE, 11.5);
        StillServes slots = judged(StillServes.Kind.TENON_SLOTS, now);
        assertThat(slots.serves()).isFalse();
        assertThat(slots.why(Units.MM))
                .isEqualTo("the tenon differs by 0.30 mm, go and no-go allow 0.05 mm");
        for (StillServes.Kind kind : StillServes.Kind.values()) {
            assertThat(judged(kind, now).serves()).isEqualTo(kind != StillServes.Kind.TENON_SLOTS);
        }
    }

    /** Half a mm more at the butt: 0.25 on the radius there, over 0.2. */
    @Test
    void aFatterButt_wantsGaugeSlotsAndTemplateAnew() {
        Workpiece now = taper(14, 22.5, 80, FERRULE, 11.8);
        StillServes gauge = judged(StillServes.Kind.PROFILE_GAUGE, now);
        assertThat(gauge.serves()).isFalse();
        assertThat(gauge.why(Units.MM))
                .isEqualTo(
                        "the outline differs by 0.25 mm on the radius at 80.0 mm, limit 0.20 mm");
        assertThat(judged(StillServes.Kind.COPYING_TEMPLATE, now).serves()).isFalse();
        StillServes slots = judged(StillServes.Kind.SIZING_SLOTS, now);
        assertThat(slots.serves()).isFalse();
        assertThat(slots.why(Units.MM))
                .isEqualTo("the diameter differs by 0.50 mm at 80.0 mm, limit 0.20 mm");
        assertThat(judged(StillServes.Kind.STORY_ROD, now).serves()).isTrue();
    }

    /** 0.3 on the diameter is 0.15 on the radius: the gauge serves, the slot does not. */
    @Test
    void radiusAndDiameter_areNotMixed() {
        Workpiece now = taper(14, 22.3, 80, FERRULE, 11.8);
        assertThat(judged(StillServes.Kind.PROFILE_GAUGE, now).offMm())
                .isCloseTo(0.15, within(1e-9));
        assertThat(judged(StillServes.Kind.PROFILE_GAUGE, now).serves()).isTrue();
        assertThat(judged(StillServes.Kind.SIZING_SLOTS, now).serves()).isFalse();
    }

    /**
     * A ferrule 1 mm longer moves a gauge that bears on its face 1 mm towards the ferrule: on a
     * slope of 0.05 that is 0.05 on the radius, and the butt, whose wood is as long as before, is 1
     * mm out of its place. A template that is set to the shoulder knows nothing of it.
     */
    @Test
    void aLongerFerrule_movesTheGaugeThatBearsOnIt() {
        Workpiece now = taper(14, 22, 80, FERRULE + 1, 11.8);
        StillServes gauge = judged(StillServes.Kind.PROFILE_GAUGE, now);
        assertThat(gauge.serves()).isFalse();
        assertThat(gauge.cause()).isEqualTo(StillServes.Cause.END);
        assertThat(gauge.offMm()).isCloseTo(1, within(1e-9));
        assertThat(judged(StillServes.Kind.COPYING_TEMPLATE, now).offMm()).isZero();
        Workpiece cut = taper(14, 22, 80, FERRULE, 11.8);
        GaugeRules atShoulder =
                GaugeRules.COMMON_PRACTICE.withRegister(GaugeRules.Register.SHOULDER);
        assertThat(StillServes.of(cut, now, atShoulder, 0.2))
                .allSatisfy(each -> assertThat(each.serves()).isTrue());
    }

    /**
     * Wood 1 mm shorter behind a ferrule 1 mm longer: what bears on the face is off by the slope.
     */
    @Test
    void aLongerFerruleAndShorterWood_leaveTheButtWhereItWas() {
        Workpiece now = taper(14.1, 22, 79, FERRULE + 1, 11.8);
        StillServes gauge = judged(StillServes.Kind.PROFILE_GAUGE, now);
        assertThat(gauge.cause()).isEqualTo(StillServes.Cause.OUTLINE);
        assertThat(gauge.offMm()).isCloseTo(0, within(1e-9));
        assertThat(judged(StillServes.Kind.STORY_ROD, now).offMm()).isCloseTo(1, within(1e-9));
        assertThat(judged(StillServes.Kind.STORY_ROD, now).serves()).isFalse();
    }

    @Test
    void aStationThatTheRodLacks_isTold() {
        Workpiece now =
                new Workpiece(
                        "taper",
                        "B2",
                        Outline.of(new StraightLine(0, 7, 80, 11)),
                        80,
                        FERRULE,
                        14,
                        11.8,
                        11,
                        List.of(new GaugeStation("bead", 40, 18, GaugeStation.Kind.EXTREME)),
                        false);
        assertThat(judged(StillServes.Kind.STORY_ROD, now).serves()).isFalse();
        assertThat(judged(StillServes.Kind.SIZING_SLOTS, now).why(Units.MM))
                .isEqualTo("there is a station at 40.0 mm that it does not have");
    }

    @Test
    void aToleranceOfNothing_isRefused() {
        Workpiece same = taper(14, 22, 80, FERRULE, 11.8);
        assertThatThrownBy(() -> StillServes.of(same, same, GaugeRules.COMMON_PRACTICE, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance");
    }

    /** Whatever is compared, there is an answer, and the same piece serves itself. */
    @Test
    void randomHandles_areAllJudged() {
        haftline.handle.RandomHandles random = haftline.handle.RandomHandles.reckless(11);
        Workpiece before = null;
        for (int i = 0; i < 150; i++) {
            Workpiece work = Workpiece.of(random.next(), "B1", false);
            Workpiece other = before == null ? work : before;
            List<StillServes> judged = StillServes.of(other, work, GaugeRules.COMMON_PRACTICE, 0.2);
            assertThat(judged).as("seed 11 case %d", i).hasSize(5);
            assertThat(judged).allSatisfy(each -> assertThat(each.why(Units.INCH)).isNotBlank());
            assertThat(StillServes.of(work, work, GaugeRules.COMMON_PRACTICE, 0.2))
                    .as("seed 11 case %d", i)
                    .allMatch(StillServes::serves);
            before = work;
        }
    }

    @Test
    void aFerruleLongerThanTheWoodWas_leavesNothingToCompare() {
        StillServes gauge =
                judged(StillServes.Kind.PROFILE_GAUGE, taper(14, 22, 80, FERRULE + 85, 11.8));
        assertThat(gauge.serves()).isFalse();
        assertThat(gauge.offMm()).isCloseTo(85, within(1e-9));
    }
}
