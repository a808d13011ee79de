package haftline.store;

import haftline.adjust.takeoff.Reading;
import haftline.measure.Quote;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.ParseException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** An outline traced as a path of an SVG file (SVG 2, section 9.3, path data). */
final class SvgTrace {
    /** A CSS pixel. */
    private static final Traced.Unit PIXEL = new Traced.Unit(25.4 / 96, false);

    private final Problems problems;
    private Traced.Unit unit = PIXEL;

    SvgTrace(Problems problems) {
        this.problems = problems;
    }

    /** What the file says, once it was read. */
    Traced.Unit unit() {
        return unit;
    }

    List<Reading> read(String text, Tracing tracing) {
        Optional<Document> document = parsed(text);
        if (document.isEmpty()) {
            return List.of();
        }
        TracedLines lines = widest(document.get(), tracing.part());
        if (lines == null) {
            if (problems.isEmpty()) {
                problems.addToFile(
                        tracing.part()
                                .map(id -> "has no path of the id " + Quote.plain(id))
                                .orElse("has no path to trace"));
            }
            return List.of();
        }
        OptionalDouble axis = tracing.axis().isPresent() ? tracing.axis() : lines.axis();
        if (axis.isEmpty()) {
            problems.addToFile(
                    "the outline is open or its two sides differ, so its axis cannot be told: say"
                            + " --axis Y, the lathe axis as y in the drawing");
            return List.of();
        }
        unit = unit(document.get());
        return lines.readings(axis.getAsDouble(), tracing.mmPerUnit().orElse(unit.mm()), problems);
    }

    private Optional<Document> parsed(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            // No entity of a file from anywhere may name another file.
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature(
                    "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setExpandEntityReferences(false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return Optional.of(builder.parse(new InputSource(new StringReader(text))));
        } catch (SAXParseException e) {
            problems.add(
                    e.getLineNumber(), e.getColumnNumber(), "", "is no SVG: " + e.getMessage());
        } catch (SAXException | IOException e) {
            problems.addToFile("is no SVG: " + e.getMessage());
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
        return Optional.empty();
    }

    /** The path that is meant, or the widest; null where there is none. */
    private TracedLines widest(Document document, Optional<String> id) {
        NodeList paths = document.getElementsByTagName("path");
        TracedLines widest = null;
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            if (id.isPresent() && !id.get().equals(path.getAttribute("id"))) {
                continue;
            }
            String field = "path" + (path.hasAttribute("id") ? " " + path.getAttribute("id") : "");
            if (isMoved(path)) {
                problems.add(
                        0,
                        0,
                        field,
                        "stands under a transform, which is not followed: apply it in the drawing"
                                + " program first");
                continue;
            }
            TracedLines lines = new TracedLines();
            try {
                lines.add(
                        AWTPathProducer.createShape(
                                        new StringReader(path.getAttribute("d")),
                                        PathIterator.WIND_NON_ZERO)
                                .getPathIterator(null));
            } catch (IOException | ParseException e) {
                problems.add(0, 0, field, "path data: " + e.getMessage());
                continue;
            }
            if (!lines.isFinite()) {
                problems.add(0, 0, field, "path data: a number is too large");
                continue;
            }
            if (lines.width() > 0 && (widest == null || lines.width() > widest.width())) {
                widest = lines;
            }
        }
        return widest;
    }

    private static boolean isMoved(Element path) {
        for (var node = path; node != null; ) {
            if (!node.getAttribute("transform").isBlank()) {
                return true;
            }
            node = node.getParentNode() instanceof Element parent ? parent : null;
        }
        return false;
    }

    /** From the width in mm, cm or in and the view box; else a unit is a CSS pixel. */
    private static Traced.Unit unit(Document document) {
        Element root = document.getDocumentElement();
        String width = root.getAttribute("width").strip();
        String[] box = root.getAttribute("viewBox").strip().split("[\\s,]+");
        double unit =
                width.endsWith("mm")
                        ? 1
                        : width.endsWith("cm") ? 10 : width.endsWith("in") ? 25.4 : 0;
        try {
            if (unit > 0 && box.length == 4) {
                double wide = Double.parseDouble(width.substring(0, width.length() - 2).strip());
                double mm = wide * unit / Double.parseDouble(box[2]);
                return mm > 0 && Double.isFinite(mm) ? new Traced.Unit(mm, true) : PIXEL;
            }
        } catch (NumberFormatException none) {
            return PIXEL;
        }
        return PIXEL;
    }
}
