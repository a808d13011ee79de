package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.curve.CircularArc;
import haftline.curve.EllipseQuarter;
import haftline.curve.GraphCubic;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.io.IOException;

/**
 * The segments of an outline with their exact coefficients. Points are [x, r]; angles are degrees
 * anticlockwise from +x in the (x, r) plane, 0 to 180 on a round and -180 to 0 in a hollow, so that
 * the way from one to the other never passes the seam at 180.
 */
final class OutlineJson {
    static final String KEY = "outline";

    private final JsonGenerator out;

    OutlineJson(JsonGenerator out) {
        this.out = out;
    }

    void write(Outline outline) throws IOException {
        out.writeArrayFieldStart(KEY);
        for (Segment segment : outline.segments()) {
            out.writeStartObject();
            if (segment instanceof StraightLine line) {
                points("line", line.x0(), line.r0(), line.x1(), line.r1());
            } else if (segment instanceof GraphCubic cubic) {
                cubic(cubic);
            } else if (segment instanceof CircularArc arc) {
                arc(arc);
            } else if (segment instanceof EllipseQuarter ellipse) {
                ellipse(ellipse);
            }
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void cubic(GraphCubic cubic) throws IOException {
        double third = (cubic.x1() - cubic.x0()) / 3;
        points(
                "cubic",
                cubic.x0(),
                cubic.r0(),
                cubic.x0() + third,
                cubic.firstControlR(),
                cubic.x1() - third,
                cubic.secondControlR(),
                cubic.x1(),
                cubic.r1());
    }

    private void points(String kind, double... coordinates) throws IOException {
        out.writeStringField("kind", kind);
        out.writeArrayFieldStart("points");
        for (int i = 0; i < coordinates.length; i += 2) {
            point(coordinates[i], coordinates[i + 1]);
        }
        out.writeEndArray();
        out.writeNullField("centre");
        out.writeNullField("radius");
        out.writeNullField("semi_axes");
        out.writeNullField("from_deg");
        out.writeNullField("to_deg");
    }

    private void arc(CircularArc arc) throws IOException {
        out.writeStringField("kind", "arc");
        out.writeNullField("points");
        out.writeFieldName("centre");
        point(arc.centre().x(), arc.centre().r());
        number("radius", arc.radius());
        out.writeNullField("semi_axes");
        number("from_deg", arc.fromDegrees());
        number("to_deg", arc.toDegrees());
    }

    private void ellipse(EllipseQuarter ellipse) throws IOException {
        out.writeStringField("kind", "ellipse");
        out.writeNullField("points");
        out.writeFieldName("centre");
        point(ellipse.centreX(), ellipse.centreR());
        out.writeNullField("radius");
        out.writeFieldName("semi_axes");
        point(ellipse.semiX(), ellipse.semiR());
        double side = ellipse.upper() ? 1 : -1;
        number("from_deg", side * Math.toDegrees(ellipse.parameter(ellipse.startX())));
        number("to_deg", side * Math.toDegrees(ellipse.parameter(ellipse.endX())));
    }

    private void point(double x, double r) throws IOException {
        out.writeStartArray();
        CheckJson.number(out, x);
        CheckJson.number(out, r);
        out.writeEndArray();
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        CheckJson.number(out, value);
    }
}
