package haftline.ui.model;

import haftline.store.LoadedSet;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import java.nio.file.Files;
import java.nio.file.Path;
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
         * The files of a set in some formats.
         *
         * @param set the set
         * @param formats names of the formats
         * @return the files, in memory
         * @throws Exception where something that they need cannot be read; its message tells what
         */
        List<OutputFile> files(LoadedSet set, Set<String> formats) throws Exception;
    }

    /**
     * A file that will be written.
     *
     * @param name its name in the folder
     * @param bytes its size
     * @param replaces whether one of that name is there
     */
    public record Planned(String name, int bytes, boolean replaces) {}

    /**
     * How far an export is.
     *
     * @param stage the stage
     * @param planned what will be, or was, written
     * @param text what to say of it, may be empty
     */
    public record Progress(Stage stage, List<Planned> planned, String text) {
        /** Copies the list. */
        public Progress {
            planned = List.copyOf(planned);
        }

        /** The stages of an export. */
        public enum Stage {
            /** The files are being made, so that they can be shown before they are written. */
            PLANNING,
            /** They can be written. */
            READY,
            /** Nothing can be written; the text says why. */
            BLOCKED,
            /** They are being written. */
            WRITING,
            /** They were written. */
            WRITTEN,
            /** They were not written; the text says why. */
            FAILED
        }
    }

    private final EditorModel editor;
    private final Preferences preferences;
    private final Maker maker;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Set<String>> formats;
    private final Watched<Path> folder;
    private final Watched<Progress> progress =
            new Watched<>(new Progress(Progress.Stage.PLANNING, List.of(), ""));
    private List<OutputFile> files = List.of();

    /** Tells a plan that was overtaken by a later one. */
    private int planNumber;

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
    public Watched<Progress> progress() {
        return progress;
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

    /** Makes the files as they would be written now. A plan under way is overtaken. */
    public void plan() {
        int number = ++planNumber;
        LoadedSet set = editor.document().loaded();
        Set<String> wanted = formats.value();
        Path to = folder.value();
        progress.set(new Progress(Progress.Stage.PLANNING, progress.value().planned(), ""));
        background.execute(
                () -> {
                    List<OutputFile> made;
                    Progress next;
                    try {
                        made = maker.files(set, wanted);
                        next = planned(made, to);
                    } catch (Exception wrong) {
                        made = List.of();
                        next =
                                new Progress(
                                        Progress.Stage.BLOCKED,
                                        List.of(),
                                        String.valueOf(wrong.getMessage()));
                    }
                    List<OutputFile> all = made;
                    Progress shown = next;
                    drawing.execute(
                            () -> {
                                if (number == planNumber) {
                                    files = all;
                                    progress.set(shown);
                                }
                            });
                });
    }

    private static Progress planned(List<OutputFile> made, Path to) {
        List<Planned> planned =
                made.stream()
                        .map(
                                file ->
                                        new Planned(
                                                file.name(),
                                                file.content().length,
                                                Files.exists(to.resolve(file.name()))))
                        .toList();
        Optional<String> trouble = trouble(to);
        if (trouble.isPresent()) {
            return new Progress(Progress.Stage.BLOCKED, planned, trouble.get());
        }
        return planned.isEmpty()
                ? new Progress(
                        Progress.Stage.BLOCKED,
                        planned,
                        "Nothing to write: choose a format, and pieces that can be drawn")
                : new Progress(Progress.Stage.READY, planned, "");
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

    /** Writes what was planned. Does nothing unless it is ready. */
    public void write() {
        if (progress.value().stage() != Progress.Stage.READY) {
            return;
        }
        List<Planned> planned = progress.value().planned();
        List<OutputFile> now = files;
        Path to = folder.value();
        progress.set(new Progress(Progress.Stage.WRITING, planned, ""));
        background.execute(
                () -> {
                    Progress done;
                    try {
                        int count = OutputFolder.at(to).write(now).size();
                        done =
                                new Progress(
                                        Progress.Stage.WRITTEN,
                                        planned,
                                        count + (count == 1 ? " file" : " files") + " in " + to);
                    } catch (OutputException failed) {
                        done = new Progress(Progress.Stage.FAILED, planned, failed.getMessage());
                    }
                    Progress shown = done;
                    drawing.execute(() -> finish(shown, to));
                });
    }

    private void finish(Progress done, Path to) {
        if (done.stage() == Progress.Stage.WRITTEN) {
            preferences.exportFolder(to);
            preferences.save();
        }
        progress.set(done);
    }
}
