package haftline.ui.board;

import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Grip;
import haftline.ui.model.Hit;
import haftline.ui.words.Shown;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Cursor;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.util.Duration;

/** What the mouse does on the board. */
final class BoardHand {
    /** How near the pointer must be to a node, px. */
    static final double REACH = 12;

    private static final double WHEEL_ZOOM = 1.0015;

    private final BoardPane pane;
    private final EditorModel editor;
    private final BoardModel model;
    private final CrossHair crossHair;
    private final Tooltip why = new Tooltip();
    private boolean panning;
    private boolean moved;
    private double pressX;
    private double pressY;
    private double readAt;

    /**
     * A hand.
     *
     * @param pane the board
     * @param editor what all views share
     * @param model what is done on the board
     * @param crossHair reads off where the pointer is
     */
    BoardHand(BoardPane pane, EditorModel editor, BoardModel model, CrossHair crossHair) {
        this.pane = pane;
        this.editor = editor;
        this.model = model;
        this.crossHair = crossHair;
        why.setShowDelay(Duration.millis(150));
    }

    void hover(MouseEvent event) {
        model.hover(event.getX(), event.getY(), REACH);
        Optional<Hit> hit = model.hovered().value();
        String fixed = hit.map(h -> h instanceof Hit.OnNode on ? on.fixedBy() : "").orElse("");
        pane.setCursor(hit.map(BoardHand::cursor).orElse(Cursor.CROSSHAIR));
        explain(fixed, event);
        read(event.getX(), event.getY());
    }

    private static Cursor cursor(Hit hit) {
        if (hit instanceof Hit.OnGrip grip) {
            return grip.kind() == Grip.Kind.PROUD ? Cursor.V_RESIZE : Cursor.H_RESIZE;
        }
        boolean isFixed = hit instanceof Hit.OnNode node && !node.fixedBy().isEmpty();
        return isFixed ? Cursor.DEFAULT : Cursor.HAND;
    }

    /** Says why a fixed end does not move. */
    private void explain(String fixedBy, MouseEvent event) {
        if (fixedBy.isEmpty()) {
            why.hide();
            return;
        }
        String words = "Does not move: " + fixedBy;
        if (!words.equals(why.getText())) {
            // Where it stands it speaks of another node.
            why.hide();
        }
        why.setText(words);
        if (!why.isShowing() && pane.getScene() != null && pane.getScene().getWindow() != null) {
            why.show(pane, event.getScreenX() + 14, event.getScreenY() + 14);
        }
    }

    private void read(double px, double py) {
        if (py < Sheet.RULER) {
            crossHair.hide();
        } else {
            read(px);
        }
    }

    private void read(double px) {
        readAt = px;
        Shown shown = new Shown(editor.units().value());
        crossHair.show(px, model.readOut(px), shown, pane.getWidth(), pane.getHeight());
    }

    /** Reads what is dragged with the next painting, which reads again all the same. */
    private void follow(double px, double py) {
        if (py < Sheet.RULER || !crossHair.isShown()) {
            read(px, py);
        } else {
            readAt = px;
            pane.stale();
        }
    }

    /** What is read changes under a hand at rest: by keys, by a remedy, by a step back. */
    void readAgain() {
        if (crossHair.isShown()) {
            read(readAt);
        }
    }

    void leave() {
        crossHair.hide();
        why.hide();
        model.hovered().set(Optional.empty());
    }

    void press(MouseEvent event) {
        pane.requestFocus();
        pane.closeCards();
        // The foot says it where a node is pulled: over the piece it would be in the way.
        why.hide();
        pressX = event.getX();
        pressY = event.getY();
        moved = false;
        if (event.getButton() == MouseButton.PRIMARY) {
            panning = model.press(pressX, pressY, REACH).isEmpty();
        } else if (event.getButton() == MouseButton.MIDDLE) {
            panning = true;
        }
    }

    void drag(MouseEvent event) {
        double dx = event.getX() - pressX;
        double dy = event.getY() - pressY;
        moved |= Math.hypot(dx, dy) > 2;
        if (model.isDragging()) {
            model.dragTo(event.getX(), event.getY(), event.isAltDown());
            follow(crossHairX(event), event.getY());
        } else if (panning && moved) {
            leave();
            pane.setCursor(Cursor.MOVE);
            model.viewpoint().pan(Math.round(dx), Math.round(dy));
            pressX = event.getX();
            pressY = event.getY();
        }
    }

    /** The cross-hair stays on what is dragged. */
    private double crossHairX(MouseEvent event) {
        return model.selected()
                .value()
                .flatMap(pane::pixelOf)
                .map(Point2D::getX)
                .orElse(event.getX());
    }

    void release() {
        panning = false;
        model.release();
    }

    void click(MouseEvent event) {
        boolean twice = event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2;
        boolean onPaper = event.getY() > Sheet.RULER;
        if (twice && onPaper && !moved && model.hit(event.getX(), event.getY(), REACH).isEmpty()) {
            model.addNode(event.getX());
        }
    }

    void scroll(ScrollEvent event) {
        if (event.isShiftDown() || event.getDeltaX() != 0 && event.getDeltaY() == 0) {
            double by = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
            model.viewpoint().pan(Math.round(by), 0);
        } else {
            model.viewpoint()
                    .zoom(Math.pow(WHEEL_ZOOM, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }
}
