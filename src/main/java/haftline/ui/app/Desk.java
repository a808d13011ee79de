package haftline.ui.app;

import haftline.findings.Finding;
import haftline.measure.Units;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.stock.CatalogueException;
import haftline.stock.Stock;
import haftline.store.LoadedSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The open set as the window's parts share it: which piece is on the board, what is selected, and
 * the steps that can be undone. Free of any toolkit.
 */
public final class Desk {
    /** What has changed; the later ones include the earlier. */
    public enum Change {
        /** What is pointed at or selected. */
        SELECTION,
        /** The piece in hand, while a gesture goes on. */
        GESTURE,
        /** Another piece, another step, other units: everything is shown anew. */
        ALL
    }

    /** Told of changes. */
    public interface Listener {
        /**
         * Something has changed.
         *
         * @param change what
         */
        void changed(Change change);
    }

    private record Step(String label, HandleSet set) {}

    private final List<Listener> listeners = new ArrayList<>();
    private final Map<String, Examined> examined = new HashMap<>();
    private final List<Step> steps = new ArrayList<>();
    private LoadedSet loaded;
    private int at;
    private int savedAt;
    private HandleSet current;
    private int piece;
    private Optional<String> node = Optional.empty();
    private Optional<Finding> finding = Optional.empty();
    private Units units = Units.MM;
    private String notice = "";

    /**
     * A desk with a set on it.
     *
     * @param loaded the set
     */
    public Desk(LoadedSet loaded) {
        put(loaded);
    }

    /**
     * Puts another set on the desk; its history begins anew.
     *
     * @param opened the set
     */
    public void open(LoadedSet opened) {
        put(opened);
        tell(Change.ALL);
    }

    private void put(LoadedSet opened) {
        loaded = opened;
        current = opened.set();
        steps.clear();
        steps.add(new Step("opened", current));
        at = 0;
        savedAt = 0;
        piece = 0;
        node = Optional.empty();
        finding = Optional.empty();
        examined.clear();
    }

    /**
     * Asks to be told of changes.
     *
     * @param listener who is told
     */
    public void listen(Listener listener) {
        listeners.add(listener);
    }

    private void tell(Change change) {
        for (Listener listener : listeners) {
            listener.changed(change);
        }
    }

    /**
     * The set as it now is, with what it was read from.
     *
     * @return the set
     */
    public LoadedSet loaded() {
        return loaded.withSet(current);
    }

    /**
     * The set as it now is, a gesture in hand included.
     *
     * @return the set
     */
    public HandleSet set() {
        return current;
    }

    /**
     * The stocks that can be chosen.
     *
     * @return woods, then plastics, in the catalogues' order
     */
    public List<Stock> stocks() {
        List<Stock> stocks = new ArrayList<>();
        try {
            stocks.addAll(loaded.catalogues().woods().entries());
            stocks.addAll(loaded.catalogues().plastics().entries());
        } catch (CatalogueException unreadable) {
            // The maker's own catalogue was spoilt since the set was read; what it said is kept.
            stocks.clear();
            stocks.add(examined().brief().stock());
        }
        return stocks;
    }

    /**
     * The piece on the board.
     *
     * @return the piece
     */
    public Piece piece() {
        return current.pieces().get(piece);
    }

    /**
     * Its place among the pieces.
     *
     * @return from 0
     */
    public int pieceIndex() {
        return piece;
    }

    /**
     * Puts another piece on the board.
     *
     * @param index its place
     */
    public void choosePiece(int index) {
        if (index != piece && index >= 0 && index < current.pieces().size()) {
            piece = index;
            node = Optional.empty();
            finding = Optional.empty();
            tell(Change.ALL);
        }
    }

    /**
     * The piece on the board, worked out.
     *
     * @return the piece examined
     */
    public Examined examined() {
        return examined(piece());
    }

    /**
     * A piece, worked out; what has been worked out before is kept.
     *
     * @param which a piece of the set
     * @return the piece examined
     */
    public Examined examined(Piece which) {
        var brief = current.brief(which, loaded.materials());
        Examined known = examined.get(which.name());
        if (known == null || !known.brief().equals(brief)) {
            known = Examined.of(brief);
            examined.put(which.name(), known);
        }
        return known;
    }

    /**
     * The node that the keys act on.
     *
     * @return its name, or empty
     */
    public Optional<String> node() {
        return node;
    }

    /**
     * Selects a node.
     *
     * @param name its name, or empty
     */
    public void selectNode(Optional<String> name) {
        if (!node.equals(name)) {
            node = name;
            tell(Change.SELECTION);
        }
    }

    /**
     * The finding whose place is shown.
     *
     * @return the finding, or empty
     */
    public Optional<Finding> finding() {
        return finding;
    }

    /**
     * Shows the place of a finding.
     *
     * @param chosen the finding, or empty
     */
    public void chooseFinding(Optional<Finding> chosen) {
        finding = chosen;
        tell(Change.SELECTION);
    }

    /**
     * Unit of lengths on the screen.
     *
     * @return the unit
     */
    public Units units() {
        return units;
    }

    /**
     * Shows lengths in another unit.
     *
     * @param wanted the unit
     */
    public void showIn(Units wanted) {
        units = wanted;
        tell(Change.ALL);
    }

    /**
     * Shows a change while a gesture goes on; nothing is recorded yet.
     *
     * @param changed the set as it would be
     */
    public void preview(HandleSet changed) {
        current = changed;
        tell(Change.GESTURE);
    }

    /** The set before the gesture in hand. */
    HandleSet settled() {
        return steps.get(at).set();
    }

    /** Drops the gesture in hand. */
    public void letBack() {
        current = settled();
        tell(Change.ALL);
    }

    /**
     * Records what is shown as one step.
     *
     * @param label what was done, as it stands behind "undo"
     */
    public void settle(String label) {
        if (!current.equals(settled())) {
            while (steps.size() > at + 1) {
                steps.remove(steps.size() - 1);
            }
            if (savedAt > at) {
                savedAt = -1;
            }
            steps.add(new Step(label, current));
            at++;
            finding = Optional.empty();
        }
        tell(Change.ALL);
    }

    /**
     * Changes the set by one step.
     *
     * @param label what is done
     * @param change from the set as it is to the set as it shall be
     */
    public void change(String label, UnaryOperator<HandleSet> change) {
        try {
            current = change.apply(settled());
            notice = "";
        } catch (IllegalArgumentException refused) {
            notice = refused.getMessage();
            current = settled();
        }
        piece = Math.min(piece, current.pieces().size() - 1);
        settle(label);
    }

    /**
     * Changes the piece on the board by one step.
     *
     * @param label what is done
     * @param change from the piece as it is to the piece as it shall be
     */
    public void changePiece(String label, UnaryOperator<Piece> change) {
        change(label, set -> withPiece(set, change.apply(set.pieces().get(piece))));
    }

    /** The set with the piece on the board replaced. */
    HandleSet withPiece(HandleSet set, Piece changed) {
        List<Piece> pieces = new ArrayList<>(set.pieces());
        pieces.set(piece, changed);
        return set.withPieces(pieces);
    }

    /**
     * Why the last change was not made.
     *
     * @return a sentence, empty where it was made
     */
    public String notice() {
        return notice;
    }

    /**
     * Says something to the maker.
     *
     * @param sentence the sentence, or empty to take the last one away
     */
    public void say(String sentence) {
        notice = sentence;
        tell(Change.SELECTION);
    }

    /**
     * What would be undone.
     *
     * @return its label, or empty
     */
    public Optional<String> undoable() {
        return at > 0 ? Optional.of(steps.get(at).label()) : Optional.empty();
    }

    /**
     * What would be done again.
     *
     * @return its label, or empty
     */
    public Optional<String> redoable() {
        return at + 1 < steps.size() ? Optional.of(steps.get(at + 1).label()) : Optional.empty();
    }

    /** Takes the last step back. */
    public void undo() {
        if (at > 0) {
            go(at - 1);
        }
    }

    /** Takes the step that was undone again. */
    public void redo() {
        if (at + 1 < steps.size()) {
            go(at + 1);
        }
    }

    private void go(int step) {
        at = step;
        current = settled();
        piece = Math.min(piece, current.pieces().size() - 1);
        finding = Optional.empty();
        tell(Change.ALL);
    }

    /**
     * Whether the set differs from what is on the disk.
     *
     * @return false where undoing has led back to it
     */
    public boolean isModified() {
        return at != savedAt;
    }
}
