package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is worked out for the maker, in the real window and by keys. */
@ExtendWith(ApplicationExtension.class)
class AidsWindowTest {
    private EditorModel editor;
    private Workbench workbench;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        workbench = BenchWindow.of(editor);
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
    }

    @Test
    void adjustingShowsAGhostIsAcceptedAndUndone(FxRobot robot) throws Exception {
        Draft before = editor.draft().value();
        robot.push(KeyCode.SHORTCUT, KeyCode.J);
        WaitForAsyncUtils.waitForFxEvents();
        TextField grip = robot.lookup("#demand-grip-band").queryAs(TextField.class);
        robot.interact(() -> grip.setText("24 to 26 mm"));
        robot.interact(() -> robot.lookup("#adjust-work").queryButton().requestFocus());
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> workbench.aids().overlay().value().ghost().isPresent());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#adjust-verdict").queryAs(Label.class).getText())
                .contains("demand");
        Button accept = robot.lookup("#adjust-accept").queryButton();
        assertThat(accept.isFocused()).isTrue();
        assertThat(editor.draft().value()).isEqualTo(before);
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.draft().value()).isNotEqualTo(before);
        assertThat(workbench.aids().overlay().value().ghost()).isEmpty();
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.draft().value()).isEqualTo(before);
        robot.interact(() -> robot.lookup("#adjust-work").queryButton().requestFocus());
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#adjust").tryQuery()).isEmpty();
        assertThat(robot.lookup("#board").queryAs(BoardPane.class).isFocused()).isTrue();
    }

    @Test
    void combAndDoubtAreToggledByKeys(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.K);
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.D);
        WaitForAsyncUtils.waitFor(
                30, TimeUnit.SECONDS, () -> workbench.aids().overlay().value().doubt().isPresent());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(workbench.aids().overlay().value().comb()).isPresent();
        assertThat(robot.lookup("#doubt-words").queryAs(Label.class).getText())
                .contains("would break");
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.K);
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.D);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(workbench.aids().overlay().value()).isEqualTo(haftline.ui.model.Overlay.NONE);
        assertThat(robot.lookup("#doubt").query().isVisible()).isFalse();
    }
}
