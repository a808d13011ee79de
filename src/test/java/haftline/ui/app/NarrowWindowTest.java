package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.measure.Units;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** In the smallest window, its frame taken off, nothing is cut at a side, and no words are. */
@ExtendWith(ApplicationExtension.class)
class NarrowWindowTest {
    private static final double WIDTH = 956;
    private static final double HEIGHT = 572;

    /** Half a pixel of rounding on both sides. */
    private static final double ROUNDING = 1;

    @TempDir private Path folder;
    private EditorModel editor;
    private Workbench workbench;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(OpenDocument.of(DemoSet.read(DemoSet.copyTo(folder))));
        workbench = BenchWindow.of(editor);
        stage.setScene(new Scene(workbench, WIDTH, HEIGHT));
        stage.show();
    }

    @ParameterizedTest
    @CsvSource({
        "BOARD, MM", "BOARD, INCH",
        "LINE_UP, MM", "LINE_UP, INCH",
        "STRAYS, MM", "STRAYS, INCH",
        "SHEET, MM", "SHEET, INCH",
        "TEMPLATES, MM", "TEMPLATES, INCH",
        "BATCH, MM", "BATCH, INCH",
        "PRODUCTION, MM", "PRODUCTION, INCH",
        "PROGRESS, MM", "PROGRESS, INCH",
        "EXPORT, MM", "EXPORT, INCH",
        "ADJUST, MM", "ADJUST, INCH",
        "DOUBT, MM", "DOUBT, INCH",
        "TAKE_OFF, MM", "TAKE_OFF, INCH",
    })
    void nothingIsCutOffInTheSmallestWindow(String view, Units units, FxRobot robot) {
        robot.interact(() -> workbench.units(units));
        robot.interact(() -> show(view, robot));
        settle(view, robot);
        assertThat(workbench.minWidth(-1)).isLessThanOrEqualTo(WIDTH);
        assertThat(workbench.minHeight(WIDTH)).isLessThanOrEqualTo(HEIGHT);
        List<String> cut = new ArrayList<>();
        robot.interact(() -> look(workbench, cut));
        assertThat(cut).isEmpty();
    }

    private void show(String view, FxRobot robot) {
        switch (view) {
            case "BOARD" -> workbench.showBoard();
            case "LINE_UP", "STRAYS" -> workbench.showLineUp();
            case "SHEET" -> workbench.showSheet();
            case "TEMPLATES" -> workbench.showTemplates();
            case "BATCH" -> workbench.showBatch();
            case "PRODUCTION", "PROGRESS" -> workbench.showProduction();
            case "EXPORT" -> workbench.showExport();
            case "ADJUST" -> workbench.aids().showAdjust();
            case "DOUBT" -> workbench.aids().showDoubt(true);
            case "TAKE_OFF" -> workbench.aids().showTakeOff();
            default -> throw new IllegalArgumentException(view);
        }
    }

    private static void settle(String view, FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        if (view.equals("STRAYS") || view.equals("PROGRESS")) {
            String id = view.equals("STRAYS") ? "#show-strays" : "#production-progress";
            robot.interact(() -> robot.lookup(id).queryAs(ToggleButton.class).fire());
        }
        if (view.equals("PROGRESS")) {
            robot.interact(() -> robot.lookup("#production-begin").queryAs(Button.class).fire());
        }
        // What works in the background has come to an end, or says that it is at work.
        WaitForAsyncUtils.sleep(1200, TimeUnit.MILLISECONDS);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void look(Node node, List<String> cut) {
        if (!node.isVisible() || node instanceof IndexedCell<?> cell && cell.isEmpty()) {
            return;
        }
        if (isRead(node) && node.getLayoutBounds().getWidth() > 0) {
            aside(node).ifPresent(cut::add);
            if (node instanceof Labeled labeled && isShortened(labeled)) {
                cut.add("words cut: " + labeled.getText());
            }
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> look(child, cut));
        }
    }

    private static boolean isRead(Node node) {
        return node instanceof Labeled
                || node instanceof TextInputControl
                || node instanceof ComboBoxBase;
    }

    private static boolean isShortened(Labeled labeled) {
        return labeled.lookup(".text") instanceof Text text
                && labeled.getGraphic() == null
                && labeled.getText() != null
                && !labeled.isMnemonicParsing()
                && !text.getText().equals(labeled.getText());
    }

    /** What of it lies outside of one of those it stands in. */
    private static Optional<String> aside(Node node) {
        Bounds own = node.localToScene(node.getLayoutBounds());
        boolean isScrolledDown = false;
        boolean isScrolledAlong = false;
        for (Parent over = node.getParent(); over != null; over = over.getParent()) {
            isScrolledDown |= over instanceof ScrollPane || over instanceof VirtualFlow;
            isScrolledAlong |=
                    over instanceof ScrollPane pane
                            && pane.getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
        }
        for (Parent over = node.getParent(); over != null; over = over.getParent()) {
            if (!(over instanceof Region) || over.getLayoutBounds().getWidth() < 1) {
                continue;
            }
            Bounds room = over.localToScene(over.getLayoutBounds());
            boolean isBeside =
                    !isScrolledAlong
                            && (own.getMinX() < room.getMinX() - ROUNDING
                                    || own.getMaxX() > room.getMaxX() + ROUNDING);
            boolean isBelow =
                    !isScrolledDown
                            && (own.getMinY() < room.getMinY() - ROUNDING
                                    || own.getMaxY() > room.getMaxY() + ROUNDING);
            if (isBeside || isBelow) {
                return Optional.of(
                        name(node) + " " + box(own) + " out of " + name(over) + " " + box(room));
            }
        }
        return Optional.empty();
    }

    private static String name(Node node) {
        String words =
                node instanceof Labeled labeled
                        ? labeled.getText()
                        : node instanceof TextInputControl field ? field.getText() : "";
        return node.getClass().getSimpleName() + " " + node.getId() + " \"" + words + "\"";
    }

    private static Rectangle2D box(Bounds b) {
        return new Rectangle2D(b.getMinX(), b.getMinY(), b.getWidth(), b.getHeight());
    }

    /** The first steps are told under a small board: piece and words are seen over them. */
    @Test
    void theFirstStepsLeaveTheBoardToBeSeen(FxRobot robot) {
        Node board = robot.lookup("#board").query();
        robot.interact(() -> workbench.showGuide());
        settle("BOARD", robot);
        Node guide = robot.lookup(".guide").query();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Bounds told = guide.localToScene(guide.getBoundsInLocal());
            Bounds drawn = board.localToScene(board.getBoundsInLocal());
            assertThat(told.getMinY()).isGreaterThan(drawn.getMaxY());
            assertThat(told.getMaxX()).isLessThanOrEqualTo(drawn.getMaxX());
            assertThat(drawn.getHeight()).isGreaterThan(280);
            List<String> cut = new ArrayList<>();
            robot.interact(() -> look(guide, cut));
            assertThat(cut).isEmpty();
            said.add(
                    guide.lookupAll(".label").stream()
                            .filter(Node::isVisible)
                            .map(label -> ((Labeled) label).getText())
                            .findFirst()
                            .orElseThrow());
            Button next = robot.lookup("#guide-next").queryAs(Button.class);
            assertThat(next.isVisible()).isEqualTo(i < 4);
            if (i < 4) {
                robot.interact(next::fire);
            }
        }
        assertThat(said).doesNotHaveDuplicates();
        double beside = board.getBoundsInLocal().getHeight();
        robot.interact(() -> robot.lookup("#guide-close").queryAs(Button.class).fire());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".guide").tryQuery()).isEmpty();
        assertThat(board.getBoundsInLocal().getHeight()).isGreaterThan(beside + 40);
    }
}
