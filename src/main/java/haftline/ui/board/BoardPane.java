package haftline.ui.board;

import haftline.handle.PlacedNode;
import java.util.Map;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.util.Duration;

/** The board as a control: shows a scene and passes on what the hand does to it. */
public final class BoardPane extends Region {
    /** How near the pointer must be to a node, px. */
    private static final double REACH = 12;

    private static final double WHEEL_ZOOM = 1.0015;
    private static final double KEY_ZOOM = 1.25;
    private static final double PAN_STEP = 40;

    /** What an arrow key moves a node by, mm; ten times that with Shift. */
    private static final double NUDGE = 0.1;

    private final Canvas canvas = new Canvas();
    private final BoardPainter painter = new BoardPainter();
    private final Line crossHair = new Line();
    private final GridPane card = new GridPane();
    private final Tooltip why = new Tooltip();
    private final BoardActions actions;
    private final NodeMenu menu;
    private BoardScene scene;
    private View view;
    private boolean fitted = true;
    private String dragged;
    private double pressX;
    private double pressY;
    private double offsetX;
    private double offsetD;
    private boolean panning;
    private boolean moved;

    /**
     * A board.
     *
     * @param actions told what the hand does
     */
    public BoardPane(BoardActions actions) {
        this.actions = actions;
        menu = new NodeMenu(actions);
        getStyleClass().add("board");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(200, 120);
        canvas.setMouseTransparent(true);
        crossHair.getStyleClass().add("cross-hair");
        crossHair.setMouseTransparent(true);
        crossHair.setManaged(false);
        crossHair.setVisible(false);
        card.getStyleClass().add("readout");
        card.setMouseTransparent(true);
        card.setManaged(false);
        card.setVisible(false);
        why.setShowDelay(Duration.millis(150));
        getChildren().addAll(canvas, crossHair, card);
        setOnMouseMoved(this::hover);
        setOnMouseExited(event -> leave());
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(event -> release());
        setOnMouseClicked(this::click);
        setOnScroll(this::scroll);
        setOnKeyPressed(this::key);
        setOnContextMenuRequested(
                event -> {
                    nodeAt(event.getX(), event.getY())
                            .or(this::selected)
                            .ifPresent(
                                    node ->
                                            menu.show(
                                                    this,
                                                    node,
                                                    event.getScreenX(),
                                                    event.getScreenY()));
                    event.consume();
                });
        focusedProperty().addListener((o, was, is) -> pseudoClassStateChanged(FOCUS, is));
    }

    private static final javafx.css.PseudoClass FOCUS =
            javafx.css.PseudoClass.getPseudoClass("at-work");

    /**
     * Shows a scene.
     *
     * @param shown the scene
     */
    public void show(BoardScene shown) {
        boolean other = scene == null || !scene.handle().name().equals(shown.handle().name());
        scene = scene == null || other ? shown : shown.withHovered(scene.hovered());
        if (other) {
            fitted = true;
            leave();
        }
        setAccessibleText(
                "Board with "
                        + scene.handle().name()
                        + ". Tab chooses a node, arrow keys move it, Delete removes it");
        paint();
    }

    /** Brings the whole piece back into sight. */
    public void fit() {
        fitted = true;
        paint();
    }

    /**
     * Larger or smaller about the middle.
     *
     * @param in whether larger
     */
    public void zoom(boolean in) {
        zoomAt(in ? KEY_ZOOM : 1 / KEY_ZOOM, getWidth() / 2, getHeight() / 2);
    }

    private void zoomAt(double factor, double x, double y) {
        if (view != null) {
            fitted = false;
            view = view.zoomed(factor, x, y);
            paint();
        }
    }

    /**
     * Pixel of a node, for pointing at it.
     *
     * @param name the node
     * @return x and y within the board, or empty
     */
    public Optional<javafx.geometry.Point2D> pixelOf(String name) {
        return scene == null || view == null
                ? Optional.empty()
                : scene.node(name)
                        .map(
                                n ->
                                        new javafx.geometry.Point2D(
                                                view.px(n.x()), view.py(n.radiusMm())));
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            leave();
            paint();
        }
    }

    private void paint() {
        double width = canvas.getWidth();
        double height = canvas.getHeight();
        if (scene == null || width < 1 || height < 1) {
            return;
        }
        if (fitted || view == null) {
            // While a node is in hand the piece stays where it is, or the hand would lose it.
            view =
                    dragged != null && view != null
                            ? view
                            : new Sheet(width, height).fit(scene.handle());
        }
        painter.paint(canvas.getGraphicsContext2D(), scene, width, height, view, density());
    }

    private double density() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
    }

    private Optional<PlacedNode> nodeAt(double px, double py) {
        PlacedNode nearest = null;
        double best = REACH;
        for (PlacedNode node :
                scene == null ? java.util.List.<PlacedNode>of() : scene.handle().nodes()) {
            double above = Math.hypot(view.px(node.x()) - px, view.py(node.radiusMm()) - py);
            if (above < best) {
                best = above;
                nearest = node;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private Optional<PlacedNode> selected() {
        return scene == null ? Optional.empty() : scene.selected().flatMap(scene::node);
    }

    private void hover(MouseEvent event) {
        if (scene == null) {
            return;
        }
        Optional<PlacedNode> node = nodeAt(event.getX(), event.getY());
        Optional<String> name = node.filter(PlacedNode::isFree).map(PlacedNode::name);
        if (!name.equals(scene.hovered())) {
            scene = scene.withHovered(name);
            paint();
        }
        setCursor(
                name.isPresent()
                        ? Cursor.HAND
                        : node.isPresent() ? Cursor.DEFAULT : Cursor.CROSSHAIR);
        explain(node.filter(n -> !n.isFree()), event);
        read(event.getX(), event.getY());
    }

    /** Says why a fixed end does not move. */
    private void explain(Optional<PlacedNode> fixed, MouseEvent event) {
        if (fixed.isEmpty()) {
            why.hide();
            return;
        }
        why.setText("Does not move: " + fixed.get().fixedBy());
        if (!why.isShowing() && getScene() != null && getScene().getWindow() != null) {
            why.show(this, event.getScreenX() + 14, event.getScreenY() + 14);
        }
    }

    private void read(double px, double py) {
        Map<String, String> lines = Readout.at(scene.handle(), view.mm(px), scene.shown());
        boolean seen = !lines.isEmpty() && py > Sheet.RULER;
        crossHair.setVisible(seen);
        card.setVisible(seen);
        if (!seen) {
            return;
        }
        crossHair.setStartX(Pen.sharp(px));
        crossHair.setEndX(Pen.sharp(px));
        crossHair.setStartY(Sheet.RULER);
        crossHair.setEndY(getHeight());
        card.getChildren().clear();
        int row = 0;
        for (Map.Entry<String, String> line : lines.entrySet()) {
            Label label = new Label(line.getKey());
            label.getStyleClass().add("readout-label");
            Label value = new Label(line.getValue());
            value.getStyleClass().add("readout-value");
            card.addRow(row++, label, value);
        }
        card.applyCss();
        double width = card.prefWidth(-1);
        double height = card.prefHeight(width);
        double x = px + 18 + width < getWidth() ? px + 14 : px - 14 - width;
        // In the free corner of the board, so that the piece is never covered.
        card.resizeRelocate(Math.round(Math.max(4, x)), Sheet.RULER + 6, width, height);
    }

    private void leave() {
        crossHair.setVisible(false);
        card.setVisible(false);
        why.hide();
        if (scene != null && scene.hovered().isPresent()) {
            scene = scene.withHovered(Optional.empty());
            paint();
        }
    }

    private void press(MouseEvent event) {
        requestFocus();
        pressX = event.getX();
        pressY = event.getY();
        moved = false;
        if (scene == null || event.getButton() == MouseButton.SECONDARY) {
            return;
        }
        Optional<PlacedNode> node = nodeAt(pressX, pressY).filter(PlacedNode::isFree);
        if (event.getButton() == MouseButton.PRIMARY && node.isPresent()) {
            dragged = node.get().name();
            offsetX = node.get().x() - view.mm(pressX);
            offsetD = 2 * (node.get().radiusMm() - view.radius(pressY));
            actions.grab(dragged);
        } else {
            panning = true;
        }
    }

    private void drag(MouseEvent event) {
        double dx = event.getX() - pressX;
        double dy = event.getY() - pressY;
        moved |= Math.hypot(dx, dy) > 2;
        if (!moved || scene == null) {
            return;
        }
        if (dragged != null) {
            actions.drag(
                    view.mm(event.getX()) + offsetX,
                    2 * view.radius(event.getY()) + offsetD,
                    !event.isAltDown());
            scene.node(dragged).ifPresent(n -> read(view.px(n.x()), event.getY()));
        } else if (panning) {
            fitted = false;
            leave();
            setCursor(Cursor.MOVE);
            view = view.moved(Math.round(dx), Math.round(dy));
            pressX = event.getX();
            pressY = event.getY();
            paint();
        }
    }

    private void release() {
        panning = false;
        if (dragged != null) {
            dragged = null;
            if (moved) {
                actions.release();
            } else {
                actions.letBack();
            }
        }
    }

    private void click(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || scene == null || moved) {
            return;
        }
        Optional<PlacedNode> node = nodeAt(event.getX(), event.getY());
        if (event.getClickCount() == 2 && node.isEmpty() && event.getY() > Sheet.RULER) {
            actions.add(view.mm(event.getX()));
        } else if (node.isEmpty()) {
            actions.deselect();
        }
    }

    private void scroll(ScrollEvent event) {
        if (view == null) {
            return;
        }
        if (event.isShiftDown() || event.getDeltaX() != 0 && event.getDeltaY() == 0) {
            fitted = false;
            double by = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
            view = view.moved(Math.round(by), 0);
            paint();
        } else {
            zoomAt(Math.pow(WHEEL_ZOOM, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        double step = event.isShiftDown() ? 10 * NUDGE : NUDGE;
        Optional<String> node = selected().filter(PlacedNode::isFree).map(PlacedNode::name);
        KeyCode code = event.getCode();
        double along = code == KeyCode.RIGHT ? step : code == KeyCode.LEFT ? -step : 0;
        double across = code == KeyCode.UP ? step : code == KeyCode.DOWN ? -step : 0;
        boolean used = true;
        if (along != 0 || across != 0) {
            if (node.isPresent()) {
                actions.nudge(node.get(), along, across);
            } else if (view != null) {
                fitted = false;
                view = view.moved(-Math.signum(along) * PAN_STEP, Math.signum(across) * PAN_STEP);
                paint();
            }
        } else if (code == KeyCode.DELETE || code == KeyCode.BACK_SPACE) {
            node.ifPresent(actions::remove);
        } else if (code == KeyCode.ESCAPE) {
            if (dragged != null) {
                dragged = null;
                actions.letBack();
            } else {
                actions.deselect();
            }
        } else if (code == KeyCode.N || code == KeyCode.P) {
            next(code == KeyCode.N ? 1 : -1);
        } else {
            used = false;
        }
        if (used) {
            event.consume();
        }
    }

    /** Selects the next free node along the axis. */
    private void next(int by) {
        if (scene == null) {
            return;
        }
        var free = scene.handle().nodes().stream().filter(PlacedNode::isFree).toList();
        if (free.isEmpty()) {
            return;
        }
        int at = -1;
        for (int i = 0; i < free.size(); i++) {
            at = scene.selected().filter(free.get(i).name()::equals).isPresent() ? i : at;
        }
        int to = at < 0 ? (by > 0 ? 0 : free.size() - 1) : Math.floorMod(at + by, free.size());
        actions.grab(free.get(to).name());
        actions.letBack();
    }
}
