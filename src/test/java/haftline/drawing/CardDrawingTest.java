package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.measure.Units;
import haftline.support.InLocale;
import haftline.support.TagFile;
import haftline.template.Card;
import haftline.template.Copier;
import haftline.template.CopyingCard;
import haftline.template.CopyingTemplate;
import haftline.template.GaugeCard;
import haftline.template.GaugeRules;
import haftline.template.HandSaw;
import haftline.template.LaserBeam;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import haftline.template.StarterWork;
import haftline.template.Workpiece;
import haftline.write.dxf.DxfFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CardDrawingTest {
    @Test
    void writesCutScoreAndTextOnLayersOfTheirOwn() throws Exception {
        Drawing drawing = new CardDrawing(LetteringStyle.STROKES).of(gauge());
        Set<Layer> layers = drawing.elements().map(Element::layer).collect(Collectors.toSet());
        assertThat(layers).containsExactlyInAnyOrder(Layer.CUT, Layer.SCORE, Layer.TEXT);
        assertThat(drawing.elements().filter(e -> e.layer() == Layer.CUT))
                .allSatisfy(e -> assertThat(e instanceof Circle || ((Path) e).closed()).isTrue());
    }

    @Test
    void cutsOpeningsBeforeTheEdgeRoundThem() throws Exception {
        List<Element> cuts =
                new CardDrawing(LetteringStyle.NONE)
                        .of(gauge())
                        .elements()
                        .filter(e -> e.layer() == Layer.CUT)
                        .toList();
        assertThat(cuts).hasSize(2);
        assertThat(cuts.get(0)).isInstanceOf(Circle.class);
        assertThat(cuts.get(1)).isInstanceOf(Path.class);
    }

    @Test
    void writesTextAsAskedAndCutsTheSameWhateverItIs() throws Exception {
        for (LetteringStyle style : LetteringStyle.values()) {
            Drawing drawing = new CardDrawing(style).of(gauge());
            List<Element> text = drawing.elements().filter(e -> e.layer() == Layer.TEXT).toList();
            switch (style) {
                case STROKES ->
                        assertThat(text).hasSizeGreaterThan(100).allMatch(Path.class::isInstance);
                case OUTLINES ->
                        assertThat(text)
                                .hasSizeGreaterThan(100)
                                .allMatch(e -> e instanceof Circle || ((Path) e).closed());
                case FONT -> assertThat(text).isNotEmpty().allMatch(Text.class::isInstance);
                case NONE -> assertThat(text).isEmpty();
            }
            assertThat(drawing.elements().filter(e -> e.layer() == Layer.CUT)).hasSize(2);
        }
    }

    @Test
    void isReadBackFromDxfWithItsAreaAndSize() throws Exception {
        Card card = gauge();
        DxfFile file =
                new DxfWriter(DxfProfile.CUTTING)
                        .write(new CardDrawing(LetteringStyle.STROKES).of(card));
        assertThat(file.report().shortSegments()).isZero();
        TagFile read = TagFile.read(file.text());
        List<TagFile.Record> cut =
                read.entities("LWPOLYLINE").stream()
                        .filter(e -> e.one(8).equalsIgnoreCase("cut"))
                        .toList();
        assertThat(cut).hasSize(1);
        assertThat(TagFile.isClosed(cut.get(0))).isTrue();
        assertThat(TagFile.area(cut.get(0))).isCloseTo(card.outline().area(), within(1e-3));
        double[] extents = TagFile.extents(cut.get(0));
        assertThat(extents[2] - extents[0]).isCloseTo(card.box().width(), within(1e-6));
    }

    @Test
    void marksACardThatIsNotToBeMade() throws Exception {
        Card card = gauge();
        Card stopped =
                new Card(
                        card.name(),
                        card.outline(),
                        card.openings(),
                        card.marks(),
                        List.of(),
                        true);
        assertThat(new CardDrawing(LetteringStyle.NONE).of(stopped).elements())
                .anySatisfy(
                        e ->
                                assertThat(
                                                e instanceof Text t
                                                        && t.string().equals(TitleBlock.MARK))
                                        .isTrue());
    }

    @Test
    void drawsEverySheetOnceWithItsEdgeOffTheCutLayer() throws Exception {
        List<Card> cards = new ArrayList<>();
        LaserBeam laser = new LaserBeam(0.15);
        for (Workpiece work : StarterWork.demo()) {
            cards.add(
                    laser.prepare(
                            GaugeCard.of(
                                    work,
                                    List.of(GaugeCard.Gauge.PROFILE),
                                    GaugeRules.COMMON_PRACTICE)));
        }
        SheetLayout layout = SheetLayout.of(cards, new SheetSize(150, 100, 5, 3));
        List<Drawing> sheets =
                SheetDrawing.of(
                        "Set",
                        layout,
                        new CardDrawing(LetteringStyle.STROKES),
                        laser.note(),
                        Units.MM);
        assertThat(sheets).hasSize(layout.sheets().size()).hasSizeGreaterThan(1);
        List<Element> cuts =
                sheets.stream()
                        .flatMap(Drawing::elements)
                        .filter(e -> e.layer() == Layer.CUT)
                        .toList();
        assertThat(cuts).hasSize(2 * cards.size());
        assertThat(cuts.stream().filter(Circle.class::isInstance)).hasSize(cards.size());
    }

    @Test
    void picturesWhatCopyingLeaves() throws Exception {
        CopyingTemplate template =
                CopyingTemplate.of(
                        StarterWork.demo().get(0), new Copier(3, 6, 12, 1), 12, 12, 0.01);
        Drawing drawing = CopyingDrawing.of(template, Units.MM);
        assertThat(drawing.elements().map(Element::layer))
                .contains(Layer.OUTLINE, Layer.PART, Layer.HIDDEN)
                .doesNotContain(Layer.CUT);
        assertThat(template.findings()).isNotEmpty();
    }

    @Test
    void isTheSameFileInEveryLocale() throws Exception {
        Workpiece work = StarterWork.demo().get(1);
        String here = svg(work);
        for (String tag : InLocale.TAGS) {
            assertThat(InLocale.get(tag, () -> svg(work))).as(tag).isEqualTo(here);
        }
    }

    private static String svg(Workpiece work) {
        CopyingTemplate template =
                CopyingTemplate.of(work, new Copier(1.5, 3, 55, 1), 12, 12, 0.01);
        List<Card> cards =
                List.of(
                        GaugeCard.of(
                                work,
                                List.of(GaugeCard.Gauge.values()),
                                GaugeRules.COMMON_PRACTICE),
                        CopyingCard.COMMON_PRACTICE.card(template));
        SheetLayout layout = SheetLayout.of(cards, new SheetSize(400, 300, 5, 3));
        SvgWriter writer = new SvgWriter(SvgOptions.standard());
        return writer.write(
                        SheetDrawing.of(
                                        "Set",
                                        layout,
                                        new CardDrawing(LetteringStyle.STROKES),
                                        new HandSaw().note(),
                                        Units.MM)
                                .get(0))
                + writer.write(CopyingDrawing.of(template, Units.MM));
    }

    private static Card gauge() throws Exception {
        return GaugeCard.of(
                StarterWork.demo().get(0),
                List.of(GaugeCard.Gauge.values()),
                GaugeRules.COMMON_PRACTICE);
    }
}
