package haftline.ui.model;

import haftline.measure.Units;
import haftline.store.LoadedSet;
import haftline.ui.model.ExportProgress.Stage;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import haftline.write.PlannedFile;
import haftline.write.csv.FilledTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Executor;

/**
 * Export: which formats, into which folder, what will be written, how far it is, what came of it.
 * Files are made and written by a background executor; what is watched changes on the drawing one.
 */
public final class ExportModel {
    /** Makes the files of a set; the main command makes the same ones. */
    public interface Maker {
        /**
         * The formats that there are.
         *
         * @return their names
         */
        List<String> formats();

        /**
         * The formats that sheets of templates come in.
         *
         * @return their names
         */
        List<String> templateFormats();

        /**
         * What would be made of a set.
         *
         * @param set the set
         * @param units unit of the lengths in drawings, sheets, pictures and templates
         * @return the plan
         * @throws Exception where something that it needs cannot be read; its message tells what
         */
        Plan plan(LoadedSet set, Units units) throws Exception;
    }

    /** The files of a set. Whichever are asked for, nothing is drawn before it must be. */
    public interface Plan {
        /**
         * What is known at once.
         *
         * @param formats names of the formats
         * @return the files of pieces and set
         */
        List<PlannedFile> ofPieces(Set<String> formats);

        /**
         * What is laid out first; may take a moment, and may be called from several threads.
         *
         * @param formats names of the formats
         * @return the sheets of templates
         */
        List<PlannedFile> ofTemplates(Set<String> formats);
    }

    private static final String AWAITED = "Written as soon as the sheets are laid out";

    private final EditorModel editor;
    private final Preferences preferences;
    private final Maker maker;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Set<String>> formats;
    private final Watched<Path> folder;
    private final Watched<ExportProgress> progress =
            new Watched<>(new ExportProgress(Stage.PLANNING, List.of(), 0, ""));
    private final ExportPreviews previews;
    private final Watched<Boolean> templatesAlone = new Watched<>(false);
    private List<PlannedFile> files = List.of();

    /** What was chosen before the templates alone were wanted. */
    private Set<String> formatsBefore = Set.of();

    /** Tells a plan that was overtaken by a later one. */
    private int planNumber;

    /** Whether what is being planned is to be written once it is. */
    private boolean isAwaited;

    /**
     * An export of an editor's set; all formats are chosen.
     *
     * @param editor the editor
     * @param preferences where the folder is remembered
     * @param maker makes the files
     * @param background where files are made and written
     * @param drawing where what is watched changes
     */
    public ExportModel(
            EditorModel editor,
            Preferences preferences,
            Maker maker,
            Executor background,
            Executor drawing) {
        this.editor = editor;
        this.preferences = preferences;
        this.maker = maker;
        this.background = background;
        this.drawing = drawing;
        previews = new ExportPreviews(background, drawing);
        formats = new Watched<>(new TreeSet<>(maker.formats()));
        folder = new Watched<>(preferences.exportFolder().orElseGet(this::usualFolder));
    }

    /** Beside the set, where nothing else is remembered. */
    private Path usualFolder() {
        return editor.document()
                .file()
                .map(file -> file.resolveSibling("exports"))
                .orElseGet(() -> Path.of("exports").toAbsolutePath());
    }

    /**
     * The formats that are chosen.
     *
     * @return watched; their names
     */
    public Watched<Set<String>> formats() {
        return formats;
    }

    /**
     * The folder that is written to.
     *
     * @return watched
     */
    public Watched<Path> folder() {
        return folder;
    }

    /**
     * How far it is.
     *
     * @return watched
     */
    public Watched<ExportProgress> progress() {
        return progress;
    }

    /**
     * What the chosen file shows.
     *
     * @return watched
     */
    public Watched<ExportPreview> preview() {
        return previews.shown();
    }

    /**
     * Whether only the sheets of gauges and templates are written.
     *
     * @return watched; set by {@link #choose(boolean)}
     */
    public Watched<Boolean> templatesAlone() {
        return templatesAlone;
    }

    /**
     * Writes only the sheets of gauges and templates, in the formats that they come in, or all
     * again in the formats chosen before. Plan anew to see which they are.
     *
     * @param alone whether they alone are wanted
     */
    public void choose(boolean alone) {
        if (alone != templatesAlone.value()) {
            if (alone) {
                formatsBefore = formats.value();
                Set<String> theirs = new TreeSet<>(maker.templateFormats());
                theirs.retainAll(maker.formats());
                formats.set(theirs);
            } else {
                formats.set(formatsBefore);
            }
            templatesAlone.set(alone);
        }
    }

    /**
     * Chooses a format or leaves it out, and plans anew.
     *
     * @param format its name
     * @param wanted whether it is wanted
     */
    public void choose(String format, boolean wanted) {
        Set<String> changed = new TreeSet<>(formats.value());
        if (wanted) {
            changed.add(format);
        } else {
            changed.remove(format);
        }
        formats.set(changed);
        plan();
    }

    /**
     * Takes another folder and plans anew.
     *
     * @param other the folder; it need not exist
     */
    public void choose(Path other) {
        folder.set(other);
        plan();
    }

    /** Looks which files would be written now. A plan under way is overtaken. */
    public void plan() {
        if (progress.value().stage() == Stage.WRITING) {
            return;
        }
        int number = ++planNumber;
        isAwaited = false;
        LoadedSet set = editor.document().loaded();
        Units units = editor.units().value();
        Set<String> wanted = formats.value();
        Path to = folder.value();
        boolean alone = templatesAlone.value();
        progress.set(new ExportProgress(Stage.PLANNING, progress.value().planned(), 0, ""));
        background.execute(
                () -> {
                    try {
                        Plan plan = maker.plan(set, units);
                        List<PlannedFile> found =
                                new ArrayList<>(alone ? List.of() : plan.ofPieces(wanted));
                        List<PlannedFile> first = List.copyOf(found);
                        show(number, first, planned(first, to, Stage.LAYING_OUT));
                        found.addAll(plan.ofTemplates(wanted));
                        show(number, found, planned(found, to, Stage.READY));
                    } catch (Exception wrong) {
                        show(
                                number,
                                List.of(),
                                new ExportProgress(
                                        Stage.BLOCKED,
                                        List.of(),
                                        0,
                                        String.valueOf(wrong.getMessage())));
                    }
                });
    }

    private void show(int number, List<PlannedFile> found, ExportProgress next) {
        drawing.execute(
                () -> {
                    if (number == planNumber) {
                        files = List.copyOf(found);
                        progress.set(isAwaited ? next.saying(AWAITED) : next);
                        if (isAwaited && next.stage() == Stage.READY) {
                            write();
                        }
                    }
                });
    }

    private static ExportProgress planned(List<PlannedFile> found, Path to, Stage stage) {
        List<ExportProgress.Planned> planned =
                found.stream()
                        .map(
                                file ->
                                        new ExportProgress.Planned(
                                                file.name(), Files.exists(to.resolve(file.name()))))
                        .toList();
        Optional<String> trouble = trouble(to);
        if (trouble.isPresent()) {
            return new ExportProgress(Stage.BLOCKED, planned, 0, trouble.get());
        }
        return planned.isEmpty() && stage == Stage.READY
                ? new ExportProgress(
                        Stage.BLOCKED,
                        planned,
                        0,
                        "Nothing to write: choose a format, and pieces that can be drawn")
                : new ExportProgress(stage, planned, 0, "");
    }

    /**
     * Shows what a file would look like, as soon as that is made.
     *
     * @param name one of the planned files
     */
    public void preview(String name) {
        previews.show(files.stream().filter(each -> each.name().equals(name)).findFirst());
    }

    private static Optional<String> trouble(Path to) {
        if (Files.exists(to)) {
            if (!Files.isDirectory(to)) {
                return Optional.of("A file has the folder's name; choose another folder");
            }
            return Files.isWritable(to)
                    ? Optional.empty()
                    : Optional.of("Nothing can be written there; choose another folder");
        }
        Path there = to.toAbsolutePath().normalize();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        return there != null && Files.isDirectory(there) && Files.isWritable(there)
                ? Optional.empty()
                : Optional.of("The folder cannot be made there; choose another");
    }

    /**
     * Makes and writes what was planned, again too. While it is not yet known what that is, it is
     * written as soon as it is; does nothing while there is nothing to.
     */
    public void write() {
        if (progress.value().isBeingPlanned()) {
            isAwaited = true;
            progress.set(progress.value().saying(AWAITED));
        }
        if (!progress.value().canWrite()) {
            return;
        }
        isAwaited = false;
        List<ExportProgress.Planned> planned = progress.value().planned();
        List<PlannedFile> now = files;
        Path to = folder.value();
        progress.set(new ExportProgress(Stage.WRITING, planned, 0, ""));
        background.execute(
                () -> {
                    List<OutputFile> made = new ArrayList<>();
                    for (int i = 0; i < now.size(); i++) {
                        double share = (double) i / now.size();
                        String text = "Making " + now.get(i).name();
                        drawing.execute(
                                () ->
                                        progress.set(
                                                new ExportProgress(
                                                        Stage.WRITING, planned, share, text)));
                        now.get(i).made().ifPresent(made::add);
                    }
                    ExportProgress done = written(made, planned, to);
                    drawing.execute(() -> finish(done, to));
                });
    }

    /** All or nothing: a folder of old and new sheets side by side would mislead. */
    private static ExportProgress written(
            List<OutputFile> made, List<ExportProgress.Planned> planned, Path to) {
        try {
            int kept = FilledTables.keep(to, made).size();
            int count = OutputFolder.at(to).write(made).size();
            return new ExportProgress(
                    Stage.WRITTEN,
                    planned,
                    1,
                    count
                            + (count == 1 ? " file" : " files")
                            + " in "
                            + to
                            + (kept == 0
                                    ? ""
                                    : "; what was measured into "
                                            + kept
                                            + " of them is kept beside, with ~"));
        } catch (OutputException failed) {
            return new ExportProgress(Stage.FAILED, planned, 1, failed.getMessage());
        }
    }

    private void finish(ExportProgress done, Path to) {
        if (done.stage() == Stage.WRITTEN) {
            preferences.exportFolder(to);
            preferences.save();
        }
        progress.set(done);
    }
}
