package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.Rules;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.stock.Moisture;
import haftline.stock.Wood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonsTest {
    private static final double ROOM_C = 21;

    /** The humidity at which wood comes to a moisture, by bisection of the handbook's equation. */
    private static double humidity(double percent) {
        double low = 0;
        double high = 95;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (Moisture.emcPercent(ROOM_C, middle) < percent) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static TestBrief at(double shop, double dry, double damp) {
        return new TestBrief()
                .climate(
                        new Rules.Climate(
                                ROOM_C, humidity(shop),
                                ROOM_C, humidity(dry),
                                ROOM_C, humidity(damp)))
                .choose(Choices.builder().tenonDiameterMm(12));
    }

    /**
     * A 12 mm tenon from 12 to 6 % moisture, tangentially and radially, as reckoned by hand from
     * Wood Handbook Table 13-5 (FPL-GTR-190): 12 x 6 x C.
     */
    @ParameterizedTest
    @CsvSource({
        "maple, 0.25, 0.12",
        "beech, 0.31, 0.14",
        "cherry, 0.18, 0.09",
        "walnut, 0.20, 0.14"
    })
    void tenonInWinter(String name, double tangential, double radial) {
        Wood wood =
                switch (name) {
                    case "maple" -> SampleStock.maple();
                    case "beech" -> SampleStock.beech();
                    case "cherry" -> SampleStock.cherry();
                    default -> SampleStock.walnut();
                };
        Seasons seasons = Seasons.of(at(12, 6.0001, 12).stock(wood).handle()).orElseThrow();
        assertThat(seasons.tenonShrinkMm()).isCloseTo(tangential, within(0.005));
        assertThat(seasons.ovalMm()).isCloseTo(tangential - radial, within(0.01));
        assertThat(seasons.reliable()).isTrue();
    }

    /** Ferrule bore 12.1 over a tenon of 12 that loses 12 x 0.00353 x 4. */
    @Test
    void gapUnderTheFerrule() {
        Seasons seasons =
                Seasons.of(at(12, 8, 12).stock(SampleStock.maple()).ferrule(12.1, 14, 12).handle())
                        .orElseThrow();
        assertThat(seasons.ferruleGapMm()).isCloseTo(0.1 + 12 * 0.00353 * 4, within(1e-9));
    }

    /** 30 mm of sugar maple from 6 to 12 %: 0.6354 mm by Equation 13-2. */
    @Test
    void swellInADampKitchen() {
        Seasons seasons =
                Seasons.of(
                                at(6.0001, 6.0001, 12)
                                        .stock(SampleStock.maple())
                                        .smooth(0.5, 30)
                                        .handle())
                        .orElseThrow();
        assertThat(seasons.swellGrowthMm()).isCloseTo(0.6354, within(5e-5));
        assertThat(seasons.tenonShrinkMm()).isCloseTo(0, within(1e-9));
    }

    /** Wood Handbook Table 4-2, 70 °F: 30 % 6.2, 65 % 12.0, 80 % 16.0; to the table's rounding. */
    @Test
    void moistureByTheHandbooksTable() {
        double c = (70 - 32) / 1.8;
        Seasons seasons =
                Seasons.of(new TestBrief().climate(new Rules.Climate(c, 65, c, 30, c, 80)).handle())
                        .orElseThrow();
        assertThat(seasons.shopPercent()).isCloseTo(12.0, within(0.06));
        assertThat(seasons.dryPercent()).isCloseTo(6.2, within(0.06));
        assertThat(seasons.dampPercent()).isCloseTo(16.0, within(0.06));
        // 16 % lies past the 14 % to which the coefficients hold.
        assertThat(seasons.reliable()).isFalse();
    }

    @Test
    void shopDrierThanTheRoom_growsTheTenon() {
        Seasons seasons = Seasons.of(at(7, 10, 12).handle()).orElseThrow();
        assertThat(seasons.tenonShrinkMm()).isNegative();
        assertThat(seasons.ovalMm()).isPositive();
    }

    @Test
    void plasticsAndUnknownWoods_giveNothing() {
        assertThat(Seasons.of(new TestBrief().stock(SampleStock.acrylic()).handle())).isEmpty();
        assertThat(Seasons.of(new TestBrief().stock(SampleStock.cocobolo()).handle())).isEmpty();
    }
}
