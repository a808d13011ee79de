package haftline.ui.templates;

import haftline.drawing.Layer;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.template.Box;
import haftline.template.Card;
import haftline.template.Loop;
import haftline.template.SheetSize;
import haftline.template.Spot;
import haftline.template.Stroke;
import haftline.ui.model.LaidOut;
import haftline.ui.model.LaidOut.Placed;
import haftline.ui.model.SheetView;
import haftline.ui.model.TemplatesModel;
import haftline.ui.model.View;
import haftline.ui.model.Watched;
import haftline.ui.sheet.DrawingPainter;
import haftline.ui.theme.Palette;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** One sheet with its cards, to be looked at from near and far. */
final class SheetCanvas extends Region {
    /** Left free round the sheet, where its measures stand, px. */
    private static final double AIR = 34;

    /** Left free round a card that is shown by itself, px. */
    private static final double ROUND_CARD = 90;

    private static final double WHEEL_ZOOM = 1.0022;
    private static final double KEY_ZOOM = 1.25;
    private static final double KEY_PAN = 48;
    private static final double CHORD_PX = 0.2;
    private static final Font SMALL = Font.font(11);

    private final TemplatesModel model;
    private final Watched<Palette> palette;
    private final Watched<Units> units;
    private final Watched<Optional<Card>> under = new Watched<>(Optional.empty());
    private final Canvas canvas = new Canvas();
    private SheetView view = new SheetView(1, 0, 0);
    private SheetSize fitted = new SheetSize(20, 20, 0, 0);
    private boolean isStale = true;
    private boolean isFitting = true;
    private double pressX;
    private double pressY;

    SheetCanvas(TemplatesModel model, Watched<Palette> palette, Watched<Units> units) {
        this.model = model;
        this.palette = palette;
        this.units = units;
        setId("template-sheet");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(120, 80);
        canvas.setMouseTransparent(true);
        getChildren().add(canvas);
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(e -> setCursor(Cursor.DEFAULT));
        setOnMouseMoved(this::hover);
        setOnMouseExited(e -> under.set(Optional.empty()));
        setOnScroll(this::scroll);
        setOnKeyPressed(this::key);
        focusedProperty().addListener(o -> stale());
        model.laidOut().watch(laid -> laid.ifPresent(this::take));
        model.sheet().watch(number -> fit());
        model.chosen().watch(remark -> showChosen());
        palette.watch(theme -> stale());
        units.watch(unit -> stale());
    }

    /** The card under the pointer. */
    Watched<Optional<Card>> under() {
        return under;
    }

    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    /** Another sheet is shown whole; new cards on the same are looked at from where one was. */
    private void take(LaidOut laid) {
        if (!laid.layout().size().equals(fitted)) {
            fitted = laid.layout().size();
            isFitting = true;
        }
        stale();
    }

    private void stale() {
        isStale = true;
        setNeedsLayout(true);
    }

    /** Brings the whole sheet into sight. */
    void fit() {
        isFitting = true;
        stale();
    }

    void zoom(boolean in) {
        zoom(in ? KEY_ZOOM : 1 / KEY_ZOOM, getWidth() / 2, getHeight() / 2);
    }

    private void zoom(double factor, double x, double y) {
        isFitting = false;
        view = view.zoomed(factor, x, y, whole().scale());
        stale();
    }

    private void pan(double dx, double dy) {
        isFitting = false;
        view = view.moved(dx, dy);
        stale();
    }

    private SheetView whole() {
        return SheetView.fitting(
                0,
                0,
                fitted.widthMm(),
                fitted.heightMm(),
                new View.Area(
                        AIR,
                        AIR,
                        Math.max(1, getWidth() - 2 * AIR),
                        Math.max(1, getHeight() - 2 * AIR)));
    }

    /** The card of the chosen finding is brought near. */
    private void showChosen() {
        Optional<Box> box = chosen().map(Card::box);
        if (box.isPresent() && getWidth() > 2 * ROUND_CARD) {
            isFitting = false;
            Box b = box.get();
            view =
                    SheetView.fitting(
                            b.minX(),
                            b.minY(),
                            b.maxX(),
                            b.maxY(),
                            new View.Area(
                                    ROUND_CARD,
                                    AIR,
                                    getWidth() - 2 * ROUND_CARD,
                                    Math.max(1, getHeight() - 2 * AIR)));
        }
        stale();
    }

    private Optional<Card> chosen() {
        return model.chosen().value().flatMap(LaidOut.Remark::card);
    }

    private List<Placed> cards() {
        int sheet = model.sheet().value();
        return model.laidOut()
                .value()
                .filter(laid -> sheet < laid.sheets().size())
                .map(laid -> laid.sheets().get(sheet))
                .orElse(List.of());
    }

    private void press(MouseEvent event) {
        requestFocus();
        pressX = event.getX();
        pressY = event.getY();
        if (event.getClickCount() == 2) {
            fit();
        }
    }

    private void drag(MouseEvent event) {
        setCursor(Cursor.MOVE);
        pan(event.getX() - pressX, event.getY() - pressY);
        pressX = event.getX();
        pressY = event.getY();
    }

    private void hover(MouseEvent event) {
        double x = view.xMm(event.getX());
        double y = view.yMm(event.getY());
        under.set(
                cards().stream()
                        .map(Placed::card)
                        .filter(card -> holds(card.box(), x, y))
                        .findFirst());
    }

    private static boolean holds(Box box, double x, double y) {
        return x >= box.minX() && x <= box.maxX() && y >= box.minY() && y <= box.maxY();
    }

    private void scroll(ScrollEvent event) {
        if (event.isShiftDown()) {
            pan(event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY(), 0);
        } else {
            zoom(Math.pow(WHEEL_ZOOM, event.getDeltaY()), event.getX(), event.getY());
        }
        event.consume();
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case LEFT -> pan(KEY_PAN, 0);
            case RIGHT -> pan(-KEY_PAN, 0);
            case UP -> pan(0, KEY_PAN);
            case DOWN -> pan(0, -KEY_PAN);
            case PAGE_DOWN -> model.turn(1);
            case PAGE_UP -> model.turn(-1);
            case HOME -> fit();
            default -> {
                return;
            }
        }
        event.consume();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            isStale = true;
        }
        if (isStale && width > 1 && height > 1) {
            isStale = false;
            paint(width, height);
        }
    }

    private void paint(double width, double height) {
        GraphicsContext gc = canvas.getGraphicsContext2D();
        Palette p = palette.value();
        gc.setFill(p.margin());
        gc.fillRect(0, 0, width, height);
        Optional<LaidOut> laid = model.laidOut().value();
        if (laid.isEmpty()) {
            return;
        }
        if (isFitting) {
            view = whole();
        }
        sheet(gc, p, laid.get());
        Pens pens = new Pens(p);
        for (Placed placed : cards()) {
            card(gc, p, placed.card());
            new DrawingPainter(gc, view.scale(), view.left(), view.bottom(), pens)
                    .paint(placed.drawing());
        }
        chosen().ifPresent(card -> frame(gc, p, card.box()));
        if (isFocused()) {
            gc.setStroke(p.accent());
            gc.setLineWidth(1);
            gc.strokeRect(0.5, 0.5, width - 1, height - 1);
        }
    }

    private void sheet(GraphicsContext gc, Palette p, LaidOut laid) {
        TemplateSettings.Sheet size = laid.asked().settings().sheet();
        double x = view.px(0);
        double y = view.py(size.heightMm());
        double w = size.widthMm() * view.scale();
        double h = size.heightMm() * view.scale();
        gc.setFill(Color.gray(0, 0.16));
        gc.fillRect(x + 3, y + 4, w, h);
        gc.setFill(SketchPen.isDark(p) ? p.paper() : p.panel());
        gc.fillRect(x, y, w, h);
        gc.setStroke(p.soft());
        gc.setLineWidth(1);
        gc.strokeRect(x + 0.5, y + 0.5, w - 1, h - 1);
        double m = size.marginMm() * view.scale();
        gc.setStroke(p.line());
        if (m > 2) {
            gc.setLineDashes(4, 4);
            gc.strokeRect(x + m, y + m, w - 2 * m, h - 2 * m);
        }
        int number = model.sheet().value();
        if (number < laid.layout().sheets().size()) {
            Box used = laid.layout().sheets().get(number).used();
            gc.setStroke(p.soft());
            gc.setLineDashes(1.5, 3.5);
            gc.strokeRect(
                    view.px(used.minX()),
                    view.py(used.maxY()),
                    used.width() * view.scale(),
                    used.height() * view.scale());
        }
        gc.setLineDashes();
        measures(gc, p, size, x, y);
    }

    private void measures(
            GraphicsContext gc, Palette p, TemplateSettings.Sheet size, double x, double y) {
        gc.setFont(SMALL);
        gc.setFill(p.soft());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.BASELINE);
        gc.fillText(
                SketchPen.length(size.widthMm(), units.value()),
                x + size.widthMm() * view.scale() / 2,
                view.py(0) + 20);
        gc.save();
        gc.translate(x - 11, y + size.heightMm() * view.scale() / 2);
        gc.rotate(-90);
        gc.fillText(SketchPen.length(size.heightMm(), units.value()), 0, 0);
        gc.restore();
    }

    /** The material that is left: the outline filled, its openings not. */
    private void card(GraphicsContext gc, Palette p, Card card) {
        gc.setFill(card.stopped() ? p.paper().interpolate(p.stop(), 0.14) : SketchPen.hardboard(p));
        gc.beginPath();
        trace(gc, card.outline());
        card.openings().forEach(opening -> trace(gc, opening.reversed()));
        gc.fill();
    }

    private void trace(GraphicsContext gc, Loop loop) {
        Spot start = loop.strokes().get(0).start();
        gc.moveTo(view.px(start.x()), view.py(start.y()));
        for (Stroke stroke : loop.strokes()) {
            for (Spot spot : stroke.chords(CHORD_PX / view.scale())) {
                gc.lineTo(view.px(spot.x()), view.py(spot.y()));
            }
        }
        gc.closePath();
    }

    private void frame(GraphicsContext gc, Palette p, Box box) {
        double air = 6;
        gc.setStroke(p.accent());
        gc.setLineWidth(2);
        gc.strokeRoundRect(
                view.px(box.minX()) - air,
                view.py(box.maxY()) - air,
                box.width() * view.scale() + 2 * air,
                box.height() * view.scale() + 2 * air,
                8,
                8);
    }

    /**
     * Colours and widths that tell the layers apart.
     *
     * @param palette colours of the theme
     */
    record Pens(Palette palette) implements DrawingPainter.Pens {
        @Override
        public Color colour(Layer layer) {
            return switch (layer) {
                case CUT -> palette.ink();
                case SCORE -> palette.accent();
                default -> palette.soft();
            };
        }

        @Override
        public double leastPx(Layer layer) {
            return switch (layer) {
                case CUT -> 1.5;
                case SCORE -> 1;
                default -> 0.7;
            };
        }
    }
}
