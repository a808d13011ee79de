package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.SaveResult;
import haftline.measure.Units;
import haftline.set.StockLength;
import haftline.ui.model.RackModel.Column;
import haftline.ui.model.RackModel.Line;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RackModelTest {
    @TempDir Path folder;
    private Path file;
    private EditorModel editor;
    private RackModel rack;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        rack = new RackModel(editor);
    }

    private List<StockLength> sticks() {
        return editor.draft().value().set().workshop().stockLengths().orElseThrow().sticks();
    }

    private String refusal(int index, Column column, String text) {
        return rack.enter(index, column, text).refusal().orElse("");
    }

    @Test
    void everyFigureOfAStickIsTypedAndOneStep() {
        assertThat(rack.lines().value().get(0))
                .isEqualTo(new Line("black cherry", "32 mm", "1000 mm", "2", "11.5/m"));
        rack.enter(0, Column.ACROSS, "1 1/4 in");
        rack.enter(0, Column.LENGTH, "950");
        rack.enter(0, Column.COUNT, "0");
        assertThat(sticks().get(0).acrossMm()).isCloseTo(31.75, within(1e-12));
        assertThat(sticks().get(0).lengthMm()).isEqualTo(950);
        assertThat(sticks().get(0).count()).isZero();
        editor.undo();
        assertThat(rack.lines().value().get(0).count()).isEqualTo("2");
        assertThat(editor.status().value().undoName()).contains("change length of sticks");
    }

    @Test
    void aPriceIsOfOneOrOfAMetreOrAFoot() {
        rack.enter(0, Column.PRICE, "12,5");
        assertThat(sticks().get(0).pricePerMetre()).hasValue(12.5);
        rack.enter(0, Column.PRICE, "9 each");
        assertThat(sticks().get(0).priceEach()).hasValue(9);
        rack.enter(0, Column.PRICE, "8");
        assertThat(rack.lines().value().get(0).price()).isEqualTo("8 each");
        rack.enter(0, Column.PRICE, "3.048/ft");
        assertThat(sticks().get(0).pricePerMetre().orElseThrow()).isCloseTo(10, within(1e-12));
        editor.units().set(Units.INCH);
        assertThat(rack.lines().value().get(0).price()).isEqualTo("3.048/ft");
        rack.enter(0, Column.PRICE, "6.096");
        assertThat(sticks().get(0).pricePerMetre().orElseThrow()).isCloseTo(20, within(1e-12));
        rack.enter(0, Column.PRICE, "");
        assertThat(sticks().get(0).price()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void wrongEntriesAreRefusedInWordsAndChangeNothing() {
        List<StockLength> before = sticks();
        assertThat(refusal(0, Column.ACROSS, "thick")).contains("from 1 to 300 mm");
        assertThat(refusal(0, Column.ACROSS, "0")).contains("from 1 to 300 mm");
        assertThat(refusal(0, Column.LENGTH, "10001")).contains("from 1 to 10000 mm");
        assertThat(refusal(0, Column.COUNT, "1.5")).contains("whole number");
        for (String wrong : List.of("dear", "-1/m", "5/yd", "each", "20000000")) {
            assertThat(refusal(0, Column.PRICE, wrong)).as(wrong).contains("Expected a price");
        }
        assertThat(sticks()).isEqualTo(before);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void sticksAreAddedBehindTheirStockAndStruckOut() {
        assertThat(rack.stockNames()).startsWith("black cherry", "acrylic (PMMA), cast");
        rack.add("black cherry");
        assertThat(sticks().get(3)).isEqualTo(sticks().get(2).withCount(1));
        rack.add("sugar maple");
        assertThat(rack.lines().value()).hasSize(6);
        assertThat(rack.lines().value().get(5).stock()).isEqualTo("sugar maple");
        rack.remove(0);
        assertThat(rack.lines().value()).hasSize(5);
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(file).set().workshop().stockLengths().orElseThrow().sticks())
                .isEqualTo(sticks());
    }
}
