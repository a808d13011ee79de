package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LengthTextTest {
    private static final LengthText MM = new LengthText(Units.MM);
    private static final LengthText INCH = new LengthText(Units.INCH);

    @Test
    void comparedSizesAreAsFineAsPartsAreMeasured() {
        assertThat(MM.fine(6.126)).isEqualTo("6.13 mm");
        assertThat(INCH.fine(25.4 * 0.24118)).isEqualTo("0.2412 in");
        assertThat(MM.fineStepMm()).isEqualTo(0.01);
        assertThat(INCH.fine(INCH.fineStepMm())).isEqualTo("0.0001 in");
    }

    /** A tenon of 12.88 mm is that on the page, the sheets, the drawings and in the tables. */
    @Test
    void sizesOfMetalAreToldInHundredths() {
        assertThat(MM.metal(12.88)).isEqualTo("12.88");
        assertThat(INCH.metal(12.88)).isEqualTo("0.507");
    }

    @Test
    void dimensionsTrailNoZeroInMillimetres() {
        assertThat(MM.dimension(104.04, 1)).isEqualTo("104");
        assertThat(MM.dimension(6.75, 2)).isEqualTo("6.75");
        assertThat(INCH.dimension(25.4, 1)).isEqualTo("1.000");
    }

    @Test
    void turnedSizesCarryTheirUnit() {
        assertThat(MM.withUnit(80.04)).isEqualTo("80.0 mm");
        assertThat(INCH.withUnit(25.4)).isEqualTo("1.000 in");
    }
}
