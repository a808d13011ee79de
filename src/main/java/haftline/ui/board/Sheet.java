package haftline.ui.board;

import haftline.handle.Handle;

/**
 * How the board's area is shared out, px: ruler above, the piece, then the curves of wall and
 * diameter on the same x axis.
 *
 * @param width whole width
 * @param height whole height
 */
record Sheet(double width, double height) {
    static final double RULER = 26;

    /** Below this height the curves would take the piece its room. */
    private static final double LEAST_WITH_CURVES = 330;

    /** The blade is broken off this far in front of the ferrule, mm. */
    static final double BLADE_SHOWN = 30;

    /** Room for dimensions over and under the piece, px. */
    private static final double ABOVE = 78;

    private static final double BELOW = 118;
    private static final double SIDE = 34;

    boolean hasCurves() {
        return height >= LEAST_WITH_CURVES;
    }

    double curvesTop() {
        return hasCurves() ? Math.round(height - Math.max(136, height * 0.30)) : height;
    }

    double wallTop() {
        return curvesTop() + 22;
    }

    double wallBottom() {
        return Math.round(curvesTop() + (height - curvesTop()) * 0.56);
    }

    double diameterTop() {
        return wallBottom() + 20;
    }

    double diameterBottom() {
        return height - 10;
    }

    /** The view in which the whole handle and a piece of the blade are seen. */
    View fit(Handle handle) {
        double from = handle.ferruleFaceX() - BLADE_SHOWN;
        double to = handle.buttX() + handle.lengths().capMm();
        double radius =
                Math.max(
                        handle.outline().greatest().r(),
                        handle.brief().kit().ferrule().outside().greatest() / 2);
        double tall = curvesTop() - RULER;
        double across = (width - 2 * SIDE) / (to - from);
        double down = (tall - ABOVE - BELOW) / (2 * radius);
        double scale = Math.min(View.GREATEST, Math.max(View.LEAST, Math.min(across, down)));
        double shoulder = width / 2 - scale * (from + to) / 2;
        double axis = RULER + ABOVE + (tall - ABOVE - BELOW) / 2;
        return new View(scale, Math.round(shoulder), Math.round(axis));
    }
}
