package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.measure.Units;
import haftline.set.Piece;
import haftline.store.LoadedSet;
import haftline.ui.model.ExportProgress.Stage;
import haftline.write.PlannedFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportModelTest {
    @TempDir Path folder;
    private final Deque<Runnable> background = new ArrayDeque<>();
    private Preferences preferences;
    private ExportModel export;
    private String ending = ".";
    private boolean isSpoilt;
    private boolean isLaidOut;
    private int drawn;
    private Units asked;

    /** One file a piece and format. */
    private final class OneEach implements ExportModel.Maker {
        @Override
        public List<String> formats() {
            return ending.equals(".") ? List.of("svg", "dxf") : List.of("csv");
        }

        @Override
        public List<String> templateFormats() {
            return List.of("dxf");
        }

        @Override
        public ExportModel.Plan plan(LoadedSet set, Units units) throws IOException {
            asked = units;
            if (isSpoilt) {
                throw new IOException("metals.csv is spoilt");
            }
            return new ExportModel.Plan() {
                @Override
                public List<PlannedFile> ofPieces(Set<String> formats) {
                    List<PlannedFile> files = new ArrayList<>();
                    set.set()
                            .pieces()
                            .forEach(
                                    piece ->
                                            formats.forEach(
                                                    format -> files.add(file(piece, format))));
                    return files;
                }

                @Override
                public List<PlannedFile> ofTemplates(Set<String> formats) {
                    isLaidOut = true;
                    return List.of();
                }
            };
        }

        private PlannedFile file(Piece piece, String format) {
            return PlannedFile.of(
                    piece.kit() + ending + format,
                    () -> {
                        drawn++;
                        return new byte[] {'x'};
                    });
        }
    }

    @BeforeEach
    void open() {
        Path set = DemoSet.copyTo(folder.resolve("work"));
        preferences = new Preferences(folder.resolve("preferences"));
        export = model(new EditorModel(haftline.edit.OpenDocument.of(DemoSet.read(set))));
    }

    private ExportModel model(EditorModel editor) {
        return new ExportModel(editor, preferences, new OneEach(), background::add, Runnable::run);
    }

    private void work() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }

    private Stage stage() {
        return export.progress().value().stage();
    }

    @Test
    void filesAreInTheUnitOfTheBoard() {
        EditorModel editor =
                new EditorModel(
                        haftline.edit.OpenDocument.of(
                                DemoSet.read(DemoSet.copyTo(folder.resolve("inches")))));
        export = model(editor);
        editor.units().set(Units.INCH);
        export.plan();
        work();
        assertThat(asked).isEqualTo(Units.INCH);
    }

    /** A table that was measured into is worth more than any that is written over it. */
    @Test
    void measuredTablesAreKeptBesideTheNewOnes() throws IOException {
        ending = "-stations.";
        export =
                model(
                        new EditorModel(
                                haftline.edit.OpenDocument.of(
                                        DemoSet.read(DemoSet.copyTo(folder.resolve("again"))))));
        Path to = Files.createDirectory(folder.resolve("out"));
        String measured = "station,from shoulder [mm],measured diameter [mm]\nseat,87.00,18.93\n";
        Files.writeString(to.resolve("shucker-stations.csv"), measured);
        export.choose(to);
        export.plan();
        work();
        export.write();
        work();
        assertThat(stage()).isEqualTo(Stage.WRITTEN);
        assertThat(to.resolve("shucker-stations.csv")).hasContent("x");
        assertThat(to.resolve("shucker-stations.csv~")).hasContent(measured);
        assertThat(export.progress().value().text()).contains("measured into 1 of them is kept");
    }

    @Test
    void whatIsAskedForBeforeTheSheetsAreLaidOutIsWrittenWhenTheyAre() {
        Path to = folder.resolve("out");
        export.choose(to);
        export.write();
        assertThat(stage()).isEqualTo(Stage.PLANNING);
        assertThat(export.progress().value().text()).contains("as soon as");
        work();
        assertThat(stage()).isEqualTo(Stage.WRITTEN);
        assertThat(to.resolve("shucker.svg")).hasContent("x");
        export.write();
        // Another choice is another plan: it is looked at before it is written.
        export.choose("svg", false);
        work();
        export.choose("dxf", false);
        export.write();
        export.choose("dxf", true);
        work();
        assertThat(stage()).isEqualTo(Stage.READY);
    }

    @Test
    void sheetsOfTemplatesAreWrittenAloneWhereThatIsWanted() {
        export.choose("svg", false);
        export.choose("svg", true);
        export.choose(true);
        export.plan();
        work();
        assertThat(export.formats().value()).containsExactly("dxf");
        assertThat(isLaidOut).isTrue();
        assertThat(export.progress().value().planned()).isEmpty();
        export.choose(false);
        export.plan();
        work();
        assertThat(export.formats().value()).containsExactly("dxf", "svg");
        assertThat(export.progress().value().planned()).hasSize(8);
    }

    @Test
    void tellsWhatWillBeWrittenAndWritesIt() throws IOException {
        Path to = Files.createDirectory(folder.resolve("out"));
        Files.writeString(to.resolve("fork.svg"), "old");
        export.choose(to);
        assertThat(stage()).isEqualTo(Stage.PLANNING);
        work();
        assertThat(stage()).isEqualTo(Stage.READY);
        assertThat(export.progress().value().planned())
                .hasSize(8)
                .contains(new ExportProgress.Planned("fork.svg", true))
                .contains(new ExportProgress.Planned("fork.dxf", false));
        assertThat(drawn).as("files drawn before one is asked for").isZero();
        export.choose("dxf", false);
        work();
        assertThat(export.progress().value().planned()).hasSize(4);
        export.write();
        assertThat(stage()).isEqualTo(Stage.WRITING);
        work();
        assertThat(stage()).isEqualTo(Stage.WRITTEN);
        assertThat(export.progress().value().text()).startsWith("4 files in ");
        assertThat(to.resolve("fork.svg")).hasContent("x");
        assertThat(to.resolve("fork.dxf")).doesNotExist();
        assertThat(new Preferences(folder.resolve("preferences")).exportFolder()).contains(to);
    }

    @Test
    void beginsBesideTheSetAndThenWhereItWasLast() throws IOException {
        assertThat(export.folder().value()).isEqualTo(folder.resolve("work/profiles/sets/exports"));
        Path last = Files.createDirectory(folder.resolve("last"));
        preferences.exportFolder(last);
        assertThat(model(new EditorModel(DemoSet.open())).folder().value()).isEqualTo(last);
        Files.delete(last);
        assertThat(model(new EditorModel(DemoSet.open())).folder().value()).isNotEqualTo(last);
    }

    @Test
    void aFolderThatCannotBeSaysWhy() throws IOException {
        export.choose(Files.writeString(folder.resolve("file"), ""));
        work();
        assertThat(stage()).isEqualTo(Stage.BLOCKED);
        assertThat(export.progress().value().text()).contains("A file has the folder's name");
        export.write();
        assertThat(background).isEmpty();
        export.choose(folder.resolve("file").resolve("deeper"));
        work();
        assertThat(stage()).isEqualTo(Stage.BLOCKED);
        export.choose(folder.resolve("not").resolve("there"));
        work();
        assertThat(stage()).isEqualTo(Stage.READY);
    }

    @Test
    void whatGoesWrongIsTold() throws IOException {
        Path to = folder.resolve("out");
        export.choose(to);
        work();
        Files.writeString(to, "in the way since");
        export.write();
        work();
        assertThat(stage()).isEqualTo(Stage.FAILED);
        assertThat(export.progress().value().text()).contains("it is a file, not a folder");
        assertThat(preferences.exportFolder()).isEmpty();
        isSpoilt = true;
        export.plan();
        work();
        assertThat(stage()).isEqualTo(Stage.BLOCKED);
        assertThat(export.progress().value().text()).isEqualTo("metals.csv is spoilt");
    }

    @Test
    void anOvertakenPlanIsForgotten() {
        export.choose("dxf", false);
        export.choose("svg", false);
        background.remove().run();
        assertThat(stage()).isEqualTo(Stage.PLANNING);
        work();
        assertThat(stage()).isEqualTo(Stage.BLOCKED);
        assertThat(export.progress().value().text()).startsWith("Nothing to write");
    }

    @Test
    void theFilesOfPiecesAreShownBeforeTemplatesAreLaidOut() {
        export.plan();
        work();
        isLaidOut = false;
        List<Stage> stages = new ArrayList<>();
        export.progress()
                .watch(
                        progress -> {
                            stages.add(progress.stage());
                            if (progress.stage() == Stage.LAYING_OUT) {
                                assertThat(progress.planned()).hasSize(8);
                                assertThat(isLaidOut).isFalse();
                            }
                        });
        export.choose(folder.resolve("out"));
        work();
        assertThat(stages).containsExactly(Stage.PLANNING, Stage.LAYING_OUT, Stage.READY);
    }

    @Test
    void onlyTheFileThatIsChosenLastIsMadeForItsPreview() {
        export.choose(folder.resolve("out"));
        work();
        export.preview("fork.svg");
        export.preview("fork.dxf");
        assertThat(export.preview().value()).isEqualTo(new ExportPreview.Waiting("fork.dxf"));
        work();
        assertThat(export.preview().value()).isEqualTo(new ExportPreview.Words("fork.dxf", "x"));
        assertThat(drawn).isEqualTo(1);
        export.preview("no such file");
        assertThat(export.preview().value()).isEqualTo(new ExportPreview.Waiting(""));
    }

    @Test
    void writingTellsHowFarItIsAndMayBeDoneAgain() {
        export.choose(folder.resolve("out"));
        work();
        List<Double> shares = new ArrayList<>();
        export.progress().watch(progress -> shares.add(progress.share()));
        export.write();
        export.choose("dxf", false);
        work();
        assertThat(shares).isSorted().hasSize(10).last().isEqualTo(1.0);
        assertThat(export.progress().value().planned()).hasSize(8);
        export.write();
        work();
        assertThat(stage()).isEqualTo(Stage.WRITTEN);
    }
}
