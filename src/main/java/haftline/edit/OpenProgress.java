package haftline.edit;

import haftline.set.production.Progress;
import haftline.store.DocumentException;
import haftline.store.ProgressFile;
import haftline.store.SaveException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The progress of a batch, open to be ticked off: every change can be undone, and is kept in its
 * file when it is saved.
 *
 * <p>Not safe for several threads at once.
 */
public final class OpenProgress {
    private final Path file;
    private final History<Progress> history;
    private final Renames renames;
    private Optional<FileStamp> stamp;

    private OpenProgress(Path file, Progress first, Renames renames) {
        this.file = file;
        this.renames = renames;
        history = new History<>(first);
        stamp = FileStamp.of(file);
    }

    /**
     * Opens the progress that a file keeps.
     *
     * @param file the file
     * @return the progress, unmodified
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static OpenProgress read(Path file) throws DocumentException {
        return read(file, Renames.none());
    }

    /**
     * Opens the progress that a file keeps, beside a set that is open for editing.
     *
     * @param file the file
     * @param renames names that pieces were given since the set was saved
     * @return the progress by the names that the pieces have now, unmodified
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static OpenProgress read(Path file, Renames renames) throws DocumentException {
        return new OpenProgress(file, ProgressFile.read(file), renames);
    }

    /**
     * Opens a batch that was not begun before; it is not kept before it is saved.
     *
     * @param file where it is to be kept, in place of any batch that is kept there
     * @param first the progress, nothing done
     * @return the progress, modified
     */
    public static OpenProgress begun(Path file, Progress first) {
        return begun(file, first, Renames.none());
    }

    /**
     * Opens a batch that was not begun before, beside a set that is open for editing.
     *
     * @param file where it is to be kept, in place of any batch that is kept there
     * @param first the progress, nothing done
     * @param renames names that pieces were given since the set was saved
     * @return the progress, modified
     */
    public static OpenProgress begun(Path file, Progress first, Renames renames) {
        OpenProgress open = new OpenProgress(file, renames.toDisk(first), renames);
        open.history.markUnsaved();
        return open;
    }

    /**
     * The progress now.
     *
     * @return the progress
     */
    public Progress progress() {
        return renames.toNow(history.state());
    }

    /**
     * Where it is kept.
     *
     * @return the file
     */
    public Path file() {
        return file;
    }

    /**
     * Carries an edit out as one step.
     *
     * @param edit the edit
     * @return done, or why not; the progress is then as before
     */
    public Outcome apply(ProgressEdits.Edit edit) {
        try {
            history.step(edit.name(), renames.toDisk(edit.change().apply(progress())));
            return Outcome.DONE;
        } catch (IllegalArgumentException refused) {
            return new Outcome.Refused(refused.getMessage());
        }
    }

    /**
     * Goes one step back.
     *
     * @return whether there was one
     */
    public boolean undo() {
        return history.undo();
    }

    /**
     * Goes one step forward again.
     *
     * @return whether there was one
     */
    public boolean redo() {
        return history.redo();
    }

    /**
     * Name of the step that an undo takes back.
     *
     * @return the name, or empty where there is none
     */
    public Optional<String> undoName() {
        return history.undoName();
    }

    /**
     * Name of the step that a redo does again.
     *
     * @return the name, or empty where there is none
     */
    public Optional<String> redoName() {
        return history.redoName();
    }

    /**
     * Whether there is something to save.
     *
     * @return true where the progress differs from what the file keeps
     */
    public boolean isModified() {
        return history.isModified();
    }

    /**
     * Keeps the progress in its file.
     *
     * @return saved, or why not
     */
    public SaveResult save() {
        return isChangedOnDisk() ? new SaveResult.ChangedOnDisk(List.of(file)) : write();
    }

    /**
     * Whether the file is another than the one that was read or written last.
     *
     * @return true where it changed, came or went
     */
    public boolean isChangedOnDisk() {
        return stamp.map(known -> !known.isOf(file)).orElse(file.toFile().exists());
    }

    /**
     * Keeps the progress in its file, over what another program has put there.
     *
     * @return saved, or why not
     */
    public SaveResult saveOver() {
        return write();
    }

    private SaveResult write() {
        try {
            ProgressFile.save(file, history.state());
        } catch (SaveException failed) {
            return SaveResult.Failed.of(failed, List.of());
        }
        stamp = FileStamp.of(file);
        history.markSaved();
        return new SaveResult.Saved(List.of(file));
    }
}
