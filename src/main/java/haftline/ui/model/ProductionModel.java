package haftline.ui.model;

import haftline.cli.Making;
import haftline.edit.OpenProgress;
import haftline.edit.Outcome;
import haftline.edit.ProgressEdits;
import haftline.edit.SaveResult;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.set.production.Production;
import haftline.set.production.Progress;
import haftline.set.production.Quantities;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.ProgressFile;
import haftline.write.OutputFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A batch of pieces: how many of each, what they take and cost, and how far they are. Every tick is
 * kept in the file beside the set at once, and can be undone.
 */
public final class ProductionModel {
    /**
     * What buttons and words show of the progress.
     *
     * @param progress how far the batch is; empty where none was begun
     * @param undoName name of the tick that can be undone, or empty
     * @param redoName name of the tick that can be done again, or empty
     * @param text what to say of it
     */
    public record Status(
            Optional<Progress> progress,
            Optional<String> undoName,
            Optional<String> redoName,
            String text) {}

    private final EditorModel editor;
    private final Latest latest;
    private final Latest saving;
    private final Watched<Map<String, Integer>> quantities = new Watched<>(Map.of());
    private final Watched<Optional<Production>> production = new Watched<>(Optional.empty());
    private final Watched<Status> status =
            new Watched<>(new Status(Optional.empty(), Optional.empty(), Optional.empty(), ""));
    private final Watched<Boolean> beginsAnew = new Watched<>(false);
    private Optional<OpenProgress> open = Optional.empty();
    private Optional<Path> readFrom = Optional.empty();
    private boolean isWorking;
    private Optional<Runnable> next = Optional.empty();

    /**
     * The production of an editor's set.
     *
     * @param editor the editor
     * @param latest works the batch out
     * @param saving writes files
     */
    public ProductionModel(EditorModel editor, Latest latest, Latest saving) {
        this.editor = editor;
        this.latest = latest;
        this.saving = saving;
        editor.opened().watch(other -> forget());
        editor.status().watch(this::follow);
    }

    /** A set that was saved has its renamed pieces renamed in the file beside it, too. */
    private void follow(EditorModel.Status now) {
        if (!now.isModified() && isStale()) {
            read();
            tell();
        }
    }

    private boolean isStale() {
        return open.filter(OpenProgress::isChangedOnDisk).isPresent();
    }

    private void forget() {
        open = Optional.empty();
        readFrom = Optional.empty();
        next = Optional.empty();
        quantities.set(Map.of());
        production.set(Optional.empty());
        beginsAnew.set(false);
    }

    private HandleSet set() {
        return editor.draft().value().set();
    }

    /**
     * How many of each piece are to be made, in the set's order; 0 for none.
     *
     * @return watched; set by {@link #quantity} and {@link #all}
     */
    public Watched<Map<String, Integer>> quantities() {
        return quantities;
    }

    /**
     * What they take.
     *
     * @return watched; empty until it is worked out, and where nothing is to be made
     */
    public Watched<Optional<Production>> production() {
        return production;
    }

    /**
     * How far they are.
     *
     * @return watched
     */
    public Watched<Status> status() {
        return status;
    }

    /**
     * Whether the maker was told that ticks will be put aside, and may begin all the same.
     *
     * @return watched
     */
    public Watched<Boolean> beginsAnew() {
        return beginsAnew;
    }

    /** Brings everything up to date with the set and with the file beside it. */
    public void refresh() {
        read();
        Map<String, Integer> now = new LinkedHashMap<>();
        for (Piece piece : set().pieces()) {
            int one = open.isPresent() ? 0 : 1;
            int begun = open.map(o -> o.progress().quantities().of(piece.name())).orElse(one);
            now.put(piece.name(), quantities.value().getOrDefault(piece.name(), begun));
        }
        quantities.set(now);
        work();
        tell();
    }

    private void read() {
        Optional<Path> file = editor.document().file().map(ProgressFile::beside);
        if (file.equals(readFrom) && !isStale()) {
            return;
        }
        readFrom = file;
        open = Optional.empty();
        if (file.isPresent() && Files.exists(file.get())) {
            try {
                open = Optional.of(OpenProgress.read(file.get(), editor.document().renames()));
            } catch (DocumentException wrong) {
                editor.refuse(wrong.getMessage());
            }
        }
    }

    /**
     * Makes so many of a piece.
     *
     * @param piece the piece's name
     * @param text a whole number, 0 for none
     */
    public void quantity(String piece, String text) {
        number(text)
                .ifPresent(
                        count -> {
                            Map<String, Integer> now = new LinkedHashMap<>(quantities.value());
                            now.put(piece, count);
                            quantities.set(now);
                            work();
                        });
    }

    /**
     * Makes so many of every piece.
     *
     * @param text a whole number
     */
    public void all(String text) {
        number(text)
                .ifPresent(
                        count -> {
                            Map<String, Integer> now = new LinkedHashMap<>(quantities.value());
                            now.replaceAll((piece, old) -> count);
                            quantities.set(now);
                            work();
                        });
    }

    private Optional<Integer> number(String text) {
        String digits = text.strip();
        if (!digits.matches("[0-9]{1,4}") || Integer.parseInt(digits) > Quantities.MOST) {
            editor.refuse("How many: expected a whole number from 0 to " + Quantities.MOST);
            return Optional.empty();
        }
        editor.notice().set(Optional.empty());
        return Optional.of(Integer.parseInt(digits));
    }

    private Optional<Quantities> wanted() {
        Map<String, Integer> counts = new LinkedHashMap<>(quantities.value());
        counts.values().removeIf(count -> count == 0);
        counts.keySet().removeIf(piece -> set().piece(piece).isEmpty());
        return counts.isEmpty() ? Optional.empty() : Optional.of(new Quantities(counts));
    }

    private void work() {
        Optional<Quantities> wanted = wanted();
        LoadedSet loaded = editor.document().loaded();
        isWorking = true;
        latest.call(
                () -> wanted.map(quantities -> production(loaded, quantities)),
                this::worked,
                why -> {
                    worked(Optional.empty());
                    editor.refuse(why);
                });
    }

    private void worked(Optional<Production> now) {
        isWorking = false;
        production.set(now);
        Optional<Runnable> waiting = next;
        next = Optional.empty();
        waiting.ifPresent(Runnable::run);
    }

    /** What is done with a batch waits for the batch as it was last typed. */
    private boolean waits(Runnable what) {
        if (isWorking) {
            next = Optional.of(what);
        }
        return isWorking;
    }

    private static Production production(LoadedSet loaded, Quantities quantities) {
        HandleSet set = loaded.set();
        return Production.of(
                set,
                loaded.materials(),
                quantities,
                new Production.Terms(set.workshop().stockLengths(), set.workshop().rates()),
                false);
    }

    /** The progress, where it is that of the quantities that are shown. */
    private Optional<Progress> shown() {
        return open.map(OpenProgress::progress)
                .filter(far -> wanted().map(far.quantities()::equals).orElse(false));
    }

    /** Begins the batch as it is shown; where another has ticks, only when asked again. */
    public void begin() {
        if (waits(this::begin)) {
            return;
        }
        Optional<Path> file = editor.document().file().map(ProgressFile::beside);
        if (file.isEmpty()) {
            editor.refuse("Save the set first: the progress is kept in a file beside it");
            return;
        }
        if (production.value().isEmpty() || production.value().get().orders().isEmpty()) {
            editor.refuse("There is no piece to be made");
            return;
        }
        boolean hasTicks = open.isPresent() && open.get().progress().ticks() > 0;
        if (hasTicks && !beginsAnew.value()) {
            beginsAnew.set(true);
            return;
        }
        beginsAnew.set(false);
        Progress first = Progress.of(production.value().get());
        open = Optional.of(OpenProgress.begun(file.get(), first, editor.document().renames()));
        kept(open.get().saveOver());
    }

    /**
     * Ticks one more of a piece off, or takes one tick back.
     *
     * @param piece the piece's name
     * @param step the step
     * @param by 1 or -1
     */
    public void tick(String piece, String step, int by) {
        apply(ProgressEdits.tick(piece, step, by));
    }

    /**
     * Ticks a step off for all of a piece.
     *
     * @param piece the piece's name
     * @param step the step
     */
    public void allOf(String piece, String step) {
        open.ifPresent(
                it -> apply(ProgressEdits.done(piece, step, it.progress().quantityOf(piece))));
    }

    /**
     * Ticks a step off for all pieces.
     *
     * @param step the step
     */
    public void allDone(String step) {
        apply(ProgressEdits.allDone(step));
    }

    private void apply(ProgressEdits.Edit edit) {
        open.ifPresent(
                it -> {
                    Outcome outcome = it.apply(edit);
                    editor.notice().set(outcome.refusal());
                    if (outcome.refusal().isEmpty()) {
                        kept(it.save());
                    }
                });
    }

    /** Takes the last tick back. */
    public void undo() {
        open.filter(OpenProgress::undo).ifPresent(it -> kept(it.save()));
    }

    /** Ticks again what was taken back. */
    public void redo() {
        open.filter(OpenProgress::redo).ifPresent(it -> kept(it.save()));
    }

    private void kept(SaveResult result) {
        if (result instanceof SaveResult.Failed failed) {
            editor.refuse(failed.why());
        } else if (!result.isSaved()) {
            // The ticks of another program are more than one of ours.
            readFrom = Optional.empty();
            editor.refuse(
                    "Another program has changed the progress of this batch; it was read again and"
                            + " your last tick is not in it");
            refresh();
            return;
        }
        tell();
    }

    private void tell() {
        status.set(
                new Status(
                        open.map(OpenProgress::progress),
                        open.flatMap(OpenProgress::undoName),
                        open.flatMap(OpenProgress::redoName),
                        ProgressWords.of(
                                open.map(OpenProgress::progress),
                                editor.document().file().isPresent(),
                                set().batch())));
    }

    /**
     * Writes tables as CSV and sheets as PDF.
     *
     * @param folder where
     */
    public void export(Path folder) {
        if (waits(() -> export(folder))) {
            return;
        }
        Optional<Production> now = production.value();
        if (now.isEmpty()) {
            editor.refuse("There is no piece to be made");
            return;
        }
        Optional<Progress> progress = shown();
        var paper = set().workshop().files().paper();
        var units = editor.units().value();
        saving.call(
                () ->
                        OutputFolder.at(folder)
                                .write(
                                        Making.ofBatch(
                                                now.get(),
                                                progress,
                                                paper,
                                                units,
                                                Set.of("csv", "pdf"))),
                (List<Path> files) ->
                        editor.notice()
                                .set(Optional.of(files.size() + " files written into " + folder)),
                editor::refuse);
    }
}
