package haftline.ui.model;

import haftline.adjust.Watch;
import haftline.adjust.doubt.TwoWays;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;

/**
 * What chance makes of the piece at hand: a Monte-Carlo run in the background, begun anew once the
 * hand rests after a change.
 */
public final class DoubtModel {
    /** Enough for 1 in 1,000 to be told, few enough for half a second. */
    static final int HANDLES = 20_000;

    /** The same piece gives the same answer, as on the command line. */
    static final long SEED = 1;

    /** How far it is. */
    public enum Stage {
        /** It is not shown. */
        OFF,
        /** The piece changes; the run begins once the hand rests. */
        WAITING,
        /** It runs. */
        RUNNING,
        /** It is through. */
        DONE,
        /** The maker stopped it; it begins anew with the next change. */
        STOPPED,
        /** The piece cannot be drawn. */
        IMPOSSIBLE
    }

    /**
     * What is shown.
     *
     * @param stage how far it is
     * @param share how much of the run is done, 0 to 1
     * @param answer what it says, while it is of the piece as it is
     */
    public record State(Stage stage, double share, Optional<TwoWays> answer) {
        private static State of(Stage stage) {
            return new State(stage, 0, Optional.empty());
        }
    }

    private final EditorModel editor;
    private final Executor background;
    private final Executor drawing;
    private final Runnable rest;
    private final int threads;
    private final Watched<State> state = new Watched<>(State.of(Stage.OFF));
    private Optional<Handle> handle = Optional.empty();
    private Run run;

    /**
     * The doubt of an editor's piece, not shown yet.
     *
     * @param editor the editor
     * @param background where runs are watched; they have threads of their own
     * @param drawing where what is watched changes
     * @param resting makes of something to do one that may be called often and does it once no call
     *     has come for a moment
     * @param threads on how many threads a run goes, 1 or more
     */
    public DoubtModel(
            EditorModel editor,
            Executor background,
            Executor drawing,
            UnaryOperator<Runnable> resting,
            int threads) {
        this.editor = editor;
        this.background = background;
        this.drawing = drawing;
        this.threads = threads;
        rest = resting.apply(this::begin);
        editor.worked().watch(worked -> follow());
        editor.inHand().watch(inHand -> follow());
    }

    /**
     * What is shown.
     *
     * @return watched
     */
    public Watched<State> state() {
        return state;
    }

    /**
     * Shows it or puts it away.
     *
     * @param on whether it is shown
     */
    public void show(boolean on) {
        stopRun();
        handle = Optional.empty();
        state.set(State.of(on ? Stage.WAITING : Stage.OFF));
        if (on) {
            begin();
        }
    }

    /** Ends the run under way. */
    public void stop() {
        if (state.value().stage() == Stage.RUNNING) {
            stopRun();
            state.set(State.of(Stage.STOPPED));
        }
    }

    private void stopRun() {
        if (run != null) {
            run.isOver = true;
            run = null;
        }
    }

    private Optional<Handle> current() {
        Worked worked = editor.worked().value();
        return worked.figures().map(Figures::handle);
    }

    private void follow() {
        Stage stage = state.value().stage();
        if (stage == Stage.OFF) {
            return;
        }
        // In a gesture every frame has another handle; identity tells it at once.
        boolean isSame = sameAs(current());
        if (isSame && stage != Stage.WAITING) {
            return;
        }
        if (stage != Stage.WAITING) {
            stopRun();
            handle = Optional.empty();
            state.set(State.of(Stage.WAITING));
        }
        rest.run();
    }

    private boolean sameAs(Optional<Handle> now) {
        return now.isPresent() == handle.isPresent()
                && (now.isEmpty() || now.get() == handle.get());
    }

    private void begin() {
        if (state.value().stage() != Stage.WAITING || editor.document().isInGesture()) {
            return;
        }
        handle = current();
        if (handle.isEmpty()) {
            state.set(State.of(Stage.IMPOSSIBLE));
            return;
        }
        Run mine = new Run();
        run = mine;
        state.set(State.of(Stage.RUNNING));
        Handle made = handle.get();
        background.execute(
                () -> {
                    Optional<TwoWays> answer = TwoWays.of(made, SEED, HANDLES, threads, mine);
                    drawing.execute(() -> answer.ifPresent(ways -> finish(mine, ways)));
                });
    }

    private void finish(Run mine, TwoWays answer) {
        if (run == mine) {
            run = null;
            state.set(new State(Stage.DONE, 1, Optional.of(answer)));
        }
    }

    /** One run; its progress is told on the drawing thread, and only while it is wanted. */
    private final class Run implements Watch {
        private volatile boolean isOver;

        @Override
        public void made(int handles, int of) {
            drawing.execute(
                    () -> {
                        double share = (double) handles / of;
                        if (run == this && share > state.value().share()) {
                            state.set(new State(Stage.RUNNING, share, Optional.empty()));
                        }
                    });
        }

        @Override
        public boolean isOver() {
            return isOver;
        }
    }
}
