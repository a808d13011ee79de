package haftline.ui.board;

import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Hit;
import haftline.ui.model.Overlay;
import haftline.ui.model.View;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Palette;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.AccessibleRole;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.layout.Region;

/** The board as a control: paints the piece at hand and gives the hand's doings to the model. */
public final class BoardPane extends Region {
    private static final double KEY_ZOOM = 1.25;

    /**
     * While a hand drags, the figures beside the board change this often, ms: what follows within a
     * tenth of a second is felt to follow at once (Miller, Response time in man-computer
     * conversational transactions, 1968; from memory).
     */
    private static final int BESIDE_MS = 100;

    private final EditorModel editor;
    private final BoardModel model;
    private final Watched<Optional<Finding>> chosen;
    private final Watched<Palette> palette;
    private final Watched<Overlay> overlay;
    private final Tiles tiles = new Tiles();
    private final BoardPainter painter = new BoardPainter();
    private final CrossHair crossHair = new CrossHair();
    private final BoardHand hand;
    private final BoardMenu menu;
    private final AngleCard angle;
    private final Later settled;
    private boolean stale = true;
    private boolean isFirst = true;
    private double heldRoom;

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
        getChildren().addAll(tiles, crossHair.line(), crossHair.card());
        // Hidden, it would be walked through with every frame.
        angle.visibleProperty().addListener((o, was, is) -> lay(angle, is));
        hand = new BoardHand(this, editor, model, crossHair);
        setOnMouseMoved(hand::hover);
        setOnMouseExited(event -> hand.leave());
        setOnMousePressed(hand::press);
        setOnMouseDragged(hand::drag);
        setOnMouseReleased(event -> hand.release());
        setOnMouseClicked(hand::click);
        setOnScroll(hand::scroll);
        BoardKeys keys = new BoardKeys(model, this::askSlope);
        setOnKeyPressed(
                event -> {
                    if (menu.isShown()) {
                        // What a menu does not know neither moves the node nor leaves the board.
                        event.consume();
                    } else {
                        keys.down(event);
                    }
                });
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
        settled =
                new Later(
                        () -> {
                            editor.catchUp();
                            stale();
                        });
        editor.rest(BESIDE_MS);
        editor.isBehind().watch(behind -> settled.call());
        editor.draft().watch(draft -> settled.call());
        editor.inHand().watch(inHand -> settled.call());
        editor.piece().watch(piece -> hand.leave());
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

    private void lay(AngleCard card, boolean isShown) {
        if (isShown) {
            getChildren().add(card);
        } else {
            getChildren().remove(card);
        }
    }

    /** Its size never goes by what it shows: the window is not laid out anew for the read-out. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    /** Puts away what waits for an answer. */
    void closeCards() {
        menu.hide();
        angle.hide();
    }

    /** Paints anew, and reads again, with the next frame. */
    void stale() {
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
            hand.readAgain();
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
                        editor.document().isInGesture() ? heldRoom : 0,
                        editor.document().isInGesture()
                                ? overlay.value().inHand()
                                : overlay.value());
        if (isFirst) {
            // The window is there sooner, and finer a moment later.
            isFirst = false;
            settled.call();
        }
        View view = model.viewpoint().view().value();
        heldRoom = scene.room(view);
        Ink ink = new Ink();
        GripPainter gripping = new GripPainter(ink, model, palette.value());
        DimensionPainter dimensions =
                new DimensionPainter(
                        new Pen(ink), scene, new Sheet(width, height), view, gripping.places());
        painter.paint(ink, scene, width, height, view, density(), dimensions);
        List<Rectangle2D> words = gripping.paint(width, dimensions.wordsAbove());
        crossHair.keepOff(dimensions.kept(words), width);
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
                    model.hit(event.getX(), event.getY(), BoardHand.REACH),
                    view.mm(event.getX()),
                    event.getScreenX(),
                    event.getScreenY());
        }
        event.consume();
    }
}
