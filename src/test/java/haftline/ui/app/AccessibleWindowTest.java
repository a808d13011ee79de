package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.OpenDocument;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.store.SetFile;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Whoever hears the window rather than sees it, and whoever works it by keys alone. */
@ExtendWith(ApplicationExtension.class)
class AccessibleWindowTest {
    private Workbench workbench;
    private EditorModel editor;

    @Start
    void start(Stage stage) throws Exception {
        editor =
                new EditorModel(
                        OpenDocument.of(SetFile.read(Path.of("profiles/sets/tidewater.yaml"))));
        workbench = BenchWindow.of(editor);
        stage.setScene(new Scene(workbench, 1366, 768));
        stage.show();
    }

    private ToggleButton view(String words) {
        return workbench.lookupAll(".switch").stream()
                .map(ToggleButton.class::cast)
                .filter(each -> words.equals(each.getText()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theKeyboardIsNotLeftAtTheSwitchOfAnotherView(FxRobot robot) {
        robot.interact(workbench::showLineUp);
        robot.interact(() -> view("Line-up").requestFocus());
        robot.interact(workbench::showBatch);
        assertThat(view("New batch").isFocused()).isTrue();
    }

    @Test
    void theSwitchesStayWhereTheyAreWhenTheSetIsChanged(FxRobot robot) {
        ToggleButton board = view("Board");
        double before = board.localToScene(0, 0).getX();
        robot.interact(
                () -> workbench.addDetail(new Detail.Bead(new Place.FromShoulder(40), 4, 1)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.status().value().isModified()).isTrue();
        assertThat(robot.lookup("not saved").query().isVisible()).isTrue();
        assertThat(board.localToScene(0, 0).getX()).isEqualTo(before);
        robot.interact(editor::undo);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("not saved").tryQuery().filter(Node::isVisible)).isEmpty();
    }

    @Test
    void everyControlOfEveryViewHasANameAndARole(FxRobot robot) {
        robot.interact(
                () -> {
                    workbench.addDetail(new Detail.Bead(new Place.FromShoulder(40), 4, 1));
                    workbench.showGuide();
                    robot.lookup(".fold-heading")
                            .queryAllAs(ToggleButton.class)
                            .forEach(fold -> fold.setSelected(true));
                });
        List<Runnable> views =
                List.of(
                        workbench::showBoard,
                        workbench.aids()::showAdjust,
                        () -> workbench.aids().showDoubt(true),
                        workbench.aids()::showTakeOff,
                        workbench::showLineUp,
                        workbench::showSheet,
                        workbench::showTemplates,
                        workbench::showBatch,
                        workbench::showProduction,
                        workbench::showExport);
        for (Runnable view : views) {
            robot.interact(view);
            WaitForAsyncUtils.waitForFxEvents();
            List<String> nameless = new ArrayList<>();
            robot.interact(
                    () -> {
                        workbench.applyCss();
                        workbench.layout();
                        collect(workbench, nameless);
                    });
            assertThat(nameless).isEmpty();
        }
        robot.interact(workbench::showBoard);
        robot.interact(() -> robot.lookup(".whose").match(Node::isVisible).query().requestFocus());
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        Node card = robot.lookup("#rule-card").query();
        assertThat(card.isVisible()).isTrue();
        assertThat(card.getAccessibleText()).isNotBlank();
        robot.type(KeyCode.ESCAPE);
        assertThat(card.isVisible()).isFalse();
    }

    private static void collect(Node node, List<String> nameless) {
        if (!node.isVisible()) {
            return;
        }
        boolean isFrame = node instanceof ScrollPane || node instanceof MenuBar;
        if (node.isFocusTraversable() && !isFrame) {
            String text = node instanceof Labeled labeled ? labeled.getText() : "";
            boolean named =
                    node.getAccessibleText() != null && !node.getAccessibleText().isBlank()
                            || text != null && text.codePoints().anyMatch(Character::isLetter);
            boolean hasRole =
                    node.getAccessibleRole() != null
                            && node.getAccessibleRole() != AccessibleRole.NODE
                            && node.getAccessibleRole() != AccessibleRole.PARENT;
            if (!named || !hasRole) {
                nameless.add(node + ", role " + node.getAccessibleRole());
            }
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, nameless));
        }
    }

    @Test
    void everyActionOfTheMenusHasItsOwnShortcut(FxRobot robot) {
        MenuBar menus = robot.lookup(".menu-bar").queryAs(MenuBar.class);
        List<String> shortcuts = new ArrayList<>();
        for (Menu menu : menus.getMenus()) {
            menu.getItems().forEach(item -> check(item, shortcuts));
        }
        assertThat(shortcuts).hasSizeGreaterThan(30).doesNotHaveDuplicates();
    }

    /** Lists of files and kits are as long as they are; only what is in them is chosen. */
    private static void check(MenuItem item, List<String> shortcuts) {
        boolean isList = item.getText() != null && item.getText().matches("Open _again|_Add, .*");
        if (item instanceof SeparatorMenuItem || isList) {
            return;
        }
        if (item instanceof Menu menu) {
            menu.getItems().forEach(each -> check(each, shortcuts));
            return;
        }
        assertThat(item.getAccelerator()).as(item.getText()).isNotNull();
        shortcuts.add(item.getAccelerator().getName());
    }

    @Test
    void nodesAndDetailsAreAddedSizedSlopedAndRemovedByKeysAlone(FxRobot robot) {
        robot.interact(workbench::showBoard);
        int nodes = nodes();
        robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.N);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(nodes()).isEqualTo(nodes + 1);
        robot.push(KeyCode.SHORTCUT, KeyCode.DELETE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(nodes()).isEqualTo(nodes);
        robot.push(KeyCode.SHORTCUT, KeyCode.ALT, KeyCode.V);
        robot.type(KeyCode.PERIOD);
        robot.type(KeyCode.DOWN);
        WaitForAsyncUtils.waitForFxEvents();
        Detail vee = details().get(0);
        assertThat(vee.widthMm()).isEqualTo(1.6);
        assertThat(vee.proudMm()).isEqualTo(-0.9);
        robot.type(KeyCode.ESCAPE);
        robot.type(KeyCode.N);
        robot.type(KeyCode.S);
        WaitForAsyncUtils.waitForFxEvents();
        robot.write("-2");
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(editor.worked().value().brief().shape().shoulderSlopeDeg()).hasValue(-2);
        assertThat(robot.lookup("#board").query().isFocused()).isTrue();
    }

    @Test
    void remediesComeBackOnceTheHandRests(FxRobot robot) throws Exception {
        BoardPane board = robot.lookup("#board").queryAs(BoardPane.class);
        robot.interact(() -> editor.choose("butter spreader"));
        robot.drag(board.localToScreen(board.pixelOf("waist").orElseThrow()))
                .moveBy(0, 4)
                .moveBy(0, 4);
        robot.sleep(400);
        robot.drop();
        WaitForAsyncUtils.waitFor(
                10,
                TimeUnit.SECONDS,
                () -> !robot.lookup(".apply").match(Node::isVisible).queryAll().isEmpty());
    }

    private int nodes() {
        return editor.worked().value().figures().orElseThrow().handle().nodes().size();
    }

    private List<Detail> details() {
        return editor.worked().value().brief().shape().details();
    }
}
