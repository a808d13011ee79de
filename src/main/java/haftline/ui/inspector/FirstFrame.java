package haftline.ui.inspector;

import javafx.animation.AnimationTimer;

/** Does something once the first frame has gone to be painted. */
final class FirstFrame extends AnimationTimer {
    private final Runnable what;
    private int pulses;

    FirstFrame(Runnable what) {
        this.what = what;
    }

    @Override
    public void handle(long now) {
        // The first pulse is told before it lays out and paints.
        if (++pulses == 2) {
            stop();
            what.run();
        }
    }
}
