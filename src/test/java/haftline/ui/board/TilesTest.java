package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import javafx.scene.Group;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

    /** A line from left to right in short stretches, with a bump; other marks round it. */
    private static Ink scene(Random random, Ink before, double density) {
        Ink ink = new Ink();
        ink.setFill(Color.IVORY);
        ink.fillRect(0, 0, 800, 200);
        int bump = random.nextInt(760);
        int high = random.nextInt(40);
        for (double[] dashes : new double[][] {{}, {5, 3}}) {
            ink.setStroke(Color.BLACK, 1.5, dashes);
            ink.beginPath();
            ink.moveTo(-20, 60 + dashes.length * 20);
            for (int x = 0; x <= 800; x += 16) {
                double y = 60 + dashes.length * 20;
                ink.lineTo(x, Math.abs(x - bump) < 50 ? y + high : y);
            }
            ink.stroke();
        }
        int wide = (int) (800 * density);
        int tall = (int) (30 * density);
        long[] columns = new long[wide];
        int[] pixels = new int[wide * tall];
        int from = random.nextInt(700);
        for (int i = 0; i < 60; i++) {
            columns[from + i] = 1 + random.nextInt(1000);
            for (int row = 0; row < tall; row++) {
                pixels[row * wide + from + i] = 0xFF000000 | (int) columns[from + i];
            }
        }
        ink.add(Mark.picture(pixels, columns, 1, false, 0, 130, 800, 30));
        ink.setStroke(Color.rgb(200, 30, 30, 0.6), 3);
        for (int i = random.nextInt(3); i >= 0; i--) {
            ink.strokeLine(
                    random.nextInt(800),
                    random.nextInt(200),
                    random.nextInt(800),
                    random.nextInt(200));
        }
        ink.setFill(Color.rgb(30, 60, 200, 0.7));
        double x = random.nextBoolean() ? 300.25 : random.nextDouble() * 780;
        ink.fillOval(x, 20 + random.nextInt(150), 12, 12);
        if (random.nextInt(4) == 0) {
            before.marks().forEach(ink::add);
        }
        return ink;
    }

    private static List<Image> images(Tiles tiles) {
        return tiles.getChildren().stream()
                .filter(Group.class::isInstance)
                .flatMap(row -> ((Group) row).getChildren().stream())
                .filter(ImageView.class::isInstance)
                .map(view -> ((ImageView) view).getImage())
                .toList();
    }

    private static int farthestApart(Image a, Image b) {
        int worst = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int one = a.getPixelReader().getArgb(x, y);
                int two = b.getPixelReader().getArgb(x, y);
                for (int shift = 0; shift < 32; shift += 8) {
                    worst = Math.max(worst, Math.abs((one >> shift & 255) - (two >> shift & 255)));
                }
            }
        }
        return worst;
    }

    /** Whatever is drawn after whatever: parts drawn anew give what all drawn anew gives. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 2})
    void partsDrawnAnewLookLikeTheWhole(double density) {
        Random random = new Random(11);
        Ink before = new Ink();
        for (int frame = 0; frame < 60; frame++) {
            Ink ink = scene(random, before, density);
            Tiles whole = new Tiles();
            WaitForAsyncUtils.asyncFx(
                    () -> {
                        tiles.show(ink, 800, 200, density);
                        whole.show(ink, 800, 200, density);
                    });
            WaitForAsyncUtils.waitForFxEvents();
            List<Image> now = images(tiles);
            List<Image> fresh = images(whole);
            assertThat(now).hasSameSizeAs(fresh).hasSize(9);
            for (int i = 0; i < now.size(); i++) {
                assertThat(farthestApart(now.get(i), fresh.get(i)))
                        .as("frame %d, tile %d", frame, i)
                        .isLessThanOrEqualTo(1);
            }
            before = ink;
        }
    }
}
