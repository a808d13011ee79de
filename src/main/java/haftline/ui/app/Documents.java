package haftline.ui.app;

import haftline.edit.Journal;
import haftline.edit.NewSet;
import haftline.edit.OpenDocument;
import haftline.edit.Recovery;
import haftline.edit.SaveResult;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.ui.model.EditorModel;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Opening, saving and recovering the set at hand, with the questions that go with it. */
final class Documents {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

    private final EditorModel editor;
    private final Settings settings;
    private final Dialogs dialogs;
    private List<Path> known = List.of();

    Documents(EditorModel editor, Settings settings, Dialogs dialogs) {
        this.editor = editor;
        this.settings = settings;
        this.dialogs = dialogs;
        keepJournal();
    }

    private OpenDocument document() {
        return editor.document();
    }

    private Path beside() {
        return document().loaded().file().toAbsolutePath().getParent();
    }

    void open() {
        dialogs.openSet(beside()).ifPresent(this::open);
    }

    void open(Path set) {
        if (!mayLeave()) {
            return;
        }
        try {
            show(OpenDocument.of(SetFile.read(set)));
            settings.opened(set);
        } catch (DocumentException wrong) {
            editor.refuse(wrong.getMessage());
        }
    }

    void begin() {
        if (mayLeave()) {
            show(OpenDocument.unsaved(NewSet.in(beside(), document().loaded())));
        }
    }

    private void show(OpenDocument other) {
        leave();
        editor.show(other);
        known = List.of();
        keepJournal();
    }

    private void keepJournal() {
        try {
            document().keepIn(Journal.in(settings.recoveryFolder()));
        } catch (IOException unwritable) {
            editor.refuse("Unsaved work cannot be kept: " + unwritable.getMessage());
        }
    }

    /** Closes the document at hand; its journal goes with it. */
    void leave() {
        try {
            document().close();
        } catch (IOException left) {
            editor.refuse("The record of unsaved work stays behind: " + left.getMessage());
        }
    }

    boolean save() {
        return told(document().save());
    }

    boolean saveAs() {
        String name = document().loaded().set().name().toLowerCase(Locale.ROOT);
        return dialogs.saveSet(beside(), name.replaceAll("[^a-z0-9]+", "-") + ".yaml")
                .filter(to -> told(document().saveAs(to)))
                .isPresent();
    }

    private boolean told(SaveResult result) {
        editor.end();
        if (result instanceof SaveResult.Saved) {
            document().file().ifPresent(settings::opened);
            editor.notice().set(Optional.empty());
            return true;
        }
        if (result instanceof SaveResult.NeedsName) {
            return saveAs();
        }
        if (result instanceof SaveResult.ChangedOnDisk changed) {
            ask(changed.files());
        } else {
            editor.refuse(((SaveResult.Failed) result).why());
        }
        return false;
    }

    /**
     * Whether the document at hand may go: nothing is unsaved, or it is saved now, or the maker
     * drops it.
     */
    boolean mayLeave() {
        if (!document().isModified()) {
            return true;
        }
        return switch (dialogs.unsaved(document().loaded().set().name())) {
            case SAVE -> save();
            case DROP -> true;
            case STAY -> false;
        };
    }

    /** Asks about files that have changed on the disk since it was last asked. */
    void look() {
        List<Path> changed = document().changedOnDisk();
        if (!changed.isEmpty() && !changed.equals(known)) {
            ask(changed);
        }
    }

    private void ask(List<Path> changed) {
        known = changed;
        switch (dialogs.changedOnDisk(changed)) {
            case KEEP_MINE -> {
                document().keepMine();
                known = List.of();
                editor.end();
            }
            case READ_AGAIN -> document().file().ifPresent(this::readAgain);
            case LATER ->
                    editor.refuse(
                            "Not saved over: "
                                    + changed.get(0)
                                    + " has changed on the disk since it was read");
        }
    }

    private void readAgain(Path file) {
        try {
            show(OpenDocument.of(SetFile.read(file)));
        } catch (DocumentException wrong) {
            editor.refuse(wrong.getMessage());
        }
    }

    /** Offers what an editor that was killed has left behind. */
    void recover() {
        for (Recovery left : Recovery.left(settings.recoveryFolder())) {
            String when = WHEN.format(left.at().atZone(ZoneId.systemDefault()));
            switch (dialogs.leftBehind(left.name(), when)) {
                case TAKE_UP -> {
                    if (taken(left)) {
                        return;
                    }
                }
                case THROW_AWAY -> left.discard();
                case LATER -> {
                    return;
                }
            }
        }
    }

    private boolean taken(Recovery left) {
        try {
            OpenDocument found = left.open();
            Journal journal = Journal.in(settings.recoveryFolder());
            leave();
            found.keepIn(journal);
            editor.show(found);
            // Only what is written down anew may be taken from where it lay.
            journal.settle();
            left.discard();
            return true;
        } catch (DocumentException | IOException unreadable) {
            editor.refuse("What was left behind cannot be read: " + unreadable.getMessage());
            return false;
        }
    }
}
