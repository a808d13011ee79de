package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class TilesTest {
    private final Tiles tiles = new Tiles();

    /** How many tiles are painted to show it, 1536 by 384. */
    private int painted(Ink ink, double density) {
        int before = tiles.painted();
        WaitForAsyncUtils.asyncFx(() -> tiles.show(ink, 1536, 384, density));
        WaitForAsyncUtils.waitForFxEvents();
        return tiles.painted() - before;
    }

    /** A ground of 4 by 4 tiles, and a dot. */
    private int painted(double dotX, double density) {
        Ink ink = new Ink();
        ink.setFill(Color.WHITE);
        ink.fillRect(0, 0, 1536, 384);
        ink.setFill(Color.BLACK);
        ink.fillOval(dotX, 20, 8, 8);
        return painted(ink, density);
    }

    @Test
    void paintsOnlyWhatHasChanged() {
        assertThat(painted(20, 1)).isEqualTo(16);
        assertThat(painted(20, 1)).isZero();
        assertThat(painted(21, 1)).isEqualTo(1);
        // From the first tile to the second: both are other ones now.
        assertThat(painted(420, 1)).isEqualTo(2);
        assertThat(painted(420, 2)).isEqualTo(16);
    }

    private int paintedLine(double y, double endY, double endX) {
        Ink ink = new Ink();
        ink.setStroke(Color.BLACK, 2);
        ink.beginPath();
        ink.moveTo(10, y);
        for (double x = 40; x <= 1480; x += 30) {
            ink.lineTo(x, y);
        }
        ink.lineTo(endX, endY);
        ink.stroke();
        return painted(ink, 1);
    }

    @Test
    void lineAcrossTilesIsPaintedWhereItBends() {
        // One row of four; the box of the line takes in the row below as well.
        paintedLine(40, 40, 1500);
        assertThat(paintedLine(50, 50, 1500)).isEqualTo(4);
        assertThat(paintedLine(50, 60, 1500)).isEqualTo(1);
        assertThat(paintedLine(50, 60.01, 1500)).isZero();
        // Its end goes over into the row below, in the last column.
        assertThat(paintedLine(50, 150, 1500)).isEqualTo(2);
        assertThat(paintedLine(55, 150, 1500)).isEqualTo(5);
    }

    private int paintedUnder(double dotX, Color lid) {
        Ink ink = new Ink();
        ink.fillOval(dotX, 20, 8, 8);
        ink.setFill(lid);
        ink.fillRect(0, 0, 384, 96);
        ink.setFill(Color.BLACK);
        return painted(ink, 1);
    }

    @Test
    void whatIsCoveredIsNotPainted() {
        paintedUnder(20, Color.WHITE);
        assertThat(paintedUnder(30, Color.WHITE)).isZero();
        assertThat(paintedUnder(30, Color.rgb(255, 255, 255, 0.5))).isEqualTo(1);
        assertThat(paintedUnder(40, Color.rgb(255, 255, 255, 0.5))).isEqualTo(1);
    }

    private int paintedPicture(long second) {
        Ink ink = new Ink();
        long[] columns = new long[1536];
        columns[500] = second;
        ink.add(Mark.picture(new int[1536 * 96], columns, 1, false, 0, 0, 1536, 96));
        return painted(ink, 1);
    }

    @Test
    void pictureIsPaintedWhereItsColumnsLookDifferent() {
        paintedPicture(1);
        assertThat(paintedPicture(2)).isEqualTo(1);
        assertThat(paintedPicture(2)).isZero();
        assertThat(paintedPicture(7)).isEqualTo(1);
    }
}
