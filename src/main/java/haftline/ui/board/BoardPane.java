package haftline.ui.board;

import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Grip;
import haftline.ui.model.Hit;
import haftline.ui.model.Overlay;
import haftline.ui.model.View;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.Tooltip;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** The board as a control: paints the piece at hand and gives the hand's doings to the model. */
public final class BoardPane extends Region {
    /** How near the pointer must be to a node, px. */
    private static final double REACH = 12;

    private static final double WHEEL_ZOOM = 1.0015;
    private static final double KEY_ZOOM = 1.25;
    private static final double PAN_STEP = 40;

    /** What an arrow key moves a node by, mm; ten times that with Shift. */
    private static final double NUDGE = 0.1;

    private final EditorModel editor;
    private final BoardModel model;
    private final Watched<Optional<Finding>> chosen;
    private final Watched<Palette> palette;
    private final Watched<Overlay> overlay;
    private final Tiles tiles = new Tiles();
    private final BoardPainter painter = new BoardPainter();
    private final CrossHair crossHair = new CrossHair();
    private final Tooltip why = new Tooltip();
    private final BoardMenu menu;
    private final AngleCard angle;
    private final Later settled;
    private boolean stale = true;
    private boolean isFirst = true;
    private boolean panning;
    private boolean moved;
    private double pressX;
    private double pressY;

    /**
     * A board.
     *
     * @param editor what all views share
     * @param model what is done on the board
     * @param chosen the finding whose place is shown
     * @param palette colours of the theme
     * @param overlay what is laid over the piece
     */
    public BoardPane(
            EditorModel editor,
            BoardModel model,
            Watched<Optional<Finding>> chosen,
            Watched<Palette> palette,
            Watched<Overlay> overlay) {
        this.overlay = overlay;
        this.editor = editor;
        this.model = model;
        this.chosen = chosen;
        this.palette = palette;
        menu = new BoardMenu(model, this::askSlope);
        angle =
                new AngleCard(
                        model, this::requestFocus, () -> editor.notice().set(Optional.empty()));
        getStyleClass().add("board");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(200, 120);
        why.setShowDelay(Duration.millis(150));
        getChildren().addAll(tiles, crossHair.line(), crossHair.card(), angle);
        setOnMouseMoved(this::hover);
        setOnMouseExited(event -> leave());
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(event -> release());
        setOnMouseClicked(this::click);
        setOnScroll(this::scroll);
        setOnKeyPressed(this::keyDown);
        setOnKeyReleased(event -> model.endNudge());
        setOnContextMenuRequested(this::context);
        focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            model.endNudge();
                            stale();
                        });
        editor.drawn().watch(drawn -> stale());
        editor.units().watch(units -> stale());
        settled = new Later(this::stale);
        editor.draft().watch(draft -> settled.call());
        editor.inHand().watch(inHand -> settled.call());
        editor.piece().watch(piece -> leave());
        model.viewpoint().view().watch(view -> stale());
        model.selected()
                .watch(
                        selected -> {
                            angle.hide();
                            stale();
                        });
        model.details().chosen().watch(detail -> stale());
        model.hovered().watch(hovered -> stale());
        chosen.watch(finding -> stale());
        palette.watch(theme -> stale());
        overlay.watch(laid -> stale());
    }

    /** Its size never goes by what it shows: the window is not laid out anew for the read-out. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    private void stale() {
        stale = true;
        setNeedsLayout(true);
    }

    /** Brings the whole piece back into sight. */
    public void fit() {
        model.viewpoint().fit();
    }

    /**
     * Larger or smaller about the middle.
     *
     * @param in whether larger
     */
    public void zoom(boolean in) {
        model.viewpoint().zoom(in ? KEY_ZOOM : 1 / KEY_ZOOM, getWidth() / 2, getHeight() / 2);
    }

    /**
     * Pixel of a node, for pointing at it.
     *
     * @param name the node
     * @return x and y within the board, or empty
     */
    public Optional<Point2D> pixelOf(String name) {
        View view = model.viewpoint().view().value();
        return model.node(name).map(n -> new Point2D(view.px(n.x()), view.py(n.radiusMm())));
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (!tiles.cover(width, height)) {
            crossHair.hide();
            stale = true;
            model.viewpoint().resize(new Sheet(width, height).area());
        }
        if (stale) {
            stale = false;
            paint(width, height);
        }
    }

    private void paint(double width, double height) {
        Optional<Figures> figures = editor.drawn().value().flatMap(Worked::figures);
        if (figures.isEmpty() || width < 1 || height < 1) {
            tiles.show(new Ink(), width, height, density());
            return;
        }
        setAccessibleText(
                "Board with "
                        + editor.piece().value()
                        + ". N and P choose a node or a detail, arrow keys move it, Delete removes"
                        + " it, S asks for a node's slope, comma and full stop make a detail"
                        + " narrower and wider"
                        + model.selected().value().map(node -> "; " + node + " chosen").orElse("")
                        + model.details().words().map(words -> "; " + words).orElse(""));
        BoardScene scene =
                new BoardScene(
                        figures.get(),
                        model.selected().value(),
                        hoveredNode(),
                        chosen.value(),
                        editor.units().value(),
                        palette.value(),
                        isFirst || editor.document().isInGesture(),
                        editor.document().isInGesture()
                                ? overlay.value().inHand()
                                : overlay.value());
        if (isFirst) {
            // The window is there sooner, and finer a moment later.
            isFirst = false;
            settled.call();
        }
        View view = model.viewpoint().view().value();
        Ink ink = new Ink();
        painter.paint(ink, scene, width, height, view, density());
        new GripPainter(ink, model, palette.value()).paint(width);
        crossHair.draw(new Pen(ink), palette.value().accent(), editor.document().isInGesture());
        if (isFocused()) {
            frame(ink, width, height);
        }
        tiles.show(ink, width, height, density());
    }

    /** The keys act on the board; a border of the region would be stroked with every frame. */
    private void frame(Ink ink, double width, double height) {
        ink.setFill(palette.value().accent());
        ink.fillRect(0, 0, width, 1);
        ink.fillRect(0, height - 1, width, 1);
        ink.fillRect(0, 0, 1, height);
        ink.fillRect(width - 1, 0, 1, height);
    }

    private Optional<String> hoveredNode() {
        return model.hovered()
                .value()
                .flatMap(
                        hit ->
                                hit instanceof Hit.OnNode on
                                        ? Optional.of(on.name())
                                        : Optional.empty());
    }

    private double density() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
    }

    private void hover(MouseEvent event) {
        model.hover(event.getX(), event.getY(), REACH);
        Optional<Hit> hit = model.hovered().value();
        String fixed = hit.map(h -> h instanceof Hit.OnNode on ? on.fixedBy() : "").orElse("");
        setCursor(hit.map(BoardPane::cursor).orElse(Cursor.CROSSHAIR));
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

    /** Asks for the slope at the chosen node. */
    public void askSlope() {
        if (model.slopes().now().isEmpty()) {
            editor.refuse("A slope is set at a smooth node: choose one");
            return;
        }
        model.selected()
                .value()
                .flatMap(this::pixelOf)
                .ifPresent(p -> angle.ask(p.getX() + 24, p.getY() + 24, getWidth(), getHeight()));
    }

    /** Says why a fixed end does not move. */
    private void explain(String fixedBy, MouseEvent event) {
        if (fixedBy.isEmpty()) {
            why.hide();
            return;
        }
        why.setText("Does not move: " + fixedBy);
        if (!why.isShowing() && getScene() != null && getScene().getWindow() != null) {
            why.show(this, event.getScreenX() + 14, event.getScreenY() + 14);
        }
    }

    private void read(double px, double py) {
        if (py < Sheet.RULER) {
            crossHair.hide();
        } else {
            Shown shown = new Shown(editor.units().value());
            crossHair.show(px, model.readOut(px), shown, getWidth(), getHeight());
        }
    }

    private void leave() {
        crossHair.hide();
        why.hide();
        model.hovered().set(Optional.empty());
    }

    private void press(MouseEvent event) {
        requestFocus();
        menu.hide();
        angle.hide();
        pressX = event.getX();
        pressY = event.getY();
        moved = false;
        if (event.getButton() == MouseButton.PRIMARY) {
            panning = model.press(pressX, pressY, REACH).isEmpty();
        } else if (event.getButton() == MouseButton.MIDDLE) {
            panning = true;
        }
    }

    private void drag(MouseEvent event) {
        double dx = event.getX() - pressX;
        double dy = event.getY() - pressY;
        moved |= Math.hypot(dx, dy) > 2;
        if (model.isDragging()) {
            model.dragTo(event.getX(), event.getY(), event.isAltDown());
            read(crossHairX(event), event.getY());
        } else if (panning && moved) {
            leave();
            setCursor(Cursor.MOVE);
            model.viewpoint().pan(Math.round(dx), Math.round(dy));
            pressX = event.getX();
            pressY = event.getY();
        }
    }

    /** The cross-hair stays on what is dragged. */
    private double crossHairX(MouseEvent event) {
        return model.selected()
                .value()
                .flatMap(this::pixelOf)
                .map(Point2D::getX)
                .orElse(event.getX());
    }

    private void release() {
        panning = false;
        model.release();
    }

    private void click(MouseEvent event) {
        boolean twice = event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2;
        boolean onPaper = event.getY() > Sheet.RULER;
        if (twice && onPaper && !moved && model.hit(event.getX(), event.getY(), REACH).isEmpty()) {
            model.addNode(event.getX());
        }
    }

    private void context(ContextMenuEvent event) {
        View view = model.viewpoint().view().value();
        if (event.isKeyboardTrigger() && model.details().detail().isPresent()) {
            Point2D corner = localToScreen(getWidth() / 2, getHeight() / 3);
            menu.showForDetail(this, corner.getX(), corner.getY());
        } else if (event.isKeyboardTrigger()) {
            model.selected()
                    .value()
                    .flatMap(this::pixelOf)
                    .map(this::localToScreen)
                    .ifPresent(
                            p ->
                                    menu.showForNode(
                                            this,
                                            model.selected().value().orElseThrow(),
                                            p.getX(),
                                            p.getY()));
        } else {
            menu.show(
                    this,
                    model.hit(event.getX(), event.getY(), REACH),
                    view.mm(event.getX()),
                    event.getScreenX(),
                    event.getScreenY());
        }
        event.consume();
    }

    private void scroll(ScrollEvent event) {
        if (event.isShiftDown() || event.getDeltaX() != 0 && event.getDeltaY() == 0) {
            double by = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
            model.viewpoint().pan(Math.round(by), 0);
        } else {
            model.viewpoint()
                    .zoom(Math.pow(WHEEL_ZOOM, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }

    private void keyDown(KeyEvent event) {
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
            case S -> askSlope();
            case N -> model.selectNext(1);
            case P -> model.selectNext(-1);
            default -> {
                return false;
            }
        }
        return true;
    }
}
