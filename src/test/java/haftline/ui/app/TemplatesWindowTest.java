package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.edit.WorkshopEdits;
import haftline.set.TemplateSettings.Tool;
import haftline.ui.model.EditorModel;
import haftline.ui.model.LaidOut;
import haftline.ui.templates.TemplatesPane;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The sheets of templates in the real window. */
@ExtendWith(ApplicationExtension.class)
class TemplatesWindowTest {

    private EditorModel editor;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(OpenDocument.of(DemoSet.load()));
        for (String piece : new String[] {"shucker", "seafood fork", "citrus zester"}) {
            editor.run(PieceEdits.remove(piece));
        }
        editor.run(
                WorkshopEdits.templates(
                        "profile gauges alone",
                        t ->
                                t.withGauges(t.gauges().withMade(true, false, false))
                                        .withCopying(t.copying().withMade(false))));
        stage.setScene(new Scene(BenchWindow.of(editor), 1366, 768));
        stage.show();
    }

    private static LaidOut wait(FxRobot robot, Predicate<LaidOut> until) throws Exception {
        TemplatesPane pane = robot.lookup("#templates").queryAs(TemplatesPane.class);
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> pane.laidOut().value().filter(until).isPresent());
        WaitForAsyncUtils.waitForFxEvents();
        return pane.laidOut().value().orElseThrow();
    }

    /** Pixels of the sheet that are inked with cut lines or whatever else lies on it. */
    private static WritableImage picture(FxRobot robot) {
        Node sheet = robot.lookup("#template-sheet").query();
        return WaitForAsyncUtils.waitForAsyncFx(5000, () -> sheet.snapshot(null, null));
    }

    private static int different(WritableImage a, WritableImage b) {
        int count = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                if (a.getPixelReader().getArgb(x, y) != b.getPixelReader().getArgb(x, y)) {
                    count++;
                }
            }
        }
        return count;
    }

    private static boolean is(LaidOut laid, Tool tool, double kerfMm) {
        var cutting = laid.asked().settings().cutting();
        return cutting.tool() == tool && cutting.kerfMm() == kerfMm;
    }

    @Test
    void aLasersKerfIsSeenOnTheSheetAndTakenBack(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT4);
        LaidOut byHand = wait(robot, laid -> is(laid, Tool.HAND_SAW, 0.15));
        WritableImage sawn = picture(robot);
        assertThat(isSeen(robot.lookup("#row-kerf").query())).isFalse();

        ComboBox<?> tool = robot.lookup("#row-tool").queryAs(ComboBox.class);
        robot.interact(() -> choose(tool, "laser"));
        assertThat(isSeen(robot.lookup("#row-kerf").query())).isTrue();
        TextField kerf = robot.lookup("#row-kerf").queryAs(TextField.class);
        robot.interact(
                () -> {
                    kerf.requestFocus();
                    kerf.setText("2 mm");
                });
        robot.type(KeyCode.ENTER);
        LaidOut burnt = wait(robot, laid -> is(laid, Tool.LASER, 2));
        assertThat(burnt.layout()).isNotEqualTo(byHand.layout());
        WritableImage wide = picture(robot);
        assertThat(different(sawn, wide)).isGreaterThan(1000);

        robot.interact(kerf::requestFocus);
        robot.interact(() -> kerf.setText("3 mm"));
        robot.type(KeyCode.ENTER);
        assertThat(kerf.getAccessibleHelp()).contains("Expected a length from 0 to 2 mm");
        assertThat(editor.draft().value().set().workshop().templates().cutting().kerfMm())
                .isEqualTo(2);

        robot.interact(editor::undo);
        robot.interact(editor::undo);
        LaidOut again = wait(robot, laid -> is(laid, Tool.HAND_SAW, 0.15));
        assertThat(again).isEqualTo(byHand);
        robot.interact(() -> robot.lookup("#template-sheet").query().requestFocus());
        robot.type(KeyCode.HOME);
        assertThat(tool.getValue()).isEqualTo("saw and file");
    }

    private static boolean isSeen(Node node) {
        return node.isVisible() && (node.getParent() == null || isSeen(node.getParent()));
    }

    @SuppressWarnings("unchecked")
    private static void choose(ComboBox<?> box, String word) {
        ((ComboBox<String>) box).setValue(word);
        box.getOnAction().handle(new javafx.event.ActionEvent());
    }

    @Test
    void exportBeginsWithTheSheetsAlone(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT4);
        wait(robot, laid -> true);
        robot.clickOn("#templates-export");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#export-templates-alone").queryAs(CheckBox.class).isSelected())
                .isTrue();
        assertThat(robot.lookup("#format-stl").queryAs(CheckBox.class).isSelected()).isFalse();
        assertThat(robot.lookup("#format-dxf").queryAs(CheckBox.class).isSelected()).isTrue();
        assertThat(robot.lookup("#templates").tryQuery()).isEmpty();
        robot.clickOn("#export-back");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#templates").query().isVisible()).isTrue();
    }
}
