package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Grip;
import haftline.ui.model.View;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The reason why something is not done, told while the hand is still at it. */
@ExtendWith(ApplicationExtension.class)
class ReasonWindowTest {
    private EditorModel editor;

    @Start
    void start(Stage stage) throws Exception {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        stage.setScene(new Scene(BenchWindow.of(editor), 1366, 768));
        stage.show();
    }

    private Handle handle() {
        return editor.worked().value().figures().orElseThrow().handle();
    }

    private Detail cove() {
        return handle().brief().shape().details().get(0);
    }

    private View view(BoardPane board) {
        PlacedNode swell =
                handle().nodes().stream()
                        .filter(node -> node.name().equals("swell"))
                        .findFirst()
                        .orElseThrow();
        Point2D shoulder = board.pixelOf("shoulder").orElseThrow();
        Point2D at = board.pixelOf("swell").orElseThrow();
        double scale = (at.getX() - shoulder.getX()) / swell.x();
        return new View(scale, shoulder.getX(), at.getY() + swell.radiusMm() * scale);
    }

    @Test
    void aDragThatIsRefusedLeavesTheBoardUnderTheHand(FxRobot robot) {
        BoardPane board = robot.lookup("#board").queryAs(BoardPane.class);
        robot.push(KeyCode.SHORTCUT, KeyCode.ALT, KeyCode.O);
        WaitForAsyncUtils.waitForFxEvents();
        Detail before = cove();
        Grip depth =
                Grip.of(handle(), 0, view(board)).stream()
                        .filter(grip -> grip.kind() == Grip.Kind.PROUD)
                        .findFirst()
                        .orElseThrow();
        double height = board.getHeight();
        Point2D at = board.localToScreen(depth.px(), depth.py());
        robot.drag(at).moveBy(0, 8).moveBy(0, 40).moveBy(0, 20);
        WaitForAsyncUtils.waitForFxEvents();
        Label why = robot.lookup("#notice").queryAs(Label.class);
        assertThat(why.getText()).contains("overhangs on a slope");
        assertThat(why.localToScene(0, why.getHeight()).getY()).isLessThan(768);
        assertThat(board.getHeight()).isEqualTo(height);
        assertThat(cove().proudMm()).isLessThanOrEqualTo(before.proudMm());
        robot.drop();
        robot.interact(() -> editor.notice().set(Optional.empty()));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(board.getHeight()).isEqualTo(height);
    }
}
