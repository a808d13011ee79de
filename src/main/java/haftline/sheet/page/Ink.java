package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Circle;
import haftline.drawing.Element;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What is on a page so far. Lettering on {@link Layer#OUTLINE} is wide, on TEXT regular. */
final class Ink {
    private static final char NO_BREAK = '\u00A0';

    private final List<Element> elements = new ArrayList<>();

    List<Element> elements() {
        return elements;
    }

    void add(Element element) {
        elements.add(element);
    }

    void addAll(Collection<? extends Element> more) {
        elements.addAll(more);
    }

    void text(double x, double baseline, double cap, Anchor anchor, boolean wide, String string) {
        if (!string.isEmpty()) {
            Layer layer = wide ? Layer.OUTLINE : Layer.TEXT;
            String plain = string.replace(NO_BREAK, ' ');
            elements.add(Text.level(layer, x, baseline, cap, anchor, plain));
        }
    }

    /** A narrow level rule. */
    void rule(double fromX, double toX, double y) {
        line(Layer.TEXT, fromX, y, toX, y);
    }

    /** A wide level rule. */
    void wideRule(double fromX, double toX, double y) {
        line(Layer.OUTLINE, fromX, y, toX, y);
    }

    void line(Layer layer, double x0, double y0, double x1, double y1) {
        elements.add(Path.line(layer, new Vertex(x0, y0), new Vertex(x1, y1)));
    }

    void box(Layer layer, double left, double foot, double right, double top) {
        elements.add(
                Path.from(left, foot)
                        .lineTo(right, foot)
                        .lineTo(right, top)
                        .lineTo(left, top)
                        .close(layer));
    }

    void ring(Layer layer, double x, double y, double radius) {
        elements.add(new Circle(layer, new Vertex(x, y), radius));
    }
}
