package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import haftline.stock.PressFit.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Solved problems of Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th edition. The
 * equations hold in any consistent units: psi and inches stand in for MPa and mm here.
 */
class PressFitTest {
    private static final Material STEEL = new Material(207_000, 0.292);

    /** Problem 3-68: one material, so that its Poisson's ratio drops out. */
    @Test
    void solidShaftInCollar_problem3_68() {
        Material steel = new Material(30, 0.292);
        PressFit fit = PressFit.ofRadii(0, 0.5, 1, 0.001, steel, steel);
        assertThat(fit.pressureMPa() * 1e6).isCloseTo(22500, withPercentage(0.1));
        assertThat(fit.hoopOuterMPa() * 1e6).isCloseTo(37500, withPercentage(0.1));
        assertThat(fit.hoopInnerMPa() * 1e6).isCloseTo(-22500, withPercentage(0.1));
    }

    /** Problem 3-69: steel shaft, cast-iron collar. Moduli in millions of psi. */
    @Test
    void steelInCastIron_problem3_69() {
        Material steel = new Material(30, 0.292);
        Material iron = new Material(14.5, 0.211);
        PressFit fit = PressFit.ofRadii(0, 0.5, 1, 0.001, iron, steel);
        assertThat(fit.pressureMPa() * 1e6).isCloseTo(13064, withPercentage(0.1));
        assertThat(fit.hoopOuterMPa() * 1e6).isCloseTo(21770, withPercentage(0.1));
        assertThat(fit.hoopInnerMPa() * 1e6).isCloseTo(-13064, withPercentage(0.1));
    }

    /** Problem 3-70, greatest interference 0.0015 in. */
    @Test
    void greatestInterference_problem3_70() {
        Material steel = new Material(30, 0.292);
        PressFit fit = PressFit.ofRadii(0, 0.5, 1, 0.0015, steel, steel);
        assertThat(fit.pressureMPa() * 1e6).isCloseTo(33750, withPercentage(0.1));
    }

    /** Problem 5-35: tube 25/50 mm in a collar 50/75 mm, diametral interference 0.02 mm. */
    @Test
    void tubeInCollar_problem5_35_byDiametersAndByRadii() {
        PressFit byDiameters = PressFit.ofDiameters(25, 50, 75, 0.02, STEEL, STEEL);
        assertThat(byDiameters.pressureMPa()).isCloseTo(19.41, withPercentage(0.1));
        assertThat(byDiameters.hoopOuterMPa()).isCloseTo(50.47, withPercentage(0.1));
        assertThat(byDiameters.hoopInnerMPa()).isCloseTo(-32.35, withPercentage(0.1));

        PressFit byRadii = PressFit.ofRadii(12.5, 25, 37.5, 0.01, STEEL, STEEL);
        assertThat(byRadii.pressureMPa()).isCloseTo(byDiameters.pressureMPa(), within(1e-9));
    }

    /** Radial interference taken for diametral is wrong by the factor 2. */
    @Test
    void radialAndDiametral_differByTwo() {
        PressFit radial = PressFit.ofRadii(0, 10, 20, 0.01, STEEL, STEEL);
        PressFit diametral = PressFit.ofDiameters(0, 20, 40, 0.01, STEEL, STEEL);
        assertThat(radial.pressureMPa()).isCloseTo(2 * diametral.pressureMPa(), within(1e-9));
    }

    /** Lame's ratio at the bore by arithmetic: outside and bore diameter, hoop per pressure. */
    @ParameterizedTest
    @CsvSource({"25, 8, 1.2282", "25, 12, 1.5988", "30, 10, 1.25", "20, 12, 2.125"})
    void wallRatio_byHand(double outside, double bore, double ratio) {
        assertThat(PressFit.wallRatio(bore / 2, outside / 2)).isCloseTo(ratio, within(0.00005));
    }

    @Test
    void impossibleInput_isRefusedByName() {
        assertThatThrownBy(() -> PressFit.ofRadii(0, 5, 5, 0.01, STEEL, STEEL))
                .hasMessageContaining("0 <= inner < fit < outer");
        assertThatThrownBy(() -> PressFit.ofRadii(0, 5, 8, -0.01, STEEL, STEEL))
                .hasMessageContaining("radialInterferenceMm -0.01");
        assertThatThrownBy(() -> new Material(0, 0.3)).hasMessageContaining("modulusMPa");
        assertThatThrownBy(() -> new Material(1000, Double.NaN)).hasMessageContaining("poisson");
    }
}
