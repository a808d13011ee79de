package haftline.findings;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.measure.Units;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A remedy's numbers were tried before they were printed: apply each and look again. */
class RemediesTest {
    private static final long SEED = 20261125;
    private static final int HANDLES = 400;

    @Test
    void mendsWhatItSaysAndBringsNothingGraver_randomHandles() {
        RandomHandles random = RandomHandles.of(SEED);
        Map<Code, Integer> mended = new EnumMap<>(Code.class);
        for (int i = 0; i < HANDLES; i++) {
            Handle handle = random.next();
            Figures figures = Figures.of(handle);
            List<Finding> before = Findings.of(figures);
            for (Finding finding : before) {
                Optional<Remedy> remedy = Remedies.of(finding, figures, Units.MM);
                if (remedy.isPresent() && remedy.get().choices().isPresent()) {
                    check(handle, finding, before, remedy.get());
                    mended.merge(finding.code(), 1, Integer::sum);
                }
            }
        }
        assertThat(mended.keySet())
                .as("kinds of findings that were mended, seed %d", SEED)
                .contains(
                        Code.WALL_TOO_THIN,
                        Code.BORES_MEET,
                        Code.PRESSED_IN_PLASTIC,
                        Code.SPLIT_INDEX,
                        Code.TOO_SLENDER,
                        Code.TOO_THICK,
                        Code.BALANCE_OFF_TARGET);
    }

    private static void check(Handle handle, Finding finding, List<Finding> before, Remedy remedy) {
        Resolution resolution =
                Resolve.of(handle.brief().withChoices(remedy.choices().orElseThrow()));
        assertThat(resolution).as(remedy.change()).isInstanceOf(Resolution.Resolved.class);
        List<Finding> after = Findings.of(Figures.of(((Resolution.Resolved) resolution).handle()));
        assertThat(after)
                .as("%s, seed %d", remedy.change(), SEED)
                .noneMatch(now -> now.isAbout(finding));
        for (Finding now : after) {
            boolean told =
                    now.gravity() == Gravity.WARN
                            && (finding.gravity() == Gravity.STOP
                                    || now.code() == Code.BALANCE_OFF_TARGET
                                    || now.code() == Code.BLANK_TOO_SMALL)
                            && remedy.aside().contains("but then ");
            if (now.gravity() != Gravity.NOTE && !told) {
                assertThat(before)
                        .as("%s brought %s, seed %d", remedy.change(), now.code(), SEED)
                        .anyMatch(
                                then ->
                                        then.isAbout(now)
                                                && then.gravity().compareTo(now.gravity()) <= 0);
            }
        }
        assertThat(remedy.text()).doesNotContain("NaN").doesNotEndWith(".");
    }

    /**
     * Cap mass that brings P1's balance to a target, by hand: with all but the cap M at x, a cap at
     * c wants m = M (x - t) / (t - c). The worked example: 8.55 g for P1 in maple to balance at the
     * shoulder, 12 mm behind the ferrule's front face.
     */
    @Test
    void namesTheCapThatWouldBalance() {
        Rules usual = Rules.COMMON_PRACTICE;
        Brief p1 = P1.brief();
        Brief brief =
                new Brief(
                        p1.name(),
                        p1.kit(),
                        p1.metals(),
                        p1.stock(),
                        p1.adhesive(),
                        p1.shape(),
                        new Rules(
                                usual.lengths(),
                                usual.fits(),
                                usual.bores(),
                                usual.tenons(),
                                usual.walls(),
                                usual.wander(),
                                new Rules.Balance(12, 14),
                                usual.blanks(),
                                usual.climate(),
                                usual.copying(),
                                usual.readings(),
                                usual.spreads()),
                        p1.rack(),
                        p1.choices());
        Figures figures = Figures.of(P1.handle(brief));
        Finding off =
                Findings.of(figures).stream()
                        .filter(finding -> finding.code() == Code.BALANCE_OFF_TARGET)
                        .findFirst()
                        .orElseThrow();

        assertThat(Remedies.of(off, figures, Units.MM).orElseThrow().text())
                .containsPattern(
                        "a cap of 8\\.[567] g in place of 5\\.0 g: balances 12\\.[01] mm behind");
    }

    /** A tang pressed in plastics is bonded even where the wider bore then leaves a thin wall. */
    @Test
    void curesAStopAtTheCostOfAWarningAndSaysSo() {
        Brief brief =
                new TestBrief()
                        .stock(SampleStock.acrylic())
                        .smooth(0.2, 12.9)
                        .fit(Fit.PRESSED)
                        .brief();
        Figures figures = Figures.of(P1.handle(brief));
        Finding pressed =
                Findings.of(figures).stream()
                        .filter(finding -> finding.code() == Code.PRESSED_IN_PLASTIC)
                        .findFirst()
                        .orElseThrow();

        assertThat(Remedies.of(pressed, figures, Units.MM).orElseThrow().text())
                .startsWith("Bond it in a bore of ")
                .contains("; but then wall 3.4 mm on the body");
    }

    /** Where every cure of a wall moves the balance off its target, the cure says so. */
    @Test
    void tellsWhatTheCureOfAWallDoesToTheBalance() {
        int told = 0;
        RandomHandles random = RandomHandles.of(SEED);
        for (int i = 0; i < HANDLES; i++) {
            Figures figures = Figures.of(random.next());
            for (Finding finding : Findings.of(figures)) {
                Optional<Remedy> remedy = Remedies.of(finding, figures, Units.MM);
                if (remedy.isPresent() && remedy.get().aside().contains("but then it balances")) {
                    Brief changed =
                            figures.handle()
                                    .brief()
                                    .withChoices(remedy.get().choices().orElseThrow());
                    assertThat(Findings.of(Figures.of(P1.handle(changed))))
                            .anyMatch(now -> now.code() == Code.BALANCE_OFF_TARGET)
                            .noneMatch(now -> now.isAbout(finding));
                    told++;
                }
            }
        }
        assertThat(told).as("seed %d", SEED).isPositive();
    }
}
