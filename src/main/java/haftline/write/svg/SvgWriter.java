package haftline.write.svg;

import haftline.drawing.Anchor;
import haftline.drawing.Arrowhead;
import haftline.drawing.Circle;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.measure.NumberText;
import haftline.write.XmlText;
import haftline.write.lettering.Lettering;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a drawing as an SVG 1.1 document, UTF-8, that every reader takes for its true size: width
 * and height in millimetres, a view box of the same numbers from 0 0, no transform (but a turned
 * text's own), curves as curves.
 *
 * <p>Each layer is a group with the layer's name as id. Style is given in presentation attributes,
 * which cutting programs read where they skip style sheets. docs/formats/svg.md describes the file.
 */
public final class SvgWriter {
    /**
     * Height of a capital in a sans-serif font, in parts of its size: 0.716 to 0.729 in the usual
     * ones, so that the height asked for comes out within 2 %.
     */
    private static final double CAPITAL_PER_EM = 0.72;

    private static final String FONT = "sans-serif";
    private static final String INK = "#000000";
    private static final String CUT_COLOUR = "#ff0000";
    private static final String SCORE_COLOUR = "#0000ff";

    /** Widths and dashes to a micrometre. */
    private static final int STYLE_DECIMALS = 3;

    private final SvgOptions options;

    /**
     * A writer with some options.
     *
     * @param options the options
     */
    public SvgWriter(SvgOptions options) {
        this.options = options;
    }

    /**
     * Writes a drawing.
     *
     * @param drawing the drawing
     * @return the document, to be stored as UTF-8
     */
    public String write(Drawing drawing) {
        SvgSheet sheet = SvgSheet.round(drawing.bounds(), options.marginMm());
        StringBuilder out = new StringBuilder();
        String width = NumberText.upTo(sheet.widthMm(), 0);
        String height = NumberText.upTo(sheet.heightMm(), 0);
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
                .append(width + "mm\" height=\"" + height + "mm\"")
                .append(" viewBox=\"0 0 " + width + " " + height + "\">\n");
        tag(out, "  ", "title", drawing.title());
        if (!drawing.description().isEmpty()) {
            tag(out, "  ", "desc", drawing.description());
        }
        for (Layer layer : Layer.values()) {
            layer(out, sheet, drawing, layer);
        }
        return out.append("</svg>\n").toString();
    }

    private void layer(StringBuilder out, SvgSheet sheet, Drawing drawing, Layer layer) {
        if (drawing.elements().noneMatch(element -> element.layer() == layer)) {
            return;
        }
        out.append("  <g id=\"" + layer.id() + "\" fill=\"none\" stroke=\"" + colour(layer))
                .append("\" stroke-width=\"" + style(widthMm(layer)) + "\"")
                .append(" stroke-linejoin=\"round\"" + dashes(layer) + ">\n");
        for (Group group : drawing.groups()) {
            List<Element> elements =
                    group.elements().stream().filter(element -> element.layer() == layer).toList();
            if (!elements.isEmpty()) {
                out.append("    <g>\n");
                tag(out, "      ", "title", group.name());
                elements.forEach(element -> element(out.append("      "), sheet, element));
                out.append("    </g>\n");
            }
        }
        out.append("  </g>\n");
    }

    private static void element(StringBuilder out, SvgSheet sheet, Element element) {
        if (element instanceof Path path) {
            out.append("<path d=\"" + SvgPathData.of(path, sheet) + "\"/>\n");
        } else if (element instanceof Circle circle) {
            out.append("<circle cx=\"" + sheet.x(circle.centre()))
                    .append("\" cy=\"" + sheet.y(circle.centre()))
                    .append("\" r=\"" + sheet.length(circle.radiusMm()) + "\"/>\n");
        } else if (element instanceof Arrowhead arrowhead) {
            out.append("<path d=\"M" + corners(arrowhead, sheet) + "Z\" fill=\"")
                    .append(colour(arrowhead.layer()) + "\" stroke=\"none\"/>\n");
        } else if (element instanceof Text text) {
            text(out, sheet, text);
        }
    }

    private static String corners(Arrowhead arrowhead, SvgSheet sheet) {
        return arrowhead.corners().stream().map(sheet::place).collect(Collectors.joining(" L"));
    }

    private static void text(StringBuilder out, SvgSheet sheet, Text text) {
        Vertex position = text.position();
        out.append("<text x=\"" + sheet.x(position) + "\" y=\"" + sheet.y(position) + "\"")
                .append(" font-family=\"" + FONT + "\"")
                .append(" font-size=\"" + style(text.heightMm() / CAPITAL_PER_EM) + "\"")
                .append(" fill=\"" + colour(text.layer()) + "\" " + stroke(text));
        if (text.anchor() != Anchor.START) {
            out.append(" text-anchor=\"" + (text.anchor() == Anchor.END ? "end" : "middle") + "\"");
        }
        if (text.rotationDeg() != 0) {
            out.append(" transform=\"rotate(" + style(-text.rotationDeg()) + " ")
                    .append(sheet.x(position) + " " + sheet.y(position) + ")\"");
        }
        out.append(">" + XmlText.escaped(text.string()) + "</text>\n");
    }

    /** Lettering on the layer of wide lines is wide. */
    private static String stroke(Text text) {
        return text.layer() == Layer.OUTLINE
                ? "stroke-width=\""
                        + style(Lettering.WIDE_STROKE_EM * text.heightMm() / CAPITAL_PER_EM)
                        + "\""
                : "stroke=\"none\"";
    }

    private static void tag(StringBuilder out, String indent, String name, String content) {
        out.append(indent + "<" + name + ">" + XmlText.escaped(content) + "</" + name + ">\n");
    }

    private double widthMm(Layer layer) {
        boolean toolPath = layer == Layer.CUT || layer == Layer.SCORE;
        return toolPath ? options.toolPathWidthMm() : layer.widthMm();
    }

    private String dashes(Layer layer) {
        List<Double> pattern = layer.lineType().patternMm(widthMm(layer));
        if (pattern.isEmpty()) {
            return "";
        }
        return pattern.stream()
                .map(SvgWriter::style)
                .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
    }

    private static String colour(Layer layer) {
        // Red cuts, blue scores: what most cutting shops ask for (common practice, no source).
        return switch (layer) {
            case CUT -> CUT_COLOUR;
            case SCORE -> SCORE_COLOUR;
            default -> INK;
        };
    }

    private static String style(double number) {
        return NumberText.upTo(number, STYLE_DECIMALS);
    }
}
