package haftline.edit;

import haftline.handle.Brief;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.store.LoadedSet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A set that is open for editing. Every change of it is a {@link Command}; one gesture is one step
 * of its history.
 *
 * <p>Not safe for several threads at once.
 */
public final class OpenDocument {
    private final Materials materials;
    private final DocumentFiles files;
    private final History<Draft> history;

    /** What was last worked out for each piece, to be used again while its brief is the same. */
    private final Map<String, Worked> worked = new HashMap<>();

    private int workedOut;

    private Optional<Journal> journal = Optional.empty();
    private Draft gestureStart;

    private OpenDocument(LoadedSet opened, DocumentFiles files) {
        this.files = files;
        materials = opened.materials();
        history = new History<>(new Draft(opened.set(), opened.references()));
    }

    /**
     * Opens what was read.
     *
     * @param loaded a set and what it was read from
     * @return the open document, unmodified
     */
    public static OpenDocument of(LoadedSet loaded) {
        return new OpenDocument(loaded, DocumentFiles.of(loaded));
    }

    /**
     * Opens a set that has no file yet.
     *
     * @param loaded a set; its file says only from where paths that it names are seen
     * @return the open document, unmodified
     */
    public static OpenDocument unsaved(LoadedSet loaded) {
        return new OpenDocument(loaded, DocumentFiles.unread(loaded, Optional.empty()));
    }

    /** Unsaved work that was left behind. */
    static OpenDocument recovered(LoadedSet belonging, Optional<Path> file) {
        OpenDocument document = new OpenDocument(belonging, DocumentFiles.unread(belonging, file));
        document.history.markUnsaved();
        return document;
    }

    /**
     * Keeps unsaved work in a journal from now on.
     *
     * @param kept the journal; closed with the document
     */
    public void keepIn(Journal kept) {
        journal = Optional.of(kept);
        stepped();
    }

    /**
     * The content now, in the middle of a gesture too.
     *
     * @return the content
     */
    public Draft draft() {
        return history.state();
    }

    /**
     * The set as it is now, with the catalogues that it goes by.
     *
     * @return the set
     */
    public LoadedSet loaded() {
        return files.loaded(draft());
    }

    /**
     * Everything from which one piece's handle follows.
     *
     * @param piece the piece's name
     * @return its brief
     */
    public Brief brief(String piece) {
        return draft().set().brief(draft().piece(piece), materials);
    }

    /**
     * One piece, worked out; worked out anew only where its brief changed.
     *
     * @param piece the piece's name
     * @return the piece, worked out
     */
    public Worked worked(String piece) {
        Brief brief = brief(piece);
        Worked known = worked.get(piece);
        if (known != null && known.brief().equals(brief)) {
            return known;
        }
        Worked fresh = workOut(brief);
        worked.put(piece, fresh);
        return fresh;
    }

    private Worked workOut(Brief brief) {
        workedOut++;
        return Worked.of(brief);
    }

    /**
     * How often a piece was worked out so far: what a view of hundreds of pieces costs.
     *
     * @return the count
     */
    public int workedOut() {
        return workedOut;
    }

    /**
     * Carries a command out as one step. A gesture under way ends before it.
     *
     * @param command the command
     * @return done, or why not; the document is then as before
     */
    public Outcome apply(Command command) {
        return run(command, Optional.empty());
    }

    /**
     * Carries a command out as one step, unless a piece that can be drawn could no longer be.
     *
     * @param command the command
     * @param piece the piece's name, before and after
     * @return done, or why not; the document is then as before
     */
    public Outcome applyIfDrawable(Command command, String piece) {
        return run(command, Optional.of(piece));
    }

    private Outcome run(Command command, Optional<String> drawable) {
        end();
        return attempt(
                command, draft(), drawable, after -> step(history.step(command.name(), after)));
    }

    /**
     * Begins a gesture: all that {@link #carryOn} does until {@link #end} is one step.
     *
     * @param name what is being done
     */
    public void begin(String name) {
        end();
        history.begin(name);
        gestureStart = history.committed();
    }

    /**
     * Carries the gesture under way on: the command is done to what the gesture began with, in
     * place of what the gesture did so far.
     *
     * @param command the command
     * @param piece the piece that must stay drawable
     * @return done, or why not; the document then stays where the gesture last had it
     * @throws IllegalStateException where no gesture is under way
     */
    public Outcome carryOn(Command command, String piece) {
        if (gestureStart == null) {
            throw new IllegalStateException("no gesture is under way");
        }
        return attempt(command, gestureStart, Optional.of(piece), history::carryOn);
    }

    /**
     * Ends the gesture under way, if any.
     *
     * @return whether it made a step
     */
    public boolean end() {
        gestureStart = null;
        return step(history.end());
    }

    /** Gives the gesture under way up. */
    public void cancel() {
        gestureStart = null;
        history.cancel();
    }

    /**
     * Whether a gesture is under way.
     *
     * @return true between begin and end
     */
    public boolean isInGesture() {
        return history.isInGesture();
    }

    private Outcome attempt(
            Command command,
            Draft from,
            Optional<String> drawable,
            java.util.function.Consumer<Draft> accept) {
        Draft after;
        try {
            after = command.on(from);
        } catch (IllegalArgumentException refused) {
            return Outcome.Refused.by(refused);
        }
        Optional<String> why = drawable.flatMap(piece -> undrawable(piece, from, after));
        if (why.isPresent()) {
            return new Outcome.Refused(why.get());
        }
        accept.accept(after);
        return Outcome.DONE;
    }

    /** Why a piece that could be drawn no longer can. */
    private Optional<String> undrawable(String name, Draft before, Draft after) {
        Piece piece = after.piece(name);
        Worked fresh = workOut(after.set().brief(piece, materials));
        if (fresh.impossible().isEmpty()) {
            worked.put(name, fresh);
            return Optional.empty();
        }
        boolean couldBe =
                Worked.of(before.set().brief(before.piece(name), materials)).figures().isPresent();
        return couldBe ? fresh.impossible() : Optional.empty();
    }

    private boolean step(boolean isMade) {
        if (isMade) {
            stepped();
        }
        return isMade;
    }

    /** After every step the journal follows. */
    private void stepped() {
        files.renames().follow(draft());
        journal.ifPresent(
                kept -> {
                    if (history.isModified()) {
                        kept.record(loaded(), files.own());
                    } else {
                        kept.clear();
                    }
                });
    }

    /**
     * Goes one step back.
     *
     * @return whether there was one
     */
    public boolean undo() {
        end();
        return step(history.undo());
    }

    /**
     * Goes one step forward again.
     *
     * @return whether there was one
     */
    public boolean redo() {
        end();
        return step(history.redo());
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
     * @return true where the content differs from what stands on the disk
     */
    public boolean isModified() {
        return history.isModified();
    }

    /**
     * The set's own file.
     *
     * @return the file, or empty for a set that was never saved
     */
    public Optional<Path> file() {
        return files.own();
    }

    /**
     * Names that pieces were given since the last save.
     *
     * @return the names; they follow every step
     */
    public Renames renames() {
        return files.renames();
    }

    /**
     * What the next save would write: the set's own file, and those that it names as far as what
     * they say was changed.
     *
     * @return the files in the order of writing; empty for a set that was never saved
     */
    public List<Path> filesToSave() {
        return files.toSave(draft());
    }

    /**
     * Files that another program has changed or removed since they were read or written.
     *
     * @return the set's own file and those that it names, as far as they changed
     */
    public List<Path> changedOnDisk() {
        return files.changed();
    }

    /** From now on, what other programs changed until now is written over by a save. */
    public void keepMine() {
        files.acceptChanges();
        history.markUnsaved();
        stepped();
    }

    /**
     * Saves in the set's own file, and in those that it names what of them was changed.
     *
     * @return saved, or why not
     */
    public SaveResult save() {
        end();
        return marked(files.save(draft()));
    }

    /**
     * Saves under another name, which is the set's from then on. What the old set names is not
     * written over.
     *
     * @param to the new file, in place of any that is there
     * @return saved, or why not
     */
    public SaveResult saveAs(Path to) {
        end();
        return marked(files.saveAs(draft(), to));
    }

    private SaveResult marked(SaveResult result) {
        if (result.isSaved()) {
            history.markSaved();
            stepped();
        }
        return result;
    }

    /**
     * Closes the document; unsaved work is given up.
     *
     * @throws IOException where its journal cannot be closed
     */
    public void close() throws IOException {
        if (journal.isPresent()) {
            journal.get().close();
            journal = Optional.empty();
        }
    }
}
