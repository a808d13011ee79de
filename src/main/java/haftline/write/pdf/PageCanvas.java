package haftline.write.pdf;

import haftline.drawing.Arrowhead;
import haftline.drawing.Circle;
import haftline.drawing.Cubic;
import haftline.drawing.Element;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.write.lettering.Lettering;
import haftline.write.lettering.Lettering.Placed;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/** Draws elements on one page. */
final class PageCanvas {
    private static final float BLACK = 0;

    /** What a machine marks but does not cut; blue prints as a grey that is seen on any printer. */
    private static final float[] SCORE_RGB = {0, 0, 1};

    /** Elements nearer to the field than this may show in it by the width of their lines, mm. */
    static final double LINE_REACH_MM = 1;

    private static final int ROUND_JOIN = 1;

    private final PDPageContentStream out;
    private final PDFont font;

    PageCanvas(PDPageContentStream out, PDFont font) {
        this.out = out;
        this.font = font;
    }

    void draw(Element element, Mapping mapping) throws IOException {
        if (element.layer() == Layer.SCORE) {
            colour(SCORE_RGB);
        } else {
            out.setStrokingColor(BLACK);
            out.setNonStrokingColor(BLACK);
        }
        if (element instanceof Text text) {
            text(text, mapping);
        } else if (element instanceof Arrowhead arrowhead) {
            fill(arrowhead.corners(), mapping);
        } else {
            pen(element.layer());
            stroke(element, mapping);
        }
    }

    /** Both colours, red, green and blue from 0 to 1. */
    void colour(float[] rgb) throws IOException {
        out.setStrokingColor(rgb[0], rgb[1], rgb[2]);
        out.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
    }

    private void pen(Layer layer) throws IOException {
        pen(layer.widthMm(), layer.lineType().patternMm(layer.widthMm()));
    }

    /** A pen of a width in mm, with dashes and gaps in turn in mm. */
    void pen(double widthMm, List<Double> patternMm) throws IOException {
        out.setLineWidth((float) (widthMm * Mapping.UNITS_PER_MM));
        out.setLineJoinStyle(ROUND_JOIN);
        float[] pattern = new float[patternMm.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = (float) (patternMm.get(i) * Mapping.UNITS_PER_MM);
        }
        out.setLineDashPattern(pattern, 0);
    }

    /** A path or circle with the pen as it is. */
    void stroke(Element element, Mapping mapping) throws IOException {
        if (element instanceof Path path) {
            chain(
                    path.segments().stream().flatMap(s -> RoundCubics.of(s).stream()).toList(),
                    mapping);
            if (path.closed()) {
                out.closePath();
            }
            out.stroke();
        } else if (element instanceof Circle circle) {
            chain(RoundCubics.of(circle), mapping);
            out.closeAndStroke();
        }
    }

    private void chain(List<Segment> segments, Mapping to) throws IOException {
        Vertex start = segments.get(0).start();
        out.moveTo(to.x(start), to.y(start));
        for (Segment segment : segments) {
            Vertex end = segment.end();
            if (segment instanceof Cubic cubic) {
                out.curveTo(
                        to.x(cubic.control1()),
                        to.y(cubic.control1()),
                        to.x(cubic.control2()),
                        to.y(cubic.control2()),
                        to.x(end),
                        to.y(end));
            } else {
                out.lineTo(to.x(end), to.y(end));
            }
        }
    }

    private void fill(List<Vertex> corners, Mapping to) throws IOException {
        out.moveTo(to.x(corners.get(0)), to.y(corners.get(0)));
        for (Vertex corner : corners.subList(1, corners.size())) {
            out.lineTo(to.x(corner), to.y(corner));
        }
        out.fill();
    }

    /**
     * A line of text: what the font has as text that can be searched and copied, the rest as filled
     * outlines.
     */
    void text(Text text, Mapping mapping) throws IOException {
        Lettering lettering = Lettering.font();
        double sizeMm = text.heightMm() / lettering.capitalPerEm();
        boolean wide = text.layer() == Layer.OUTLINE;
        out.setRenderingMode(wide ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        if (wide) {
            pen(Lettering.WIDE_STROKE_EM * sizeMm, List.of());
        }
        double before =
                switch (text.anchor()) {
                    case START -> 0;
                    case MIDDLE -> lettering.widthEm(text.string()) / 2;
                    case END -> lettering.widthEm(text.string());
                };
        AffineTransform place = new AffineTransform();
        place.translate(
                mapping.atX() + mapping.factorX() * text.position().xMm(),
                mapping.atY() + mapping.factorY() * text.position().yMm());
        place.rotate(Math.toRadians(text.rotationDeg()));
        place.scale(sizeMm, sizeMm);
        place.translate(-before, 0);
        place.preConcatenate(
                AffineTransform.getScaleInstance(Mapping.UNITS_PER_MM, Mapping.UNITS_PER_MM));
        StringBuilder run = new StringBuilder();
        double runStart = 0;
        for (Placed placed : lettering.laid(text.string())) {
            if (placed.isInFont()) {
                runStart = run.length() == 0 ? placed.xEm() : runStart;
                run.appendCodePoint(placed.codePoint());
            } else {
                show(run, runStart, place);
                outline(lettering.outline(placed.codePoint()), placed.xEm(), place);
            }
        }
        show(run, runStart, place);
    }

    private void show(StringBuilder run, double xEm, AffineTransform place) throws IOException {
        if (run.length() == 0) {
            return;
        }
        AffineTransform at = new AffineTransform(place);
        at.translate(xEm, 0);
        out.beginText();
        out.setFont(font, 1);
        out.setTextMatrix(new Matrix(at));
        out.showText(run.toString());
        out.endText();
        run.setLength(0);
    }

    private void outline(Path2D outline, double xEm, AffineTransform place) throws IOException {
        AffineTransform at = new AffineTransform(place);
        at.translate(xEm, 0);
        float[] c = new float[6];
        float lastX = 0;
        float lastY = 0;
        for (PathIterator i = outline.getPathIterator(at); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> out.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> out.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO ->
                        // The same parabola as a cubic: control points two thirds of the way.
                        out.curveTo(
                                lastX + (c[0] - lastX) * 2 / 3,
                                lastY + (c[1] - lastY) * 2 / 3,
                                c[2] + (c[0] - c[2]) * 2 / 3,
                                c[3] + (c[1] - c[3]) * 2 / 3,
                                c[2],
                                c[3]);
                case PathIterator.SEG_CUBICTO -> out.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> out.closePath();
            }
            int last =
                    switch (kind) {
                        case PathIterator.SEG_CUBICTO -> 4;
                        case PathIterator.SEG_QUADTO -> 2;
                        default -> 0;
                    };
            lastX = c[last];
            lastY = c[last + 1];
        }
        out.fill();
    }
}
