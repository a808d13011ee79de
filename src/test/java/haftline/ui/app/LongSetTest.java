package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.ui.board.BoardPane;
import haftline.ui.lineup.LineUpPane;
import haftline.ui.model.EditorModel;
import haftline.ui.pieces.PiecesPane;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.ListCell;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A set of hundreds costs no more than what of it is in sight, counted and not timed. */
@ExtendWith(ApplicationExtension.class)
class LongSetTest {
    private static final int PIECES = 500;

    /** More rows are never in sight in this window, those at its edges included. */
    private static final int IN_SIGHT = 12;

    /** By so many pieces the list tells its scale. */
    private static final int SCALED = 40;

    @TempDir static Path folder;

    private EditorModel editor;
    private Workbench workbench;

    @Start
    void start(Stage stage) throws Exception {
        Path home = folder.resolve(Long.toString(System.nanoTime()));
        editor = new EditorModel(OpenDocument.of(DemoSet.read(DemoSet.longCopyTo(home, PIECES))));
        workbench = BenchWindow.of(editor);
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
    }

    private int workedOut() {
        return editor.document().workedOut();
    }

    private int thumbnails() {
        return ((PiecesPane) workbench.lookup(".pieces")).painted();
    }

    private List<String> names() {
        return editor.draft().value().set().pieces().stream().map(p -> p.name()).toList();
    }

    @Test
    void openingAndSwitchingWorkOutAndPaintOnlyWhatComesInSight(FxRobot robot) {
        assertThat(names()).hasSize(PIECES);
        assertThat(workedOut()).isBetween(IN_SIGHT / 2, SCALED + IN_SIGHT);
        assertThat(thumbnails()).isBetween(1, IN_SIGHT);

        int worked = workedOut();
        int painted = thumbnails();
        int switches = 30;
        for (int i = 1; i <= switches; i++) {
            robot.interact(() -> workbench.nextPiece(1));
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.piece().value()).isEqualTo(names().get(switches));
        assertThat(workedOut() - worked).isLessThanOrEqualTo(switches + IN_SIGHT);
        assertThat(thumbnails() - painted).isLessThanOrEqualTo(switches + IN_SIGHT);
        assertThat(isInSight(switches)).isTrue();

        worked = workedOut();
        painted = thumbnails();
        robot.interact(() -> editor.choose("piece 400"));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(workedOut() - worked).isBetween(1, 2 * IN_SIGHT);
        assertThat(thumbnails() - painted).isBetween(1, 2 * IN_SIGHT);
        assertThat(isInSight(399)).isTrue();
    }

    private boolean isInSight(int index) {
        return workbench.lookup("#pieces").lookupAll(".list-cell").stream()
                .anyMatch(cell -> ((ListCell<?>) cell).getIndex() == index && cell.isVisible());
    }

    @Test
    void aDragWorksOutOnlyThePieceInHand(FxRobot robot) {
        BoardPane board = robot.lookup("#board").queryAs(BoardPane.class);
        Point2D swell = board.localToScreen(board.pixelOf("swell").orElseThrow());
        robot.moveTo(swell);
        WaitForAsyncUtils.waitForFxEvents();
        int worked = workedOut();
        int painted = thumbnails();
        robot.press(javafx.scene.input.MouseButton.PRIMARY);
        int moves = 20;
        for (int i = 1; i <= moves; i++) {
            robot.moveTo(swell.add(0, -2 * i), org.testfx.robot.Motion.DIRECT);
        }
        robot.release(javafx.scene.input.MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.status().value().isModified()).isTrue();
        // The robot may send some moves in two.
        assertThat(workedOut() - worked).isBetween(1, 3 * moves);
        // Its own thumbnail, whenever the hand rests for a moment.
        assertThat(thumbnails() - painted).isLessThanOrEqualTo(moves + 2);
        String last = names().get(PIECES - 1);
        int before = workedOut();
        assertThat(editor.document().worked(last)).isNotNull();
        assertThat(workedOut()).isEqualTo(before + 1);
    }

    @Test
    void theLineUpPaintsOnlyTheRowsInSight(FxRobot robot) {
        robot.interact(workbench::showLineUp);
        WaitForAsyncUtils.waitForFxEvents();
        LineUpPane lineUp = (LineUpPane) workbench.lookup(".line-up");
        assertThat(lineUp.painted()).isBetween(1, IN_SIGHT);
        int worked = workedOut();
        robot.interact(() -> editor.choose("piece 250"));
        assertThat(workedOut() - worked).isLessThanOrEqualTo(IN_SIGHT);
        assertThat(lineUp.painted()).isLessThanOrEqualTo(IN_SIGHT);
    }
}
