package haftline.ui.model;

import haftline.edit.PartsEdits;
import haftline.measure.Outlier;
import haftline.measure.Units;
import haftline.parts.Batch;
import haftline.parts.Kit;
import haftline.parts.PartSize;
import haftline.parts.PartsList;
import haftline.set.BatchChange;
import haftline.set.HandleSet;
import haftline.set.PieceChange;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.PartsFile;
import haftline.template.ComparedPiece;
import haftline.template.GaugeRules;
import haftline.template.StillServes;
import haftline.ui.words.Shown;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A new batch of parts against the one in use: what it changes, and taking it into use. */
public final class BatchModel {
    /**
     * A batch that can be compared.
     *
     * @param batch the batch
     * @param from name of the file it is in; empty for the set's own parts document
     */
    public record Candidate(Batch batch, String from) {
        /**
         * What it is called.
         *
         * @return its id, and its file where that is another
         */
        public String words() {
            return from.isEmpty() ? batch.id() : batch.id() + " of " + from;
        }
    }

    /**
     * A comparison.
     *
     * @param change what changes
     * @param pieces the pieces of the change with their gauges
     */
    public record Compared(BatchChange change, List<ComparedPiece> pieces) {
        /** Copies the list. */
        public Compared {
            pieces = List.copyOf(pieces);
        }
    }

    private final EditorModel editor;
    private final Latest latest;
    private final Watched<List<Candidate>> candidates = new Watched<>(List.of());
    private final Watched<Optional<Candidate>> chosen = new Watched<>(Optional.empty());
    private final Watched<Optional<Compared>> compared = new Watched<>(Optional.empty());
    private final Watched<String> text = new Watched<>("");
    private final Watched<Double> tolerance = new Watched<>(StillServes.USUAL_TOLERANCE_MM);
    private List<Candidate> fromFiles = List.of();

    /**
     * The batches of an editor's set.
     *
     * @param editor the editor
     * @param latest compares
     */
    public BatchModel(EditorModel editor, Latest latest) {
        this.editor = editor;
        this.latest = latest;
        editor.opened().watch(other -> forget());
    }

    private void forget() {
        fromFiles = List.of();
        chosen.set(Optional.empty());
        compared.set(Optional.empty());
    }

    private HandleSet set() {
        return editor.draft().value().set();
    }

    /**
     * Batches beside the one in use.
     *
     * @return watched
     */
    public Watched<List<Candidate>> candidates() {
        return candidates;
    }

    /**
     * The batch that is compared with the one in use.
     *
     * @return watched; set by {@link #choose}
     */
    public Watched<Optional<Candidate>> chosen() {
        return chosen;
    }

    /**
     * What it changes.
     *
     * @return watched; empty until it is worked out
     */
    public Watched<Optional<Compared>> compared() {
        return compared;
    }

    /**
     * What to say of it in one line.
     *
     * @return watched
     */
    public Watched<String> text() {
        return text;
    }

    /**
     * The most that an outline or a diameter may be off its gauge.
     *
     * @return watched, mm; set by {@link #judge}
     */
    public Watched<Double> tolerance() {
        return tolerance;
    }

    /**
     * The batch in use.
     *
     * @return its id
     */
    public String inUse() {
        return set().batchInUse().id();
    }

    /** Brings everything up to date with the set. */
    public void refresh() {
        List<Candidate> now = new ArrayList<>();
        for (Batch batch : set().parts().batches()) {
            if (!batch.id().equals(inUse())) {
                now.add(new Candidate(batch, ""));
            }
        }
        now.addAll(fromFiles);
        candidates.set(List.copyOf(now));
        Optional<Candidate> same =
                chosen.value()
                        .flatMap(
                                was ->
                                        now.stream()
                                                .filter(c -> c.words().equals(was.words()))
                                                .findFirst());
        Optional<Candidate> last =
                now.isEmpty() ? Optional.empty() : Optional.of(now.get(now.size() - 1));
        chosen.set(same.or(() -> last));
        compare();
    }

    /**
     * Compares with another batch.
     *
     * @param candidate the batch
     */
    public void choose(Candidate candidate) {
        if (!chosen.value().equals(Optional.of(candidate))) {
            chosen.set(Optional.of(candidate));
            compare();
        }
    }

    /**
     * Judges gauges by another tolerance.
     *
     * @param mm over 0, at most 5 mm
     */
    public void judge(double mm) {
        tolerance.set(mm);
        compare();
    }

    /**
     * Offers the batches of another parts document, too.
     *
     * @param file the document
     */
    public void open(Path file) {
        PartsList parts;
        try {
            parts = PartsFile.read(file, editor.document().loaded().materials().metals().keys());
        } catch (DocumentException wrong) {
            editor.refuse(wrong.getMessage());
            return;
        }
        String name = file.getFileName().toString();
        fromFiles = parts.batches().stream().map(batch -> new Candidate(batch, name)).toList();
        chosen.set(Optional.of(fromFiles.get(fromFiles.size() - 1)));
        refresh();
    }

    private void compare() {
        if (chosen.value().isEmpty()) {
            compared.set(Optional.empty());
            text.set(
                    "There is no batch beside "
                            + inUse()
                            + ". Add one and measure its parts, or open another parts file");
            return;
        }
        LoadedSet set = editor.document().loaded();
        Batch after = chosen.value().get().batch();
        double within = tolerance.value();
        latest.call(
                () -> compared(set, after, within),
                now -> {
                    compared.set(Optional.of(now));
                    text.set(words(now));
                },
                why -> {
                    compared.set(Optional.empty());
                    text.set(why);
                });
    }

    private static Compared compared(LoadedSet loaded, Batch after, double toleranceMm) {
        HandleSet set = loaded.set();
        BatchChange change = BatchChange.of(set, set.batchInUse(), after, loaded.materials());
        GaugeRules rules = GaugeRules.of(set.workshop().templates(), Units.MM);
        return new Compared(
                change,
                change.pieces().stream()
                        .map(piece -> ComparedPiece.of(change, piece, rules, toleranceMm))
                        .toList());
    }

    private static String words(Compared now) {
        long stopped = now.pieces().stream().filter(p -> p.change().after().isStopped()).count();
        int gauges = now.pieces().stream().mapToInt(p -> p.toCutAgain().size()).sum();
        int all = now.pieces().stream().mapToInt(p -> p.gauges().size()).sum();
        List<String> words = new ArrayList<>();
        if (stopped > 0) {
            words.add(stopped + (stopped == 1 ? " piece" : " pieces") + " NOT TO BE MADE with it");
        }
        if (all > 0) {
            words.add(
                    gauges == 0
                            ? "all " + all + " gauges and templates still serve"
                            : gauges + " of " + all + " gauges and templates to be cut again");
        }
        int missing = now.change().missing().size();
        if (missing > 0) {
            words.add(
                    missing
                            + (missing == 1
                                    ? " piece without its kit"
                                    : " pieces without their kit"));
        }
        return String.join("; ", words);
    }

    /**
     * Readings of a piece's kit that stand apart from the others of the same size, in both batches.
     *
     * @param piece the piece
     * @return sentences without a full stop
     */
    public List<String> outliers(PieceChange piece) {
        List<String> words = new ArrayList<>();
        if (compared.value().isPresent()) {
            BatchChange change = compared.value().get().change();
            outliers(words, change.before().id(), piece.before().brief().kit());
            outliers(words, change.after().id(), piece.after().brief().kit());
        }
        return words;
    }

    private void outliers(List<String> words, String batch, Kit kit) {
        Shown shown = new Shown(editor.units().value());
        for (PartSize size : kit.sizes()) {
            Outlier.of(size.measured())
                    .ifPresent(
                            apart ->
                                    words.add(
                                            batch
                                                    + ", "
                                                    + size.name()
                                                    + ": reading "
                                                    + apart.place()
                                                    + ", "
                                                    + shown.length(apart.reading(), 2)
                                                    + ", stands apart from the others' "
                                                    + shown.length(apart.othersMean(), 2)
                                                    + "; measure it again"));
        }
    }

    /** Works with the batch that is compared, as one step. */
    public void use() {
        chosen.value()
                .ifPresent(
                        candidate -> {
                            Batch batch = candidate.batch();
                            String before = inUse();
                            boolean isOwn = candidate.from().isEmpty();
                            boolean isDone =
                                    editor.run(
                                                    isOwn
                                                            ? PartsEdits.useBatch(batch.id())
                                                            : PartsEdits.takeBatch(named(batch)))
                                            .refusal()
                                            .isEmpty();
                            if (isDone) {
                                // What was in use is now what it is held against.
                                chosen.set(
                                        set().parts().batch(before).map(b -> new Candidate(b, "")));
                                refresh();
                            }
                        });
    }

    /** A batch of another file under an id that is free in the set's own. */
    private Batch named(Batch batch) {
        return new Batch(free(batch.id()), batch.note(), batch.kits());
    }

    private String free(String id) {
        Set<String> taken = new HashSet<>();
        set().parts().batches().forEach(batch -> taken.add(batch.id()));
        String free = id;
        for (int i = 2; taken.contains(free); i++) {
            free = id + "-" + i;
        }
        return free;
    }

    /**
     * A name for a batch that is added: the number at the end of the last one's, one higher.
     *
     * @return an id that is free
     */
    public String nextId() {
        List<Batch> batches = set().parts().batches();
        String last = batches.get(batches.size() - 1).id();
        String digits = last.replaceFirst("^.*?([0-9]{0,6})$", "$1");
        return free(
                digits.isEmpty()
                        ? last + "-2"
                        : last.substring(0, last.length() - digits.length())
                                + (Integer.parseInt(digits) + 1));
    }

    /**
     * Adds a batch with the kits of the one in use, to be measured anew, and works with it; one
     * step. The one that was in use is what it is held against.
     *
     * @param id what the maker calls it
     */
    public void add(String id) {
        String before = inUse();
        if (set().parts().batch(id.strip()).isPresent()) {
            editor.refuse("There is a batch " + id.strip() + " already; give it another name");
            return;
        }
        if (editor.run(PartsEdits.addBatch(id)).refusal().isEmpty()) {
            chosen.set(set().parts().batch(before).map(b -> new Candidate(b, "")));
            refresh();
        }
    }
}
