package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PaperTest {
    @Test
    void wrapped_breaksBetweenWords_andBreaksAWordThatIsTooLong() {
        assertThat(Paper.wrapped("a wall of wood", 6)).containsExactly("a wall", "of", "wood");
        assertThat(Paper.wrapped("abcdefghij", 4)).containsExactly("abcd", "efgh", "ij");
        assertThat(Paper.wrapped("to abcdefghij", 4)).containsExactly("to", "abcd", "efgh", "ij");
        assertThat(Paper.wrapped("", 4)).isEmpty();
    }

    @Test
    void width_countsColumns_notCharacters() {
        assertThat(Paper.width("wall")).isEqualTo(4);
        assertThat(Paper.width("e\u0301")).as("a combining accent").isEqualTo(1);
        assertThat(Paper.width("\u6728")).as("an ideograph").isEqualTo(2);
        assertThat(Paper.width("\uD83E\uDDAA")).as("a picture").isEqualTo(2);
    }

    @Test
    void cut_endsInAnEllipsisWhereSomethingIsLost() {
        assertThat(Paper.cut("spreader", 8)).isEqualTo("spreader");
        assertThat(Paper.cut("spreader", 5)).isEqualTo("spre…");
        assertThat(Paper.cut("\u6728\u6728\u6728", 4)).isEqualTo("\u6728…");
    }

    @Test
    void harmless_leavesNoOrderForATerminal() {
        assertThat(Paper.harmless("\u001b[31mred\u0007\n")).isEqualTo("[31mred");
        assertThat(Paper.harmless("a\u202eb\u2028c")).isEqualTo("a b c");
        assertThat(Paper.harmless("\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645"))
                .as("a joiner that a script needs")
                .contains("\u200c");
    }

    @Test
    void row_bringsDecimalPointsUnderEachOther() {
        Paper paper = new Paper(Ink.PLAIN, 9, 2);
        paper.row("Tenon", "diameter", "12.80", "mm", "turned");
        paper.row("Tenon", "long", "9.5", "mm", "");
        List<String> lines = paper.text().lines().toList();
        assertThat(lines.get(0).indexOf('.')).isEqualTo(lines.get(1).indexOf('.'));
        assertThat(lines.get(1)).doesNotContain("Tenon");
    }
}
