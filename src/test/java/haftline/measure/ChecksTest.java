package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class ChecksTest {
    @Test
    void letsTheEndsOfARangePass() {
        assertThat(Checks.within("ratio", 2, 2, 3)).isEqualTo(2);
        assertThat(Checks.withinMm("kerf", 2, 0, 2)).isEqualTo(2);
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
}
