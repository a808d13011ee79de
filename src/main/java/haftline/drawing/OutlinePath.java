package haftline.drawing;

import haftline.curve.CircularArc;
import haftline.curve.EllipseQuarter;
import haftline.curve.GraphCubic;
import haftline.curve.Outline;
import haftline.curve.Segment;

/**
 * An outline as it is drawn: x along the sheet, r upwards, curve by curve without loss. Its ends
 * are the outline's own doubles, so that what is drawn to them meets it.
 */
final class OutlinePath {
    private OutlinePath() {}

    /** Follows an outline from its start to its end; a step in r becomes a face. */
    static PathBuilder follow(PathBuilder path, Outline outline) {
        for (Segment segment : outline.segments()) {
            path.lineTo(segment.startX(), segment.r(segment.startX()));
            follow(path, segment);
        }
        return path;
    }

    private static void follow(PathBuilder path, Segment segment) {
        double x = segment.endX();
        double r = segment.r(x);
        if (segment instanceof GraphCubic cubic) {
            double third = (cubic.x1() - cubic.x0()) / 3;
            path.cubicTo(
                    cubic.x0() + third,
                    cubic.firstControlR(),
                    cubic.x1() - third,
                    cubic.secondControlR(),
                    x,
                    r);
        } else if (segment instanceof CircularArc arc) {
            path.arcTo(x, r, arc.bulge());
        } else if (segment instanceof EllipseQuarter ellipse) {
            // The upper half is walked clockwise as x rises, the lower one anticlockwise.
            path.ellipseTo(
                    x,
                    r,
                    ellipse.centreX(),
                    ellipse.centreR(),
                    ellipse.semiX(),
                    ellipse.semiR(),
                    !ellipse.upper());
        } else {
            path.lineTo(x, r);
        }
    }
}
