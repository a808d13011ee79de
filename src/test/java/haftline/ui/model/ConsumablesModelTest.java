package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.SaveResult;
import haftline.set.Rates.Consumable;
import haftline.ui.model.ConsumablesModel.Column;
import haftline.ui.model.ConsumablesModel.Line;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConsumablesModelTest {
    @TempDir Path folder;
    private Path file;
    private EditorModel editor;
    private ConsumablesModel model;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        model = new ConsumablesModel(editor);
    }

    private List<Consumable> used() {
        return editor.draft().value().set().workshop().rates().orElseThrow().consumables();
    }

    private String refusal(int index, Column column, String text) {
        return model.enter(index, column, text).refusal().orElse("");
    }

    @Test
    void everyEntryIsOneStepBack() {
        assertThat(model.lines().value().get(0))
                .isEqualTo(new Line("abrasive", "sheet", "0.25", "0.9"));
        List<Consumable> before = used();
        model.enter(0, Column.NAME, "abrasive, 240");
        model.enter(0, Column.UNIT, "disc");
        model.enter(0, Column.EACH, "0,5");
        model.enter(0, Column.PRICE, "1.25");
        assertThat(used().get(0)).isEqualTo(new Consumable("abrasive, 240", "disc", 0.5, 1.25));
        assertThat(editor.status().value().undoName()).contains("change price of abrasive, 240");
        for (int i = 0; i < 4; i++) {
            editor.undo();
        }
        assertThat(used()).isEqualTo(before);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void wrongEntriesAreRefusedInWordsAndChangeNothing() {
        for (String wrong : List.of("", "some", "-1", "100001")) {
            assertThat(refusal(0, Column.EACH, wrong))
                    .as(wrong)
                    .isEqualTo("Expected an amount from 0 to 100000");
        }
        for (String wrong : List.of("", "dear", "-0.1", "10000001")) {
            assertThat(refusal(0, Column.PRICE, wrong))
                    .as(wrong)
                    .isEqualTo("Expected a price from 0 to 10000000");
        }
        assertThat(refusal(1, Column.NAME, "ABRASIVE")).contains("abrasive already");
        assertThat(refusal(1, Column.NAME, "")).contains("Expected a name");
        assertThat(model.add("box and card").refusal()).isPresent();
        assertThat(editor.status().value().isModified()).isFalse();
        assertThat(editor.notice().value()).isEmpty();
    }

    @Test
    void linesComeAndGoAndAreSavedWithTheirNotes() throws Exception {
        Path shared = file.resolveSibling("../../shared/workshop-tidewater.yaml").normalize();
        Files.writeString(
                shared,
                Files.readString(shared)
                        .replace(
                                "unit: ml, each: 2, price: 0.08}",
                                "unit: ml, each: 2, price: 0.08}   # two coats"));
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        model = new ConsumablesModel(editor);
        model.add(" tissue ");
        assertThat(used()).last().isEqualTo(new Consumable("tissue", "", 1, 0));
        model.remove(0);
        model.enter(0, Column.UNIT, "");
        model.enter(0, Column.NAME, "oil");
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(file).set().workshop().rates().orElseThrow().consumables())
                .isEqualTo(used());
        assertThat(Files.readString(shared))
                .containsPattern("- \\{name: oil, each: 2, price: 0.08} +# two coats\n")
                .doesNotContain("abrasive");
    }
}
