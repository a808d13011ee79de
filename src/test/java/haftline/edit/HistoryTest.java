package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HistoryTest {
    private final History<Integer> history = new History<>(0);

    @Test
    void aGestureIsOneStepWhateverItPassesThrough() {
        history.begin("move");
        for (int i = 1; i <= 50; i++) {
            history.carryOn(i);
        }
        assertThat(history.state()).isEqualTo(50);
        assertThat(history.committed()).isZero();
        assertThat(history.isModified()).isTrue();
        assertThat(history.end()).isTrue();
        assertThat(history.undoName()).contains("move");
        history.undo();
        assertThat(history.state()).isZero();
        assertThat(history.undoName()).isEmpty();
        assertThat(history.redoName()).contains("move");
    }

    @Test
    void aGestureThatEndsAsItBeganIsNoStep() {
        history.begin("move");
        history.carryOn(3);
        history.carryOn(0);
        assertThat(history.isModified()).isFalse();
        assertThat(history.end()).isFalse();
        assertThat(history.undoName()).isEmpty();
    }

    @Test
    void aGestureThatIsGivenUpLeavesNothing() {
        history.step("one", 1);
        history.undo();
        history.begin("move");
        history.carryOn(3);
        history.cancel();
        assertThat(history.state()).isZero();
        assertThat(history.redoName()).as("what could be redone still can").contains("one");
    }

    @Test
    void undoInTheMiddleOfAGestureUndoesTheGesture() {
        history.step("one", 1);
        history.begin("move");
        history.carryOn(2);
        assertThat(history.undoName()).contains("move");
        history.undo();
        assertThat(history.state()).isEqualTo(1);
        history.redo();
        assertThat(history.state()).isEqualTo(2);
    }

    @Test
    void aStepEqualToTheOneBeforeIsNone() {
        assertThat(history.step("nothing", 0)).isFalse();
        assertThat(history.undo()).isFalse();
    }

    @Test
    void aNewStepTakesThePlaceOfWhatWasUndone() {
        history.step("one", 1);
        history.step("two", 2);
        history.markSaved();
        history.undo();
        history.step("three", 3);
        assertThat(history.redo()).isFalse();
        history.undo();
        assertThat(history.isModified()).as("what was saved is gone from the history").isTrue();
        history.undo();
        assertThat(history.isModified()).isTrue();
    }

    @Test
    void modifiedIsThePositionAgainstTheSavedOne() {
        history.step("one", 1);
        assertThat(history.isModified()).isTrue();
        history.markSaved();
        assertThat(history.isModified()).isFalse();
        history.undo();
        assertThat(history.isModified()).isTrue();
        history.redo();
        assertThat(history.isModified()).isFalse();
    }

    @Test
    void nothingIsCarriedOnThatWasNotBegun() {
        assertThatThrownBy(() -> history.carryOn(1)).isInstanceOf(IllegalStateException.class);
    }
}
