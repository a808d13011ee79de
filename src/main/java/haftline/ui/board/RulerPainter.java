package haftline.ui.board;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** Squared paper and the ruler along the top. */
final class RulerPainter {
    /** Numbers stand no closer than this, px. */
    private static final double LEAST_GAP = 44;

    private static final double[] MM_STEPS = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final double[] INCH_STEPS = {0.125, 0.25, 0.5, 1, 2, 4, 8};

    /** How far the paper gives way to a panel under the curves. */
    private static final double UNDER_CURVES = 0.82;

    /** How much of the squares stays over a photograph. */
    private static final double OVER_PHOTOGRAPH = 0.35;

    private RulerPainter() {}

    /** Distance of the ruler's numbers, mm. */
    private static double step(View view, Units units) {
        double[] steps = units == Units.MM ? MM_STEPS : INCH_STEPS;
        for (double step : steps) {
            if (step * units.millimetres() * view.scale() >= LEAST_GAP) {
                return step * units.millimetres();
            }
        }
        return steps[steps.length - 1] * units.millimetres();
    }

    /** The squares; the paper is the window's own ground, which shows wherever nothing is drawn. */
    static void ground(Pen pen, BoardScene scene, Sheet sheet, View view) {
        Palette palette = scene.palette();
        double bottom = sheet.curvesTop();
        boolean overPhotograph = scene.overlay().photograph() > 0;
        Color grid = palette.grid().deriveColor(0, 1, 1, overPhotograph ? OVER_PHOTOGRAPH : 1);
        double step = step(view, scene.units());
        upright(pen, grid, Sheet.RULER, bottom, sheet, view, step);
        pen.style(grid, 1);
        for (double py : levels(bottom, view, step)) {
            pen.line(0, py, sheet.width(), py);
        }
    }

    /**
     * The same squares as pixels, for a picture that covers them.
     *
     * @param scene what is shown; no photograph, no place of a finding
     * @param left left edge of the picture, px
     * @param top its top, px
     * @param width its width in device pixels
     * @param height its height in device pixels
     * @param density device pixels a pixel, a whole number
     */
    static Ground ground(
            BoardScene scene,
            View view,
            double left,
            double top,
            int width,
            int height,
            int density) {
        double step = step(view, scene.units());
        boolean[] isUpright = new boolean[width];
        for (double px : uprights(left, left + width / density, view, step)) {
            mark(isUpright, px - left, density);
        }
        boolean[] isLevel = new boolean[height];
        for (double py : levels(top + height / density, view, step)) {
            mark(isLevel, py - top, density);
        }
        Palette palette = scene.palette();
        return Ground.squared(
                Tint.of(palette.paper()), Tint.of(palette.grid()), isUpright, isLevel);
    }

    /** A line is one pixel wide, its middle in the middle of a pixel. */
    private static void mark(boolean[] isLine, double at, int density) {
        int from = (int) Math.round((at - 0.5) * density);
        for (int i = Math.max(0, from); i < Math.min(isLine.length, from + density); i++) {
            isLine[i] = true;
        }
    }

    private static List<Double> levels(double bottom, View view, double step) {
        List<Double> levels = new ArrayList<>();
        double low = Math.ceil(view.radius(bottom) / step) * step;
        for (double r = low; view.py(r) > Sheet.RULER; r += step) {
            levels.add(Pen.sharp(view.py(r)));
        }
        return levels;
    }

    private static List<Double> uprights(double left, double right, View view, double step) {
        List<Double> uprights = new ArrayList<>();
        double first = Math.ceil(view.mm(left) / step) * step;
        for (double x = first; view.px(x) < right; x += step) {
            uprights.add(Pen.sharp(view.px(x)));
        }
        return uprights;
    }

    /** The ground under the curves covers what of the piece reaches into it. */
    static void curvesGround(Pen pen, BoardScene scene, Sheet sheet, View view) {
        Palette palette = scene.palette();
        double top = sheet.curvesTop();
        pen.ink.setFill(palette.paper().interpolate(palette.panel(), UNDER_CURVES));
        pen.ink.fillRect(0, top, sheet.width(), sheet.height() - top);
        Color faint = palette.grid().interpolate(palette.panel(), UNDER_CURVES);
        upright(pen, faint, top, sheet.height(), sheet, view, step(view, scene.units()));
    }

    private static void upright(
            Pen pen, Color colour, double top, double bottom, Sheet sheet, View view, double step) {
        pen.style(colour, 1);
        for (double px : uprights(0, sheet.width(), view, step)) {
            pen.line(px, top, px, bottom);
        }
    }

    static void ruler(Pen pen, BoardScene scene, Sheet sheet, View view) {
        Palette palette = scene.palette();
        pen.ink.setFill(palette.margin());
        pen.ink.fillRect(0, 0, sheet.width(), Sheet.RULER);
        pen.style(palette.line(), 1);
        pen.line(0, Sheet.RULER - 0.5, sheet.width(), Sheet.RULER - 0.5);
        double step = step(view, scene.units());
        int parts = scene.units() == Units.MM ? 5 : 4;
        double unit = scene.units().millimetres();
        pen.style(palette.soft(), 1);
        String symbol = scene.units().symbol();
        double unitRoom = Pen.width(symbol) + 12;
        long from = (long) Math.floor(view.mm(0) / step);
        long to = (long) Math.ceil(view.mm(sheet.width()) / step);
        for (long i = from; i <= to; i++) {
            double px = Pen.sharp(view.px(i * step));
            pen.line(px, Sheet.RULER - 9, px, Sheet.RULER - 1);
            String number = NumberText.said(NumberText.upTo(i * step / unit, 3));
            double half = Pen.width(number) / 2;
            if (px - half > unitRoom && px + half < sheet.width() - 2) {
                pen.text(number, px, Sheet.RULER - 12, palette.soft(), TextAlignment.CENTER);
            }
            for (int k = 1; k < parts; k++) {
                double small = Pen.sharp(view.px(i * step + k * step / parts));
                pen.line(small, Sheet.RULER - 4, small, Sheet.RULER - 1);
            }
        }
        pen.text(symbol, 7, Sheet.RULER - 12, palette.ink(), TextAlignment.LEFT);
    }
}
