package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.ui.model.EditorModel;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the inspector's fields show of what stands in them. */
@ExtendWith(ApplicationExtension.class)
class InspectorWindowTest {
    @Start
    void start(Stage stage) throws Exception {
        EditorModel editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        stage.setScene(new Scene(BenchWindow.of(editor), 1024, 640));
        stage.show();
    }

    @Test
    void aLongMetalIsReadWholeInItsBox(FxRobot robot) {
        ToggleButton blade = robot.lookup("#fold-blade").queryAs(ToggleButton.class);
        robot.interact(() -> blade.setSelected(true));
        WaitForAsyncUtils.waitForFxEvents();
        ComboBox<?> box = robot.lookup("#row-metal-of-blade-and-tang").queryAs(ComboBox.class);
        assertThat(box.getValue()).isEqualTo("stainless steel 304 (18/8)");
        Text shown = (Text) box.lookup(".list-cell").lookup(".text");
        // What a box has no room for gives way to dots in the text that it draws.
        assertThat(shown.getText()).isEqualTo(box.getValue());
    }
}
