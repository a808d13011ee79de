package haftline.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.Units;
import org.junit.jupiter.api.Test;

class ShownTest {
    @Test
    void aNumberIsPartedNeitherFromItsUnitNorFromItsSign() {
        assertThat(Shown.unbroken("a diameter to \u00b1 0.14 mm"))
                .isEqualTo("a diameter to \u00b1\u00a00.14\u00a0mm");
    }

    @Test
    void whatIsLessThanNothingHasTheMinusSignProper() {
        Shown shown = new Shown(Units.MM);
        assertThat(shown.angle(-3)).isEqualTo("\u22123.0\u00b0");
        assertThat(shown.length(-5)).isEqualTo("\u22125.0 mm");
    }
}
