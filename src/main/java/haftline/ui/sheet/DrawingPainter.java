package haftline.ui.sheet;

import haftline.drawing.Arc;
import haftline.drawing.Arrowhead;
import haftline.drawing.Circle;
import haftline.drawing.Cubic;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.EllipseArc;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.write.lettering.Lettering;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Paints a drawing in ink, at any scale. */
public final class DrawingPainter {
    private static final Color INK = Color.web("#211E19");

    /** Greatest distance of an arc's chords from it, px. */
    private static final double CHORD_PX = 0.1;

    /** No line is drawn thinner, or it would vanish, px. */
    private static final double THINNEST_PX = 0.5;

    /** The letters that are printed: those of the screen are wider or narrower. */
    private static final String FAMILY = family();

    private static String family() {
        try (InputStream file = Lettering.open()) {
            Font font = Font.loadFont(file, Font.getDefault().getSize());
            return font == null ? Font.getDefault().getFamily() : font.getFamily();
        } catch (IOException wrong) {
            throw new UncheckedIOException("the program's own font cannot be read", wrong);
        }
    }

    /** How the lines of a layer look. */
    public interface Pens {
        /**
         * Colour of a layer.
         *
         * @param layer the layer
         * @return its colour
         */
        Color colour(Layer layer);

        /**
         * Width that its lines have at least.
         *
         * @param layer the layer
         * @return px
         */
        double leastPx(Layer layer);
    }

    private static final Pens INKED =
            new Pens() {
                @Override
                public Color colour(Layer layer) {
                    return INK;
                }

                @Override
                public double leastPx(Layer layer) {
                    return THINNEST_PX;
                }
            };

    private final GraphicsContext gc;
    private final Pens pens;
    private final double scale;
    private final double left;
    private final double top;

    /**
     * A painter.
     *
     * @param gc what it paints on
     * @param scale px a mm
     * @param left pixel of the drawing's x = 0
     * @param top pixel of the drawing's y = 0
     */
    public DrawingPainter(GraphicsContext gc, double scale, double left, double top) {
        this(gc, scale, left, top, INKED);
    }

    /**
     * A painter that tells layers apart.
     *
     * @param gc what it paints on
     * @param scale px a mm
     * @param left pixel of the drawing's x = 0
     * @param top pixel of the drawing's y = 0
     * @param pens how the lines of each layer look
     */
    public DrawingPainter(GraphicsContext gc, double scale, double left, double top, Pens pens) {
        this.gc = gc;
        this.pens = pens;
        this.scale = scale;
        this.left = left;
        this.top = top;
    }

    /**
     * Paints a drawing.
     *
     * @param drawing the drawing
     */
    public void paint(Drawing drawing) {
        paint(drawing.elements().toList());
    }

    /**
     * Paints lines and texts.
     *
     * @param elements the elements
     */
    public void paint(List<Element> elements) {
        elements.forEach(this::element);
        gc.setLineDashes();
    }

    private double px(Vertex v) {
        return left + v.xMm() * scale;
    }

    private double py(Vertex v) {
        return top - v.yMm() * scale;
    }

    private void element(Element element) {
        gc.setFill(pens.colour(element.layer()));
        gc.setStroke(pens.colour(element.layer()));
        if (element instanceof Path path) {
            path(path);
        } else if (element instanceof Circle circle) {
            pen(circle.layer());
            double r = circle.radiusMm() * scale;
            gc.strokeOval(px(circle.centre()) - r, py(circle.centre()) - r, 2 * r, 2 * r);
        } else if (element instanceof Arrowhead head) {
            List<Vertex> corners = head.corners();
            gc.fillPolygon(
                    corners.stream().mapToDouble(this::px).toArray(),
                    corners.stream().mapToDouble(this::py).toArray(),
                    corners.size());
        } else {
            text((Text) element);
        }
    }

    private void pen(Layer layer) {
        gc.setLineWidth(Math.max(pens.leastPx(layer), layer.widthMm() * scale));
        gc.setLineDashes(
                layer.lineType().patternMm(layer.widthMm()).stream()
                        .mapToDouble(mm -> Math.max(THINNEST_PX, mm * scale))
                        .toArray());
    }

    private void path(Path path) {
        pen(path.layer());
        gc.beginPath();
        Vertex start = path.segments().get(0).start();
        gc.moveTo(px(start), py(start));
        for (Segment segment : path.segments()) {
            add(segment);
        }
        if (path.closed()) {
            gc.closePath();
        }
        gc.stroke();
    }

    private void add(Segment segment) {
        if (segment instanceof Cubic cubic) {
            gc.bezierCurveTo(
                    px(cubic.control1()),
                    py(cubic.control1()),
                    px(cubic.control2()),
                    py(cubic.control2()),
                    px(cubic.end()),
                    py(cubic.end()));
        } else if (segment instanceof Arc arc) {
            arc.chords(CHORD_PX / scale).forEach(v -> gc.lineTo(px(v), py(v)));
        } else if (segment instanceof EllipseArc arc) {
            arc.chords(CHORD_PX / scale).forEach(v -> gc.lineTo(px(v), py(v)));
        } else {
            gc.lineTo(px(segment.end()), py(segment.end()));
        }
    }

    private void text(Text text) {
        gc.save();
        gc.translate(px(text.position()), py(text.position()));
        gc.rotate(-text.rotationDeg());
        double size = text.heightMm() * scale / Lettering.font().capitalPerEm();
        gc.setFont(Font.font(FAMILY, size));
        gc.setTextAlign(
                switch (text.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        gc.fillText(text.string(), 0, 0);
        if (text.layer() == Layer.OUTLINE) {
            gc.setLineDashes();
            gc.setLineWidth(Lettering.WIDE_STROKE_EM * size);
            gc.strokeText(text.string(), 0, 0);
        }
        gc.restore();
    }
}
