package haftline.drawing;

import haftline.template.Box;
import haftline.template.Card;
import haftline.template.Lettering;
import haftline.template.Loop;
import haftline.template.Mark;
import haftline.template.ScoreLine;
import haftline.template.Spot;
import haftline.template.Stroke;
import java.util.ArrayList;
import java.util.List;

/**
 * Cards and templates as scenes: cut lines, score lines and text on their layers, openings before
 * the edge round them, so that a card does not move before it is finished.
 */
public final class CardDrawing {
    /** Width of the pen whose outlines stand for the text, in heights of a capital. */
    private static final double PEN_IN_HEIGHTS = 0.15;

    /** Room that the mark of a stopped card takes along x, in heights of its capitals. */
    private static final double MARK_WIDTH_IN_HEIGHTS = 16;

    private final LetteringStyle style;

    /**
     * Builds scenes with one style of text.
     *
     * @param style how text is written
     */
    public CardDrawing(LetteringStyle style) {
        this.style = style;
    }

    /**
     * One card alone.
     *
     * @param card the card
     * @return its scene
     */
    public Drawing of(Card card) {
        return new Drawing(card.name(), "Full size, in millimetres.", groups(card));
    }

    /**
     * The groups of one card, in the order in which they are to be worked: marks, openings, edge.
     *
     * @param card the card
     * @return up to three groups
     */
    List<Group> groups(Card card) {
        List<Group> groups = new ArrayList<>();
        List<Element> marks = new ArrayList<>();
        card.marks().forEach(mark -> add(marks, mark));
        if (!marks.isEmpty()) {
            groups.add(new Group(card.name() + ": marks", marks));
        }
        if (!card.openings().isEmpty()) {
            groups.add(
                    new Group(
                            card.name() + ": openings",
                            card.openings().stream()
                                    .map(opening -> closed(Layer.CUT, opening))
                                    .toList()));
        }
        if (card.stopped()) {
            groups.add(new Group(card.name() + ": mark", List.of(mark(card.box()))));
        }
        groups.add(new Group(card.name() + ": edge", List.of(closed(Layer.CUT, card.outline()))));
        return groups;
    }

    /** Across the middle, whatever the style of the other text: this must be read. */
    private static Text mark(Box box) {
        double height = Math.min(TitleBlock.MARK_HEIGHT_MM, box.width() / MARK_WIDTH_IN_HEIGHTS);
        return Text.level(
                Layer.TEXT,
                (box.minX() + box.maxX()) / 2,
                (box.minY() + box.maxY()) / 2,
                height,
                Anchor.MIDDLE,
                TitleBlock.MARK);
    }

    private void add(List<Element> elements, Mark mark) {
        if (mark instanceof ScoreLine line) {
            elements.add(open(Layer.SCORE, line.strokes()));
        } else if (mark instanceof Lettering lettering) {
            add(elements, lettering);
        }
    }

    private void add(List<Element> elements, Lettering lettering) {
        switch (style) {
            case STROKES ->
                    lettering.strokes().forEach(chain -> elements.add(open(Layer.TEXT, chain)));
            case OUTLINES ->
                    lettering
                            .outlines(PEN_IN_HEIGHTS * lettering.heightMm())
                            .forEach(loop -> elements.add(closed(Layer.TEXT, loop)));
            case FONT -> elements.add(font(lettering));
            case NONE -> {
                // Nothing is cut by it, so nothing is missed.
            }
        }
    }

    private static Text font(Lettering lettering) {
        Anchor anchor =
                switch (lettering.align()) {
                    case START -> Anchor.START;
                    case MIDDLE -> Anchor.MIDDLE;
                    case END -> Anchor.END;
                };
        return new Text(
                Layer.TEXT,
                vertex(lettering.foot()),
                lettering.heightMm(),
                anchor,
                lettering.rotationDeg(),
                lettering.text());
    }

    /** A loop as a closed path, a full circle as a circle. */
    static Element closed(Layer layer, Loop loop) {
        List<Stroke> strokes = loop.strokes();
        if (strokes.size() == 2 && Math.abs(strokes.get(0).bulge()) == 1) {
            Vertex a = vertex(strokes.get(0).start());
            Vertex b = vertex(strokes.get(0).end());
            Vertex centre = new Vertex((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
            return new Circle(layer, centre, a.distanceMm(b) / 2);
        }
        return new Path(layer, segments(strokes), true);
    }

    /** Strokes as an open path; one that ends where it starts stays a chain, not a loop. */
    static Path open(Layer layer, List<Stroke> strokes) {
        return new Path(layer, segments(strokes), false);
    }

    private static List<Segment> segments(List<Stroke> strokes) {
        List<Segment> segments = new ArrayList<>(strokes.size());
        for (Stroke stroke : strokes) {
            Vertex start = vertex(stroke.start());
            Vertex end = vertex(stroke.end());
            segments.add(
                    stroke.isStraight()
                            ? new Line(start, end)
                            : new Arc(start, end, stroke.bulge()));
        }
        return segments;
    }

    static Vertex vertex(Spot spot) {
        return new Vertex(spot.x(), spot.y());
    }
}
