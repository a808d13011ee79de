package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;

class TilesTest {
    private final Tiles tiles = new Tiles();

    /** A ground of 4 by 4 tiles, and a dot. */
    private int painted(double dotX, double density) {
        int before = tiles.painted();
        Ink ink = new Ink();
        ink.setFill(Color.WHITE);
        ink.fillRect(0, 0, 768, 384);
        ink.setFill(Color.BLACK);
        ink.fillOval(dotX, 20, 8, 8);
        tiles.show(ink, 768, 384, density);
        return tiles.painted() - before;
    }

    @Test
    void paintsOnlyWhatHasChanged() {
        assertThat(painted(20, 1)).isEqualTo(16);
        assertThat(painted(20, 1)).isZero();
        assertThat(painted(21, 1)).isEqualTo(1);
        // From the first tile to the second: both are other ones now.
        assertThat(painted(220, 1)).isEqualTo(2);
        assertThat(painted(220, 2)).isEqualTo(16);
    }
}
