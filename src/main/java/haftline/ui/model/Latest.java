package haftline.ui.model;

import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Works out in the background what was last asked for; what a later call has overtaken is dropped.
 * Is called, and answers, on the thread that draws.
 */
public final class Latest {
    /**
     * Work that may fail.
     *
     * @param <T> what comes of it
     */
    public interface Work<T> {
        /**
         * Does the work.
         *
         * @return what comes of it
         * @throws Exception whose message tells what went wrong
         */
        T call() throws Exception;
    }

    private final Executor background;
    private final Executor drawing;

    /** Tells what was overtaken; read by the background too. */
    private volatile int number;

    /**
     * Executors to work with.
     *
     * @param background where work is done
     * @param drawing where what came of it is told
     */
    public Latest(Executor background, Executor drawing) {
        this.background = background;
        this.drawing = drawing;
    }

    /**
     * Does work, in place of any that was asked for before and is not done.
     *
     * @param <T> what comes of it
     * @param work the work
     * @param done told what came of it
     * @param failed told why nothing did
     */
    public <T> void call(Work<T> work, Consumer<T> done, Consumer<String> failed) {
        int mine = number + 1;
        number = mine;
        background.execute(
                () -> {
                    if (mine != number) {
                        return;
                    }
                    try {
                        T result = work.call();
                        tell(mine, () -> done.accept(result));
                    } catch (Exception wrong) {
                        tell(mine, () -> failed.accept(wrong.getMessage()));
                    }
                });
    }

    private void tell(int mine, Runnable what) {
        drawing.execute(
                () -> {
                    if (mine == number) {
                        what.run();
                    }
                });
    }
}
