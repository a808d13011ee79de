package haftline.ui.photo;

import haftline.curve.Point;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PhotoHand;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.PhotoState;
import haftline.ui.model.PhotoWords;
import haftline.ui.model.View;
import haftline.ui.model.Viewpoint;
import haftline.ui.model.Watched;
import haftline.ui.theme.Palette;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;

/** Over the board: takes pointer and keys while points are set or the outline is traced. */
final class TraceLayer extends Region {
    /** How near the pointer must be to a point, px. */
    private static final double REACH = 9;

    private static final double WHEEL_ZOOM = 1.0015;

    /** What an arrow key moves the aim by, px; with Shift. */
    private static final double STEP = 1;

    private static final double LEAP = 20;
    private static final double STRONGER = 0.1;

    private final EditorModel editor;
    private final PhotoModel model;
    private final PhotoHand hand;
    private final Viewpoint viewpoint;
    private final Runnable leave;
    private final Canvas canvas = new Canvas();
    private final TracePainter painter;
    private boolean panning;
    private double lastX;
    private double lastY;

    /** Where the layer begins on the board, px. */
    private double top;

    /**
     * @param leave gives the keyboard back to the board
     */
    TraceLayer(
            EditorModel editor,
            PhotoModel model,
            Viewpoint viewpoint,
            Watched<Palette> palette,
            Runnable leave) {
        this.editor = editor;
        this.model = model;
        this.viewpoint = viewpoint;
        this.leave = leave;
        hand = model.hand();
        painter = new TracePainter(canvas.getGraphicsContext2D(), model);
        setId("trace");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        canvas.setMouseTransparent(true);
        getChildren().add(canvas);
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(event -> release());
        setOnScroll(this::scroll);
        setOnKeyPressed(this::keyDown);
        hand.tool().follow(tool -> use());
        Runnable stale = this::stale;
        model.state().watch(state -> stale.run());
        hand.held().watch(held -> stale.run());
        hand.chosen().watch(chosen -> stale.run());
        hand.aim().watch(aim -> stale.run());
        editor.units().watch(units -> stale.run());
        viewpoint.view().watch(view -> stale.run());
        palette.follow(
                theme -> {
                    painter.dress(theme);
                    stale.run();
                });
        focusedProperty().addListener(o -> stale.run());
    }

    private void use() {
        boolean isBoard = hand.tool().value() == Tool.BOARD;
        setMouseTransparent(isBoard);
        setFocusTraversable(!isBoard);
        setCursor(isBoard ? null : Cursor.CROSSHAIR);
        stale();
    }

    private void stale() {
        setNeedsLayout(true);
    }

    /** Says where on the board the layer begins. */
    void top(double px) {
        top = px;
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(Math.floor(getWidth()));
        canvas.setHeight(Math.floor(getHeight()));
        View view = viewpoint.view().value().moved(0, -top);
        painter.paint(canvas.getWidth(), canvas.getHeight(), view, isFocused());
        setAccessibleText(words());
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
    }

    private String words() {
        PhotoWords words = new PhotoWords(editor.units().value());
        String aim = ". Aim " + words.place(hand.aim().value()) + ". ";
        String keys =
                "Arrow keys move the aim, with Shift further; Enter sets a point, N and P choose"
                        + " one, Backspace takes one back, comma and full stop make the photograph"
                        + " weaker and stronger, Escape goes back to the board.";
        if (hand.tool().value() == Tool.POINTS) {
            String which =
                    hand.chosen()
                            .value()
                            .map(i -> model.state().value().wanted().get(i).words())
                            .orElse("point");
            return "Photograph, setting the " + which + aim + keys;
        }
        return "Photograph, tracing. " + words.trace(model.state().value()) + aim + keys;
    }

    private Point at(double x, double y) {
        View view = viewpoint.view().value();
        return new Point(view.mm(x), view.radius(y + top));
    }

    private Point at(MouseEvent event) {
        return at(event.getX(), event.getY());
    }

    private void press(MouseEvent event) {
        requestFocus();
        lastX = event.getX();
        lastY = event.getY();
        panning = event.getButton() != MouseButton.PRIMARY;
        if (!panning) {
            hand.press(at(event), REACH / viewpoint.view().value().scale(), event.isShiftDown());
        }
        event.consume();
    }

    private void drag(MouseEvent event) {
        if (panning) {
            viewpoint.pan(Math.round(event.getX() - lastX), Math.round(event.getY() - lastY));
            lastX = event.getX();
            lastY = event.getY();
        } else {
            hand.drag(at(event), event.isShiftDown());
        }
        event.consume();
    }

    private void release() {
        if (!panning) {
            hand.release();
        }
    }

    private void scroll(ScrollEvent event) {
        if (event.isShiftDown() || event.getDeltaX() != 0 && event.getDeltaY() == 0) {
            double by = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
            viewpoint.pan(Math.round(by), 0);
        } else {
            double factor = Math.pow(WHEEL_ZOOM, event.getDeltaY());
            viewpoint.zoom(factor, event.getX(), event.getY() + top);
        }
        event.consume();
    }

    private void keyDown(KeyEvent event) {
        boolean isOurs =
                event.isShortcutDown()
                        ? history(event)
                        : !event.isAltDown() && (arrow(event) || command(event));
        if (isOurs) {
            event.consume();
        }
    }

    /** While the photograph has the keyboard, its steps are gone back and not the set's. */
    private boolean history(KeyEvent event) {
        if (event.getCode() != KeyCode.Z) {
            return false;
        }
        if (event.isShiftDown()) {
            model.redo();
        } else {
            model.undo();
        }
        return true;
    }

    private boolean arrow(KeyEvent event) {
        double step = event.isShiftDown() ? LEAP : STEP;
        KeyCode code = event.getCode();
        double along = code == KeyCode.RIGHT ? step : code == KeyCode.LEFT ? -step : 0;
        double up = code == KeyCode.UP ? step : code == KeyCode.DOWN ? -step : 0;
        if (along == 0 && up == 0) {
            return false;
        }
        double scale = viewpoint.view().value().scale();
        hand.moveAim(along / scale, up / scale);
        follow();
        return true;
    }

    /** The aim is never out of sight. */
    private void follow() {
        View view = viewpoint.view().value();
        double x = view.px(hand.aim().value().x());
        double y = view.py(hand.aim().value().r()) - top;
        double dx = x < 0 ? -x : x > getWidth() ? getWidth() - x : 0;
        double dy = y < 0 ? -y : y > getHeight() ? getHeight() - y : 0;
        if (dx != 0 || dy != 0) {
            viewpoint.pan(dx, dy);
        }
    }

    private boolean command(KeyEvent event) {
        switch (event.getCode()) {
            case ENTER, SPACE -> hand.set(event.isShiftDown());
            case N -> choose(1);
            case P -> choose(-1);
            case BACK_SPACE, DELETE -> hand.takeBack();
            case COMMA -> model.stronger(-STRONGER);
            case PERIOD -> model.stronger(STRONGER);
            case ESCAPE -> escape();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void choose(int by) {
        hand.choose(by);
        follow();
    }

    private void escape() {
        PhotoState now = model.state().value();
        boolean isPoint =
                hand.tool().value() == Tool.TRACE
                        && hand.chosen().value().filter(i -> i < now.trace().size()).isPresent();
        if (hand.held().value().isPresent()) {
            hand.abandon();
        } else if (isPoint) {
            hand.chooseNone();
        } else {
            hand.use(Tool.BOARD);
            leave.run();
        }
    }
}
