package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.ui.model.EditorModel;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
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
    private EditorModel editor;
    private Workbench bench;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        bench = BenchWindow.of(editor);
        stage.setScene(new Scene(bench, 1024, 640));
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

    private void add(Detail detail, FxRobot robot) {
        robot.interact(() -> bench.addDetail(detail));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private List<Detail> details() {
        return editor.worked().value().brief().shape().details();
    }

    @Test
    void aDetailIsRemovedFromItsLineByMouseAndByKey(FxRobot robot) {
        add(new Detail.BurntLine(new Place.FromShoulder(30), 0.8, 0.3), robot);
        add(new Detail.Bead(new Place.FromShoulder(45), 4, 1.2), robot);
        robot.interact(() -> robot.lookup("#detail-0-strike").queryAs(Button.class).fire());
        assertThat(details()).extracting(Detail::kind).containsExactly("bead");
        robot.interact(
                () -> robot.lookup("#detail-0-width").queryAs(TextField.class).requestFocus());
        robot.push(KeyCode.SHORTCUT, KeyCode.DELETE);
        assertThat(details()).isEmpty();
        assertThat(editor.notice().value()).isEmpty();
        robot.interact(editor::undo);
        assertThat(details()).extracting(Detail::kind).containsExactly("bead");
    }

    @Test
    void aNodeIsRemovedFromItsLine(FxRobot robot) {
        robot.interact(() -> robot.lookup("#strike-waist").queryAs(Button.class).fire());
        assertThat(editor.worked().value().brief().shape().nodes())
                .extracting(node -> node.name())
                .doesNotContain("waist");
        assertThat(robot.lookup("#strike-shoulder").tryQuery()).isEmpty();
    }

    @Test
    void theFigureOfAFixedNodeIsNotDeletedFromItsField(FxRobot robot) {
        TextField field = robot.lookup("#diameter-shoulder").queryAs(TextField.class);
        String before = field.getText();
        for (KeyCode key : List.of(KeyCode.DELETE, KeyCode.BACK_SPACE)) {
            robot.interact(field::requestFocus);
            robot.interact(() -> field.positionCaret(key == KeyCode.DELETE ? 0 : 5));
            robot.push(KeyCode.SHORTCUT, key);
            assertThat(field.getText()).as(key.name()).isEqualTo(before);
        }
        assertThat(editor.notice().value().orElseThrow()).contains("shoulder");
    }

    @Test
    void escapeTakesBackWhatWasTypedInATable(FxRobot robot) {
        TextField field = robot.lookup("#diameter-waist").queryAs(TextField.class);
        String before = field.getText();
        robot.interact(field::requestFocus);
        robot.interact(() -> field.setText("12"));
        robot.push(KeyCode.ESCAPE);
        assertThat(field.getText()).isEqualTo(before);
        robot.interact(() -> robot.lookup("#board").query().requestFocus());
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void whatADetailIsIsReadWhole(FxRobot robot) {
        add(new Detail.BurntLine(new Place.FromShoulder(30), 0.8, 0.3), robot);
        String shown =
                robot
                        .lookup(".detail-table")
                        .lookup(".field-label")
                        .lookup(".text")
                        .queryAllAs(Text.class)
                        .stream()
                        .map(Text::getText)
                        .findFirst()
                        .orElseThrow();
        assertThat(shown.replaceAll("\\s", " ")).isEqualTo("burnt line");
    }

    /** A list keeps these keys for its own rows. */
    @Test
    void theNextPieceIsTakenByKeyFromAnyPlace(FxRobot robot) {
        for (String id : List.of("#pieces", "#findings", "#row-tang-length")) {
            robot.interact(() -> editor.choose("butter spreader"));
            robot.interact(() -> robot.lookup(id).query().requestFocus());
            robot.push(KeyCode.SHORTCUT, KeyCode.PAGE_DOWN);
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(editor.piece().value()).as(id).isEqualTo("seafood fork");
        }
    }

    /** A list would take the key for leave to write in its rows. */
    @Test
    void aNewNameIsAskedForFromTheListOfPieces(FxRobot robot) {
        boolean[] asked = {false};
        robot.interact(
                () ->
                        bench.getScene()
                                .getAccelerators()
                                .put(new KeyCodeCombination(KeyCode.F2), () -> asked[0] = true));
        robot.interact(() -> robot.lookup("#pieces").query().requestFocus());
        robot.push(KeyCode.F2);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(asked[0]).isTrue();
    }

    /** Where nothing is chosen in it, the list itself says that it has the keyboard. */
    @Test
    void theFindingsShowThatTheyHaveTheKeyboard(FxRobot robot) {
        ListView<?> list = robot.lookup("#findings").queryAs(ListView.class);
        robot.interact(() -> robot.lookup("#board").query().requestFocus());
        int without = list.getBackground().getFills().size();
        robot.interact(list::requestFocus);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(list.getBackground().getFills()).hasSize(without + 1);
    }
}
