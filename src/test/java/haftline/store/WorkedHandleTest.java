package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Moments;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A handle worked out by hand, typed in as documents: from the file to the figure. */
class WorkedHandleTest {
    private Handle handle;

    @BeforeEach
    void read() throws DocumentException {
        LoadedSet set = SetFile.read(Path.of("src/test/resources/documents/p1/set.yaml"));
        Resolution resolved = Resolve.of(set.briefs().get(0));
        handle = ((Resolution.Resolved) resolved).handle();
    }

    @Test
    void theLengthsFollowFromBladeFerruleAndCap() {
        assertThat(handle.lengths().visibleWoodMm()).isEqualTo(105);
        assertThat(handle.tenon().diameterMm()).isEqualTo(11.9, within(1e-12));
        assertThat(handle.tenon().lengthMm()).isEqualTo(11.5);
        assertThat(handle.fit().engagedMm()).isEqualTo(44.5, within(1e-12));
    }

    @Test
    void theBodyHasTheVolumeOfFourFrustums() {
        Moments body = handle.outline().moments(0, 105);
        assertThat(body.volume()).isEqualTo(26_581.80, within(0.005));
    }

    @Test
    void theWallIsLeastAtTheWaist() {
        Wall wall = Figures.of(handle).wall(Zone.BODY).orElseThrow();
        assertThat(wall.nominalMm()).isEqualTo(3.40, within(0.005));
        // At 2 % of wander over the 31.5 mm from the tenon's end to the waist.
        assertThat(wall.worstMm()).isEqualTo(2.77, within(0.005));
    }
}
