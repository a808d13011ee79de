package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.edit.SaveResult;
import haftline.set.Rates.PieceMinutes;
import haftline.set.Rates.WorkStep;
import haftline.ui.model.StepsModel.Column;
import haftline.ui.model.StepsModel.Line;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepsModelTest {
    @TempDir Path folder;
    private Path file;
    private EditorModel editor;
    private StepsModel model;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        model = new StepsModel(editor);
    }

    private List<WorkStep> steps() {
        return editor.draft().value().set().workshop().rates().orElseThrow().steps();
    }

    private List<String> names() {
        return steps().stream().map(WorkStep::name).toList();
    }

    private String refusal(int index, Column column, String text) {
        return model.enter(index, column, text).refusal().orElse("");
    }

    @Test
    void aStepStandsOverThePiecesThatTakeAnotherTime() {
        assertThat(model.lines().value().subList(2, 5))
                .containsExactly(
                        new Line("turn", Optional.empty(), true, "10", "14", "no"),
                        new Line("turn", Optional.of("shucker"), true, "", "18", ""),
                        new Line("sand", Optional.empty(), true, "2", "6", "no"));
        assertThat(model.lines().value().get(3).has(Column.SETUP)).isFalse();
        assertThat(model.lines().value().get(3).has(Column.EACH)).isTrue();
    }

    @Test
    void everyEntryIsOneStepBack() {
        List<WorkStep> before = steps();
        model.enter(2, Column.NAME, " rough-turn ");
        model.enter(2, Column.SETUP, "12,5 min");
        model.enter(2, Column.EACH, "15");
        model.enter(3, Column.EACH, "20");
        model.enter(2, Column.GLUING, "yes");
        assertThat(steps().get(2))
                .isEqualTo(
                        new WorkStep(
                                "rough-turn",
                                12.5,
                                15,
                                true,
                                List.of(new PieceMinutes("shucker", 20))));
        assertThat(editor.status().value().undoName()).contains("change gluing of rough-turn");
        editor.undo();
        assertThat(editor.status().value().undoName())
                .contains("change minutes of rough-turn for shucker");
        for (int i = 0; i < 4; i++) {
            editor.undo();
        }
        assertThat(steps()).isEqualTo(before);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void wrongEntriesAreRefusedInWordsAndChangeNothing() {
        for (String wrong : List.of("", "long", "-1", "10081", "1:30", "5 h")) {
            assertThat(refusal(0, Column.SETUP, wrong))
                    .as(wrong)
                    .isEqualTo("Expected minutes from 0 to 10080");
            assertThat(refusal(3, Column.EACH, wrong)).as(wrong).contains("0 to 10080");
        }
        assertThat(refusal(0, Column.NAME, " ")).contains("Expected a name");
        assertThat(refusal(0, Column.NAME, "Turn")).contains("there is a step turn already");
        assertThat(model.add("bore").refusal().orElse("")).contains("step bore");
        assertThat(model.add(" ").refusal()).isPresent();
        assertThat(model.earlier(0).refusal()).isPresent();
        assertThat(model.earlier(3).refusal()).isPresent();
        assertThat(model.add("polish", "shucker").refusal()).isPresent();
        assertThat(editor.status().value().isModified()).isFalse();
        assertThat(editor.notice().value()).isEmpty();
        // The same name in other letters is no other step.
        assertThat(refusal(0, Column.NAME, "Saw")).isEmpty();
    }

    @Test
    void stepsComeGoAndChangePlaces() {
        model.add(" pack ");
        assertThat(names()).last().isEqualTo("pack");
        model.earlier(model.lines().value().size() - 1);
        // The line of turn's shucker stands between.
        model.earlier(4);
        assertThat(names())
                .containsExactly("saw", "bore", "sand", "turn", "finish", "join", "pack", "check");
        assertThat(editor.status().value().undoName()).contains("do sand earlier");
        model.remove(3);
        assertThat(names()).doesNotContain("turn").hasSize(7);
        model.remove(0);
        assertThat(names()).first().isEqualTo("bore");
    }

    @Test
    void aPieceGetsAnotherTimeAndLosesIt() {
        assertThat(model.others("turn"))
                .containsExactly("butter spreader", "seafood fork", "citrus zester");
        assertThat(model.others("polish")).isEmpty();
        model.add("turn", "citrus zester");
        assertThat(steps().get(2).pieces()).last().isEqualTo(new PieceMinutes("citrus zester", 14));
        model.enter(4, Column.EACH, "11");
        model.remove(3);
        assertThat(steps().get(2).pieces()).containsExactly(new PieceMinutes("citrus zester", 11));
    }

    @Test
    void aSaveKeepsNotesBesideTheStepsTheyAreOf() throws Exception {
        Path shared = file.resolveSibling("../../shared/workshop-tidewater.yaml").normalize();
        String text = Files.readString(shared);
        Files.writeString(
                shared,
                text.replace(
                                "- {step: saw, setup: 10, each: 1}",
                                "- {step: saw, setup: 10, each: 1}   # with the stop set")
                        .replace("    - {step: sand,", "    # to 320 grit\n    - {step: sand,")
                        .replace(
                                "- {step: check, each: 2}",
                                "- {step: check, each: 2}   # by the sheet"));
        open(editorOf(file));
        model.add("oil");
        model.remove(1);
        model.earlier(3);
        model.enter(0, Column.NAME, "crosscut");
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(file).set().workshop().rates().orElseThrow().steps())
                .isEqualTo(steps());
        assertThat(Files.readString(shared))
                .containsPattern("- \\{step: crosscut, setup: 10, each: 1} +# with the stop set\n")
                .contains("    # to 320 grit\n    - {step: sand,")
                .containsPattern("- \\{step: check, each: 2} +# by the sheet\n")
                .contains("# of the selling price");
    }

    @Test
    void aPieceThatTheSetHasNotIsToldApart() {
        editor.run(PieceEdits.rename("shucker", "oyster knife"));
        assertThat(model.lines().value().get(3).isOfSet()).isFalse();
        assertThat(model.others("turn")).doesNotContain("oyster knife");
        editor.undo();
        assertThat(model.lines().value().get(3).isOfSet()).isTrue();
    }

    private static EditorModel editorOf(Path file) {
        return new EditorModel(OpenDocument.of(DemoSet.read(file)));
    }

    private void open(EditorModel other) {
        editor = other;
        model = new StepsModel(editor);
    }
}
