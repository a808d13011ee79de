package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Draft;
import haftline.edit.OpenDocument;
import haftline.edit.Outcome;
import haftline.edit.Scope;
import haftline.edit.Worked;
import haftline.handle.Brief;
import haftline.measure.Units;
import haftline.set.Piece;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What all views of the editor share: the open document, the piece at hand, the units. Every change
 * goes through here, so that every view follows.
 */
public final class EditorModel {
    private final Watched<OpenDocument> opened;
    private int pieceIndex;

    private final Watched<Draft> draft;
    private final Watched<String> piece;
    private final Watched<Worked> worked;
    private final Watched<Optional<Worked>> drawn = new Watched<>(Optional.empty());
    private final Watched<Optional<Worked>> told = new Watched<>(Optional.empty());
    private long restNs;
    private long toldAt;
    private final Watched<Boolean> isBehind = new Watched<>(false);
    private final Watched<Status> status;
    private final Watched<Units> units = new Watched<>(Units.MM);
    private final Watched<Scope> scope = new Watched<>(Scope.THIS_PIECE);
    private final Watched<Boolean> inHand = new Watched<>(false);
    private final Watched<Optional<String>> notice = new Watched<>(Optional.empty());

    /**
     * What title bar and menus show of the history.
     *
     * @param isModified whether there is something to save
     * @param undoName name of the step that can be undone, or empty
     * @param redoName name of the step that can be done again, or empty
     */
    public record Status(boolean isModified, Optional<String> undoName, Optional<String> redoName) {
        static Status of(OpenDocument document) {
            return new Status(document.isModified(), document.undoName(), document.redoName());
        }
    }

    /**
     * Begins with a document, its first piece at hand.
     *
     * @param document the document
     */
    public EditorModel(OpenDocument document) {
        opened = new Watched<>(document);
        draft = new Watched<>(document.draft());
        piece = new Watched<>(document.draft().set().pieces().get(0).name());
        worked = new Watched<>(document.worked(piece.value()));
        status = new Watched<>(Status.of(document));
        refresh();
    }

    /**
     * The open document().
     *
     * @return the document
     */
    public OpenDocument document() {
        return opened.value();
    }

    /**
     * The open document().
     *
     * @return watched; told before anything else follows, so that what was begun on the one before
     *     is dropped
     */
    public Watched<OpenDocument> opened() {
        return opened;
    }

    /**
     * Shows another document, its first piece at hand.
     *
     * @param other the document
     */
    public void show(OpenDocument other) {
        opened.set(other);
        pieceIndex = 0;
        drawn.set(Optional.empty());
        notice.set(Optional.empty());
        piece.set(other.draft().set().pieces().get(0).name());
        refresh();
    }

    /**
     * The content of the document, in the middle of a gesture too.
     *
     * @return watched; told after {@link #piece()} and {@link #worked()} are up to date
     */
    public Watched<Draft> draft() {
        return draft;
    }

    /**
     * Name of the piece at hand.
     *
     * @return watched; set by {@link #choose}
     */
    public Watched<String> piece() {
        return piece;
    }

    /**
     * The piece at hand, worked out.
     *
     * @return watched; follows every change, in the middle of a gesture too
     */
    public Watched<Worked> worked() {
        return worked;
    }

    /**
     * What the board draws: the piece at hand as it last could be drawn.
     *
     * @return watched; empty where it never could
     */
    public Watched<Optional<Worked>> drawn() {
        return drawn;
    }

    /**
     * As {@link #drawn()}, for what stands beside the board.
     *
     * @return watched; rests as {@link #rest} has it
     */
    public Watched<Optional<Worked>> told() {
        return told;
    }

    /**
     * Lets all but {@link #drawn()} rest for a while after each change in the middle of a gesture:
     * figures that change with every frame are not read and cost more than the board. What rests is
     * brought up to date by the first change after that while, by the end of the gesture and by
     * {@link #catchUp}.
     *
     * @param millis how long, ms; 0, as at first, for not at all
     */
    public void rest(int millis) {
        restNs = millis * 1_000_000L;
    }

    /**
     * Whether something rests that is no longer up to date.
     *
     * @return watched; who lets things rest calls {@link #catchUp} a moment after it is told
     */
    public Watched<Boolean> isBehind() {
        return isBehind;
    }

    /** Brings what rests up to date: nothing has changed for a moment. */
    public void catchUp() {
        if (isBehind.value()) {
            tellAll();
        }
    }

    /**
     * What title bar and menus show of the history.
     *
     * @return watched
     */
    public Watched<Status> status() {
        return status;
    }

    /**
     * Unit of lengths on the screen.
     *
     * @return watched; may be set
     */
    public Watched<Units> units() {
        return units;
    }

    /**
     * Which pieces a change of the shape is for.
     *
     * @return watched; may be set
     */
    public Watched<Scope> scope() {
        return scope;
    }

    /**
     * Whether a gesture is under way. It may end without a change of anything else: a hand that has
     * rested lets go.
     *
     * @return watched; told after all else
     */
    public Watched<Boolean> inHand() {
        return inHand;
    }

    /**
     * Why something was not done.
     *
     * @return watched; emptied by the next thing that is done
     */
    public Watched<Optional<String>> notice() {
        return notice;
    }

    /**
     * Says why something is not done.
     *
     * @param why a sentence without a full stop
     */
    public void refuse(String why) {
        notice.set(Optional.of(why));
    }

    /**
     * Takes another piece in hand.
     *
     * @param name the piece's name
     */
    public void choose(String name) {
        document().end();
        piece.set(document().draft().piece(name).name());
        notice.set(Optional.empty());
        refresh();
    }

    /**
     * Carries a command out as one step.
     *
     * @param command the command
     * @return done, or why not, which is {@link #notice()} too
     */
    public Outcome run(Command command) {
        return told(document().apply(command));
    }

    /**
     * Carries a command out as one step, unless the piece at hand could then no longer be drawn.
     *
     * @param command the command; does not rename or remove the piece at hand
     * @return done, or why not, which is {@link #notice()} too
     */
    public Outcome runIfDrawable(Command command) {
        return told(document().applyIfDrawable(command, piece.value()));
    }

    /**
     * Begins a gesture.
     *
     * @param name what is being done
     */
    public void begin(String name) {
        document().begin(name);
        refresh();
        // Its first change is told at once.
        toldAt = System.nanoTime() - restNs;
    }

    /**
     * Carries the gesture on: the command takes the place of all that the gesture did so far.
     *
     * @param command the command
     * @return done, or why not, which is {@link #notice()} too
     */
    public Outcome carryOn(Command command) {
        return told(document().carryOn(command, piece.value()));
    }

    /** Ends the gesture under way, if any: it is one step. */
    public void end() {
        document().end();
        refresh();
    }

    /** Gives the gesture under way up. */
    public void cancel() {
        document().cancel();
        refresh();
    }

    /** Goes one step back, if there is one. */
    public void undo() {
        step(OpenDocument::undo);
    }

    /** Goes one step forward again, if there is one. */
    public void redo() {
        step(OpenDocument::redo);
    }

    /**
     * What a step changes is seen: where it leaves the piece at hand as it is, another is taken.
     */
    private void step(Consumer<OpenDocument> step) {
        document().end();
        Map<String, Brief> before = briefs();
        step.accept(document());
        Map<String, Brief> after = briefs();
        String hand = piece.value();
        if (after.containsKey(hand) && after.get(hand).equals(before.get(hand))) {
            after.entrySet().stream()
                    .filter(entry -> !entry.getValue().equals(before.get(entry.getKey())))
                    .findFirst()
                    .ifPresent(entry -> piece.set(entry.getKey()));
        }
        notice.set(Optional.empty());
        refresh();
    }

    private Map<String, Brief> briefs() {
        Map<String, Brief> briefs = new LinkedHashMap<>();
        for (Piece each : document().draft().set().pieces()) {
            briefs.put(each.name(), document().brief(each.name()));
        }
        return briefs;
    }

    private Outcome told(Outcome came) {
        Outcome outcome =
                came instanceof Outcome.Refused refused ? refused.in(units.value()) : came;
        notice.set(outcome.refusal());
        refresh();
        return outcome;
    }

    /** Brings all that is watched up to date with the document(). */
    void refresh() {
        Draft now = document().draft();
        List<Piece> pieces = now.set().pieces();
        int index = index(pieces, piece.value());
        // A piece that an undo took away or renamed gives way to the one in its place.
        pieceIndex = index >= 0 ? index : Math.min(pieceIndex, pieces.size() - 1);
        piece.set(pieces.get(pieceIndex).name());
        Worked fresh = document().worked(piece.value());
        if (fresh.figures().isPresent()) {
            drawn.set(Optional.of(fresh));
        } else if (!isOfPiece(drawn.value())) {
            drawn.set(Optional.empty());
        }
        if (document().isInGesture() && inHand.value() && System.nanoTime() - toldAt < restNs) {
            isBehind.set(true);
        } else {
            tellAll();
        }
    }

    private void tellAll() {
        isBehind.set(false);
        toldAt = System.nanoTime();
        told.set(drawn.value());
        worked.set(document().worked(piece.value()));
        status.set(Status.of(document()));
        draft.set(document().draft());
        inHand.set(document().isInGesture());
    }

    private boolean isOfPiece(Optional<Worked> shown) {
        return shown.filter(last -> last.brief().name().equals(piece.value())).isPresent();
    }

    private static int index(List<Piece> pieces, String name) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
