package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.doubt.Band;
import haftline.adjust.doubt.TwoWays;
import haftline.edit.DemoSet;
import haftline.measure.Units;
import haftline.ui.model.DoubtModel.Stage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DoubtModelTest {
    private final Deque<Runnable> background = new ArrayDeque<>();
    private final List<Double> shares = new ArrayList<>();
    private EditorModel editor;
    private DoubtModel doubt;
    private Runnable rested;
    private int calls;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        // Progress is told from the run's own threads: nothing else is under way meanwhile.
        doubt =
                new DoubtModel(
                        editor,
                        background::add,
                        this::onOneThread,
                        what -> {
                            rested = what;
                            return () -> calls++;
                        },
                        1);
        doubt.state().watch(state -> shares.add(state.share()));
    }

    private synchronized void onOneThread(Runnable task) {
        task.run();
    }

    private void work() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }

    private Stage stage() {
        return doubt.state().value().stage();
    }

    private void nudge() {
        BoardModel board = new BoardModel(editor);
        board.selected().set(Optional.of("waist"));
        board.nudge(0, 0.1);
        board.endNudge();
    }

    @Test
    void runsInTheBackgroundWithProgressAndSaysItInWords() {
        assertThat(stage()).isEqualTo(Stage.OFF);
        doubt.show(true);
        assertThat(stage()).isEqualTo(Stage.RUNNING);
        work();
        assertThat(stage()).isEqualTo(Stage.DONE);
        assertThat(shares.size()).isGreaterThan(20);
        TwoWays ways = doubt.state().value().answer().orElseThrow();
        assertThat(ways.stated().bands()).isNotEmpty().allMatch(b -> b.lowMm() <= b.highMm());
        assertThat(ways.stated().bands()).extracting(Band::x).isSorted();
        DoubtWords mm = new DoubtWords(Units.MM);
        assertThat(mm.thin(ways))
                .contains("would break")
                .contains("; drilling on the lathe with")
                .endsWith(".");
        assertThat(mm.rest(ways)).contains("9 in 10 balance").contains(" mm behind").contains("%");
        assertThat(mm.how(ways)).contains("20,000 handles").contains("95 %");
        assertThat(new DoubtWords(Units.INCH).rest(ways)).contains(" in behind");
    }

    @Test
    void beginsAnewOnceTheHandRestsAndNotInTheMiddleOfADrag() {
        doubt.show(true);
        work();
        nudge();
        assertThat(stage()).isEqualTo(Stage.WAITING);
        assertThat(doubt.state().value().answer()).isEmpty();
        assertThat(calls).isPositive();
        assertThat(background).isEmpty();
        editor.begin("drag");
        rested.run();
        assertThat(background).isEmpty();
        editor.end();
        rested.run();
        assertThat(stage()).isEqualTo(Stage.RUNNING);
        work();
        assertThat(stage()).isEqualTo(Stage.DONE);
    }

    @Test
    void isStoppedPutAwayAndOvertaken() {
        doubt.show(true);
        doubt.stop();
        assertThat(stage()).isEqualTo(Stage.STOPPED);
        work();
        assertThat(stage()).isEqualTo(Stage.STOPPED);
        nudge();
        rested.run();
        assertThat(stage()).isEqualTo(Stage.RUNNING);
        doubt.show(false);
        work();
        assertThat(stage()).isEqualTo(Stage.OFF);
        calls = 0;
        nudge();
        assertThat(calls).isZero();
    }

    @Test
    void theSamePieceGivesTheSameAnswer() {
        doubt.show(true);
        work();
        TwoWays first = doubt.state().value().answer().orElseThrow();
        doubt.show(true);
        work();
        assertThat(doubt.state().value().answer()).contains(first);
    }
}
