package haftline.ui.model;

import haftline.cli.PiecePaper;
import haftline.measure.Units;
import haftline.store.LoadedSet;
import haftline.write.OutputException;
import haftline.write.OutputFolder;
import java.nio.file.Path;
import java.util.Optional;

/** The papers of the piece at hand: which is chosen, its pages, its file. */
public final class PaperModel {
    /**
     * What can be shown.
     *
     * @param paper the paper, or empty
     * @param text what it is, or why there is none
     */
    public record Shown(Optional<PiecePaper> paper, String text) {}

    private final EditorModel editor;
    private final Latest latest;
    private final Latest saving;
    private final Watched<PiecePaper.Kind> kind = new Watched<>(PiecePaper.Kind.DRAWING);
    private final Watched<Shown> shown = new Watched<>(new Shown(Optional.empty(), ""));
    private final Watched<String> saved = new Watched<>("");

    /**
     * The papers of an editor's piece.
     *
     * @param editor the editor
     * @param latest works pages out
     * @param saving writes files
     */
    public PaperModel(EditorModel editor, Latest latest, Latest saving) {
        this.editor = editor;
        this.latest = latest;
        this.saving = saving;
    }

    /**
     * Which paper is shown.
     *
     * @return watched; set by {@link #choose}
     */
    public Watched<PiecePaper.Kind> kind() {
        return kind;
    }

    /**
     * The paper.
     *
     * @return watched; follows {@link #refresh}
     */
    public Watched<Shown> shown() {
        return shown;
    }

    /**
     * What came of saving.
     *
     * @return watched; a sentence, empty where nothing was saved
     */
    public Watched<String> saved() {
        return saved;
    }

    /**
     * Shows another paper.
     *
     * @param wanted which
     */
    public void choose(PiecePaper.Kind wanted) {
        kind.set(wanted);
        refresh();
    }

    /** Works the paper out anew. */
    public void refresh() {
        LoadedSet set = editor.document().loaded();
        String piece = editor.piece().value();
        PiecePaper.Kind which = kind.value();
        Units units = editor.units().value();
        saved.set("");
        latest.call(
                () -> told(PiecePaper.of(set, piece, which, units), piece, which, units),
                shown::set,
                why -> shown.set(new Shown(Optional.empty(), why)));
    }

    private static Shown told(
            Optional<PiecePaper> paper, String piece, PiecePaper.Kind kind, Units units) {
        if (paper.isEmpty()) {
            boolean isForBuyer =
                    kind == PiecePaper.Kind.INSTRUCTIONS || kind == PiecePaper.Kind.CARE;
            return new Shown(
                    paper,
                    piece
                            + (isForBuyer
                                    ? " is not to be made as it is, so nobody who buys it is told"
                                            + " how"
                                    : " cannot be drawn"));
        }
        int pages = paper.get().pages().size();
        return new Shown(
                paper,
                Math.round(paper.get().widthMm())
                        + " mm × "
                        + Math.round(paper.get().heightMm())
                        + " mm"
                        + (pages > 1 ? ", " + pages + " pages" : "")
                        + (kind == PiecePaper.Kind.CARE
                                ? ""
                                : units == Units.MM ? ", lengths in mm" : ", lengths in inches"));
    }

    /**
     * Name of the PDF file.
     *
     * @return the name, or empty where there is no paper
     */
    public Optional<String> fileName() {
        return shown.value().paper().map(paper -> paper.stem() + ".pdf");
    }

    /**
     * Saves the paper that is shown as PDF.
     *
     * @param file where
     */
    public void save(Path file) {
        Optional<PiecePaper> paper = shown.value().paper();
        Path to = file.toAbsolutePath().normalize();
        paper.ifPresent(
                it ->
                        saving.call(
                                () -> written(it, to),
                                saved::set,
                                why -> {
                                    saved.set("");
                                    editor.refuse(why);
                                }));
    }

    private static String written(PiecePaper paper, Path to) throws OutputException {
        Path at =
                OutputFolder.at(to.getParent())
                        .write(to.getFileName().toString(), paper.file().get());
        return "Saved as " + at.getFileName();
    }
}
