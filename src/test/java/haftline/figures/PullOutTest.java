package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.stock.CatalogueReader;
import haftline.stock.Wood;
import org.junit.jupiter.api.Test;

class PullOutTest {
    /** Black cherry, shear along the grain 11.7 MPa (Wood Handbook Table 5-3a). */
    @Test
    void bonded_isBondAreaTimesShear() throws Exception {
        Wood cherry = CatalogueReader.starter().woods().find("black-cherry").orElseThrow();
        Figures figures = Figures.of(new TestBrief().stock(cherry).fit(Fit.BONDED).handle());
        assertThat(PullOut.of(figures).orElseThrow().forceN())
                .isCloseTo(Math.PI * 6.1 * 44.5 * 11.7, within(1e-6));
    }

    /** Friction 0.2 of 4.8 MPa over a bore of 5.5 x 44.5. */
    @Test
    void pressed_isFriction() {
        Figures figures =
                Figures.of(
                        new TestBrief()
                                .fit(Fit.PRESSED)
                                .choose(Choices.builder().tangDrillMm(5.5))
                                .handle());
        assertThat(PullOut.of(figures).orElseThrow().forceN())
                .isCloseTo(0.2 * 4.8 * Math.PI * 5.5 * 44.5, within(1e-6));
    }

    @Test
    void plasticsAndUnknownWoods_giveNothing() {
        assertThat(PullOut.of(Figures.of(new TestBrief().stock(SampleStock.acrylic()).handle())))
                .isEmpty();
        assertThat(PullOut.of(Figures.of(new TestBrief().stock(SampleStock.cocobolo()).handle())))
                .isEmpty();
    }
}
