package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts what is drawn round an origin of its own at a place on a page, at a scale. Line widths stay
 * as they are, lettering and arrowheads grow with the rest.
 *
 * @param scale sizes on the page against sizes as drawn, over 0
 * @param atXMm where the drawing's x = 0 comes to lie
 * @param atYMm where the drawing's y = 0 comes to lie
 */
public record Placing(double scale, double atXMm, double atYMm) {
    private static final double GREATEST = 1000;

    /**
     * Checks the scale.
     *
     * @throws IllegalArgumentException where it is out of range
     */
    public Placing {
        Checks.within("scale", scale, 1 / GREATEST, GREATEST);
    }

    /**
     * A place on the page.
     *
     * @param vertex as drawn
     * @return where it comes to lie
     */
    public Vertex of(Vertex vertex) {
        return new Vertex(atXMm + scale * vertex.xMm(), atYMm + scale * vertex.yMm());
    }

    /**
     * An element on the page.
     *
     * @param element as drawn
     * @return its copy, in place
     */
    public Element of(Element element) {
        if (element instanceof Path path) {
            return path(path);
        }
        if (element instanceof Circle circle) {
            return new Circle(circle.layer(), of(circle.centre()), scale * circle.radiusMm());
        }
        if (element instanceof Arrowhead head) {
            return new Arrowhead(
                    head.layer(), of(head.tip()), head.pointsDeg(), scale * head.lengthMm());
        }
        Text text = (Text) element;
        return new Text(
                text.layer(),
                of(text.position()),
                scale * text.heightMm(),
                text.anchor(),
                text.rotationDeg(),
                text.string());
    }

    /** Each vertex is placed once, so that neighbours still meet in the very same one. */
    private Path path(Path path) {
        List<Segment> placed = new ArrayList<>(path.segments().size());
        Vertex first = of(path.segments().get(0).start());
        Vertex from = first;
        for (int i = 0; i < path.segments().size(); i++) {
            Segment segment = path.segments().get(i);
            boolean closing = path.closed() && i + 1 == path.segments().size();
            Vertex to = closing ? first : of(segment.end());
            // What has shrunk to nothing joins two places that are now one.
            if (!from.equals(to)) {
                placed.add(segment(segment, from, to));
                from = to;
            }
        }
        return new Path(path.layer(), placed, path.closed());
    }

    private Segment segment(Segment segment, Vertex from, Vertex to) {
        if (segment instanceof Arc arc) {
            return new Arc(from, to, arc.bulge());
        }
        if (segment instanceof Cubic cubic) {
            return new Cubic(from, of(cubic.control1()), of(cubic.control2()), to);
        }
        if (segment instanceof EllipseArc arc) {
            return new EllipseArc(
                    from,
                    to,
                    of(arc.centre()),
                    scale * arc.semiXMm(),
                    scale * arc.semiYMm(),
                    arc.anticlockwise());
        }
        return new Line(from, to);
    }
}
