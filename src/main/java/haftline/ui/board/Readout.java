package haftline.ui.board;

import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.ui.words.Shown;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the cross-hair reads at a place. */
final class Readout {
    /** Straighter than this is called straight, mm of radius. */
    private static final double STRAIGHT = 10_000;

    private Readout() {}

    /**
     * The figures at a place.
     *
     * @param x mm from the shoulder
     * @return label and figure, in the order to be read; empty beside the wood
     */
    static Map<String, String> at(Handle handle, double x, Shown shown) {
        Map<String, String> lines = new LinkedHashMap<>();
        Outline outline = handle.outline();
        if (x < outline.startX() || x > outline.endX()) {
            return lines;
        }
        lines.put(x < 0 ? "before the shoulder" : "from the shoulder", shown.length(Math.abs(x)));
        lines.put("diameter", shown.length(2 * outline.r(x)));
        Columns one = new Columns(handle, x, 1, 1);
        lines.put(
                "wall, worst",
                one.worst[0] == Columns.NO_WALL
                        ? "solid"
                        : shown.wall(one.worst[0]) + " of " + shown.length(one.limit[0]));
        lines.put("slope", shown.angle(Math.toDegrees(Math.atan(outline.slope(x)))));
        double curvature = outline.curvature(x);
        double radius = Math.abs(1 / curvature);
        lines.put(
                curvature > 0 ? "hollow, radius" : "round, radius",
                radius < STRAIGHT ? shown.length(radius, 0) : "straight");
        return lines;
    }
}
