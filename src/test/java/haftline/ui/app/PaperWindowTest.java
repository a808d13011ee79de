package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.OpenProgress;
import haftline.edit.PieceEdits;
import haftline.measure.Units;
import haftline.set.Family;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.store.ProgressFile;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Papers, a new batch, production and the line-up's table in the real window. */
@ExtendWith(ApplicationExtension.class)
class PaperWindowTest {
    @TempDir Path folder;
    private EditorModel editor;
    private Workbench workbench;
    private Path progress;
    private final List<Path> opened = new ArrayList<>();

    @Start
    void start(Stage stage) throws Exception {
        Path set = DemoSet.copyTo(folder);
        progress = ProgressFile.beside(set);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(set)));
        workbench = BenchWindow.of(editor, opened::add);
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
    }

    private static void await(Callable<Boolean> what) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, what);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Lists keep rows in stock that are not in sight. */
    private static boolean isInSight(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return node.getScene() != null;
    }

    private String text(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    private void fire(FxRobot robot, String id) {
        Button button = robot.lookup(id).queryButton();
        robot.interact(button::fire);
    }

    @Test
    void thePaperIsChosenFollowsTheUnitsAndSaysWhyItIsNotPrinted(FxRobot robot) throws Exception {
        robot.interact(workbench::showSheet);
        robot.interact(robot.lookup("#paper-lathe").queryAs(ToggleButton.class)::fire);
        await(() -> text(robot, "#sheet-says").startsWith("210 mm × 297 mm, lengths in mm"));
        assertThat(robot.lookup(".desk").queryParent().lookupAll("Canvas"))
                .hasSize(1)
                .allSatisfy(page -> assertThat(((Canvas) page).getHeight()).isGreaterThan(900));
        robot.interact(() -> workbench.units(Units.INCH));
        await(() -> text(robot, "#sheet-says").endsWith("lengths in inches"));
        robot.push(KeyCode.SHORTCUT, KeyCode.P);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#notice")).contains("No printer is set up");
    }

    @Test
    void aBatchIsTakenIntoUseAndBackByOneUndo(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT5);
        ListView<?> pieces = robot.lookup("#batch-pieces").queryListView();
        await(() -> pieces.getItems().size() == 4);
        assertThat(text(robot, "#batch-says")).contains("to be cut again");
        assertThat(robot.lookup("#batch-lines").queryListView().getItems()).isNotEmpty();
        fire(robot, "#batch-use");
        assertThat(editor.draft().value().set().batch()).isEqualTo("B1");
        await(() -> text(robot, "#batch-in-use").equals("In use: B1"));
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(editor.draft().value().set().batch()).isEqualTo("B2");
    }

    @Test
    void aBatchIsBegunTickedAndUntickedByKeys(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT6);
        ListView<?> rows = robot.lookup("#production-rows").queryListView();
        await(() -> !rows.getItems().isEmpty());
        TextField every = robot.lookup("#production-every").queryAs(TextField.class);
        robot.interact(
                () -> {
                    every.requestFocus();
                    every.setText("3");
                });
        robot.type(KeyCode.ENTER);
        fire(robot, "#production-begin");
        robot.interact(robot.lookup("#production-progress").queryAs(ToggleButton.class)::fire);
        await(() -> !robot.lookup(".tick").match(PaperWindowTest::isInSight).queryAll().isEmpty());
        Node first = robot.lookup(".tick").match(PaperWindowTest::isInSight).query();
        robot.interact(first::requestFocus);
        robot.type(KeyCode.SPACE);
        robot.type(KeyCode.SPACE);
        robot.type(KeyCode.BACK_SPACE);
        assertThat(ticks()).isEqualTo(1);
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(ticks()).isEqualTo(2);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void allIsWrittenByKeysAlone(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.E);
        ListView<?> files = robot.lookup("#export-files").queryListView();
        await(files::isFocused);
        robot.type(KeyCode.ENTER);
        Path section = progress.resolveSibling("exports").resolve("shucker-section.svg");
        Button folder = robot.lookup("#export-open-folder").queryButton();
        await(folder::isFocused);
        assertThat(section).exists();
        assertThat(text(robot, "#export-result")).contains("files in");
        robot.interact(files::requestFocus);
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        assertThat(opened).containsExactly(section.resolveSibling("shucker-section.dxf"));
        robot.interact(folder::requestFocus);
        robot.type(KeyCode.ENTER);
        assertThat(opened).last().isEqualTo(section.getParent());
        robot.interact(() -> robot.lookup("#export-back").queryButton().requestFocus());
        robot.type(KeyCode.ENTER);
        await(() -> robot.lookup("#board").query().isFocused());
    }

    @Test
    void ratesAndSticksAreTypedBesideThePlanAndTakenBackByKeys(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT6);
        ListView<?> rows = robot.lookup("#production-rows").queryListView();
        await(() -> !rows.getItems().isEmpty());
        List<?> before = List.copyOf(rows.getItems());
        assertThat(text(robot, "#costs-file")).contains("workshop-tidewater.yaml");
        TextField kerf = type(robot, "#row-saw-s-kerf", "3,2");
        await(() -> !rows.getItems().isEmpty() && !rows.getItems().equals(before));
        assertThat(kerf.getText()).isEqualTo("3.2 mm");
        type(robot, "#row-saw-s-kerf", "wide");
        assertThat(kerf.getAccessibleHelp()).contains("Expected a length from 0 to 10 mm");
        type(robot, "#row-saw-s-kerf", "3.2 mm");
        type(robot, "#stick-0-count", "7");
        assertThat(sticks().get(0).count()).isEqualTo(7);
        // The hand is still in the field.
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(sticks().get(0).count()).isEqualTo(2);
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(kerf.getText()).isEqualTo("1.5 mm");
        assertThat(editor.status().value().isModified()).isFalse();
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(kerf.getText()).isEqualTo("3.2 mm");
    }

    @Test
    void stepsAndWhatIsUsedUpAreTypedBesideThePlan(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT6);
        ListView<?> rows = robot.lookup("#production-rows").queryListView();
        await(() -> !rows.getItems().isEmpty());
        List<?> before = List.copyOf(rows.getItems());
        TextField setup = type(robot, "#step-0-setup", "25 min");
        await(() -> !rows.getItems().isEmpty() && !rows.getItems().equals(before));
        assertThat(setup.getText()).isEqualTo("25");
        type(robot, "#step-0-setup", "long");
        assertThat(setup.getText()).isEqualTo("25");
        assertThat(robot.lookup(".steps-table .field-note").queryAs(Label.class).getText())
                .isEqualTo("Expected minutes from 0 to 10080");
        CheckBox glue = robot.lookup("#step-1-gluing").queryAs(CheckBox.class);
        robot.interact(glue::fire);
        assertThat(rates().steps().get(1).isGluing()).isTrue();
        // What was added gets its first figure next; the line is gone with one undo.
        type(robot, "#step-add", "pack");
        assertThat(robot.lookup("#step-8-setup").query().isFocused()).isTrue();
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(rates().steps()).hasSize(7);
        assertThat(rates().steps().get(6))
                .isEqualTo(new Rates.WorkStep("check", 0, 2, false, List.of()));
        fire(robot, "#step-1-earlier");
        assertThat(rates().steps().get(0).name()).isEqualTo("bore");
        fire(robot, "#used-0-strike");
        assertThat(robot.lookup("#used-0-strike").query().isFocused()).isTrue();
        assertThat(rates().consumables()).hasSize(2);
        type(robot, "#used-0-name", "wax");
        assertThat(rates().consumables().get(0).name()).isEqualTo("wax");
        assertThat(robot.lookup("#used-0-name").query().isFocused()).isTrue();
    }

    @Test
    void aLongNameIsReadWholeInTheListOfPieces(FxRobot robot) {
        String name = "butter spreader with the waisted handle, oiled";
        robot.interact(() -> editor.run(PieceEdits.rename("butter spreader", name)));
        WaitForAsyncUtils.waitForFxEvents();
        Label label = robot.lookup(".piece-name").lookup(name).queryAs(Label.class);
        // What a label has no room for gives way to dots in the text that it draws.
        assertThat(((Text) label.lookup(".text")).getText()).isEqualTo(name);
        // Bold it is wider.
        robot.interact(() -> editor.choose(name));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(label.getFont().getStyle()).isEqualTo("Bold");
        assertThat(((Text) label.lookup(".text")).getText()).isEqualTo(name);
    }

    @Test
    void aFieldThatAnUndoTakesAwayTypesNothingIntoAnother(FxRobot robot) throws Exception {
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT6);
        await(() -> !robot.lookup("#add-sticks").queryAll().isEmpty());
        List<StockLength> before = sticks();
        MenuButton add = robot.lookup("#add-sticks").queryAs(MenuButton.class);
        List<String> missed = missedColours(() -> robot.interact(add::show));
        robot.interact(
                () -> {
                    add.getItems().get(0).fire();
                    add.hide();
                });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(missed).isEmpty();
        assertThat(sticks()).hasSize(before.size() + 1);
        assertThat(robot.lookup("#stick-3-across").query().isFocused()).isTrue();
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(sticks()).isEqualTo(before);
        assertThat(robot.lookup("#stick-3-across").query().isFocused()).isTrue();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    /** What the toolkit says of colours that it looks up in vain. */
    private static List<String> missedColours(Runnable what) {
        List<String> missed = new ArrayList<>();
        Handler listener =
                new Handler() {
                    @Override
                    public void publish(LogRecord told) {
                        missed.add(told.getMessage());
                    }

                    @Override
                    public void flush() {}

                    @Override
                    public void close() {}
                };
        Logger styles = Logger.getLogger("javafx.css");
        styles.addHandler(listener);
        what.run();
        WaitForAsyncUtils.waitForFxEvents();
        styles.removeHandler(listener);
        return missed;
    }

    private Rates rates() {
        return editor.draft().value().set().workshop().rates().orElseThrow();
    }

    private TextField type(FxRobot robot, String id, String text) {
        TextField field = robot.lookup(id).queryAs(TextField.class);
        robot.interact(
                () -> {
                    field.requestFocus();
                    field.setText(text);
                });
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        return field;
    }

    private List<StockLength> sticks() {
        return editor.draft().value().set().workshop().stockLengths().orElseThrow().sticks();
    }

    private int ticks() throws Exception {
        return OpenProgress.read(progress).progress().ticks();
    }

    @Test
    void aStrayIsBroughtBackByItsButton(FxRobot robot) throws Exception {
        robot.interact(workbench::showLineUp);
        ListView<?> table = robot.lookup("#differences").queryListView();
        await(() -> table.getItems().size() == 4);
        robot.interact(robot.lookup("#show-strays").queryAs(ToggleButton.class)::fire);
        ListView<?> strays = robot.lookup("#strays").queryListView();
        Family.Stray gravest = (Family.Stray) strays.getItems().get(0);
        await(() -> strays.lookupAll(".apply").stream().anyMatch(PaperWindowTest::isInSight));
        Button apply =
                (Button)
                        strays.lookupAll(".apply").stream()
                                .filter(PaperWindowTest::isInSight)
                                .findFirst()
                                .orElseThrow();
        robot.interact(apply::fire);
        assertThat(editor.status().value().undoName()).isPresent();
        await(
                () ->
                        strays.getItems().stream()
                                .map(Family.Stray.class::cast)
                                .noneMatch(
                                        each ->
                                                each.piece().equals(gravest.piece())
                                                        && each.trait() == gravest.trait()));
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(editor.status().value().isModified()).isFalse();
    }
}
