package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.ui.model.Question.Answer;
import haftline.ui.model.Question.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesModelTest {
    @TempDir Path folder;
    private Path file;
    private Path other;
    private EditorModel editor;
    private FilesModel files;
    private boolean isClosed;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder.resolve("one"));
        other = DemoSet.copyTo(folder.resolve("two"));
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        files = new FilesModel(editor, preferences(), folder.resolve("recovery"));
        isClosed = false;
    }

    @AfterEach
    void close() throws IOException {
        editor.document().close();
    }

    private Preferences preferences() {
        return new Preferences(folder.resolve("preferences"));
    }

    private void change() {
        assertThat(editor.run(PieceEdits.rename("shucker", "opener")).isDone()).isTrue();
    }

    private Kind asked() {
        return files.question().value().orElseThrow().kind();
    }

    @Test
    void opensAtOnceWhereNothingIsUnsaved() {
        files.open(other);
        assertThat(editor.document().file()).contains(other);
        assertThat(files.recent().value()).containsExactly(other, file);
        assertThat(preferences().recent()).containsExactly(other, file);
    }

    @Test
    void asksBeforeChangesAreLost() {
        change();
        files.open(other);
        assertThat(asked()).isEqualTo(Kind.UNSAVED);
        assertThat(editor.document().file()).contains(file);
        files.answer(Answer.STAY);
        assertThat(editor.document().isModified()).isTrue();
        assertThat(files.question().value()).isEmpty();
        files.open(other);
        files.answer(Answer.SAVE);
        assertThat(editor.document().file()).contains(other);
        assertThat(DemoSet.read(file).set().piece("opener")).isPresent();
    }

    @Test
    void droppedChangesAreNotSaved() {
        change();
        files.close(() -> isClosed = true);
        assertThat(isClosed).isFalse();
        files.answer(Answer.DROP);
        assertThat(isClosed).isTrue();
        assertThat(DemoSet.read(file).set().piece("opener")).isEmpty();
        assertThat(folder.resolve("recovery")).isEmptyDirectory();
    }

    @Test
    void aNewSetIsNamedBeforeTheWindowCloses() {
        files.newSet();
        assertThat(files.title()).isEqualTo("New set (not saved yet)");
        assertThat(editor.run(PieceEdits.rename("piece 1", "awl")).isDone()).isTrue();
        files.close(() -> isClosed = true);
        files.answer(Answer.SAVE);
        assertThat(asked()).isEqualTo(Kind.NAME);
        assertThat(isClosed).isFalse();
        Path to = folder.resolve("awls.yaml");
        files.saveAs(to);
        assertThat(isClosed).isTrue();
        assertThat(DemoSet.read(to).set().piece("awl")).isPresent();
    }

    @Test
    void aBrokenFileLeavesAllAsItIsAndSaysWhy() throws IOException {
        Files.writeString(other, "haftline: 1\nkind: set\nnamme: x\n");
        files.open(other);
        assertThat(editor.document().file()).contains(file);
        assertThat(editor.notice().value().orElseThrow()).contains("namme").contains("name");
        assertThat(files.recent().value()).containsExactly(file);
    }

    @Test
    void asksOnceWhenAnotherProgramChangedAFile() throws IOException {
        Files.writeString(file, Files.readString(file).replace("swell: 22", "swell: 23"));
        files.look();
        assertThat(asked()).isEqualTo(Kind.CHANGED_ON_DISK);
        files.answer(Answer.RELOAD);
        assertThat(editor.draft().value().set().common().swellMm()).hasValue(23);
        files.look();
        assertThat(files.question().value()).isEmpty();
    }

    @Test
    void keepingMineInASaveSaves() throws IOException {
        change();
        Files.writeString(file, Files.readString(file).replace("swell: 22", "swell: 23"));
        files.close(() -> isClosed = true);
        files.answer(Answer.SAVE);
        assertThat(asked()).isEqualTo(Kind.CHANGED_ON_DISK);
        files.answer(Answer.KEEP_MINE);
        assertThat(isClosed).isTrue();
        assertThat(DemoSet.read(file).set().common().swellMm()).hasValue(22);
    }

    @Test
    void keepingMineWithoutASaveIsModified() throws IOException {
        Files.writeString(file, Files.readString(file) + "# more\n");
        files.look();
        files.answer(Answer.KEEP_MINE);
        assertThat(editor.status().value().isModified()).isTrue();
        files.look();
        assertThat(files.question().value()).isEmpty();
    }

    @Test
    void workLeftBehindIsOfferedAndRecovered() throws IOException {
        change();
        Path left = folder.resolve("recovery");
        // As a kill leaves it: the folder stays, its lock does not.
        Path copy = folder.resolve("copy");
        copyWhenWritten(left, copy);
        editor.document().close();
        EditorModel next = new EditorModel(OpenDocument.of(DemoSet.read(other)));
        FilesModel nextFiles = new FilesModel(next, preferences(), copy);
        nextFiles.offerRecovery();
        Question question = nextFiles.question().value().orElseThrow();
        assertThat(question.kind()).isEqualTo(Kind.RECOVERY);
        assertThat(question.text()).contains("Tidewater");
        nextFiles.answer(Answer.RECOVER);
        assertThat(next.document().file()).contains(file);
        assertThat(next.draft().value().set().piece("opener")).isPresent();
        assertThat(next.status().value().isModified()).isTrue();
        assertThat(nextFiles.title()).startsWith("*Tidewater");
        next.document().close();
        nextFiles.offerRecovery();
        assertThat(nextFiles.question().value()).isEmpty();
    }

    private static void copyWhenWritten(Path from, Path to) throws IOException {
        for (int i = 0; i < 500; i++) {
            try (var all = Files.walk(from)) {
                if (all.anyMatch(path -> path.endsWith("1/set.yaml"))) {
                    break;
                }
            } catch (java.io.UncheckedIOException beingWritten) {
                continue;
            }
            java.util.concurrent.locks.LockSupport.parkNanos(5_000_000);
        }
        try (var all = Files.walk(from)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                Files.createDirectories(target.getParent());
                Files.copy(each, target);
            }
        }
    }

    @Test
    void onlyOpenQuestionsAreAnswered() {
        assertThatThrownBy(() -> files.answer(Answer.SAVE))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
