package haftline.adjust.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.takeoff.PictureFit.Spot;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PictureFitTest {
    private static void assertAt(PictureFit fit, Spot spot, double x, double r) {
        assertThat(fit.at(spot).x()).isCloseTo(x, within(1e-9));
        assertThat(fit.at(spot).r()).isCloseTo(r, within(1e-9));
    }

    @Test
    void laysTwoPointsOfTheAxisWhereTheyBelong() {
        // Three to four to five: 500 pixels are 100 mm, the axis falls to the right.
        PictureFit fit = PictureFit.onAxis(new Spot(100, 50), new Spot(500, 350), 0, 100);
        assertThat(fit.mmPerPixel()).isCloseTo(0.2, within(1e-12));
        assertAt(fit, new Spot(100, 50), 0, 0);
        assertAt(fit, new Spot(500, 350), 100, 0);
        // Square to the axis, upwards: 50 pixels are 10 mm of radius.
        assertAt(fit, new Spot(100 + 30, 50 - 40), 0, 10);
        // The axis falls as it is seen, so the picture is turned back, anticlockwise.
        assertThat(fit.turnDeg()).isCloseTo(Math.toDegrees(Math.atan2(3, 4)), within(1e-9));
    }

    @Test
    void aHandleThatPointsToTheLeftLiesOnItsHead() {
        PictureFit fit = PictureFit.onAxis(new Spot(900, 300), new Spot(100, 300), 5, 80);
        assertAt(fit, new Spot(900, 300), 5, 0);
        assertAt(fit, new Spot(500, 300), 45, 0);
        assertAt(fit, new Spot(500, 200), 45, -10);
        assertThat(Math.abs(fit.turnDeg())).isCloseTo(180, within(1e-9));
    }

    @Test
    void takesScaleFromARuleAndAxisFromTheHandle() {
        PictureFit fit =
                PictureFit.beside(
                        new Spot(10, 900),
                        new Spot(1010, 900),
                        150,
                        new Spot(200, 400),
                        new Spot(800, 400),
                        -10);
        assertThat(fit.mmPerPixel()).isCloseTo(0.15, within(1e-12));
        assertAt(fit, new Spot(200, 400), -10, 0);
        assertAt(fit, new Spot(800, 400), 80, 0);
        assertAt(fit, new Spot(400, 300), 20, 15);
    }

    @Test
    void goesThereAndBackAndKeepsAllRatios() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 500; i++) {
            Spot first = new Spot(random.nextDouble(3000), random.nextDouble(2000));
            Spot second =
                    new Spot(first.u() + 20 + random.nextDouble(900), random.nextDouble(2000));
            PictureFit fit =
                    PictureFit.onAxis(
                            first,
                            second,
                            random.nextDouble(-20, 20),
                            5 + 200 * random.nextDouble());
            Spot a = new Spot(random.nextDouble(3000), random.nextDouble(2000));
            Spot b = new Spot(random.nextDouble(3000), random.nextDouble(2000));
            assertThat(fit.spot(fit.at(a)).to(a)).isCloseTo(0, within(1e-6));
            assertThat(fit.at(a).distanceTo(fit.at(b)))
                    .isCloseTo(fit.mmPerPixel() * a.to(b), within(1e-6));
        }
    }

    @Test
    void refusesPointsAtOnePlaceAndADistanceThatIsNone() {
        Spot here = new Spot(10, 10);
        Spot there = new Spot(400, 10);
        assertThatThrownBy(() -> PictureFit.onAxis(here, here, 0, 50))
                .hasMessageContaining("pixels between them 0:");
        assertThatThrownBy(() -> PictureFit.beside(here, there, 50, here, here, 0))
                .hasMessageContaining("pixels on the axis");
        assertThatThrownBy(() -> PictureFit.onAxis(here, there, 0, 0))
                .hasMessageContaining("distance of the points 0:");
        assertThatThrownBy(() -> PictureFit.onAxis(here, there, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** What is promised of a trace marked to a pixel, against many such traces by chance. */
    @Test
    void saysHowExactATraceIs() {
        double apart = 800;
        PictureExactness exact = new PictureExactness(0.1, apart);
        SplittableRandom random = new SplittableRandom(3);
        int count = 20_000;
        double one = 0;
        double both = 0;
        double scale = 0;
        for (int i = 0; i < count; i++) {
            double up = 100 + random.nextGaussian();
            double down = 100 + random.nextGaussian();
            one += Math.pow(2 * up * 0.1 - 20, 2);
            both += Math.pow((up + down) * 0.1 - 20, 2);
            double seen = apart + random.nextGaussian() - random.nextGaussian();
            scale += Math.pow(apart / seen - 1, 2);
        }
        assertThat(Math.sqrt(one / count)).isCloseTo(exact.oneSideMm(), within(0.01));
        assertThat(Math.sqrt(both / count)).isCloseTo(exact.bothSidesMm(), within(0.01));
        assertThat(Math.sqrt(scale / count)).isCloseTo(exact.scaleShare(), within(1e-4));
    }
}
