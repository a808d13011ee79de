package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.OpenProgress;
import haftline.edit.PieceEdits;
import haftline.measure.Units;
import haftline.set.production.Production;
import haftline.store.ProgressFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProductionModelTest {
    @TempDir Path folder;
    private final Background background = new Background();
    private Path file;
    private EditorModel editor;
    private ProductionModel batch;

    @BeforeEach
    void open() {
        Path set = DemoSet.copyTo(folder);
        file = ProgressFile.beside(set);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(set)));
        batch = again();
    }

    private ProductionModel again() {
        ProductionModel model =
                new ProductionModel(editor, background.latest(), background.latest());
        model.refresh();
        background.work();
        return model;
    }

    private Production production() {
        return batch.production().value().orElseThrow();
    }

    @Test
    void quantitiesAreTypedPieceByPieceOrForAll() {
        assertThat(production().pieces()).isEqualTo(4);
        batch.all("12");
        batch.quantity("citrus zester", "0");
        background.work();
        assertThat(production().pieces()).isEqualTo(36);
        assertThat(production().orders())
                .extracting(o -> o.piece())
                .doesNotContain("citrus zester");
        batch.quantity("shucker", "a dozen");
        assertThat(editor.notice().value().orElseThrow()).contains("0 to 1000");
        assertThat(batch.quantities().value().get("shucker")).isEqualTo(12);
        batch.all("0");
        background.work();
        assertThat(batch.production().value()).isEmpty();
    }

    @Test
    void everyTickIsKeptAtOnceAndCanBeTakenBack() throws Exception {
        batch.all("3");
        background.work();
        batch.begin();
        batch.allDone("saw");
        batch.tick("shucker", "bore", 1);
        assertThat(OpenProgress.read(file).progress().ticks()).isEqualTo(13);
        batch.undo();
        assertThat(OpenProgress.read(file).progress().ticks()).isEqualTo(12);
        batch.redo();
        batch.allOf("shucker", "bore");
        assertThat(OpenProgress.read(file).progress().done("shucker", "bore")).isEqualTo(3);
        // The next time it is opened, the batch under way is shown.
        ProductionModel later = again();
        assertThat(later.quantities().value()).containsEntry("shucker", 3);
        assertThat(later.status().value().text()).startsWith("15 of 84 steps");
    }

    @Test
    void whatIsBegunIsWhatWasLastTyped() throws Exception {
        batch.all("3");
        batch.begin();
        background.work();
        assertThat(OpenProgress.read(file).progress().quantityOf("shucker")).isEqualTo(3);
    }

    @Test
    void ticksAreNotPutAsideWithoutAskingAgain() throws Exception {
        batch.begin();
        batch.allDone("saw");
        batch.begin();
        assertThat(batch.beginsAnew().value()).isTrue();
        assertThat(OpenProgress.read(file).progress().ticks()).isEqualTo(4);
        batch.begin();
        assertThat(OpenProgress.read(file).progress().ticks()).isZero();
    }

    @Test
    void ticksOfAnotherProgramAreNotWrittenOver() throws Exception {
        batch.begin();
        OpenProgress other = OpenProgress.read(file);
        other.apply(haftline.edit.ProgressEdits.allDone("turn"));
        other.save();
        batch.tick("shucker", "saw", 1);
        assertThat(editor.notice().value().orElseThrow()).contains("Another program");
        assertThat(batch.status().value().progress().orElseThrow().done("shucker", "turn"))
                .isEqualTo(1);
    }

    @Test
    void withoutAFileThereIsNoProgress() {
        EditorModel unsaved = new EditorModel(OpenDocument.unsaved(DemoSet.load()));
        ProductionModel model =
                new ProductionModel(unsaved, background.latest(), background.latest());
        model.refresh();
        background.work();
        model.begin();
        assertThat(unsaved.notice().value().orElseThrow()).contains("Save the set first");
    }

    @Test
    void sticksAreDrawnAndTablesFollow() {
        batch.all("12");
        background.work();
        List<PlanRows.Row> rows = PlanRows.of(production(), Units.MM);
        double drawn =
                rows.stream()
                        .filter(PlanRows.Stick.class::isInstance)
                        .map(PlanRows.Stick.class::cast)
                        .mapToDouble(
                                s ->
                                        s.cut().times()
                                                * s.cut().blanks().stream()
                                                        .mapToInt(taken -> taken.count())
                                                        .sum())
                        .sum();
        // Twelve of each of four, and a spare one of each.
        assertThat(drawn).isEqualTo(52);
        assertThat(rows)
                .filteredOn(PlanRows.Heading.class::isInstance)
                .extracting(row -> ((PlanRows.Heading) row).text())
                .contains(
                        "Blanks",
                        "Sticks and cuts",
                        "Drills",
                        "Time",
                        "Cost of the batch",
                        "Price of one");
    }

    @Test
    void tablesAndSheetsAreWritten() throws Exception {
        Path to = folder.resolve("out");
        batch.export(to);
        background.work();
        try (var files = Files.list(to)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .contains("tidewater-batch.pdf", "tidewater-batch-cuts.csv");
        }
    }

    /** Ticks stand beside a set that knows its pieces by the old names until it is saved. */
    @Test
    void aRenamedPieceKeepsItsTicks() throws Exception {
        batch.all("3");
        background.work();
        batch.begin();
        batch.tick("shucker", "saw", 2);
        editor.run(PieceEdits.rename("shucker", "oyster knife"));
        batch.refresh();
        background.work();
        assertThat(batch.status().value().progress().orElseThrow().done("oyster knife", "saw"))
                .isEqualTo(2);
        assertThat(batch.quantities().value()).containsEntry("oyster knife", 3);
        batch.tick("oyster knife", "bore", 1);
        assertThat(editor.notice().value()).isEmpty();
        assertThat(ProgressFile.read(file).done("shucker", "bore")).isEqualTo(1);
        assertThat(editor.document().save().isSaved()).isTrue();
        editor.end();
        assertThat(ProgressFile.read(file).done("oyster knife", "saw")).isEqualTo(2);
        // What was written with the set is not taken for another program's work.
        batch.tick("oyster knife", "turn", 1);
        assertThat(editor.notice().value()).isEmpty();
        assertThat(ProgressFile.read(file).done("oyster knife", "turn")).isEqualTo(1);
        editor.undo();
        batch.refresh();
        background.work();
        assertThat(batch.status().value().progress().orElseThrow().done("shucker", "turn"))
                .isEqualTo(1);
    }

    @Test
    void aNameThatWasGivenBackIsNoNewName() throws Exception {
        batch.begin();
        batch.tick("shucker", "saw", 1);
        editor.run(PieceEdits.rename("shucker", "oyster knife"));
        editor.run(PieceEdits.rename("oyster knife", "shucker"));
        editor.run(PieceEdits.reorder("shucker", 2));
        assertThat(editor.document().save().isSaved()).isTrue();
        assertThat(ProgressFile.read(file).done("shucker", "saw")).isEqualTo(1);
    }
}
