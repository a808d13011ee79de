package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.P1;
import haftline.handle.TestBrief;
import haftline.stock.CatalogueReader;
import haftline.stock.SpeedRule;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Turners' rule: diameter in inches times rpm lies between 6000 and 9000. */
class SpeedsTest {
    private static SpeedRule rule;

    @BeforeAll
    static void readRule() throws Exception {
        rule =
                CatalogueReader.starter().speeds().entries().stream()
                        .filter(r -> r.leastProduct() == 6000 && r.greatestProduct() == 9000)
                        .findFirst()
                        .orElseThrow();
    }

    /** 30 mm: 5080 to 7620 rpm, as tabled beforehand. */
    @Test
    void atTheFinishedDiameter() {
        Speeds speeds =
                Speeds.of(new TestBrief().smooth(0.5, 30).handle(), rule, OptionalDouble.empty());
        assertThat(speeds.finishedMm()).isEqualTo(30);
        assertThat(speeds.finished().leastRpm()).isCloseTo(5080, within(1e-9));
        assertThat(speeds.finished().greatestRpm()).isCloseTo(7620, within(1e-9));
    }

    /** 23 mm, 0.5 + 0.5 error and 0.5 clean-up a side want a square of 26 mm. */
    @Test
    void atTheBlanksCorners() {
        Speeds speeds = Speeds.of(P1.handle(P1.brief()), rule, OptionalDouble.empty());
        assertThat(speeds.blankMm()).isCloseTo(26 * Math.sqrt(2), within(1e-12));
        assertThat(speeds.blank().leastRpm())
                .isCloseTo(152_400 / (26 * Math.sqrt(2)), within(1e-9));
    }

    @Test
    void blankOnHand_counts() {
        Speeds speeds =
                Speeds.of(
                        new TestBrief().choose(Choices.builder().blankSideMm(40)).handle(),
                        rule,
                        OptionalDouble.empty());
        assertThat(speeds.blankMm()).isCloseTo(40 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void lathesOwnLimit_cutsBothEnds() {
        Speeds speeds = Speeds.of(P1.handle(P1.brief()), rule, OptionalDouble.of(3000));
        assertThat(speeds.finished()).isEqualTo(new SpeedRule.Range(3000, 3000));
        assertThat(speeds.blank()).isEqualTo(new SpeedRule.Range(3000, 3000));
    }

    @Test
    void caution_doesNotClaimALimit() {
        assertThat(Speeds.CAUTION).contains("no limit by an agency").contains("not a safety limit");
    }
}
