package haftline.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Dimensions after the habits of ISO 129-1 (from memory): narrow lines, slim filled arrowheads,
 * extension lines that start clear of the object, the figure above its line and readable from below
 * or from the right, no unit beside a millimetre.
 *
 * <p>Where there is no room between the arrowheads they point inward from outside, and where there
 * is none for the figure it stands beside the upper or right arrow.
 */
public final class Dimension {
    /** Sign of a diameter (ISO 129-1), U+2300, before its figure without a space. */
    public static final String DIAMETER = "\u2300";

    /** With less than this many arrow lengths between the ends, the arrows go outside. */
    private static final double ROOM_IN_ARROWS = 3;

    /** Length of the tail behind an arrow that stands outside, in arrow lengths. */
    private static final double TAIL_IN_ARROWS = 2;

    private Dimension() {}

    /**
     * A length along x.
     *
     * @param style sizes
     * @param a one end of what is measured
     * @param b the other end, at another x
     * @param lineYMm y of the dimension line
     * @param figure what it says
     * @return lines, arrows and text on {@link Layer#DIMENSION}
     */
    static List<Element> horizontal(
            DimensionStyle style, Vertex a, Vertex b, double lineYMm, String figure) {
        Vertex left = a.xMm() <= b.xMm() ? a : b;
        Vertex right = a.xMm() <= b.xMm() ? b : a;
        Vertex from = new Vertex(left.xMm(), lineYMm);
        Vertex to = new Vertex(right.xMm(), lineYMm);
        return along(style, left, right, from, to, 0, figure);
    }

    /**
     * A length along y, its text turned to be read from the right.
     *
     * @param style sizes
     * @param a one end of what is measured
     * @param b the other end, at another y
     * @param lineXMm x of the dimension line
     * @param figure what it says
     * @return lines, arrows and text on {@link Layer#DIMENSION}
     */
    public static List<Element> vertical(
            DimensionStyle style, Vertex a, Vertex b, double lineXMm, String figure) {
        Vertex low = a.yMm() <= b.yMm() ? a : b;
        Vertex high = a.yMm() <= b.yMm() ? b : a;
        Vertex from = new Vertex(lineXMm, low.yMm());
        Vertex to = new Vertex(lineXMm, high.yMm());
        return along(style, low, high, from, to, 90, figure);
    }

    /**
     * The diameter of turned work at a station: an upright leader line from a row of figures to the
     * outline.
     *
     * @param style sizes
     * @param onOutline where its arrow touches the outline, from above
     * @param topYMm where the leader line ends, above the outline, under its figure
     * @param figure what it says
     * @return line, arrow and text on {@link Layer#DIMENSION}
     */
    public static List<Element> station(
            DimensionStyle style, Vertex onOutline, double topYMm, String figure) {
        return List.of(
                Path.line(
                        Layer.DIMENSION,
                        new Vertex(onOutline.xMm(), topYMm),
                        onOutline.towards(90, style.arrowMm() / 2)),
                new Arrowhead(Layer.DIMENSION, onOutline, -90, style.arrowMm()),
                Text.level(
                        Layer.DIMENSION,
                        onOutline.xMm(),
                        topYMm + style.textGapMm(),
                        style.textHeightMm(),
                        Anchor.MIDDLE,
                        figure));
    }

    private static List<Element> along(
            DimensionStyle style,
            Vertex objectFrom,
            Vertex objectTo,
            Vertex from,
            Vertex to,
            double directionDeg,
            String figure) {
        List<Element> out = new ArrayList<>();
        extension(out, style, objectFrom, from);
        extension(out, style, objectTo, to);
        line(out, style, from, to, directionDeg, figure);
        return List.copyOf(out);
    }

    /** A dimension line from one place to another, in the direction of its text. */
    static void line(
            List<Element> out,
            DimensionStyle style,
            Vertex from,
            Vertex to,
            double directionDeg,
            String figure) {
        double length = from.distanceMm(to);
        Text text = text(style, middle(from, to), directionDeg, Anchor.MIDDLE, figure);
        double from0 = 0;
        double to0 = length;
        if (text.estimatedWidthMm() + 2 * style.textGapMm() > length) {
            double tail = TAIL_IN_ARROWS * style.arrowMm();
            text = text(style, to.towards(directionDeg, tail), directionDeg, Anchor.START, figure);
            to0 = length + tail + text.estimatedWidthMm();
        }
        line(out, style, from, to, directionDeg, from0, to0);
        out.add(text);
    }

    /**
     * A dimension line with its arrowheads, long enough to carry a text that reaches from one place
     * to another on it.
     *
     * @param textFromMm where the text begins, from the line's start, negative in front of it
     * @param textToMm where the text ends, from the line's start
     */
    static void line(
            List<Element> out,
            DimensionStyle style,
            Vertex from,
            Vertex to,
            double directionDeg,
            double textFromMm,
            double textToMm) {
        double length = from.distanceMm(to);
        double arrow = style.arrowMm();
        boolean arrowsInside = length >= ROOM_IN_ARROWS * arrow;
        double back = directionDeg - 180;
        out.add(new Arrowhead(Layer.DIMENSION, from, arrowsInside ? back : directionDeg, arrow));
        out.add(new Arrowhead(Layer.DIMENSION, to, arrowsInside ? directionDeg : back, arrow));
        // Inside, the line ends within the arrowhead, so that the tip stays sharp.
        double end = arrowsInside ? -arrow / 2 : TAIL_IN_ARROWS * arrow;
        double before = textFromMm < 0 ? -textFromMm : end;
        double after = textToMm > length ? textToMm - length : end;
        out.add(
                Path.line(
                        Layer.DIMENSION,
                        from.towards(back, before),
                        to.towards(directionDeg, after)));
    }

    static void extension(List<Element> out, DimensionStyle style, Vertex object, Vertex lineEnd) {
        double length = object.distanceMm(lineEnd);
        if (length > style.gapMm()) {
            double direction = Angle.of(lineEnd.xMm() - object.xMm(), lineEnd.yMm() - object.yMm());
            out.add(
                    Path.line(
                            Layer.DIMENSION,
                            object.towards(direction, style.gapMm()),
                            object.towards(direction, length + style.overshootMm())));
        }
    }

    static Text text(
            DimensionStyle style, Vertex foot, double directionDeg, Anchor anchor, String figure) {
        Vertex above = foot.towards(directionDeg + 90, style.textGapMm());
        return new Text(Layer.DIMENSION, above, style.textHeightMm(), anchor, directionDeg, figure);
    }

    private static Vertex middle(Vertex a, Vertex b) {
        return new Vertex((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
    }
}
