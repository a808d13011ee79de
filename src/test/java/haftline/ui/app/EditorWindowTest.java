package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.OpenDocument;
import haftline.edit.Worked;
import haftline.findings.Finding;
import haftline.handle.PlacedNode;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.HandleSet;
import haftline.store.SetFile;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.Question;
import haftline.ui.theme.Palette;
import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
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

/** The real window, driven by hand without a display. */
@ExtendWith(ApplicationExtension.class)
class EditorWindowTest {
    private static final Path DEMO = Path.of("profiles/sets/tidewater.yaml");

    @TempDir static Path folder;

    private EditorModel editor;
    private FilesModel files;
    private Workbench workbench;
    private Stage window;
    private Optional<Question> asked = Optional.empty();
    private Question.Answer answer = Question.Answer.STAY;
    private Optional<Path> chosen = Optional.empty();

    @Start
    void start(Stage stage) throws Exception {
        window = stage;
        editor = new EditorModel(OpenDocument.of(SetFile.read(DEMO)));
        Preferences preferences = new Preferences(folder.resolve("editor.properties"));
        preferences.guideDismissed(true);
        files = new FilesModel(editor, preferences, folder.resolve("unsaved"));
        workbench = new Workbench(editor, preferences, files, new Answers(), where -> {});
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
    }

    private final class Answers implements Dialogs {
        @Override
        public Optional<Path> openSet(Path beside) {
            return chosen;
        }

        @Override
        public Optional<Path> saveSet(Path beside, String name) {
            return chosen;
        }

        @Override
        public Optional<Path> openParts(Path folder) {
            return chosen;
        }

        @Override
        public Optional<Path> savePdf(Path folder, String name) {
            return chosen;
        }

        @Override
        public Optional<Path> folder(Path beside) {
            return chosen;
        }

        @Override
        public Question.Answer ask(Question question) {
            asked = Optional.of(question);
            return answer;
        }

        @Override
        public Optional<String> name(String what, String name) {
            return Optional.of("oyster knife");
        }
    }

    private PlacedNode node(String name) {
        return editor.worked().value().figures().orElseThrow().handle().nodes().stream()
                .filter(n -> n.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Point2D onScreen(FxRobot robot, String name) {
        BoardPane board = robot.lookup("#board").queryAs(BoardPane.class);
        return board.localToScreen(board.pixelOf(name).orElseThrow());
    }

    private static void type(FxRobot robot, TextField field, String text) {
        robot.clickOn(field);
        robot.interact(
                () -> {
                    field.requestFocus();
                    field.setText(text);
                });
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void draggingANodeIsOneStepThatUndoTakesBack(FxRobot robot) {
        double before = node("swell").radiusMm();
        Point2D at = onScreen(robot, "swell");
        robot.drag(at).moveBy(0, -10).moveBy(0, -10).drop();
        WaitForAsyncUtils.waitForFxEvents();
        double after = node("swell").radiusMm();
        assertThat(after).isGreaterThan(before + 1);
        assertThat(editor.status().value().isModified()).isTrue();
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(node("swell").radiusMm()).isCloseTo(before, within(1e-12));
        assertThat(editor.status().value().isModified()).isFalse();
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(node("swell").radiusMm()).isCloseTo(after, within(1e-12));
    }

    private List<String> sentencesShown(FxRobot robot) {
        return robot.lookup("#findings .finding .text").queryAllAs(Text.class).stream()
                .filter(EditorWindowTest::isSeen)
                .map(Text::getText)
                .toList();
    }

    /** A list measures its rows with one that is not seen. */
    private static boolean isSeen(Node node) {
        return node == null || node.isVisible() && isSeen(node.getParent());
    }

    @Test
    void findingsFollowWhileAHandDrags(FxRobot robot) throws TimeoutException {
        Point2D at = onScreen(robot, "swell");
        for (int step = 0; step < 3; step++) {
            if (step == 0) {
                robot.drag(at);
            }
            robot.moveBy(0, -2);
            WaitForAsyncUtils.waitForFxEvents();
            double balance =
                    editor.drawn()
                            .value()
                            .flatMap(Worked::figures)
                            .orElseThrow()
                            .balance()
                            .fromFerruleFaceMm();
            // They rest between two looks.
            WaitForAsyncUtils.waitFor(
                    2,
                    TimeUnit.SECONDS,
                    () ->
                            sentencesShown(robot).stream()
                                    .anyMatch(
                                            s ->
                                                    s.startsWith(
                                                            "It balances "
                                                                    + NumberText.fixed(balance, 1)
                                                                    + "\u00a0mm")));
        }
        robot.drop();
    }

    @Test
    void theGroundOfTheWindowIsTheBoardsPaper() {
        assertThat(window.getScene().getFill()).isEqualTo(Palette.PAPER.paper());
    }

    @Test
    void anEndDoesNotMoveAndSaysWhy(FxRobot robot) {
        double before = node("shoulder").radiusMm();
        robot.drag(onScreen(robot, "shoulder")).moveBy(20, -20).drop();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(node("shoulder").radiusMm()).isEqualTo(before);
        assertThat(robot.lookup("#notice").queryAs(Label.class).getText())
                .contains("ferrule's outside diameter");
    }

    @Test
    void keysChooseNudgeAddAndRemoveNodes(FxRobot robot) {
        BoardPane board = robot.lookup("#board").queryAs(BoardPane.class);
        robot.interact(board::requestFocus);
        robot.clickOn(onScreen(robot, "swell"));
        double before = 2 * node("swell").radiusMm();
        robot.type(KeyCode.UP);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(2 * node("swell").radiusMm()).isCloseTo(before + 0.1, within(1e-9));
        Point2D swell = onScreen(robot, "swell");
        robot.doubleClickOn(swell.add(-90, 60));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(node("node 1").isFree()).isTrue();
        robot.type(KeyCode.DELETE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.worked().value().brief().shape().nodes()).hasSize(2);
    }

    @Test
    void theReadOutFollowsTheKeysUnderAHandAtRest(FxRobot robot) {
        robot.clickOn(onScreen(robot, "swell"));
        List<String> before = readOut(robot);
        robot.type(KeyCode.UP);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(readOut(robot).get(1)).isNotEqualTo(before.get(1));
    }

    private static List<String> readOut(FxRobot robot) {
        return robot.lookup(".readout-value").queryAllAs(Text.class).stream()
                .map(Text::getText)
                .toList();
    }

    @Test
    void aTypedReadingChangesThePartsAndAWrongOneDoesNot(FxRobot robot) {
        TextField bore = robot.lookup("#row-ferrule-bore").queryAs(TextField.class);
        double tenon = tenon();
        type(robot, bore, "14,5; 14.6 mm");
        assertThat(tenon()).isLessThan(tenon);
        double kept = tenon();
        type(robot, bore, "wide");
        assertThat(tenon()).isEqualTo(kept);
        assertThat(bore.getAccessibleHelp()).contains("Expected a length");
    }

    private double tenon() {
        return editor.worked().value().figures().orElseThrow().handle().tenon().diameterMm();
    }

    @Test
    void unitsSwitchAtOnceAndTheFiguresKeepTheirUnit(FxRobot robot) {
        robot.clickOn("#units-inch");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.units().value()).isEqualTo(Units.INCH);
        assertThat(robot.lookup("#row-tang-length").queryAs(TextField.class).getText())
                .endsWith(" in");
        robot.push(KeyCode.SHORTCUT, KeyCode.M);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#row-tang-length").queryAs(TextField.class).getText())
                .isEqualTo("46 mm");
    }

    @Test
    void aRemedyThatIsPressedMendsItsFindingInOneStep(FxRobot robot) {
        Finding mended = editor.worked().value().findings().get(0);
        Button apply = robot.lookup(".apply").match(n -> n.isVisible()).queryAs(Button.class);
        robot.clickOn(apply);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.worked().value().findings()).doesNotContain(mended);
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.worked().value().findings()).contains(mended);
    }

    @Test
    void aBrokenFileIsExplainedAndTheOpenSetStays(FxRobot robot) throws Exception {
        Path broken = folder.resolve("broken.yaml");
        Files.writeString(broken, "haftline: 1\nkind: set\nnmae: Typo\n");
        chosen = Optional.of(broken);
        robot.push(KeyCode.SHORTCUT, KeyCode.O);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#notice").queryAs(Label.class).getText())
                .contains("broken.yaml")
                .contains("nmae");
        assertThat(editor.draft().value().set().name()).isEqualTo("Tidewater");
    }

    @Test
    void closingWithUnsavedWorkAsksFirst(FxRobot robot) {
        robot.drag(onScreen(robot, "swell")).moveBy(0, -20).drop();
        close(robot);
        assertThat(asked).map(Question::kind).contains(Question.Kind.UNSAVED);
        assertThat(window.isShowing()).isTrue();
        answer = Question.Answer.DROP;
        close(robot);
        assertThat(window.isShowing()).isFalse();
    }

    private void close(FxRobot robot) {
        robot.interact(workbench::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void whatIsSavedUnderANewNameIsThereWhenReopened(FxRobot robot) throws Exception {
        robot.clickOn(onScreen(robot, "swell"));
        robot.type(KeyCode.UP);
        robot.push(KeyCode.F2);
        chosen = Optional.of(folder.resolve("mine.yaml"));
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.status().value().isModified()).isFalse();
        HandleSet again = SetFile.read(chosen.orElseThrow()).set();
        assertThat(again.pieces()).isEqualTo(editor.draft().value().set().pieces());
        assertThat(again.parts()).isEqualTo(editor.draft().value().set().parts());
        assertThat(again.pieces().get(0).name()).isEqualTo("oyster knife");
    }

    @Test
    void exportShowsWhatItWillWriteAndWritesIt(FxRobot robot) throws Exception {
        Path to = folder.resolve("drawings");
        robot.clickOn("#export");
        robot.interact(() -> robot.lookup("#format-dxf").queryAs(CheckBox.class).fire());
        chosen = Optional.of(to);
        robot.clickOn("Another folder…");
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#export-write").queryButton().isDisabled());
        int planned = robot.lookup("#export-files").queryListView().getItems().size();
        robot.clickOn("#export-write");
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> robot.lookup("#export-open-file").queryButton().isVisible());
        try (var written = Files.list(to)) {
            assertThat(written.map(Path::toString).toList())
                    .hasSize(planned)
                    .noneMatch(name -> name.endsWith(".dxf"))
                    .anyMatch(name -> name.endsWith("-section.svg"));
        }
    }

    @Test
    void workOfAKilledEditorIsOfferedAndTakenUp(FxRobot robot) throws Exception {
        Process child =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                "haftline.edit.EditingChild",
                                DEMO.toString(),
                                folder.resolve("unsaved").toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try (BufferedReader steps = child.inputReader()) {
            assertThat(steps.readLine()).isNotNull();
            assertThat(steps.readLine()).isNotNull();
        } finally {
            child.destroyForcibly().waitFor();
        }
        answer = Question.Answer.RECOVER;
        robot.interact(files::offerRecovery);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(asked).map(Question::kind).contains(Question.Kind.RECOVERY);
        assertThat(editor.status().value().isModified()).isTrue();
    }

    @Test
    void choosingAPieceAndTheDarkBoardShowThem(FxRobot robot) {
        ListView<?> pieces = robot.lookup("#pieces").queryListView();
        robot.interact(() -> pieces.getSelectionModel().select(3));
        robot.push(KeyCode.SHORTCUT, KeyCode.D);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.piece().value()).isEqualTo("citrus zester");
        assertThat(workbench.getStyleClass()).contains("slate").doesNotContain("paper");
        robot.push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#line-up").queryListView().getItems()).hasSize(4);
    }
}
