package haftline.ui.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;

/** Work that a test lets be done when it wants. */
final class Background implements Executor {
    private final Deque<Runnable> waiting = new ArrayDeque<>();

    @Override
    public void execute(Runnable work) {
        waiting.add(work);
    }

    /** Does all that waits. */
    void work() {
        while (!waiting.isEmpty()) {
            waiting.poll().run();
        }
    }

    Latest latest() {
        return new Latest(this, Runnable::run);
    }
}
