package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import haftline.set.production.Progress;
import haftline.store.ProgressFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenProgressTest {
    @TempDir Path folder;
    private OpenProgress open;

    @BeforeEach
    void begin() {
        Path file = ProgressFile.beside(folder.resolve("bar.yaml"));
        Progress first =
                new Progress(
                        "Bar",
                        "B1",
                        List.of("saw", "bore deep"),
                        List.of(
                                new Progress.PieceProgress("knife", 3, List.of(0, 0)),
                                new Progress.PieceProgress("fork: big", 2, List.of(0, 0))));
        open = OpenProgress.begun(file, first);
    }

    private Outcome tick(String text) {
        return open.apply(ProgressEdits.parse(text, open.progress()));
    }

    @Test
    void keepsWhatIsTickedOffBesideTheSet() throws Exception {
        assertThat(open.isModified()).isTrue();
        assertThat(tick("knife: bore deep 2").isDone()).isTrue();
        assertThat(tick("fork: big: saw").isDone()).isTrue();
        assertThat(open.save().isSaved()).isTrue();
        assertThat(open.isModified()).isFalse();
        assertThat(open.file()).hasFileName("bar-progress.yaml");
        OpenProgress again = OpenProgress.read(open.file());
        assertThat(again.progress()).isEqualTo(open.progress());
        assertThat(again.progress().done("knife", "bore deep")).isEqualTo(2);
        assertThat(again.progress().done("fork: big", "saw")).isEqualTo(2);
        assertThat(again.progress().ticks()).isEqualTo(4);
        assertThat(again.progress().ticksInAll()).isEqualTo(10);
        assertThat(again.progress().isFinished()).isFalse();
    }

    @Test
    void everyTickIsUndone() {
        Progress before = open.progress();
        open.apply(ProgressEdits.tick("knife", "saw", 1));
        open.apply(ProgressEdits.tick("knife", "saw", 1));
        open.apply(ProgressEdits.allDone("bore deep"));
        Progress after = open.progress();
        assertThat(open.undoName()).hasValue("bore deep all");
        assertThat(open.undo() && open.undo() && open.undo()).isTrue();
        assertThat(open.undo()).isFalse();
        assertThat(open.progress()).isEqualTo(before);
        assertThat(open.redoName()).hasValue("saw knife");
        assertThat(open.redo() && open.redo() && open.redo()).isTrue();
        assertThat(open.progress()).isEqualTo(after);
    }

    @Test
    void refusesMoreThanThereAre() {
        assertThat(tick("knife: saw 4").refusal())
                .hasValueSatisfying(why -> assertThat(why).contains("4").contains("from 0 to 3"));
        assertThat(open.apply(ProgressEdits.tick("knife", "saw", -1)).isDone()).isFalse();
        assertThat(tick("knif: saw 1").refusal().orElseThrow()).contains("did you mean \"knife\"?");
        assertThat(tick("knife: sew 1").refusal().orElseThrow()).contains("did you mean \"saw\"?");
        assertThatThrownBy(() -> ProgressEdits.parse("saw 1", open.progress()))
                .hasMessageContaining("expected a piece, a colon");
        assertThat(open.progress().ticks()).isZero();
    }

    @Test
    void doesNotWriteOverWhatAnotherProgramWrote() throws Exception {
        open.save();
        OpenProgress other = OpenProgress.read(open.file());
        other.apply(ProgressEdits.done("knife", "saw", 1));
        other.save();
        open.apply(ProgressEdits.done("knife", "saw", 3));
        assertThat(open.save()).isInstanceOf(SaveResult.ChangedOnDisk.class);
        assertThat(ProgressFile.read(open.file()).done("knife", "saw")).isEqualTo(1);
        assertThat(open.saveOver().isSaved()).isTrue();
        assertThat(ProgressFile.read(open.file()).done("knife", "saw")).isEqualTo(3);
    }

    @Test
    void saysWhyItIsNotKept() throws Exception {
        Path missing = folder.resolve("none").resolve("bar-progress.yaml");
        OpenProgress nowhere = OpenProgress.begun(missing, open.progress());
        assertThat(nowhere.save()).isInstanceOf(SaveResult.Failed.class);
        assertThat(nowhere.isModified()).isTrue();
        assertThat(Files.exists(missing)).isFalse();
    }
}
