package haftline.ui.photo;

import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.curve.Point;
import haftline.ui.model.PhotoHand;
import haftline.ui.model.PhotoHand.Held;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.PhotoState;
import haftline.ui.model.PhotoState.Mark;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/**
 * Points, trace and aim. Everything is drawn twice, light under dark or dark under light, since a
 * photograph may be of any colour.
 */
final class TracePainter {
    private static final double HALO = 3.6;
    private static final double LINE = 1.5;
    private static final double CROSS = 11;
    private static final double RING = 6;
    private static final double DOT = 3.2;

    /** The very place is left free, so that it can be seen. */
    private static final double GAP = 3;

    private static final Font SIGN = Font.font(null, FontWeight.BOLD, 11);

    private final GraphicsContext gc;
    private final PhotoModel model;
    private final PhotoHand hand;
    private Palette palette = Palette.PAPER;
    private View view;

    TracePainter(GraphicsContext gc, PhotoModel model) {
        this.gc = gc;
        this.model = model;
        hand = model.hand();
    }

    void dress(Palette theme) {
        palette = theme;
    }

    void paint(double width, double height, View at, boolean isFocused) {
        view = at;
        gc.clearRect(0, 0, width, height);
        gc.setLineCap(StrokeLineCap.ROUND);
        PhotoState state = model.state().value();
        if (state.picture().isEmpty()) {
            return;
        }
        trace(state);
        if (hand.tool().value() == Tool.POINTS) {
            marks(state);
        }
        if (hand.tool().value() != Tool.BOARD && isFocused && hand.held().value().isEmpty()) {
            aim();
        }
        if (isFocused) {
            gc.setFill(palette.accent());
            gc.fillRect(0, 0, width, 1);
            gc.fillRect(0, height - 1, width, 1);
            gc.fillRect(0, 0, 1, height);
            gc.fillRect(width - 1, 0, 1, height);
        }
    }

    private void trace(PhotoState state) {
        List<Point> points = new ArrayList<>(state.traced());
        Optional<Held> held =
                hand.held().value().filter(point -> hand.tool().value() == Tool.TRACE);
        held.ifPresent(
                point -> {
                    Point at = state.lying().at(point.spot());
                    if (point.index() < points.size()) {
                        points.set(point.index(), at);
                    } else {
                        points.add(at);
                    }
                });
        List<Point> above = side(points, true);
        List<Point> below = side(points, false);
        // A side that is not traced is shown as the other would have it: the axis is then proved.
        if (below.isEmpty()) {
            line(mirrored(above), true);
        }
        if (above.isEmpty()) {
            line(mirrored(below), true);
        }
        line(above, false);
        line(below, false);
        for (int i = 0; i < points.size(); i++) {
            boolean isChosen =
                    hand.tool().value() == Tool.TRACE
                            && hand.chosen().value().equals(Optional.of(i));
            dot(points.get(i), isChosen);
        }
    }

    private static List<Point> side(List<Point> points, boolean isAbove) {
        List<Point> side = new ArrayList<>();
        for (Point point : points) {
            if (point.r() >= 0 == isAbove) {
                side.add(point);
            }
        }
        boolean isBack = !side.isEmpty() && side.get(side.size() - 1).x() < side.get(0).x();
        if (isBack) {
            java.util.Collections.reverse(side);
        }
        side.sort(Comparator.comparingDouble(Point::x));
        return side;
    }

    private static List<Point> mirrored(List<Point> side) {
        return side.stream().map(p -> new Point(p.x(), -p.r())).toList();
    }

    private void line(List<Point> points, boolean isDashed) {
        double[] xs = points.stream().mapToDouble(p -> view.px(p.x())).toArray();
        double[] ys = points.stream().mapToDouble(p -> view.py(p.r())).toArray();
        if (isDashed) {
            gc.setLineDashes(5, 5);
        }
        twice(() -> gc.strokePolyline(xs, ys, xs.length));
        gc.setLineDashes();
    }

    private void twice(Runnable stroke) {
        gc.setStroke(halo());
        gc.setLineWidth(HALO);
        stroke.run();
        gc.setStroke(palette.accent());
        gc.setLineWidth(LINE);
        stroke.run();
    }

    private Color halo() {
        return palette.paper().deriveColor(0, 1, 1, 0.75);
    }

    private void dot(Point point, boolean isChosen) {
        double x = view.px(point.x());
        double y = view.py(point.r());
        double r = isChosen ? DOT + 2 : DOT;
        gc.setFill(isChosen ? palette.accent() : palette.paper());
        gc.fillOval(x - r, y - r, 2 * r, 2 * r);
        gc.setStroke(palette.accent());
        gc.setLineWidth(LINE);
        gc.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }

    private void marks(PhotoState state) {
        List<Mark> wanted = state.wanted();
        for (int i = 0; i < wanted.size(); i++) {
            int index = i;
            Optional<Spot> spot =
                    hand.held()
                            .value()
                            .filter(held -> held.index() == index)
                            .map(Held::spot)
                            .or(() -> Optional.ofNullable(state.marks().get(wanted.get(index))));
            boolean isChosen = hand.chosen().value().equals(Optional.of(i));
            String sign = wanted.get(i).sign();
            spot.map(state.lying()::at).ifPresent(at -> mark(at, sign, isChosen));
        }
    }

    /** A cross with a ring; a second ring about the one that is chosen. */
    private void mark(Point at, String sign, boolean isChosen) {
        double x = view.px(at.x());
        double y = view.py(at.r());
        twice(
                () -> {
                    cross(x, y, CROSS);
                    gc.strokeOval(x - RING, y - RING, 2 * RING, 2 * RING);
                    if (isChosen) {
                        double r = RING + 4;
                        gc.strokeOval(x - r, y - r, 2 * r, 2 * r);
                    }
                });
        gc.setFont(SIGN);
        gc.setStroke(halo());
        gc.setLineWidth(HALO);
        gc.strokeText(sign, x + CROSS + 2, y - CROSS + 2);
        gc.setFill(palette.accent());
        gc.fillText(sign, x + CROSS + 2, y - CROSS + 2);
    }

    private void cross(double x, double y, double arm) {
        gc.strokeLine(x - arm, y, x - GAP, y);
        gc.strokeLine(x + GAP, y, x + arm, y);
        gc.strokeLine(x, y - arm, x, y - GAP);
        gc.strokeLine(x, y + GAP, x, y + arm);
    }

    private void aim() {
        double x = view.px(hand.aim().value().x());
        double y = view.py(hand.aim().value().r());
        twice(() -> cross(x, y, 2 * CROSS));
    }
}
