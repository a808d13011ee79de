package haftline.ui.theme;

import javafx.animation.PauseTransition;
import javafx.util.Duration;

/** Does something once nothing has called for it for a moment: what a drag need not wait for. */
public final class Later {
    private static final Duration MOMENT = Duration.millis(140);

    private final PauseTransition pause = new PauseTransition(MOMENT);

    /**
     * Something to be done later.
     *
     * @param what what is done
     */
    public Later(Runnable what) {
        pause.setOnFinished(e -> what.run());
    }

    /** Calls for it. */
    public void call() {
        pause.playFromStart();
    }
}
