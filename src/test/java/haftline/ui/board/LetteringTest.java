package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.junit.jupiter.api.Test;

class LetteringTest {
    private final Lettering lettering = new Lettering();
    private final Ink ink = new Ink();

    private void words(String text, double y) {
        ink.setFill(Color.BLACK);
        ink.fillText(text, Pen.SMALL, 40, TextAlignment.CENTER, 60, y);
    }

    private List<Text> shown() {
        lettering.show(ink.marks(), 300);
        List<Text> texts = new ArrayList<>();
        for (Node row : lettering.getChildren()) {
            for (Node text : ((Group) row).getChildren()) {
                if (text.isVisible()) {
                    texts.add((Text) text);
                }
            }
        }
        return texts;
    }

    @Test
    void standWhereTheyWereWritten() {
        words("24.0 mm", 90);
        words("wall", 210);
        assertThat(shown())
                .extracting(Text::getText, Text::getX, Text::getY)
                .containsExactly(tuple("24.0 mm", 40.0, 90.0), tuple("wall", 40.0, 210.0));
    }

    @Test
    void keepTheirNodesFromFrameToFrame() {
        words("24.0 mm", 90);
        Text before = shown().get(0);
        ink.marks().clear();
        words("24.1 mm", 88);
        assertThat(shown()).containsExactly(before);
        assertThat(before.getText()).isEqualTo("24.1 mm");
        ink.marks().clear();
        assertThat(shown()).isEmpty();
    }

    @Test
    void areHiddenByWhatCoversThemAndNotByALine() {
        words("24.0 mm", 90);
        ink.fillRect(0, 86, 200, 1);
        assertThat(shown()).hasSize(1);
        ink.setFill(Color.rgb(255, 255, 255, 0.5));
        ink.fillRect(0, 60, 200, 50);
        assertThat(shown()).hasSize(1);
        ink.setFill(Color.WHITE);
        ink.fillRect(0, 60, 200, 50);
        assertThat(shown()).isEmpty();
        // Over the lid, not under it.
        words("24.0 mm", 90);
        assertThat(shown()).hasSize(1);
    }
}
