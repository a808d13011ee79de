package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

class ChecksTest {
    @Test
    void letsTheEndsOfARangePass() {
        assertThat(Checks.within("ratio", 2, 2, 3)).isEqualTo(2);
        assertThat(Checks.withinMm("kerf", 2, 0, 2)).isEqualTo(2);
    }

    /** Digits that reckoning brought in say nothing, but those that make a value too great do. */
    @Test
    void showsNoMoreDigitsThanTellTheValueFromItsLimits() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.withinMm("ferrule", 25.4 * 33.333333, 1, 200))
                .withMessage("ferrule 846.666658 mm: expected a length from 1 to 200 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.within("width", 0.1 + 0.2, 1, 2))
                .withMessage("width 0.3: expected a number from 1 to 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.within("width", 2.00000001, 1, 2))
                .withMessage("width 2.00000001: expected a number from 1 to 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.within("scale", 1e-9, 1e-6, 2))
                .withMessageStartingWith("scale 1e-9: ");
    }

    @Test
    void namesFieldValueUnitAndRange() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.within("ratio", 1.5, 2, 3))
                .withMessage("ratio 1.5: expected a number from 2 to 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.withinMm("kerf", 6.35, 0, 2))
                .withMessage("kerf 6.35 mm: expected a length from 0 to 2 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Checks.withinMm("kerf", Double.NaN, 0, 2))
                .withMessage("kerf NaN mm: expected a length from 0 to 2 mm");
    }

    @Test
    void tellsARangeInTheUnitInUseAndWhatItTellsCanBeTyped() {
        OutOfRange found =
                catchThrowableOfType(
                        OutOfRange.class, () -> Checks.withinMm("ferrule bore", 70, 0.1, 60));

        assertThat(found.words(Units.MM))
                .isEqualTo("ferrule bore 70 mm: expected a length from 0.1 to 60 mm");
        assertThat(found.words(Units.INCH))
                .isEqualTo("ferrule bore 2.7559 in: expected a length from 0.004 to 2.3622 in");
        assertThat(0.004 * 25.4).isGreaterThanOrEqualTo(0.1);
        assertThat(OutOfRange.range(14.95 / 3 * 2, 5000, Units.MM))
                .isEqualTo("from 9.967 to 5000 mm");
        assertThat(OutOfRange.range(20, 5000, Units.INCH)).isEqualTo("from 0.7875 to 196.8503 in");
    }

    @Test
    void whatIsNoLengthKeepsItsUnit() {
        OutOfRange mass =
                catchThrowableOfType(
                        OutOfRange.class, () -> Checks.withinGrams("blade mass", 9000, 0.1, 5000));
        OutOfRange slope =
                catchThrowableOfType(
                        OutOfRange.class, () -> Checks.withinDegrees("slope", 89, -85, 85));

        assertThat(mass.words(Units.INCH))
                .isEqualTo("blade mass 9000 g: expected a mass from 0.1 to 5000 g");
        assertThat(slope.words(Units.INCH))
                .isEqualTo("slope 89°: expected an angle from -85 to 85°");
    }
}
