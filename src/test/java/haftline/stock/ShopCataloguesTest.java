package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopCataloguesTest {
    private static final Catalogues STARTER = CatalogueReader.starter();

    /** ANSUR II public data: n, mean, deviation, 5th, 50th and 95th percentile, mm. */
    @ParameterizedTest
    @CsvSource({
        "male-hand-length, 4082, 193.28, 9.95, 177, 193, 210",
        "male-hand-breadth, 4082, 88.26, 4.39, 81, 88, 96",
        "male-palm-length, 4082, 116.46, 6.23, 107, 116, 127",
        "male-hand-circumference, 4082, 212.28, 10.24, 195, 212, 230",
        "female-hand-length, 1986, 181.08, 10.06, 165, 180, 199",
        "female-hand-breadth, 1986, 78.15, 3.84, 72, 78, 85",
        "female-palm-length, 1986, 108.70, 5.94, 100, 108, 119",
        "female-hand-circumference, 1986, 186.55, 8.82, 173, 187, 202"
    })
    void hands_ofAnsur2(
            String key, int count, double mean, double deviation, double p5, double p50, double p95)
            throws CatalogueException {
        HandSize hand = STARTER.hands().find(key).orElseThrow();
        assertThat(hand.count()).isEqualTo(count);
        assertThat(hand.meanMm()).isCloseTo(mean, within(0.005));
        assertThat(hand.deviationMm()).isCloseTo(deviation, within(0.005));
        assertThat(hand.percentileMm(5)).isEqualTo(p5);
        assertThat(hand.percentileMm(50)).isEqualTo(p50);
        assertThat(hand.percentileMm(95)).isEqualTo(p95);
        assertThat(List.copyOf(hand.percentilesMm().values())).isSorted();
        assertThatThrownBy(() -> hand.percentileMm(33))
                .hasMessageContaining("[1, 5, 10, 25, 50, 75, 90, 95, 99]");
    }

    /** NIOSH 2004-164: 1 1/4 to 2 in for force, 1/4 to 1/2 in for precision. */
    @Test
    void grips_ofNiosh() throws CatalogueException {
        GripRule power = STARTER.grips().find("power-grip").orElseThrow();
        assertThat(power.least()).isEqualTo(1.25 * 25.4);
        assertThat(power.greatest()).isEqualTo(2 * 25.4);
        GripRule precision = STARTER.grips().find("precision-grip").orElseThrow();
        assertThat(precision.least()).isEqualTo(25.4 / 4);
        assertThat(precision.greatest()).isEqualTo(25.4 / 2);
    }

    /** Kong and Lowe 2005 with ANSUR II: 0.197 x 193 mm is 38.0 mm. */
    @Test
    void comfortableDiameter_fromTheHand() throws CatalogueException {
        GripRule comfort = STARTER.grips().find("comfort").orElseThrow();
        HandSize hand = STARTER.hands().find("male-hand-length").orElseThrow();
        assertThat(comfort.quantity()).isEqualTo(GripRule.Quantity.DIAMETER_PER_HAND_LENGTH);
        assertThat(comfort.least() * hand.percentileMm(50)).isCloseTo(38.02, within(0.005));
    }

    /** 6000 and 9000 in x rpm are 152,400 and 228,600 mm x rpm; 30 mm gives 5080 to 7620. */
    @Test
    void turnersSpeedRule() throws CatalogueException {
        SpeedRule rule = STARTER.speeds().find("turners-rule").orElseThrow();
        assertThat(rule.at(30).leastRpm()).isCloseTo(5080, within(1e-9));
        assertThat(rule.at(30).greatestRpm()).isCloseTo(7620, within(1e-9));
        assertThat(rule.at(25.4).leastRpm()).isCloseTo(6000, within(1e-9));
        assertThat(rule.source().basis()).isEqualTo(Basis.COMMON_PRACTICE);
        assertThatThrownBy(() -> rule.at(0)).hasMessageContaining("diameterMm 0:");
    }

    /** Callister, Gere and property compilations, kg/m3. */
    @ParameterizedTest
    @CsvSource({
        "stainless-304, 8000, PUBLISHED",
        "stainless-420, 7700, MEMORY",
        "carbon-steel, 7850, PUBLISHED",
        "brass, 8500, PUBLISHED",
        "copper, 8900, PUBLISHED",
        "aluminium, 2700, PUBLISHED",
        "zinc, 6700, MEMORY"
    })
    void metals_weigh(String key, double density, Basis basis) throws CatalogueException {
        Figure figure = STARTER.metals().find(key).orElseThrow().densityKgM3();
        assertThat(figure.value()).isEqualTo(density);
        assertThat(figure.basis()).isEqualTo(basis);
    }

    /** Callister, Appendix B: PMMA 1190 kg/m3, 2.24 to 3.24 GPa, 48.3 to 72.4 MPa. */
    @Test
    void acrylic_takesTheLowerEnds() throws CatalogueException {
        Plastic acrylic = STARTER.plastics().find("acrylic").orElseThrow();
        assertThat(acrylic.densityKgM3(12)).isEqualTo(1190);
        assertThat(acrylic.densityKgM3(0)).isEqualTo(1190);
        assertThat(acrylic.modulusMPa().orElseThrow().value()).isEqualTo(2240);
        assertThat(acrylic.tensileStrengthMPa().orElseThrow().value()).isEqualTo(48.3);
        assertThat(acrylic.isFibrous()).isFalse();
    }

    @Test
    void everyPlasticAndAdhesive_carriesACaution() throws CatalogueException {
        for (Plastic plastic : STARTER.plastics().entries()) {
            assertThat(plastic.cautions()).as(plastic.key()).isNotEmpty();
        }
        for (Adhesive adhesive : STARTER.adhesives().entries()) {
            assertThat(adhesive.caution().text()).as(adhesive.key()).isNotBlank();
        }
    }

    @Test
    void gapsOfAdhesives_rise() throws CatalogueException {
        for (Adhesive adhesive : STARTER.adhesives().entries()) {
            double least = adhesive.gapLeastMm().orElseThrow().value();
            double best = adhesive.gapBestMm().orElseThrow().value();
            double limit = adhesive.gapLimitMm().orElseThrow().value();
            assertThat(least).as(adhesive.key()).isLessThan(best);
            assertThat(best).as(adhesive.key()).isLessThan(limit);
        }
    }

    /** Wood Handbook, Table 4-2, by Equation 4-5: heated winter air is near 6 %. */
    @Test
    void climates_giveAWoodMoisture() throws CatalogueException {
        assertThat(STARTER.climates().find("kitchen-winter").orElseThrow().woodMoisturePercent())
                .isCloseTo(6.2, within(0.06));
        assertThat(STARTER.climates().find("kitchen").orElseThrow().woodMoisturePercent())
                .isCloseTo(9.2, within(0.06));
    }

    /** UK 3 and EU 2 mg/m3 for hardwood disagree: both are named. */
    @Test
    void dustLimits_nameBothAuthorities() throws CatalogueException {
        assertThat(limit("uk-hardwood")).isEqualTo(3);
        assertThat(limit("eu-hardwood")).isEqualTo(2);
        assertThat(limit("uk-softwood")).isEqualTo(5);
    }

    private static double limit(String key) throws CatalogueException {
        return STARTER.dustLimits().find(key).orElseThrow().limitMgM3().orElseThrow().value();
    }
}
