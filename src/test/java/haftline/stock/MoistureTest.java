package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistureTest {
    /** Wood Handbook, FPL-GTR-190, Table 4-2: temperature F, relative humidity, moisture. */
    @ParameterizedTest
    @CsvSource({
        "70, 5, 1.3",
        "70, 10, 2.5",
        "70, 15, 3.5",
        "70, 20, 4.5",
        "70, 25, 5.4",
        "70, 30, 6.2",
        "70, 35, 6.9",
        "70, 40, 7.7",
        "70, 45, 8.5",
        "70, 50, 9.2",
        "70, 55, 10.1",
        "70, 60, 11.0",
        "70, 65, 12.0",
        "70, 70, 13.1",
        "70, 75, 14.4",
        "70, 80, 16.0",
        "70, 85, 17.9",
        "70, 90, 20.5",
        "70, 95, 23.9",
        "30, 30, 6.3",
        "50, 50, 9.5",
        "80, 65, 11.7",
        "100, 80, 15.1",
        "140, 50, 7.7",
        "180, 65, 8.6"
    })
    void emc_agreesWithTable4_2(double fahrenheit, double humidity, double moisture) {
        double celsius = (fahrenheit - 32) / 1.8;
        assertThat(Moisture.emcPercent(celsius, humidity)).isCloseTo(moisture, within(0.06));
    }

    @Test
    void emc_isNoughtInDryAirAndRisesWithHumidity() {
        assertThat(Moisture.emcPercent(20, 0)).isZero();
        for (int humidity = 0; humidity < 100; humidity++) {
            assertThat(Moisture.emcPercent(20, humidity + 1))
                    .isGreaterThan(Moisture.emcPercent(20, humidity));
        }
    }

    @Test
    void emc_refusesWhatTheTableDoesNotCover() {
        assertThatThrownBy(() -> Moisture.emcPercent(20, 101))
                .hasMessageContaining("relative humidity 101")
                .hasMessageContaining("0 to 100");
        assertThatThrownBy(() -> Moisture.emcPercent(Double.NaN, 50))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Moisture.emcPercent(-20, 50))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Equations 4-13 and 4-14 worked by hand: basic specific gravity, moisture, G, kg/m3. */
    @ParameterizedTest
    @CsvSource({
        "0.67, 6, 0.78092, 827.8",
        "0.67, 12, 0.74989, 839.9",
        "0.55, 6, 0.62259, 660.0",
        "0.55, 12, 0.60271, 675.0",
        "0.71, 6, 0.83581, 886.0",
        "0.71, 12, 0.80035, 896.4",
        "0.75, 6, 0.89180, 945.3",
        "0.75, 12, 0.85155, 953.7",
        "1.05, 6, 1.35066, 1431.7",
        "1.05, 12, 1.26043, 1411.7"
    })
    void density_followsFromBasicSpecificGravity(
            double basic, double moisture, double gravity, double kgM3) {
        assertThat(Moisture.specificGravityAt(basic, moisture))
                .isCloseTo(gravity, within(0.000005));
        assertThat(Moisture.densityKgM3(basic, moisture)).isCloseTo(kgM3, within(0.05));
    }

    /** Wood Handbook, chapter 4, as quoted in lectures: G 0.40 at 12 % is 448 kg/m3. */
    @Test
    void density_ofTheHandbookExample() {
        double basic = Moisture.basicSpecificGravity(448, 12);
        assertThat(Moisture.specificGravityAt(basic, 12)).isCloseTo(0.40, within(1e-12));
    }

    @Test
    void basicSpecificGravity_turnsDensityBack() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 1000; i++) {
            double basic = random.nextDouble(0.1, 1.2);
            double moisture = random.nextDouble(0, 30);
            double density = Moisture.densityKgM3(basic, moisture);
            assertThat(Moisture.basicSpecificGravity(density, moisture))
                    .isCloseTo(basic, within(1e-12));
        }
    }

    /** Equation 4-9 for white oak, tangential 10.5 %, at 8 %: 7.7 %. Equation 4-12: 26.5 Gb. */
    @Test
    void shrinkage_isLinearBelowFibreSaturation() {
        assertThat(Moisture.shrinkageAtPercent(10.5, 8)).isCloseTo(7.7, within(1e-12));
        assertThat(Moisture.shrinkageAtPercent(10.5, 30)).isZero();
        assertThat(Moisture.volumetricShrinkagePercent(0.5)).isCloseTo(13.25, within(1e-12));
    }

    /** Wood Handbook, chapter 13: a flat-grained white fir board of 232 mm from 8 to 11 %. */
    @Test
    void movement_ofTheHandbookExample() {
        Moisture.Movement swelling = Moisture.movement(232, 0.00245, 8, 11);
        assertThat(swelling.changeMm()).isCloseTo(1.705, within(0.0005));
        assertThat(swelling.holds()).isTrue();
        assertThat(Moisture.movement(232, 0.00245, 11, 8).changeMm())
                .isCloseTo(-1.705, within(0.0005));
    }

    @Test
    void movement_saysWhereTheEquationDoesNotHold() {
        assertThat(Moisture.movement(12, 0.00353, 12, 6).holds()).isTrue();
        assertThat(Moisture.movement(12, 0.00353, 12, 5.9).holds()).isFalse();
        assertThat(Moisture.movement(12, 0.00353, 14.1, 8).holds()).isFalse();
    }

    /** Tables 4-3 and 13-5: shrinkage and the coefficient that goes with it. */
    @ParameterizedTest
    @CsvSource({
        "9.9, 0.00353",
        "7.8, 0.00274",
        "7.1, 0.00248",
        "9.5, 0.00338",
        "3.7, 0.00126",
        "11.9, 0.00431"
    })
    void movementCoefficient_reproducesTable13_5(double shrinkage, double coefficient) {
        assertThat(Moisture.movementCoefficient(shrinkage)).isCloseTo(coefficient, within(5e-6));
    }
}
