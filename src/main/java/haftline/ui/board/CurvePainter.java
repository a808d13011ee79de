package haftline.ui.board;

import haftline.adjust.doubt.Band;
import haftline.adjust.doubt.Doubt;
import haftline.figures.Wall;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** Wall and diameter over the same x as the piece above them. */
final class CurvePainter {
    private static final double SHOWN_LIMITS = 2.6;
    private static final double DOUBTED_LIMITS = 1.6;

    /** The least wall of every bore stays in sight, and its figure over it. */
    private static final double OVER_THE_LEAST = 1.3;

    /** Places of a band further apart than this are those of two bores, mm. */
    private static final double NEXT_MM = 6;

    /** How far a chord may leave a curve, px. */
    private static final double BEND_PX = 0.05;

    private final Pen pen;
    private final BoardScene scene;
    private final Sheet sheet;
    private final View view;
    private final Ink ink;
    private final Palette palette;

    CurvePainter(Pen pen, BoardScene scene, Sheet sheet, View view) {
        this.pen = pen;
        this.scene = scene;
        this.sheet = sheet;
        this.view = view;
        ink = pen.ink;
        palette = scene.palette();
    }

    void paint() {
        if (!sheet.hasCurves()) {
            return;
        }
        RulerPainter.curvesGround(pen, scene, sheet, view);
        pen.style(palette.line(), 1);
        pen.line(0, sheet.curvesTop() + 0.5, sheet.width(), sheet.curvesTop() + 0.5);
        NodePainter.place(pen, scene, view, sheet.curvesTop() + 1, sheet.height());
        int count = (int) Math.max(2, Math.ceil(sheet.width()));
        Columns columns = new Columns(scene.handle(), view.mm(0.5), 1 / view.scale(), count);
        wall(columns);
        if (!scene.overlay().isDoubted()) {
            diameter(columns);
        }
    }

    /** Bands are a fraction of a millimetre wide: they get the diameter's room too. */
    private double wallBottom() {
        return scene.overlay().isDoubted() ? sheet.diameterBottom() : sheet.wallBottom();
    }

    private void wall(Columns columns) {
        double most = 0;
        for (int i = 0; i < columns.count; i++) {
            if (columns.worst[i] != Columns.NO_WALL) {
                most = Math.max(most, columns.limit[i]);
            }
        }
        double top = sheet.wallTop();
        double bottom = wallBottom();
        String caption =
                "wall over the bores, at the worst wander; dotted: as drilled true"
                        + (scene.overlay().doubt().isPresent()
                                ? "; shaded: 9 in 10 handles lie in it"
                                : "");
        pen.text(caption, 10, sheet.curvesTop() + 16, palette.soft(), TextAlignment.LEFT);
        if (most == 0) {
            return;
        }
        // Room for the wall up to a few times its limit; ampler ones run out at the top.
        double scale = (bottom - top) / shownMm(most);
        pen.style(palette.line(), 1);
        pen.line(0, Pen.sharp(bottom), sheet.width(), Pen.sharp(bottom));
        scene.overlay().doubt().ifPresent(doubt -> bands(doubt, bottom, scale));
        shortfall(columns, bottom, scale);
        limits(columns, bottom, scale);
        curve(columns, columns.nominal, bottom, scale, palette.soft(), 1, 2, 3);
        curve(columns, columns.worst, bottom, scale, palette.ink(), 1.7);
        new LeastWalls(pen, scene, sheet, view, 10 + Pen.width(caption) + 6)
                .paint(columns, bottom, scale);
    }

    /** The wall at the top of the curves, mm; lower where bands are to be told apart. */
    private double shownMm(double most) {
        if (!scene.overlay().isDoubted()) {
            return most * SHOWN_LIMITS;
        }
        double least = 0;
        for (Wall wall : scene.figures().walls()) {
            least = Math.max(least, wall.worstMm());
        }
        return Math.min(
                most * SHOWN_LIMITS, Math.max(most * DOUBTED_LIMITS, least * OVER_THE_LEAST));
    }

    /** Where 9 in 10 of the handles have their wall, and the middle one of them. */
    private void bands(Doubt doubt, double bottom, double scale) {
        Color colour = palette.accent();
        Band before = null;
        for (Band band : doubt.bands()) {
            if (before != null && band.x() - before.x() < NEXT_MM) {
                ink.setFill(colour.deriveColor(0, 1, 1, 0.2));
                ink.fillPolygon(
                        new double[] {
                            view.px(before.x()),
                            view.px(band.x()),
                            view.px(band.x()),
                            view.px(before.x())
                        },
                        new double[] {
                            wallY(before.highMm(), bottom, scale),
                            wallY(band.highMm(), bottom, scale),
                            wallY(band.lowMm(), bottom, scale),
                            wallY(before.lowMm(), bottom, scale)
                        });
                pen.style(colour, 0.9);
                for (double[] pair :
                        new double[][] {
                            {before.lowMm(), band.lowMm()}, {before.highMm(), band.highMm()}
                        }) {
                    double y0 = wallY(pair[0], bottom, scale);
                    double y1 = wallY(pair[1], bottom, scale);
                    if (y0 > sheet.wallTop() || y1 > sheet.wallTop()) {
                        ink.strokeLine(view.px(before.x()), y0, view.px(band.x()), y1);
                    }
                }
            }
            before = band;
        }
    }

    private double wallY(double mm, double bottom, double scale) {
        return Math.max(sheet.wallTop(), bottom - Math.max(0, mm) * scale);
    }

    /** What is missing to the limit: filled and ruled upright, so that it reads without colour. */
    private void shortfall(Columns columns, double bottom, double scale) {
        ink.setFill(palette.stop().deriveColor(0, 1, 1, 0.22));
        pen.style(palette.stop(), 1);
        int i = 0;
        while (i < columns.count) {
            if (!isShort(columns, i)) {
                i++;
                continue;
            }
            int from = i;
            while (i < columns.count && isShort(columns, i)) {
                i++;
            }
            ink.beginPath();
            ink.moveTo(from, bottom - columns.limit[from] * scale);
            for (int k = from; k < i; k += 2) {
                ink.lineTo(k, bottom - columns.limit[k] * scale);
            }
            for (int k = i - 1; k >= from; k -= 2) {
                ink.lineTo(k, bottom - Math.max(0, columns.worst[k]) * scale);
            }
            ink.closePath();
            ink.fill();
            for (int k = from + 2; k < i; k += 4) {
                pen.line(
                        k + 0.5,
                        bottom - columns.limit[k] * scale,
                        k + 0.5,
                        bottom - Math.max(0, columns.worst[k]) * scale);
            }
        }
    }

    private static boolean isShort(Columns columns, int i) {
        return columns.worst[i] != Columns.NO_WALL && columns.worst[i] < columns.limit[i];
    }

    private void limits(Columns columns, double bottom, double scale) {
        int i = 0;
        double lastEnd = -100;
        while (i < columns.count) {
            if (columns.worst[i] == Columns.NO_WALL) {
                i++;
                continue;
            }
            int from = i;
            float limit = columns.limit[i];
            while (i < columns.count
                    && columns.worst[i] != Columns.NO_WALL
                    && columns.limit[i] == limit) {
                i++;
            }
            double y = Pen.sharp(bottom - limit * scale);
            pen.dashed(palette.stop(), 1, 6, 4);
            pen.line(from, y, i, y);
            String text = "limit " + scene.shown().length(limit);
            double wide = Pen.width(text);
            if (from - wide - 8 > lastEnd) {
                pen.text(text, from - 6, y + 4, palette.stop(), TextAlignment.RIGHT);
            } else if (i + wide + 60 < sheet.width()) {
                pen.text(text, i + 6, y + 4, palette.stop(), TextAlignment.LEFT);
            } else {
                // Behind the words before it, as far as the board goes.
                double end = Math.max(i, Math.min(sheet.width() - 4, lastEnd + wide));
                pen.text(text, end, y + 14, palette.stop(), TextAlignment.RIGHT);
            }
            lastEnd = i + Pen.width(text) + 8;
        }
    }

    private void curve(
            Columns columns,
            float[] values,
            double bottom,
            double scale,
            Color colour,
            double width,
            double... dashes) {
        pen.dashed(colour, width, dashes);
        boolean open = false;
        ink.beginPath();
        for (int i = 0; i < columns.count; i++) {
            if (values[i] == Columns.NO_WALL || bottom - values[i] * scale < sheet.wallTop()) {
                // Each piece is a line of its own: dashes begin anew.
                ink.stroke();
                ink.beginPath();
                open = false;
                continue;
            }
            double y = bottom - Math.max(0, values[i]) * scale;
            if (open) {
                ink.lineTo(i + 0.5, y);
            } else {
                ink.moveTo(i + 0.5, y);
                open = true;
            }
            i += isSmooth(values, i, 8, scale) ? 7 : isSmooth(values, i, 3, scale) ? 2 : 0;
        }
        ink.stroke();
    }

    /**
     * Whether a chord over some columns is as good as the curve: it runs on by one more, is not
     * steep, and bends by less than a twentieth of a pixel. Steps keep each column.
     */
    private static boolean isSmooth(float[] values, int i, int chord, double scale) {
        if (i + chord + 1 >= values.length
                || values[i + chord] == Columns.NO_WALL
                || values[i + chord + 1] == Columns.NO_WALL) {
            return false;
        }
        double rise = (values[i + chord] - values[i]) * scale;
        for (int k = 1; k < chord; k++) {
            double off = (values[i + k] - values[i]) * scale - rise * k / chord;
            if (values[i + k] == Columns.NO_WALL || Math.abs(off) > BEND_PX) {
                return false;
            }
        }
        return Math.abs(rise) < chord;
    }

    private void diameter(Columns columns) {
        double top = sheet.diameterTop();
        double bottom = sheet.diameterBottom();
        double most = 2 * scene.handle().outline().greatest().r();
        double scale = (bottom - top) / (most * 1.05);
        pen.text("diameter", 10, sheet.wallBottom() + 16, palette.soft(), TextAlignment.LEFT);
        pen.style(palette.line(), 1);
        pen.line(0, Pen.sharp(bottom), sheet.width(), Pen.sharp(bottom));
        pen.style(palette.ink(), 1.7);
        ink.beginPath();
        int from = columns.at(0);
        int to = columns.at(scene.handle().buttX());
        for (int i = from;
                i < to;
                i += isSmooth(columns.wood, i, 8, 2 * scale) && i + 8 < to ? 8 : 1) {
            double y = bottom - 2 * columns.wood[i] * scale;
            if (i == from) {
                ink.moveTo(i + 0.5, y);
            } else {
                ink.lineTo(i + 0.5, y);
            }
        }
        if (to > from) {
            ink.lineTo(to - 0.5, bottom - 2 * columns.wood[to - 1] * scale);
        }
        ink.stroke();
        var swell = scene.handle().outline().greatest();
        double x = view.px(swell.x());
        double y = bottom - 2 * swell.r() * scale;
        pen.ink.setFill(palette.ink());
        pen.ink.fillOval(x - 2.5, y - 2.5, 5, 5);
        pen.text(
                "⌀ " + scene.shown().length(2 * swell.r()),
                x,
                y + 16,
                palette.ink(),
                TextAlignment.CENTER);
    }
}
