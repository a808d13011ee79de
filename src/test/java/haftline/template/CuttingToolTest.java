package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import haftline.measure.Units;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CuttingToolTest {
    private static final long SEED = 4_09_05;

    @Test
    void laserMovesTheEdgeOutAndTheHoleInByHalfItsKerf() {
        Card plate = card(LoopOffsetTest.rectangle(0, 0, 60, 40), Loop.circle(new Spot(20, 20), 5));
        Card cut = new LaserBeam(0.2).prepare(plate);
        assertThat(cut.box().width()).isCloseTo(60.2, within(1e-12));
        assertThat(cut.box().height()).isCloseTo(40.2, within(1e-12));
        assertThat(cut.openings().get(0).box().width()).isCloseTo(4.8, within(1e-12));
        assertThat(cut.findings()).isEmpty();
    }

    @Test
    void laserLeavesEverySlotOfAGaugeItsTrueWidthAfterTheBurn() throws Exception {
        Workpiece work = StarterWork.demo().get(0);
        Card card =
                GaugeCard.of(work, List.of(GaugeCard.Gauge.values()), GaugeRules.COMMON_PRACTICE);
        Card path = new LaserBeam(0.3).prepare(card);
        LoopOffset burnt = path.outline().offset(-0.15);
        assertThat(burnt.isSingle()).isTrue();
        // What the beam leaves is the card again, but for its sharp inside corners, which stay
        // rounded by the beam's own radius; the point of a notch the most.
        for (Stroke stroke : burnt.single().strokes()) {
            double off = card.outline().distance(stroke.at(0.5));
            assertThat(off).isLessThan(stroke.length() > 0.5 ? 0.01 : 0.1501);
        }
        assertThat(burnt.single().area()).isCloseTo(card.outline().area(), within(0.2));
        assertThat(path.findings()).isEmpty();
    }

    @Test
    void laserSaysWhereANotchIsNarrowerThanItsKerf() {
        Loop slit =
                LoopOffsetTest.loop(
                        0, 0, 60, 0, 60, 40, 30.1, 40, 30.1, 20, 29.9, 20, 29.9, 40, 0, 40);
        Card cut = new LaserBeam(0.3).prepare(card(slit));
        assertThat(cut.box().height()).isCloseTo(40.3, within(1e-9));
        Card cutting = new LaserBeam(0.1).prepare(card(slit));
        assertThat(cutting.findings()).isEmpty();
    }

    @Test
    void routerRoundsAnInsideCornerByItsRadius() {
        Loop ell = LoopOffsetTest.loop(0, 0, 60, 0, 60, 20, 20, 20, 20, 40, 0, 40);
        RouterBit bit = new RouterBit(6, false);
        Card cut = bit.prepare(card(ell));
        assertThat(cut.outline()).isEqualTo(ell);
        assertThat(cut.findings()).hasSize(1);
        TemplateFinding corner = cut.findings().get(0);
        assertThat(corner.kind()).isEqualTo(TemplateFinding.Kind.CORNER_ROUNDED_BY_BIT);
        assertThat(corner.atX()).isCloseTo(20, within(1e-9));
        assertThat(corner.residualMm()).isCloseTo(3 * (Math.sqrt(2) - 1), within(1e-9));
        double left = bit.asCut(ell).area() - ell.area();
        assertThat(left).isCloseTo(9 * (1 - Math.PI / 4), within(1e-9));
    }

    @Test
    void routerOpensTheCornerWhereReliefIsAllowed() {
        Loop ell = LoopOffsetTest.loop(0, 0, 60, 0, 60, 20, 20, 20, 20, 40, 0, 40);
        RouterBit bit = new RouterBit(6, true);
        Card cut = bit.prepare(card(ell));
        assertThat(cut.findings()).isEmpty();
        // The round passes through the corner itself and the bit can follow it.
        assertThat(cut.outline().distance(new Spot(20, 20))).isLessThan(1e-12);
        assertThat(cut.outline().area()).isLessThan(ell.area());
        assertThat(bit.asCut(cut.outline()).area()).isCloseTo(cut.outline().area(), within(1e-6));
    }

    @Test
    void routerSaysWhatItCannotEnter() {
        Loop slotted =
                LoopOffsetTest.loop(0, 0, 60, 0, 60, 40, 32, 40, 32, 20, 28, 20, 28, 40, 0, 40);
        Card cut = new RouterBit(6, false).prepare(card(slotted, Loop.circle(new Spot(10, 10), 5)));
        assertThat(cut.findings())
                .extracting(TemplateFinding::kind)
                .contains(TemplateFinding.Kind.NARROWER_THAN_TOOL);
        // One word for the hole at 10 and the slot from 28 to 32.
        assertThat(cut.findings())
                .filteredOn(f -> f.kind() == TemplateFinding.Kind.NARROWER_THAN_TOOL)
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.fromX()).isEqualTo(10);
                            assertThat(f.toX()).isEqualTo(32);
                            assertThat(f.message(Units.MM))
                                    .startsWith("Slots, notches or holes from 10 to 32 mm");
                        });
        Card drilled =
                new RouterBit(5, false)
                        .prepare(
                                card(
                                        LoopOffsetTest.rectangle(0, 0, 60, 40),
                                        Loop.circle(new Spot(10, 10), 5)));
        assertThat(drilled.findings()).isEmpty();
    }

    @Test
    void routerEntersASlotAsWideAsItsBit() {
        Loop slotted =
                LoopOffsetTest.loop(0, 0, 60, 0, 60, 40, 33, 40, 33, 20, 27, 20, 27, 40, 0, 40);
        RouterBit bit = new RouterBit(6, false);
        Loop cut = bit.asCut(slotted);
        assertThat(cut.distance(new Spot(30, 20))).isLessThan(1e-6);
        assertThat(bit.prepare(card(slotted)).findings())
                .extracting(TemplateFinding::kind)
                .containsOnly(TemplateFinding.Kind.CORNER_ROUNDED_BY_BIT);
    }

    @Test
    void everyToolLeavesEveryCardWhole_randomWork() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 60; i++) {
            Outline outline = RandomProfiles.any(random);
            Workpiece work = CopyingTemplateTest.work(outline);
            CopyingTemplate template =
                    CopyingTemplate.of(
                            work,
                            new Copier(
                                    random.nextDouble(0.5, 10), random.nextDouble(0.5, 10), 60, 1),
                            12,
                            12,
                            0.01);
            List<Card> cards =
                    List.of(
                            GaugeCard.of(
                                    work,
                                    List.of(GaugeCard.Gauge.PROFILE),
                                    GaugeRules.COMMON_PRACTICE),
                            CopyingCard.COMMON_PRACTICE.card(template));
            for (Card card : cards) {
                for (CuttingTool tool :
                        List.of(
                                new LaserBeam(random.nextDouble(0.05, 0.3)),
                                new RouterBit(random.nextDouble(1, 6), random.nextBoolean()))) {
                    Card cut = tool.prepare(card);
                    String what = "seed " + SEED + ", work " + i + ", " + card.name() + ", " + tool;
                    assertThat(Flattened.areValid(List.of(cut.outline()))).as(what).isTrue();
                    assertThat(cut.findings())
                            .as(what)
                            .extracting(TemplateFinding::kind)
                            .doesNotContain(TemplateFinding.Kind.OFFSET_OFF);
                    assertThat(Math.abs(cut.outline().area() - card.outline().area()))
                            .as(what)
                            .isLessThan(0.16 * card.outline().length() + 60);
                }
            }
        }
    }

    @Test
    void handSawLeavesThePlainLine() {
        Card plate = card(LoopOffsetTest.rectangle(0, 0, 60, 40));
        assertThat(new HandSaw().prepare(plate)).isEqualTo(plate);
    }

    private static Card card(Loop outline, Loop... openings) {
        return new Card("plate", outline, List.of(openings), List.of(), List.of(), false);
    }
}
