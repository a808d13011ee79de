package haftline.ui.board;

import haftline.ui.model.BoardModel;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** What the keys do on the board. */
final class BoardKeys {
    private static final double PAN_STEP = 40;

    /** What an arrow key moves a node by, mm; ten times that with Shift. */
    private static final double NUDGE = 0.1;

    private final BoardModel model;
    private final Runnable slope;

    /**
     * Keys.
     *
     * @param model what is done on the board
     * @param slope asks for a node's slope
     */
    BoardKeys(BoardModel model, Runnable slope) {
        this.model = model;
        this.slope = slope;
    }

    void down(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        if (arrow(event) || width(event) || command(event.getCode())) {
            event.consume();
        }
    }

    private boolean arrow(KeyEvent event) {
        double step = event.isShiftDown() ? 10 * NUDGE : NUDGE;
        KeyCode code = event.getCode();
        double along = code == KeyCode.RIGHT ? step : code == KeyCode.LEFT ? -step : 0;
        double across = code == KeyCode.UP ? step : code == KeyCode.DOWN ? -step : 0;
        if (along == 0 && across == 0) {
            return false;
        }
        if (model.selected().value().isPresent()) {
            model.nudge(along, across);
        } else if (model.details().detail().isPresent()) {
            model.details().nudge(along, 0, across);
        } else {
            model.viewpoint().pan(-Math.signum(along) * PAN_STEP, Math.signum(across) * PAN_STEP);
        }
        return true;
    }

    private boolean width(KeyEvent event) {
        double step = event.isShiftDown() ? 10 * NUDGE : NUDGE;
        boolean wider = event.getCode() == KeyCode.PERIOD;
        if (!wider && event.getCode() != KeyCode.COMMA) {
            return false;
        }
        model.details().nudge(0, wider ? step : -step, 0);
        return true;
    }

    private boolean command(KeyCode code) {
        switch (code) {
            case DELETE, BACK_SPACE -> model.deleteSelected();
            case ESCAPE -> {
                if (model.isDragging()) {
                    model.abandon();
                } else {
                    model.selected().set(Optional.empty());
                    model.details().chosen().set(Optional.empty());
                }
            }
            case S -> slope.run();
            case N -> model.selectNext(1);
            case P -> model.selectNext(-1);
            default -> {
                return false;
            }
        }
        return true;
    }
}
