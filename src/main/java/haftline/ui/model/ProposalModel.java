package haftline.ui.model;

import haftline.adjust.Watch;
import haftline.adjust.solve.Adjust;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Proposal;
import haftline.adjust.solve.Wish;
import haftline.edit.AdjustEdits;
import haftline.edit.Outcome;
import haftline.handle.Handle;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;

/**
 * Adjusting and fairing: what is asked, what is proposed. A proposal is worked out by a background
 * executor and changes nothing before it is accepted; it falls once what it was made for changes.
 */
public final class ProposalModel {
    /** How far it is. */
    public enum Stage {
        /** Nothing is proposed. */
        ASKING,
        /** It is being worked out. */
        WORKING,
        /** Something is proposed. */
        PROPOSED
    }

    /**
     * What the panel shows.
     *
     * @param stage how far it is
     * @param proposal what is proposed
     * @param note why nothing is, or what is left to say; may be empty
     */
    public record State(Stage stage, Optional<Proposal> proposal, String note) {
        private static State asking(String note) {
            return new State(Stage.ASKING, Optional.empty(), note);
        }
    }

    private final EditorModel editor;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Asked> asked = new Watched<>(Asked.USUAL);
    private final Watched<State> state = new Watched<>(State.asking(""));
    private final Watched<Optional<Handle>> ghost = new Watched<>(Optional.empty());

    /** What the work under way or the proposal was made for. */
    private HandleSet basis;

    /** Names of the pieces that it is about, in its order. */
    private List<String> pieces = List.of();

    /** The work under way. */
    private Work under = new Work();

    /**
     * Proposals for an editor's set.
     *
     * @param editor the editor
     * @param background where they are worked out
     * @param drawing where what is watched changes
     */
    public ProposalModel(EditorModel editor, Executor background, Executor drawing) {
        this.editor = editor;
        this.background = background;
        this.drawing = drawing;
        editor.draft().watch(draft -> follow(draft.set()));
        editor.piece().watch(piece -> changePiece());
    }

    /**
     * What is asked.
     *
     * @return watched; may be set
     */
    public Watched<Asked> asked() {
        return asked;
    }

    /**
     * What is proposed.
     *
     * @return watched
     */
    public Watched<State> state() {
        return state;
    }

    /**
     * The piece at hand as proposed.
     *
     * @return watched; empty where nothing is proposed for it
     */
    public Watched<Optional<Handle>> ghost() {
        return ghost;
    }

    private void follow(HandleSet set) {
        if (state.value().stage() != Stage.ASKING && !set.equals(basis)) {
            drop("The set was changed meanwhile; work it out again.");
        }
    }

    private void changePiece() {
        boolean isAbout = pieces.contains(editor.piece().value());
        if (state.value().stage() != Stage.ASKING && !isAbout) {
            drop("");
        } else {
            showGhost();
        }
    }

    private void drop(String note) {
        under.isOver = true;
        state.set(State.asking(note));
        ghost.set(Optional.empty());
    }

    /** Works an adjustment out. */
    public void adjust() {
        Wish wish = asked.value().wish();
        if (wish.needs().isEmpty()) {
            drop("Choose at least one demand.");
            return;
        }
        HandleSet set = subject();
        Materials materials = editor.document().loaded().materials();
        work(set, watch -> Adjust.of(set, materials, wish, watch));
    }

    /** Works a fairing out; demands that are met stay met. */
    public void fair() {
        Wish wish = asked.value().wish();
        double band = asked.value().fairMm();
        HandleSet set = subject();
        Materials materials = editor.document().loaded().materials();
        work(set, watch -> Fairing.of(set, materials, wish, band, watch));
    }

    /** The pieces that may change: one alone is a set of its own to the solver. */
    private HandleSet subject() {
        HandleSet set = editor.draft().value().set();
        if (asked.value().whom() != Asked.Whom.THIS_PIECE) {
            return set;
        }
        return set.withPieces(List.of(editor.draft().value().piece(editor.piece().value())));
    }

    private void work(HandleSet set, Function<Watch, Optional<? extends Proposal>> maker) {
        editor.end();
        basis = editor.draft().value().set();
        pieces = set.pieces().stream().map(Piece::name).toList();
        under.isOver = true;
        Work mine = new Work();
        under = mine;
        ghost.set(Optional.empty());
        state.set(new State(Stage.WORKING, Optional.empty(), ""));
        background.execute(
                () -> {
                    Optional<State> found = worked(maker, mine);
                    drawing.execute(
                            () -> {
                                if (mine == under && !mine.isOver) {
                                    state.set(found.orElseThrow());
                                    showGhost();
                                }
                            });
                });
    }

    private static Optional<State> worked(
            Function<Watch, Optional<? extends Proposal>> maker, Watch watch) {
        try {
            return maker.apply(watch)
                    .map(proposal -> new State(Stage.PROPOSED, Optional.of(proposal), ""));
        } catch (IllegalArgumentException refused) {
            return Optional.of(State.asking(refused.getMessage()));
        }
    }

    /** One piece of work; over once it was overtaken or given up. */
    private static final class Work implements Watch {
        private volatile boolean isOver;

        @Override
        public boolean isOver() {
            return isOver;
        }
    }

    private void showGhost() {
        int at = pieces.indexOf(editor.piece().value());
        ghost.set(
                state.value()
                        .proposal()
                        .filter(proposal -> at >= 0 && !proposal.moves().isEmpty())
                        .flatMap(proposal -> proposal.after().get(at)));
    }

    /**
     * Accepts what is proposed, as one step.
     *
     * @return done, or why not
     */
    public Outcome accept() {
        Proposal proposal = state.value().proposal().orElseThrow();
        drop("");
        return editor.run(AdjustEdits.accept(proposal));
    }

    /** Gives up what is proposed or being worked out; all stays as it is. */
    public void discard() {
        drop("");
    }
}
