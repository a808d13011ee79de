package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.set.Piece;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.PickResult;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What can be done with a piece is offered at its thumbnail, and to the keys. */
@ExtendWith(ApplicationExtension.class)
class PieceMenuWindowTest {
    @TempDir private Path folder;
    private EditorModel editor;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(OpenDocument.of(DemoSet.read(DemoSet.copyTo(folder))));
        stage.setScene(new Scene(BenchWindow.of(editor), 1366, 768));
        stage.show();
    }

    private List<String> names() {
        return editor.draft().value().set().pieces().stream().map(Piece::name).toList();
    }

    private static List<ContextMenu> shown() {
        WaitForAsyncUtils.waitForFxEvents();
        return Window.getWindows().stream()
                .filter(ContextMenu.class::isInstance)
                .map(ContextMenu.class::cast)
                .toList();
    }

    private static MenuItem item(ContextMenu menu, String words) {
        return menu.getItems().stream()
                .filter(each -> words.equals(each.getText()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRightClickOffersWhatCanBeDoneWithThatPiece(FxRobot robot) {
        // Without a desktop no request comes of a right click by itself.
        Node zester = robot.lookup("citrus zester").query();
        robot.interact(
                () ->
                        Event.fireEvent(
                                zester,
                                new ContextMenuEvent(
                                        ContextMenuEvent.CONTEXT_MENU_REQUESTED,
                                        0,
                                        0,
                                        300,
                                        300,
                                        false,
                                        new PickResult(zester, 0, 0))));
        assertThat(editor.piece().value()).isEqualTo("citrus zester");
        ContextMenu menu = shown().get(0);
        assertThat(menu.getItems().stream().map(MenuItem::getText).filter(Objects::nonNull))
                .containsExactly(
                        "_Copy",
                        "_Rename…",
                        "Move _up",
                        "Move _down",
                        "Back to the set's _ways",
                        "_Give all pieces its shape",
                        "Re_move");
        assertThat(menu.getItems().stream().filter(each -> each.getText() != null))
                .allMatch(each -> each.getAccelerator() != null);
        assertThat(item(menu, "Move _up").isDisable()).isFalse();
        assertThat(item(menu, "Move _down").isDisable()).isTrue();
        robot.interact(() -> item(menu, "Re_move").fire());
        assertThat(names()).containsExactly("shucker", "butter spreader", "seafood fork");
    }

    @Test
    void theKeyboardsMenuKeyAndShiftF10OfferItToo(FxRobot robot) {
        robot.clickOn("butter spreader");
        robot.press(KeyCode.SHIFT).type(KeyCode.F10).release(KeyCode.SHIFT);
        assertThat(shown()).hasSize(1);
        robot.type(KeyCode.ESCAPE);
        assertThat(shown()).isEmpty();
        robot.type(KeyCode.CONTEXT_MENU);
        assertThat(shown()).hasSize(1);
        robot.interact(() -> item(shown().get(0), "_Copy").fire());
        assertThat(names()).hasSize(5);
        assertThat(names().get(1)).isEqualTo("butter spreader");
        assertThat(editor.piece().value()).isEqualTo(names().get(2));
    }
}
