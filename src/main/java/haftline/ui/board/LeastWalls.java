package haftline.ui.board;

import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** The least wall of every bore under the curve of the walls: a mark and its figure. */
final class LeastWalls {
    /** Of letters, over and under the line on which they stand, px. */
    private static final double UP = 10;

    private static final double DOWN = 3;

    /** Over a mark, where its wall's line is level and where it mostly rises, px. */
    private static final double LOW = 9;

    private static final double HIGH = 20;

    /** A figure is never further from where it best stands beside its mark, px. */
    private static final double AWAY = 60;

    /** Between two figures in one line, px. */
    private static final double BESIDE = 10;

    /** The caption's letters end so far over the top of the curves, px. */
    private static final double CAPTION_DOWN = 3;

    private final Pen pen;
    private final BoardScene scene;
    private final Sheet sheet;
    private final View view;
    private final Ink ink;
    private final Palette palette;

    /** To where the curves' caption reaches, from the left along their top, px. */
    private final double captionEnd;

    private final List<Rectangle2D> written = new ArrayList<>();

    LeastWalls(Pen pen, BoardScene scene, Sheet sheet, View view, double captionEnd) {
        this.captionEnd = captionEnd;
        this.pen = pen;
        this.scene = scene;
        this.sheet = sheet;
        this.view = view;
        ink = pen.ink;
        palette = scene.palette();
    }

    void paint(Columns columns, double bottom, double scale) {
        for (Wall wall : scene.figures().walls()) {
            double x = view.px(wall.atX());
            double y = bottom - Math.max(0, wall.worstMm()) * scale;
            if (y < sheet.wallTop()) {
                continue;
            }
            boolean kept = wall.marginMm() >= 0;
            Color colour = kept ? palette.good() : palette.stop();
            ink.setFill(colour);
            if (kept) {
                ink.fillOval(x - 3.5, y - 3.5, 7, 7);
            } else {
                ink.fillPolygon(new double[] {x - 5, x + 5, x}, new double[] {y + 9, y + 9, y + 1});
            }
            String text = scene.shown().wall(wall.worstMm());
            List<Rectangle2D> places = places(wall, x, y, bottom, Pen.width(text));
            List<Rectangle2D> free =
                    places.stream()
                            .filter(box -> written.stream().noneMatch(box::intersects))
                            .toList();
            Rectangle2D place =
                    free.stream()
                            .filter(box -> isClear(columns, box, bottom, scale))
                            .findFirst()
                            .or(() -> free.stream().findFirst())
                            .orElse(places.get(0));
            written.add(place);
            pen.text(text, place.getMinX(), place.getMinY() + UP, colour, TextAlignment.LEFT);
        }
    }

    /** Where the figures that were painted stand, px. */
    List<Rectangle2D> written() {
        return List.copyOf(written);
    }

    /**
     * Where the figure of a least wall may stand, the best first: over a wall that is kept and
     * under one that is not, clear of the limit's line; a body's wall mostly rises from there, so
     * that its figure stands higher. In a narrow hollow there is room only under the mark.
     */
    private List<Rectangle2D> places(Wall wall, double x, double y, double bottom, double wide) {
        boolean isKept = wall.marginMm() >= 0;
        boolean isTenon = wall.zone() == Zone.TENON;
        double over = y - (wall.zone() == Zone.BODY ? HIGH : LOW);
        double under = y + (isTenon && !isKept ? 15 : 13);
        double right = x + 8;
        double left = x - 8 - wide;
        boolean isLeftBest = isTenon || right + wide > sheet.width();
        double best = isLeftBest ? left : right;
        double other = isLeftBest ? right : left;
        double deep = y + (isKept ? 17 : 21);
        double[][] starts =
                isKept
                        ? new double[][] {
                            {best, over},
                            {other, over},
                            {best, y - LOW},
                            {other, y - LOW},
                            {x - wide / 2, deep},
                            {best, under},
                            {other, under},
                            {x - wide / 2, y - HIGH},
                            // Beside the caption, a little away from its mark.
                            {Math.min(Math.max(right, captionEnd), right + AWAY), over}
                        }
                        : new double[][] {
                            {best, under},
                            {other, under},
                            {x - wide / 2, deep},
                            {best, y - LOW},
                            // Behind the figure of the other wall that is least at the shoulder.
                            {right + wide + BESIDE, under}
                        };
        return Arrays.stream(starts)
                .map(
                        at ->
                                new Rectangle2D(
                                        Math.max(0, Math.min(at[0], sheet.width() - wide)),
                                        Math.min(bottom - DOWN, at[1]) - UP,
                                        wide,
                                        UP + DOWN))
                .toList();
    }

    /** Whether words there are read without a line through them. */
    private boolean isClear(Columns columns, Rectangle2D box, double bottom, double scale) {
        int end = (int) Math.min(columns.count, box.getMaxX());
        for (int i = (int) Math.max(1, box.getMinX()); i < end; i++) {
            if (runs(columns.worst, i, box, bottom, scale)
                    || runs(columns.nominal, i, box, bottom, scale)
                    || columns.worst[i] != Columns.NO_WALL
                            && runs(columns.limit, i, box, bottom, scale)) {
                return false;
            }
        }
        boolean isUnderCaption =
                box.getMinX() < captionEnd && box.getMinY() < sheet.wallTop() - CAPTION_DOWN;
        return box.getMinY() >= sheet.wallTop() - UP && !isUnderCaption;
    }

    /** Whether a line runs through a box between a column and the one before. */
    private boolean runs(float[] values, int i, Rectangle2D box, double bottom, double scale) {
        if (values[i] == Columns.NO_WALL) {
            return false;
        }
        double now = bottom - values[i] * scale;
        double before = values[i - 1] == Columns.NO_WALL ? now : bottom - values[i - 1] * scale;
        double top = Math.max(sheet.wallTop(), box.getMinY());
        return Math.min(now, before) < box.getMaxY() && Math.max(now, before) > top;
    }
}
