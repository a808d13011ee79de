package haftline.write.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.support.Golden;
import haftline.support.SampleDrawings;
import haftline.support.SampleFiles;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgWriterTest {
    /** Dots a millimetre of the test pictures. */
    private static final int DOTS = 20;

    @ParameterizedTest
    @ValueSource(strings = {"half-section", "half-profile", "card", "hostile"})
    void samples_areAsTheyWereLookedAt(String name) throws Exception {
        Golden.assertMatches(
                "svg/" + name + ".svg", SampleFiles.svg(SampleFiles.drawings().get(name)));
    }

    @Test
    void sheet_isInMillimetresFromZero() throws Exception {
        Element root = parsed(SampleFiles.svg(SampleDrawings.card("A"))).getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("130mm");
        assertThat(root.getAttribute("height")).isEqualTo("40mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 130 40");
    }

    @Test
    void layers_areGroupsWithTheirNameAndStyle() throws Exception {
        Document document = parsed(SampleFiles.svg(SampleDrawings.halfSection("A")));
        assertThat(layer(document, "outline").getAttribute("stroke-width")).isEqualTo("0.5");
        assertThat(layer(document, "centre").getAttribute("stroke-dasharray"))
                .isEqualTo("6 0.75 0.125 0.75");
        assertThat(layer(document, "dimension").getAttribute("stroke-width")).isEqualTo("0.25");
        Document card = parsed(SampleFiles.svg(SampleDrawings.card("A")));
        assertThat(layer(card, "cut").getAttribute("stroke")).isEqualTo("#ff0000");
        assertThat(layer(card, "cut").getAttribute("stroke-width")).isEqualTo("0.1");
    }

    @Test
    void hairlines_areAThousandthOfAnInch() throws Exception {
        String svg =
                new SvgWriter(SvgOptions.standard().withHairlines())
                        .write(SampleDrawings.card("A"));
        assertThat(layer(parsed(svg), "cut").getAttribute("stroke-width")).isEqualTo("0.025");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<&\"'>",
                "]]> --> <script>",
                "\uD83E\uDDAA oyster",
                "\u05D9\u05D3\u05D9\u05EA \u0645\u0642\u0628\u0636 \u202E",
                "&amp; &#0;"
            })
    void hostileNames_comeThroughAsTheyWereTyped(String name) throws Exception {
        Document document = parsed(SampleFiles.svg(titled(name)));
        assertThat(text(document, "title")).isEqualTo(name);
        assertThat(text(document, "text")).isEqualTo(name);
    }

    @Test
    void longNames_stayWhole() throws Exception {
        String name = "\u05E9\uD83E\uDDAA<".repeat(125);
        assertThat(text(parsed(SampleFiles.svg(titled(name))), "text")).isEqualTo(name);
    }

    @Test
    void whatXmlForbids_isDroppedAndLineBreaksBecomeSpaces() throws Exception {
        String name = "a\u0000\u0007\u001B\uD800\uFFFE\uFFFF\u0085b\nc\td";
        assertThat(text(parsed(SampleFiles.svg(titled(name))), "text")).isEqualTo("ab c d");
    }

    @Test
    void checkBar_measuresFiftyMillimetres() throws Exception {
        BufferedImage picture = draw(SampleFiles.svg(SampleDrawings.card("A").withCheckBar(50)));
        // The longest run of ink in any row under the card (which ends at 35 mm of the sheet).
        double longest = 0;
        for (int y = 37 * DOTS; y < picture.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < picture.getWidth(); x++) {
                run = isDark(picture, x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        // The end ticks are narrow lines: half a width stands over at each end.
        assertThat(longest / DOTS - Layer.DIMENSION.widthMm()).isCloseTo(50, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"half-profile", "card"})
    void filledArea_isThatOfTheLoop(String name) throws Exception {
        Drawing drawing = SampleFiles.drawings().get(name);
        Path loop =
                drawing.elements()
                        .filter(e -> e instanceof Path path && path.closed())
                        .map(Path.class::cast)
                        .findFirst()
                        .orElseThrow();
        Drawing alone = new Drawing("a", "", List.of(new Group("g", List.of(loop))));
        String filled =
                SampleFiles.svg(alone)
                        .replace("fill=\"none\"", "fill=\"#000000\"")
                        .replaceAll("stroke=\"[^\"]*\"", "stroke=\"none\"");
        BufferedImage picture = draw(filled);
        double ink = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                ink += 1 - (picture.getRGB(x, y) & 0xFF) / 255.0;
            }
        }
        double area = Math.abs(loop.signedAreaMm2());
        assertThat(ink / DOTS / DOTS).isCloseTo(area, within(0.005 * area));
    }

    @Test
    void arcs_turnTheRightWay() {
        String d =
                SvgPathData.of(
                        Path.from(0, 0).arcTo(10, 0, 1).arcTo(0, 0, 2).close(Layer.CUT),
                        new SvgSheet(0, 10, 20, 20));
        // Anticlockwise with y up; the second sweeps more than half a turn.
        assertThat(d).isEqualTo("M0 10 A5 5 0 0 0 10 10 A6.25 6.25 0 1 0 0 10 Z");
    }

    @Test
    void arcs_tooFlatToSeeAreLines() {
        String d =
                SvgPathData.of(
                        Path.from(0, 0).arcTo(10, 0, 1e-6).open(Layer.CUT),
                        new SvgSheet(0, 10, 20, 20));
        assertThat(d).isEqualTo("M0 10 L10 10");
    }

    @Test
    void options_outOfRangeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SvgOptions(-1, 0.1))
                .withMessageContaining("margin");
        assertThatIllegalArgumentException().isThrownBy(() -> new SvgOptions(5, 0));
    }

    private static Drawing titled(String name) {
        Text text = Text.level(Layer.TEXT, 0, 0, 2.5, Anchor.START, name);
        Path line = Path.line(Layer.OUTLINE, new Vertex(0, 0), new Vertex(10, 0));
        return new Drawing(name, name, List.of(new Group(name, List.of(line, text))));
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String text(Document document, String tag) {
        return document.getElementsByTagName(tag).item(0).getTextContent();
    }

    private static Element layer(Document document, String id) {
        NodeList groups = document.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            if (((Element) groups.item(i)).getAttribute("id").equals(id)) {
                return (Element) groups.item(i);
            }
        }
        throw new AssertionError("no group " + id);
    }

    private static BufferedImage draw(String svg) throws Exception {
        Element root = parsed(svg).getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ");
        int width = Integer.parseInt(box[2]) * DOTS;
        int height = Integer.parseInt(box[3]) * DOTS;
        SVGDocument document =
                new SVGLoader()
                        .load(
                                new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                                null,
                                LoaderContext.createDefault());
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        document.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        return picture;
    }

    private static boolean isDark(BufferedImage picture, int x, int y) {
        return (picture.getRGB(x, y) & 0xFF) < 128;
    }
}
