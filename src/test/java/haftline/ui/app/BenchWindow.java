package haftline.ui.app;

import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.Question;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** The window for measuring: remembers nothing, asks nothing. */
public final class BenchWindow {
    private BenchWindow() {}

    private static final class Silent implements Dialogs {
        @Override
        public Optional<Path> openSet(Path folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> saveSet(Path folder, String name) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> openParts(Path folder) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> savePdf(Path folder, String name) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> folder(Path folder) {
            return Optional.empty();
        }

        @Override
        public Question.Answer ask(Question question) {
            return question.answers().get(question.answers().size() - 1);
        }

        @Override
        public Optional<String> name(String what, String name) {
            return Optional.empty();
        }
    }

    /**
     * A window on a set.
     *
     * @param editor the set
     * @return the window's content
     * @throws IOException where there is no room for passing files
     */
    public static Workbench of(EditorModel editor) throws IOException {
        return of(editor, where -> {});
    }

    static Workbench of(EditorModel editor, Consumer<Path> opener) throws IOException {
        Path kept = Files.createTempDirectory("bench");
        Preferences preferences = new Preferences(kept.resolve("editor.properties"));
        preferences.guideDismissed(true);
        return new Workbench(
                editor,
                preferences,
                new FilesModel(editor, preferences, kept.resolve("unsaved")),
                new Silent(),
                opener);
    }
}
