package haftline.write.svg;

import haftline.drawing.Arc;
import haftline.drawing.Cubic;
import haftline.drawing.EllipseArc;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import java.util.List;

/** The d attribute of a path, absolute commands only. */
final class SvgPathData {
    private static final double HALF_TURN_DEG = 180;

    private SvgPathData() {}

    static String of(Path path, SvgSheet sheet) {
        List<Segment> segments = path.segments();
        StringBuilder out = new StringBuilder("M" + sheet.place(segments.get(0).start()));
        for (int i = 0; i < segments.size(); i++) {
            boolean last = i == segments.size() - 1;
            Segment segment = segments.get(i);
            if (path.closed() && last && !isCurve(segment)) {
                // Z draws the last straight line itself, and joins it to the first.
                continue;
            }
            out.append(' ').append(command(segment, sheet));
        }
        return out.append(path.closed() ? " Z" : "").toString();
    }

    private static boolean isCurve(Segment segment) {
        if (segment instanceof Arc arc) {
            // Flatter than the last decimal: its radius would only upset a reader.
            return arc.riseMm() > SvgSheet.RESOLUTION_MM;
        }
        return segment instanceof Cubic || segment instanceof EllipseArc;
    }

    private static String command(Segment segment, SvgSheet sheet) {
        String end = sheet.place(segment.end());
        if (segment instanceof Cubic cubic) {
            return "C"
                    + sheet.place(cubic.control1())
                    + " "
                    + sheet.place(cubic.control2())
                    + " "
                    + end;
        }
        if (segment instanceof EllipseArc ellipse) {
            return arc(ellipse.semiXMm(), ellipse.semiYMm(), ellipse.sweepDeg(), sheet) + end;
        }
        if (segment instanceof Arc arc && isCurve(arc)) {
            return arc(arc.radiusMm(), arc.radiusMm(), arc.sweepDeg(), sheet) + end;
        }
        return "L" + end;
    }

    /** Radii, no turn of the axes, the larger part or the smaller, and the way round. */
    private static String arc(double radiusX, double radiusY, double sweepDeg, SvgSheet sheet) {
        // Anticlockwise with y up is the way of falling angles with y down: sweep flag 0.
        return "A"
                + sheet.length(radiusX)
                + " "
                + sheet.length(radiusY)
                + " 0 "
                + (Math.abs(sweepDeg) > HALF_TURN_DEG ? 1 : 0)
                + " "
                + (sweepDeg > 0 ? 0 : 1)
                + " ";
    }
}
