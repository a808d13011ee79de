package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.CircularArc;
import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.curve.StraightLine;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CopyingTemplateTest {
    private static final long SEED = 4_09_03;
    private static final double LIMIT = 0.02;

    @ParameterizedTest
    @CsvSource({"0, 1.500", "30, 1.732", "45, 2.121", "60, 3.000"})
    void shiftsATaperByFollowerLessNoseOverTheCosineOfItsSlope(double slopeDeg, double shift) {
        Copier copier = new Copier(1.5, 3.0, 80, 1);
        assertThat(copier.radialShiftMm(slopeDeg)).isCloseTo(-shift, within(5e-4));
        double rise = 20 * Math.tan(Math.toRadians(slopeDeg));
        Outline taper = Outline.of(new StraightLine(0, 10, 20, 10 + rise));
        CopyingTemplate template = template(taper, copier);
        double drawn = template.edge().yAfter(10) - (10 + rise / 2);
        assertThat(drawn).isCloseTo(-1.5 / Math.cos(Math.toRadians(slopeDeg)), within(1e-9));
        assertThat(template.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"35, 70.5, 65.5", "55, 60.5, 55.5", "60, 58, 53", "80, 48, 43", "90, 43, 38"})
    void limitsTheSlopeByTheCuttersFlank(double included, double atTwo, double atSeven) {
        assertThat(Copier.steepestDeg(included, 2)).isEqualTo(atTwo);
        assertThat(Copier.steepestDeg(included, 7)).isEqualTo(atSeven);
    }

    @Test
    void leavesTheProfileAsItIsWhereFollowerAndNoseAreEqual() {
        Outline profile =
                Outline.of(
                        new StraightLine(0, 8, 30, 6),
                        new CircularArc(30, 6, 60, 11, 0.2),
                        new CircularArc(60, 11, 90, 7, -0.3));
        CopyingTemplate template = template(profile, new Copier(2, 2, 80, 1));
        for (double x = 0; x <= 90; x += 0.7) {
            assertThat(template.edge().yAfter(x)).isCloseTo(profile.r(x), within(1e-12));
        }
    }

    @Test
    void saysHowMuchWoodANoseLeavesInAVee() {
        Outline vee =
                Outline.of(
                        StraightLine.level(0, 20, 10),
                        new StraightLine(20, 10, 24, 6),
                        new StraightLine(24, 6, 28, 10),
                        StraightLine.level(28, 50, 10));
        List<TemplateFinding> findings = template(vee, new Copier(1.5, 1, 80, 1)).findings();
        assertThat(findings).hasSize(1);
        TemplateFinding left = findings.get(0);
        assertThat(left.kind()).isEqualTo(TemplateFinding.Kind.WOOD_LEFT_IN_HOLLOW);
        assertThat(left.atX()).isCloseTo(24, within(1e-6));
        assertThat(left.residualMm()).isCloseTo(1.5 * (Math.sqrt(2) - 1), within(1e-9));
        // The nose touches both flanks at 1.5 sin 45 from the bottom; the rest of the way out the
        // distance falls from there to the limit.
        double touch = 1.5 * Math.sin(Math.PI / 4);
        assertThat(left.fromX()).isBetween(24 - touch, 24 - 0.7 * touch);
        assertThat(left.toX()).isCloseTo(48 - left.fromX(), within(1e-6));
    }

    @Test
    void saysHowMuchALargeFollowerCutsOffARidge() {
        Outline ridge =
                Outline.of(
                        StraightLine.level(0, 20, 10),
                        new StraightLine(20, 10, 24, 14),
                        new StraightLine(24, 14, 28, 10),
                        StraightLine.level(28, 50, 10));
        List<TemplateFinding> findings = template(ridge, new Copier(1, 4, 80, 1)).findings();
        assertThat(findings)
                .filteredOn(f -> f.kind() == TemplateFinding.Kind.WOOD_CUT_AWAY)
                .hasSize(1)
                .allSatisfy(
                        f -> {
                            assertThat(f.gravity()).isEqualTo(haftline.findings.Gravity.STOP);
                            assertThat(f.atX()).isCloseTo(24, within(1e-6));
                            assertThat(f.residualMm())
                                    .isCloseTo(3 * (Math.sqrt(2) - 1), within(1e-9));
                            assertThat(f.limit()).isEqualTo(3);
                        });
    }

    @Test
    void easesASquareShoulderAndSaysWhatIsLeftToTheHand() {
        Outline step = Outline.of(StraightLine.level(0, 30, 8), StraightLine.level(30, 60, 12));
        CopyingTemplate template = template(step, new Copier(1, 1, 55, 1));
        assertThat(template.findings()).hasSize(1);
        TemplateFinding steep = template.findings().get(0);
        assertThat(steep.kind()).isEqualTo(TemplateFinding.Kind.TOO_STEEP_TO_COPY);
        assertThat(steep.figure()).isEqualTo(90);
        assertThat(steep.limit()).isEqualTo(55);
        double foot = 4 * Math.cos(Math.toRadians(55));
        assertThat(steep.residualMm()).isCloseTo(foot, within(0.02));
        assertThat(steep.toX()).isCloseTo(30, within(0.1));
        assertThat(steep.fromX()).isBetween(30 - 4 / Math.tan(Math.toRadians(55)) - 0.6, 30 - 2.0);
    }

    @Test
    void sweptSurfaceIsTheDesignedOneWhereNoFindingSaysOtherwise_randomProfiles() {
        SplittableRandom random = new SplittableRandom(SEED);
        Tally tally = new Tally();
        for (int i = 0; i < 200; i++) {
            Outline outline = RandomProfiles.any(random);
            double nose = random.nextDouble(0.5, 10);
            double follower = random.nextInt(4) == 0 ? nose : random.nextDouble(0.5, 10);
            double ratio = random.nextInt(5) == 0 ? 2 : 1;
            Copier copier = new Copier(nose, follower, random.nextDouble(40, 80), ratio);
            tally.roll(
                    template(outline, copier),
                    random,
                    "seed " + SEED + ", profile " + i + ", " + copier);
        }
        assertThat(tally.good).isGreaterThan(2_000);
        assertThat(tally.bad).isGreaterThan(500);
    }

    @Test
    void sweptSurfaceIsTheDesignedOneWhereNoFindingSaysOtherwise_starterShapes() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        Tally tally = new Tally();
        for (Workpiece work : StarterWork.everyShape()) {
            for (double[] tools :
                    new double[][] {
                        {0.5, 0.5}, {1.5, 3}, {3, 1.5}, {10, 10}, {0.5, 10}, {10, 0.5}
                    }) {
                Copier copier = new Copier(tools[0], tools[1], 55, 1);
                CopyingTemplate template = CopyingTemplate.of(work, copier, 12, 12, 0.01);
                assertThat(template.check().holds()).isTrue();
                tally.roll(template, random, work.name() + ", " + copier);
            }
        }
        assertThat(tally.good).isGreaterThan(1_500);
    }

    @Test
    void cardComesApartWithAFindingWhereAFollowerEatsItAway() {
        Outline thin = Outline.of(StraightLine.level(0, 60, 3));
        CopyingTemplate template = template(thin, new Copier(0.5, 9, 55, 1));
        Card card =
                new CopyingCard(true, 10, List.of(), 6, haftline.measure.Units.MM).card(template);
        assertThat(card.stopped()).isTrue();
        assertThat(card.findings())
                .extracting(TemplateFinding::kind)
                .contains(TemplateFinding.Kind.TEMPLATE_IN_PARTS);
        assertThat(Flattened.areValid(List.of(card.outline()))).isTrue();
    }

    @Test
    void runsStraightAndTangentPastItsEndLines() {
        Outline cone = Outline.of(new StraightLine(0, 8, 50, 12));
        CopyingTemplate template = template(cone, new Copier(2, 2, 60, 1));
        assertThat(template.edge().startX()).isEqualTo(-12);
        assertThat(template.edge().endX()).isEqualTo(62);
        assertThat(template.edge().yAfter(-12)).isCloseTo(8 - 12 * 0.08, within(1e-9));
        assertThat(template.edge().yBefore(62)).isCloseTo(12 + 12 * 0.08, within(1e-9));
    }

    @Test
    void saysWhereAHoleBreaksOut() {
        CopyingTemplate template =
                template(Outline.of(StraightLine.level(0, 60, 8)), new Copier(1, 1, 55, 1));
        CopyingCard good =
                new CopyingCard(
                        false,
                        28,
                        List.of(new MountingHole(MountingHole.End.SEAT, 40, -10, 6)),
                        6,
                        haftline.measure.Units.MM);
        assertThat(good.card(template).findings()).isEmpty();
        assertThat(good.card(template).box().maxX()).isEqualTo(60 + 40 + 3 + 6);
        CopyingCard bad =
                new CopyingCard(
                        false,
                        28,
                        List.of(new MountingHole(MountingHole.End.SEAT, 5, -27, 6)),
                        6,
                        haftline.measure.Units.MM);
        assertThat(bad.card(template).findings())
                .extracting(TemplateFinding::kind)
                .containsExactly(TemplateFinding.Kind.HOLE_OUTSIDE_CARD);
    }

    /** Counts what was held against the simulation. */
    static final class Tally {
        /** What chords, steps and the fit's far side may add, mm. */
        private static final double ROUNDING = 2e-3;

        int good;
        int bad;
        double worst;

        void roll(CopyingTemplate template, SplittableRandom random, String what) {
            RolledFollower rolled = new RolledFollower(template);
            Outline body = template.work().body().part(0, template.work().seatX());
            for (int k = 0; k < 60; k++) {
                double x = random.nextDouble(body.startX(), body.endX());
                boolean told =
                        template.findings().stream().anyMatch(f -> x >= f.fromX() && x <= f.toX());
                double clearance = rolled.clearance(new Spot(x, body.r(x)));
                String where = what + " at x " + x;
                if (!told) {
                    good++;
                    worst = Math.max(worst, Math.abs(clearance));
                    assertThat(clearance).as(where).isCloseTo(0, within(LIMIT + ROUNDING));
                } else {
                    bad++;
                    double left = rolled.left(x);
                    double back = NearestDistance.ofPoint(body, x, left, true).distance();
                    assertThat(Math.max(Math.abs(clearance), back))
                            .as(where)
                            .isGreaterThan(LIMIT - ROUNDING);
                }
            }
        }

        @Override
        public String toString() {
            return good + " places as designed, worst " + worst + " mm; " + bad + " told of";
        }
    }

    static CopyingTemplate template(Outline outline, Copier copier) {
        return CopyingTemplate.of(work(outline), copier, 12, 12, 0.01);
    }

    static Workpiece work(Outline outline) {
        return new Workpiece(
                "test",
                "",
                outline,
                outline.endX(),
                12,
                2 * outline.rAfter(0) + 2,
                2,
                10,
                List.of(),
                false);
    }
}
