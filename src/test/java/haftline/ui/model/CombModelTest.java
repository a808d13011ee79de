package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.fair.CurvatureComb;
import haftline.edit.DemoSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CombModelTest {
    @Test
    void isMadeWhileItIsShownAndNoHandMovesAnything() {
        EditorModel editor = new EditorModel(DemoSet.open());
        CombModel comb = new CombModel(editor);
        assertThat(comb.comb().value()).isEmpty();
        comb.isShown().set(true);
        CurvatureComb first = comb.comb().value().orElseThrow();
        assertThat(first.teeth()).hasSizeGreaterThan(40);
        BoardModel board = new BoardModel(editor);
        board.selected().set(Optional.of("waist"));
        board.nudge(0, 0.5);
        assertThat(comb.comb().value()).as("in the middle of a gesture").contains(first);
        board.endNudge();
        assertThat(comb.comb().value().orElseThrow()).isNotEqualTo(first);
        comb.isShown().set(false);
        assertThat(comb.comb().value()).isEmpty();
    }
}
