package haftline.ui.app;

import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.Question;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;

/** Opening and saving sets, with the questions that go with it. */
final class Filing {
    private final EditorModel editor;
    private final FilesModel files;
    private final Dialogs dialogs;

    Filing(EditorModel editor, FilesModel files, Dialogs dialogs) {
        this.editor = editor;
        this.files = files;
        this.dialogs = dialogs;
        files.question().watch(this::put);
    }

    /** Puts a question once the answering of the last one is through. */
    private void put(Optional<Question> question) {
        question.ifPresent(
                asked ->
                        Platform.runLater(
                                () -> {
                                    if (files.question().value().equals(question)) {
                                        answer(asked);
                                    }
                                }));
    }

    private void answer(Question question) {
        if (question.kind() == Question.Kind.NAME) {
            dialogs.saveSet(folder(), fileName())
                    .ifPresentOrElse(files::saveAs, () -> files.answer(Question.Answer.STAY));
        } else {
            files.answer(dialogs.ask(question));
        }
    }

    /** The set's folder. */
    Path folder() {
        return editor.document().loaded().file().toAbsolutePath().getParent();
    }

    private String fileName() {
        String name = editor.draft().value().set().name().toLowerCase(Locale.ROOT);
        return name.replaceAll("[^a-z0-9]+", "-") + ".yaml";
    }

    void open() {
        dialogs.openSet(folder()).ifPresent(files::open);
    }

    void saveAs() {
        dialogs.saveSet(folder(), fileName()).ifPresent(files::saveAs);
    }
}
