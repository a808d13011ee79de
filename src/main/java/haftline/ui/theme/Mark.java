package haftline.ui.theme;

import haftline.findings.Gravity;
import java.util.Optional;
import javafx.scene.shape.SVGPath;

/** The sign of a gravity: each has its own form, so that none is told by its colour alone. */
public final class Mark extends SVGPath {
    private static final String SQUARE = "M1,1 H11 V11 H1 Z";
    private static final String TRIANGLE = "M6,0.5 L11.8,11 H0.2 Z";
    private static final String RING = "M6,1 A5,5 0 1,1 5.99,1 Z M6,3.4 A2.6,2.6 0 1,0 6.01,3.4 Z";
    private static final String TICK = "M1,6.6 L2.6,5 L4.8,7.4 L9.6,1.8 L11.2,3.2 L4.9,10.6 Z";

    /** A mark that is set by {@link #show}. */
    public Mark() {
        getStyleClass().add("mark");
    }

    /**
     * A mark of a gravity.
     *
     * @param gravity the gravity
     */
    public Mark(Gravity gravity) {
        this();
        show(Optional.of(gravity));
    }

    /**
     * Shows a gravity.
     *
     * @param gravity the gravity, or empty where all is well
     */
    public void show(Optional<Gravity> gravity) {
        String style = gravity.map(Mark::style).orElse("mark-good");
        if (getStyleClass().contains(style)) {
            return;
        }
        getStyleClass().setAll("mark", style);
        setContent(gravity.map(Mark::form).orElse(TICK));
        setAccessibleText(words(gravity));
    }

    /**
     * A gravity in a word.
     *
     * @param gravity the gravity, or empty where all is well
     * @return the word
     */
    public static String words(Optional<Gravity> gravity) {
        return gravity.map(
                        g ->
                                switch (g) {
                                    case STOP -> "cannot be made so";
                                    case WARN -> "warning";
                                    case NOTE -> "note";
                                })
                .orElse("all well");
    }

    private static String style(Gravity gravity) {
        return switch (gravity) {
            case STOP -> "mark-stop";
            case WARN -> "mark-warn";
            case NOTE -> "mark-note";
        };
    }

    private static String form(Gravity gravity) {
        return switch (gravity) {
            case STOP -> SQUARE;
            case WARN -> TRIANGLE;
            case NOTE -> RING;
        };
    }
}
