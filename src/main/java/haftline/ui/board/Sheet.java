package haftline.ui.board;

import haftline.ui.model.View;

/**
 * How the board's area is shared out, px: ruler above, the piece, then the curves of wall and
 * diameter on the same x axis.
 *
 * @param width whole width
 * @param height whole height
 */
record Sheet(double width, double height) {
    static final double RULER = 26;

    /** Below this height the curves would leave the piece less than 70 px. */
    private static final double LEAST_WITH_CURVES = 428;

    /** Room for dimensions over and under the piece, px. */
    private static final double ABOVE = 78;

    private static final double BELOW = 124;
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

    /** Where the piece is fitted into, its dimensions round it. */
    View.Area area() {
        double tall = curvesTop() - RULER;
        return new View.Area(
                SIDE, RULER + ABOVE, width - 2 * SIDE, Math.max(20, tall - ABOVE - BELOW));
    }
}
