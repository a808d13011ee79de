package haftline.findings;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.handle.RandomHandles;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
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
            if (now.gravity() != Gravity.NOTE) {
                assertThat(before)
                        .as("%s brought %s, seed %d", remedy.change(), now.code(), SEED)
                        .anyMatch(
                                then ->
                                        then.isAbout(now)
                                                && then.gravity().compareTo(now.gravity()) <= 0);
            }
        }
        assertThat(remedy.change()).doesNotContain("NaN").doesNotEndWith(".");
    }
}
