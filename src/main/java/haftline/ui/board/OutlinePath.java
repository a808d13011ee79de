package haftline.ui.board;

import haftline.curve.GraphCubic;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.ui.model.View;

/** The outline as a path: cubics by their control points, arcs and domes in short chords. */
final class OutlinePath {
    /** Chords of an arc or a dome; their sagitta stays far under a pixel. */
    private static final int CHORDS = 24;

    private OutlinePath() {}

    /**
     * Strokes the outline from a place on, steps as upright lines.
     *
     * @param side 1 above the axis, -1 below
     * @param fromX where to begin, mm
     */
    static void stroke(Ink ink, Outline outline, View view, int side, double fromX) {
        ink.beginPath();
        boolean begun = false;
        for (Segment segment : outline.segments()) {
            if (segment.endX() <= fromX) {
                continue;
            }
            double x0 = view.px(segment.startX());
            double y0 = view.py(side * segment.r(segment.startX()));
            if (begun) {
                ink.lineTo(x0, y0);
            } else {
                ink.moveTo(x0, y0);
                begun = true;
            }
            add(ink, segment, view, side);
        }
        ink.stroke();
    }

    private static void add(Ink ink, Segment segment, View view, int side) {
        double x0 = segment.startX();
        double x1 = segment.endX();
        if (segment instanceof GraphCubic cubic) {
            ink.bezierCurveTo(
                    view.px(x0 + (x1 - x0) / 3),
                    view.py(side * cubic.firstControlR()),
                    view.px(x1 - (x1 - x0) / 3),
                    view.py(side * cubic.secondControlR()),
                    view.px(x1),
                    view.py(side * cubic.r(x1)));
        } else if (segment instanceof StraightLine) {
            ink.lineTo(view.px(x1), view.py(side * segment.r(x1)));
        } else {
            for (int i = 1; i <= CHORDS; i++) {
                // Denser towards the ends, where a dome is upright.
                double t = (1 - Math.cos(Math.PI * i / CHORDS)) / 2;
                double x = i == CHORDS ? x1 : x0 + (x1 - x0) * t;
                ink.lineTo(view.px(x), view.py(side * segment.r(x)));
            }
        }
    }
}
