package haftline.ui.templates;

import haftline.set.TemplateSettings.Copying;
import haftline.set.TemplateSettings.Copying.Sides;
import haftline.set.TemplateSettings.Hole;
import haftline.ui.theme.Palette;
import javafx.scene.canvas.GraphicsContext;

/** A copying template of an invented handle 110 mm long, to scale. */
final class CopyingSketch {
    private static final double WORK_MM = 110;
    private static final double RADIUS_MM = 14;
    private static final double MOST_WIDTH = 258;
    private static final double MOST_HEIGHT = 64;

    private CopyingSketch() {}

    static void paint(SketchPen pen, Copying copying) {
        Palette p = pen.palette();
        if (!copying.made()) {
            pen.middle("no copying template is made", 140, 54);
            return;
        }
        boolean isFull = copying.sides() == Sides.BOTH;
        double below = isFull ? RADIUS_MM : copying.backMm();
        double scale =
                Math.min(
                        MOST_WIDTH / (WORK_MM + copying.runOnMm() + copying.runOffMm()),
                        MOST_HEIGHT / (RADIUS_MM + below));
        double wide = (WORK_MM + copying.runOnMm() + copying.runOffMm()) * scale;
        double left = 11 + (MOST_WIDTH - wide) / 2;
        double shoulder = left + copying.runOnMm() * scale;
        double seat = shoulder + WORK_MM * scale;
        double axis = 14 + RADIUS_MM * scale;
        GraphicsContext gc = pen.gc();
        gc.beginPath();
        edge(gc, copying, shoulder, seat, axis, scale, 1);
        if (isFull) {
            edge(gc, copying, shoulder, seat, axis, scale, -1);
        } else {
            double back = axis + copying.backMm() * scale;
            gc.lineTo(seat + copying.runOffMm() * scale, back);
            gc.lineTo(shoulder - copying.runOnMm() * scale, back);
        }
        gc.closePath();
        pen.finish(pen.card(), p.ink(), 1.5);
        double bottom = axis + below * scale;
        pen.dashed(p.accent(), shoulder, 10, shoulder, bottom);
        pen.dashed(p.accent(), seat, 10, seat, bottom);
        pen.dashed(p.soft(), left, axis, left + wide, axis);
        for (Hole hole : copying.holes()) {
            boolean fromShoulder = hole.from() == Hole.End.SHOULDER;
            double x =
                    fromShoulder
                            ? shoulder - hole.beyondMm() * scale
                            : seat + hole.beyondMm() * scale;
            pen.circle(
                    p.margin(),
                    p.ink(),
                    x,
                    axis - hole.heightMm() * scale,
                    Math.max(1.5, hole.diameterMm() / 2 * scale));
        }
        pen.text("run on " + pen.length(copying.runOnMm()), 6, 96);
        pen.middle(isFull ? "both sides" : "back " + pen.length(copying.backMm()), 140, 96);
        pen.right("run off " + pen.length(copying.runOffMm()), 274, 96);
    }

    /** One side, from run on to run off, or back for the lower side. */
    private static void edge(
            GraphicsContext gc,
            Copying copying,
            double shoulder,
            double seat,
            double axis,
            double scale,
            int side) {
        double on = copying.runOnMm() * scale;
        double off = copying.runOffMm() * scale;
        double r = side * RADIUS_MM * scale;
        double work = seat - shoulder;
        double begin = axis - 0.74 * r;
        double end = axis - 0.72 * r;
        if (side > 0) {
            gc.moveTo(shoulder - on, begin);
            gc.lineTo(shoulder, begin);
            gc.bezierCurveTo(
                    shoulder + 0.18 * work,
                    begin + 0.02 * r,
                    shoulder + 0.2 * work,
                    axis - 0.5 * r,
                    shoulder + 0.34 * work,
                    axis - 0.62 * r);
            gc.bezierCurveTo(
                    shoulder + 0.6 * work,
                    axis - 0.95 * r,
                    shoulder + 0.78 * work,
                    axis - 1.12 * r,
                    seat,
                    end);
            gc.lineTo(seat + off, end + 0.42 * off);
        } else {
            gc.lineTo(seat + off, end - 0.42 * off);
            gc.lineTo(seat, end);
            gc.bezierCurveTo(
                    shoulder + 0.78 * work,
                    axis - 1.12 * r,
                    shoulder + 0.6 * work,
                    axis - 0.95 * r,
                    shoulder + 0.34 * work,
                    axis - 0.62 * r);
            gc.bezierCurveTo(
                    shoulder + 0.2 * work,
                    axis - 0.5 * r,
                    shoulder + 0.18 * work,
                    begin + 0.02 * r,
                    shoulder,
                    begin);
            gc.lineTo(shoulder - on, begin);
        }
    }
}
