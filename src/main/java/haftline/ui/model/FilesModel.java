package haftline.ui.model;

import haftline.edit.Journal;
import haftline.edit.NewSet;
import haftline.edit.OpenDocument;
import haftline.edit.Recovery;
import haftline.edit.SaveResult;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.ui.model.Question.Answer;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Opening, saving and closing. What needs an answer is a {@link Question} that stands open; until
 * it is answered nothing is lost.
 */
public final class FilesModel {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                    .withZone(ZoneId.systemDefault());

    private final EditorModel editor;
    private final Preferences preferences;
    private final Path journals;
    private final Watched<Optional<Question>> question = new Watched<>(Optional.empty());
    private final Watched<List<Path>> recent;
    private final Deque<Recovery> left = new ArrayDeque<>();

    /** What goes on once the open question is answered. */
    private Runnable pending = () -> {};

    /** What goes on once the maker keeps his own against another program's change. */
    private Runnable afterKeeping = () -> {};

    /**
     * The files of an editor. The document that it shows is kept in a journal from now on.
     *
     * @param editor the editor
     * @param preferences where recent files are remembered
     * @param journals the folder of journals of unsaved work
     */
    public FilesModel(EditorModel editor, Preferences preferences, Path journals) {
        this.editor = editor;
        this.preferences = preferences;
        this.journals = journals;
        recent = new Watched<>(preferences.recent());
        keepInJournal(editor.document());
        editor.document().file().ifPresent(this::remember);
    }

    private Optional<Journal> keepInJournal(OpenDocument document) {
        try {
            Journal journal = Journal.in(journals);
            document.keepIn(journal);
            return Optional.of(journal);
        } catch (IOException unwritable) {
            editor.refuse(
                    "Unsaved work cannot be kept in "
                            + journals
                            + "; save often ("
                            + unwritable.getMessage()
                            + ")");
            return Optional.empty();
        }
    }

    private void remember(Path file) {
        preferences.opened(file);
        preferences.save();
        recent.set(preferences.recent());
    }

    /**
     * The question that stands open.
     *
     * @return watched; empty where none does
     */
    public Watched<Optional<Question>> question() {
        return question;
    }

    /**
     * Sets that were opened lately.
     *
     * @return watched; the latest first
     */
    public Watched<List<Path>> recent() {
        return recent;
    }

    /**
     * What the title bar says.
     *
     * @return name of the set, with an asterisk before it where there is something to save
     */
    public String title() {
        String mark = editor.document().isModified() ? "*" : "";
        String name = editor.document().draft().set().name();
        String file =
                editor.document()
                        .file()
                        .map(path -> " (" + path.getFileName() + ")")
                        .orElse(" (not saved yet)");
        return mark + name + file;
    }

    /**
     * Opens a set, after a question where there are unsaved changes. A file that cannot be read
     * leaves all as it is and says why.
     *
     * @param file the file
     */
    public void open(Path file) {
        unlessUnsaved("open " + file.getFileName(), () -> read(file));
    }

    private void read(Path file) {
        try {
            show(OpenDocument.of(SetFile.read(file)));
            remember(file);
        } catch (DocumentException wrong) {
            editor.refuse(
                    file.getFileName()
                            + " could not be opened; another set is still shown.\n"
                            + wrong.getMessage());
        }
    }

    /** Begins a new set, after a question where there are unsaved changes. */
    public void newSet() {
        Path folder =
                editor.document()
                        .file()
                        .map(Path::getParent)
                        .orElseGet(() -> Path.of("").toAbsolutePath());
        unlessUnsaved(
                "begin a new set",
                () -> show(OpenDocument.unsaved(NewSet.in(folder, editor.document().loaded()))));
    }

    private Optional<Journal> show(OpenDocument document) {
        OpenDocument before = editor.document();
        editor.show(document);
        Optional<Journal> journal = keepInJournal(document);
        close(before);
        return journal;
    }

    private void close(OpenDocument document) {
        try {
            document.close();
        } catch (IOException stuck) {
            editor.refuse("The journal in " + journals + " stays behind: " + stuck.getMessage());
        }
    }

    /**
     * Closes the editor, after a question where there are unsaved changes.
     *
     * @param then closes the window; not run where the maker stays
     */
    public void close(Runnable then) {
        unlessUnsaved(
                "close",
                () -> {
                    close(editor.document());
                    preferences.save();
                    then.run();
                });
    }

    private void unlessUnsaved(String what, Runnable then) {
        editor.end();
        if (!editor.document().isModified()) {
            then.run();
            return;
        }
        pending = then;
        ask(
                Question.Kind.UNSAVED,
                "\""
                        + name()
                        + "\" has changes that are not saved. Save them before you "
                        + what
                        + "?",
                Answer.SAVE,
                Answer.DROP,
                Answer.STAY);
    }

    private String name() {
        return editor.document().draft().set().name();
    }

    /** Saves; where the set has no name yet, or another program changed it, a question follows. */
    public void save() {
        pending = () -> {};
        saved(editor.document().save());
    }

    /**
     * Saves under another name.
     *
     * @param file the new file; whether another is there was asked by the file chooser
     */
    public void saveAs(Path file) {
        if (!isNaming()) {
            pending = () -> {};
        }
        saved(editor.document().saveAs(file));
    }

    private boolean isNaming() {
        return question.value().filter(q -> q.kind() == Question.Kind.NAME).isPresent();
    }

    private void saved(SaveResult result) {
        question.set(Optional.empty());
        editor.refresh();
        if (result instanceof SaveResult.Saved) {
            editor.document().file().ifPresent(this::remember);
            goOn();
        } else if (result instanceof SaveResult.NeedsName) {
            ask(
                    Question.Kind.NAME,
                    "\"" + name() + "\" has no file yet. Where shall it be saved?",
                    Answer.STAY);
        } else if (result instanceof SaveResult.ChangedOnDisk changed) {
            askChanged(changed.files(), () -> saved(editor.document().save()));
        } else {
            pending = () -> {};
            editor.refuse(((SaveResult.Failed) result).why());
        }
    }

    private void goOn() {
        Runnable next = pending;
        pending = () -> {};
        next.run();
    }

    /**
     * Looks whether another program changed a file, as when the window comes to the front, and asks
     * what to do; a question that was put off is asked again the next time.
     */
    public void look() {
        if (question.value().isEmpty() && !editor.document().isInGesture()) {
            List<Path> changed = editor.document().changedOnDisk();
            if (!changed.isEmpty()) {
                askChanged(changed, () -> {});
            }
        }
    }

    private void askChanged(List<Path> files, Runnable onceKept) {
        afterKeeping = onceKept;
        String names =
                files.stream()
                        .map(file -> file.getFileName().toString())
                        .collect(Collectors.joining(", "));
        String loss =
                editor.document().isModified()
                        ? " Reading again gives up your unsaved changes."
                        : "";
        ask(
                Question.Kind.CHANGED_ON_DISK,
                "Another program has changed " + names + "." + loss,
                Answer.KEEP_MINE,
                Answer.RELOAD,
                Answer.STAY);
    }

    private void reload() {
        editor.document().file().ifPresent(this::read);
    }

    /** Looks for unsaved work that was left behind, and asks about each. */
    public void offerRecovery() {
        left.clear();
        left.addAll(Recovery.left(journals));
        askNextRecovery();
    }

    private void askNextRecovery() {
        if (left.isEmpty()) {
            return;
        }
        Recovery next = left.peek();
        ask(
                Question.Kind.RECOVERY,
                "Unsaved work on \""
                        + next.name()
                        + "\" was left behind on "
                        + WHEN.format(next.at())
                        + ". Recover it?",
                Answer.RECOVER,
                Answer.DISCARD,
                Answer.LATER);
    }

    private void recover(Recovery work) {
        try {
            Optional<Journal> journal = show(work.open());
            if (journal.isPresent()) {
                // What was left behind goes only when it is written down anew.
                journal.get().settle();
                work.discard();
            }
        } catch (DocumentException | IOException wrong) {
            editor.refuse(
                    "The unsaved work in "
                            + work.entry()
                            + " cannot be read: "
                            + wrong.getMessage());
        }
    }

    private void ask(Question.Kind kind, String text, Answer... answers) {
        question.set(Optional.of(new Question(kind, text, List.of(answers))));
    }

    /**
     * Answers the open question. A file for {@link Question.Kind#NAME} is given by {@link #saveAs}.
     *
     * @param answer one of its answers
     * @throws IllegalArgumentException where it is none of them, or no question stands open
     */
    public void answer(Answer answer) {
        if (question.value().filter(q -> q.answers().contains(answer)).isEmpty()) {
            throw new IllegalArgumentException(answer + ": no answer to an open question");
        }
        question.set(Optional.empty());
        switch (answer) {
            case SAVE -> saved(editor.document().save());
            case DROP -> goOn();
            case STAY -> pending = () -> {};
            case RELOAD -> reload();
            case KEEP_MINE -> keepMine();
            case RECOVER -> recover(left.remove());
            case DISCARD -> left.remove().discard();
            case LATER -> left.remove();
        }
        if (answer == Answer.RECOVER) {
            // One document is open at a time; the others are offered at the next start.
            left.clear();
        } else {
            askNextRecovery();
        }
    }

    private void keepMine() {
        editor.document().keepMine();
        editor.refresh();
        afterKeeping.run();
    }
}
