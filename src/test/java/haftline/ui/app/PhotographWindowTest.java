package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.curve.Outline;
import haftline.curve.Point;
import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.support.BenchPhotograph;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.View;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A photograph under the board, in the real window: by pointer and by keys. */
@ExtendWith(ApplicationExtension.class)
class PhotographWindowTest {
    @TempDir static Path folder;

    private EditorModel editor;
    private Workbench workbench;
    private PhotoModel photo;
    private BoardPane board;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        workbench = BenchWindow.of(editor);
        photo = workbench.aids().photographs().model();
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
        board = (BoardPane) workbench.lookup("#board");
    }

    private Outline outline() {
        Outline whole =
                editor.drawn().value().orElseThrow().figures().orElseThrow().handle().outline();
        return whole.part(0, whole.endX());
    }

    private void open(FxRobot robot, Path file) throws Exception {
        robot.interact(() -> workbench.aids().photographs().open(file));
        WaitForAsyncUtils.waitFor(90, TimeUnit.SECONDS, () -> !photo.isReading().value());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private View view() {
        return workbench.aids().photographs().viewpoint().view().value();
    }

    /** Where a place of the picture is on the screen now. */
    private Point2D onScreen(Spot spot) {
        Point at = photo.state().value().lying().at(spot);
        return board.localToScreen(view().px(at.x()), view().py(at.r()));
    }

    private void click(FxRobot robot, Spot spot) {
        robot.clickOn(onScreen(spot));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    @Test
    void aHandleOnAPhotographBecomesThePiecesShape(FxRobot robot) throws Exception {
        Outline known = outline();
        BenchPhotograph picture = new BenchPhotograph(known, 15.1, 0.09, -6);
        Draft before = editor.draft().value();
        open(robot, picture.write(folder.resolve("old knife.jpg")));
        assertThat(board.isFocused()).isFalse();
        assertThat(text(robot, "#photo-placing")).contains("set the first point");
        click(robot, picture.spot(0, 0));
        click(robot, picture.spot(known.endX(), 0));
        TextField apart = robot.lookup("#photo-apart").queryAs(TextField.class);
        assertThat(apart.isFocused()).isTrue();
        robot.write("73 mm").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#photo-placing")).contains("To scale: a pixel is 0.09\u00a0mm");
        // A pixel of the screen is 0.15 mm: the points are no better than that.
        assertThat(photo.state().value().lying().turnDeg()).isCloseTo(-6, within(0.3));

        robot.push(KeyCode.SHORTCUT, KeyCode.G);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#photo-trace").queryAs(RadioButton.class).isSelected()).isTrue();
        for (int side : new int[] {1, -1}) {
            for (double x = 0.4; x < known.endX(); x += 6) {
                click(robot, picture.edge(x, side));
            }
        }
        int points = photo.state().value().trace().size();
        assertThat(points).isEqualTo(26);
        assertThat(text(robot, "#photo-traced")).startsWith("26 points, 13 above the axis and 13");
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.state().value().trace()).hasSize(points - 1);
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.state().value().trace()).hasSize(points);
        assertThat(editor.draft().value()).isEqualTo(before);

        robot.interact(() -> robot.lookup("#photo-take-off").queryButton().requestFocus());
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitFor(
                90,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#take-off-accept").queryButton().isDisabled());
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> robot.lookup("#take-off-accept").queryButton().fire());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.worked().value().brief().shape().name()).isEqualTo("old knife");
        Outline taken = outline();
        for (double x = 2; x < known.endX() - 2; x++) {
            assertThat(2 * taken.r(x)).as("at " + x).isCloseTo(2 * known.r(x), within(0.35));
        }
        robot.interact(editor::undo);
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void isSetUpAndTracedByKeysAlone(FxRobot robot) throws Exception {
        BenchPhotograph picture = new BenchPhotograph(outline(), 15.1, 0.1, 4);
        open(robot, picture.write(folder.resolve("keys.png")));
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.G);
        WaitForAsyncUtils.waitForFxEvents();
        Node layer = robot.lookup("#trace").query();
        assertThat(layer.isFocused()).isTrue();
        assertThat(layer.getAccessibleText()).contains("setting the first point");
        robot.type(KeyCode.ENTER);
        robot.type(KeyCode.RIGHT, 30).push(KeyCode.SHIFT, KeyCode.RIGHT);
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#photo-apart").queryAs(TextField.class).isFocused()).isTrue();
        robot.write("40").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.state().value().isPlaced()).isTrue();
        robot.push(KeyCode.SHORTCUT, KeyCode.G);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(layer.isFocused()).isTrue();
        robot.push(KeyCode.SHIFT, KeyCode.UP).push(KeyCode.SHIFT, KeyCode.UP);
        robot.type(KeyCode.ENTER).type(KeyCode.RIGHT, 9).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.state().value().trace()).hasSize(2);
        double across = 40 / view().scale();
        assertThat(photo.state().value().traced().get(1).r()).isCloseTo(across, within(1e-6));
        assertThat(layer.getAccessibleText()).contains("2 points, 2 above the axis");
        robot.type(KeyCode.P).type(KeyCode.DELETE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.state().value().trace()).hasSize(1);
        robot.type(KeyCode.COMMA);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.share().value()).isEqualTo(0.6);
        assertThat(workbench.aids().overlay().value().photograph()).isEqualTo(0.6);
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.H);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(workbench.aids().overlay().value().photograph()).isZero();
        assertThat(robot.lookup("#photograph").tryQuery()).isEmpty();
        robot.push(KeyCode.SHORTCUT, KeyCode.G);
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(photo.hand().tool().value()).isEqualTo(Tool.BOARD);
        assertThat(board.isFocused()).isTrue();
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.BACK_SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(workbench.aids().overlay().value()).isEqualTo(haftline.ui.model.Overlay.NONE);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    /** The wood gives way, the ink stays; without a photograph the board is as it was. */
    @Test
    void showsThroughTheBoard(FxRobot robot) throws Exception {
        int before = pixel(robot, new Spot(0, 0), true);
        Outline known = outline();
        BenchPhotograph picture = new BenchPhotograph(known, 15.1, 0.1, 0);
        open(robot, picture.write(folder.resolve("through.png")));
        robot.interact(() -> photo.share(1));
        WaitForAsyncUtils.waitForFxEvents();
        Spot bench = picture.spot(40, 25);
        int under = picture.image().getRGB((int) bench.u(), (int) bench.v());
        int seen = pixel(robot, bench, false);
        for (int shift = 0; shift < 24; shift += 8) {
            assertThat(seen >> shift & 255).isCloseTo(under >> shift & 255, within(40));
        }
        robot.interact(photo::remove);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(pixel(robot, new Spot(0, 0), true)).isEqualTo(before);
    }

    /** Beside the photograph the paper is as it is elsewhere on the board. */
    @Test
    void paperShowsWhereThePhotographEnds(FxRobot robot) throws Exception {
        int paper = pixel(robot, new Spot(0, 0), true);
        BenchPhotograph picture = new BenchPhotograph(outline(), 15.1, 0.1, 0);
        open(robot, picture.write(folder.resolve("paper.png")));
        assertThat(pixel(robot, new Spot(0, 0), true)).isEqualTo(paper);
    }

    private int pixel(FxRobot robot, Spot spot, boolean isOfBoard) {
        int[] colour = new int[1];
        robot.interact(
                () -> {
                    Point at = photo.state().value().lying().at(spot);
                    double x = isOfBoard ? 30 : view().px(at.x());
                    double y = isOfBoard ? 60 : view().py(at.r());
                    Point2D place = board.localToScene(x, y);
                    WritableImage shot = workbench.getScene().snapshot(null);
                    colour[0] =
                            shot.getPixelReader().getArgb((int) place.getX(), (int) place.getY());
                });
        return colour[0];
    }

    @Test
    void saysWhatCannotBeRead(FxRobot robot) throws Exception {
        open(robot, Files.writeString(folder.resolve("broken.png"), "no picture at all"));
        assertThat(text(robot, "#photo-note"))
                .isEqualTo("broken.png cannot be read as a picture: expected PNG or JPEG.");
        open(robot, folder.resolve("gone.jpg"));
        assertThat(text(robot, "#photo-note")).isEqualTo("gone.jpg cannot be opened.");
        assertThat(photo.state().value().picture()).isEmpty();
    }

    @Test
    void aLargePictureIsReducedAndAnEnormousOneRefused(FxRobot robot) throws Exception {
        java.awt.image.BufferedImage large =
                new java.awt.image.BufferedImage(
                        4000, 1000, java.awt.image.BufferedImage.TYPE_BYTE_GRAY);
        javax.imageio.ImageIO.write(large, "png", folder.resolve("wide.png").toFile());
        open(robot, folder.resolve("wide.png"));
        var picture = photo.state().value().picture().orElseThrow();
        assertThat(picture.width()).isEqualTo(3000);
        assertThat(picture.height()).isEqualTo(750);
        assertThat(picture.fullWidth()).isEqualTo(4000);
        open(robot, enormous(folder.resolve("enormous.png")));
        assertThat(text(robot, "#photo-note"))
                .isEqualTo(
                        "enormous.png is 40000 × 30000 pixels, more than 100 million. Make it"
                                + " smaller first.");
        assertThat(photo.state().value().picture()).contains(picture);
    }

    /** The head of a PNG file, which is all that is looked at. */
    private static Path enormous(Path file) throws IOException {
        java.nio.ByteBuffer head = java.nio.ByteBuffer.allocate(33);
        head.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        head.putInt(13).put("IHDR".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        head.putInt(40_000).putInt(30_000).put(new byte[] {8, 2, 0, 0, 0});
        java.util.zip.CRC32 check = new java.util.zip.CRC32();
        check.update(head.array(), 12, 17);
        head.putInt((int) check.getValue());
        return Files.write(file, head.array());
    }
}
