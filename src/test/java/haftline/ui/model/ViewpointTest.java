package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ViewpointTest {
    private static final double REACH = 8;
    private BoardModel board;

    @BeforeEach
    void open() {
        EditorModel editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        board = new BoardModel(editor);
        board.viewpoint().fit(new View.Area(40, 100, 1000, 300));
    }

    private Handle handle() {
        return board.handle().orElseThrow();
    }

    @Test
    void fitsTheWholeHandleIntoItsArea() {
        View view = board.viewpoint().view().value();
        assertThat(view.px(handle().ferruleFaceX())).isGreaterThan(40);
        assertThat(view.px(handle().buttX() + handle().lengths().capMm())).isLessThan(1041);
        assertThat(view.axisY()).isEqualTo(250);
    }

    @Test
    void zoomKeepsThePlaceUnderThePointer() {
        double before = board.viewpoint().view().value().mm(333);
        board.viewpoint().zoom(1.7, 333, 222);
        assertThat(board.viewpoint().view().value().mm(333)).isCloseTo(before, within(1e-9));
        board.viewpoint().zoom(1e9, 333, 222);
        assertThat(board.viewpoint().view().value().scale()).isEqualTo(View.GREATEST);
        assertThat(board.viewpoint().view().value().mm(333)).isCloseTo(before, within(1e-9));
    }

    @Test
    void staysFittedUntilItIsMoved() {
        View first = board.viewpoint().view().value();
        board.viewpoint().resize(new View.Area(0, 0, 500, 300));
        assertThat(board.viewpoint().view().value()).isNotEqualTo(first);
        board.viewpoint().pan(5, 5);
        View moved = board.viewpoint().view().value();
        board.viewpoint().resize(new View.Area(0, 0, 900, 300));
        assertThat(board.viewpoint().view().value()).isEqualTo(moved);
    }

    private void dragOutwards(double px) {
        View view = board.viewpoint().view().value();
        PlacedNode node =
                handle().nodes().stream().filter(PlacedNode::isFree).findFirst().orElseThrow();
        double x = view.px(node.x());
        double y = view.py(node.radiusMm());
        board.press(x, y, REACH);
        board.dragTo(x, y - px, true);
    }

    @Test
    void aPieceThatGrewOutOfItsRoomIsFittedWhenTheHandLetsGo() {
        board.viewpoint().fit(new View.Area(40, 100, 1000, 260));
        View before = board.viewpoint().view().value();

        dragOutwards(120);
        assertThat(board.viewpoint().view().value()).isEqualTo(before);
        board.release();

        View after = board.viewpoint().view().value();
        assertThat(after.scale()).isLessThan(before.scale());
        assertThat(handle().outline().greatest().r() * after.scale()).isLessThanOrEqualTo(130 + 1);
    }

    @Test
    void aPieceThatStillFitsStaysUnderTheHand() {
        View before = board.viewpoint().view().value();

        dragOutwards(4);
        board.release();

        assertThat(board.viewpoint().view().value()).isEqualTo(before);
    }

    @Test
    void aViewOfTheMakersOwnStaysWhateverGrows() {
        board.viewpoint().zoom(1.5, 333, 222);
        View before = board.viewpoint().view().value();

        dragOutwards(200);
        board.release();

        assertThat(board.viewpoint().view().value()).isEqualTo(before);
    }
}
