package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.TestBrief;
import haftline.handle.Use;
import haftline.shape.Butt;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueReader;
import haftline.stock.GripRule;
import haftline.stock.HandSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GripTest {
    private static Grip grip(Use use) {
        return Grip.of(new TestBrief().choose(Choices.builder().use(use)).handle());
    }

    @Test
    void worstDiametersOfTheWorkedHandle() {
        Grip grip = Grip.of(P1.handle(P1.brief()));
        assertThat(grip.greatestMm()).isEqualTo(23);
        assertThat(grip.greatestX()).isEqualTo(65);
        assertThat(grip.leastMm()).isEqualTo(13);
        assertThat(grip.lengthMm()).isEqualTo(120);
        assertThat(grip.use()).isEqualTo(Use.THREE_FINGERS);
    }

    @Test
    void buttForm_isNoGrip() {
        Handle domed =
                new TestBrief()
                        .choose(Choices.builder().buttMm(16))
                        .butt(new Butt.Domed(6))
                        .handle();
        assertThat(Grip.of(domed).leastMm()).isEqualTo(14);
        assertThat(Grip.of(domed).greatestMm()).isEqualTo(16);
    }

    /** DHHS (NIOSH) 2004-164: power 1 1/4 to 2 in, precision 1/4 to 1/2 in. */
    @Test
    void publishedBounds() throws Exception {
        assertThat(grip(Use.POWER).diameterHighMm()).isEqualTo(2 * 25.4);
        assertThat(grip(Use.FINGERTIPS).diameterLowMm()).isEqualTo(0.25 * 25.4);
        Catalogue<GripRule> rules = CatalogueReader.starter().grips();
        assertThat(rules.entries())
                .anyMatch(rule -> rule.greatest() == grip(Use.POWER).diameterHighMm())
                .anyMatch(rule -> rule.least() == grip(Use.FINGERTIPS).diameterLowMm());
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"POWER, 100, 130", "THREE_FINGERS, 75, 95"})
    void lengths(Use use, double low, double high) {
        assertThat(grip(use).lengthLowMm()).isEqualTo(low);
        assertThat(grip(use).lengthHighMm()).isEqualTo(high);
    }

    @ParameterizedTest
    @CsvSource({"POWER, 2004-164", "THREE_FINGERS, common practice", "FINGERTIPS, 2004-164"})
    void saysWhoseGuidanceItIs(Use use, String whose) {
        assertThat(grip(use).diameterRule()).contains(whose);
        assertThat(grip(use).lengthRule()).isEqualTo("common practice");
    }

    /** ANSUR II hand breadth: the share at a percentile is that percentile, to half a point. */
    @ParameterizedTest
    @CsvSource({"male-hand-breadth, 5", "male-hand-breadth, 95", "female-hand-breadth, 50"})
    void shareOfHands_ansur(String key, int percent) throws Exception {
        HandSize breadth = CatalogueReader.starter().hands().find(key).orElseThrow();
        double length = breadth.percentileMm(percent);
        Grip grip = Grip.of(P1.handle(P1.brief()));
        Grip asLong =
                new Grip(
                        grip.use(),
                        grip.greatestMm(),
                        grip.greatestX(),
                        grip.leastMm(),
                        length,
                        grip.diameterLowMm(),
                        grip.diameterHighMm(),
                        grip.lengthLowMm(),
                        grip.lengthHighMm(),
                        grip.diameterRule(),
                        grip.lengthRule());
        // The percentiles are whole millimetres: half of one is up to 5 points in the middle.
        assertThat(asLong.shareOfHands(breadth)).isCloseTo(percent / 100.0, within(0.05));
        assertThat(grip.shareOfHands(breadth)).isGreaterThan(0.999);
    }
}
