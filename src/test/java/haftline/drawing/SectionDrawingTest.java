package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.cli.RandomHandles;
import haftline.curve.ArcFit;
import haftline.curve.Outline;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.set.FileSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The section of random handles, good ones and stopped ones, in curves and in arcs. */
class SectionDrawingTest {
    private static final long SEED = 31;
    private static final int COUNT = 40;

    /** Words that stand closer than this touch, mm. */
    private static final double TOUCHING_MM = 0.05;

    private static final SheetFormat LETTER_IN =
            new SheetFormat(FileSettings.Paper.LETTER, FileSettings.Printer.TRUE, Units.INCH);

    private static List<Drawing> drawings(UnaryOperator<Outline> shown) {
        return drawings(shown, SheetFormat.STANDARD);
    }

    private static List<Drawing> inBoth() {
        List<Drawing> drawings = drawings(UnaryOperator.identity());
        drawings.addAll(drawings(UnaryOperator.identity(), LETTER_IN));
        return drawings;
    }

    private static List<Drawing> drawings(UnaryOperator<Outline> shown, SheetFormat format) {
        List<Drawing> drawings = new ArrayList<>();
        for (Handle handle : RandomHandles.of(SEED, COUNT)) {
            boolean stopped = drawings.size() % 3 == 0;
            TitleBlock title =
                    new TitleBlock(
                            "piece " + "of a long name ".repeat(drawings.size() % 5),
                            "set",
                            "kit",
                            "batch",
                            "stock with a name that is longer than its cell has room for",
                            "bonded",
                            "2 warnings",
                            List.of("one", "two", "three", "four", "five", "six", "seven"),
                            List.of("mind this", "mind that"),
                            stopped
                                    ? List.of("why", "why", "why", "why", "why", "why")
                                    : List.of());
            drawings.add(SectionDrawing.of(Figures.of(handle), title, format, shown));
        }
        return drawings;
    }

    private static List<Text> texts(Drawing drawing) {
        return drawing.elements().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    @Test
    void texts_neverOverlap() {
        int i = 0;
        for (Drawing drawing : inBoth()) {
            List<Text> texts = texts(drawing);
            for (int a = 0; a < texts.size(); a++) {
                for (int b = a + 1; b < texts.size(); b++) {
                    assertThat(overlap(texts.get(a).bounds(), texts.get(b).bounds()))
                            .as("seed %d, drawing %d: %s, %s", SEED, i, texts.get(a), texts.get(b))
                            .isFalse();
                }
            }
            i++;
        }
    }

    private static boolean overlap(Bounds a, Bounds b) {
        return a.minXMm() < b.maxXMm() - TOUCHING_MM
                && b.minXMm() < a.maxXMm() - TOUCHING_MM
                && a.minYMm() < b.maxYMm() - TOUCHING_MM
                && b.minYMm() < a.maxYMm() - TOUCHING_MM;
    }

    @Test
    void figuresOfDimensions_areCrossedByNoExtensionLine() {
        int i = 0;
        for (Drawing drawing : inBoth()) {
            Group dimensions = group(drawing, "dimensions");
            for (Element element : dimensions.elements()) {
                if (element instanceof Path path && path.segments().size() == 1) {
                    Bounds line = path.bounds();
                    boolean upright = line.widthMm() < 1e-9;
                    for (Text text : texts(drawing)) {
                        assertThat(upright && overlap(line.grown(0.06), text.bounds()))
                                .as("seed %d, drawing %d: %s, %s", SEED, i, line, text)
                                .isFalse();
                    }
                }
            }
            i++;
        }
    }

    @Test
    void everything_liesInsideAFrameThatFitsAPaper() {
        for (Drawing drawing : drawings(UnaryOperator.identity())) {
            Bounds frame = group(drawing, "sheet").elements().get(0).bounds();
            Bounds all = drawing.bounds();
            assertThat(all).isEqualTo(frame);
            boolean a4 = frame.widthMm() == 277 && frame.heightMm() == 190;
            boolean a3 = frame.widthMm() == 400 && frame.heightMm() == 277;
            assertThat(a4 || a3 || frame.widthMm() > 400 || frame.heightMm() > 277).isTrue();
        }
    }

    @Test
    void onLetter_theFrameIsAsLargeAsThePaperLeaves_orGrowsByCentimetres() {
        int onPaper = 0;
        for (Drawing drawing : drawings(UnaryOperator.identity(), LETTER_IN)) {
            Bounds frame = group(drawing, "sheet").elements().get(0).bounds();
            assertThat(drawing.bounds()).isEqualTo(frame);
            assertThat(frame.widthMm() == 259 || frame.widthMm() % 10 == 0).isTrue();
            assertThat(frame.heightMm() == 195 || frame.heightMm() % 10 == 0).isTrue();
            onPaper += frame.widthMm() == 259 && frame.heightMm() == 195 ? 1 : 0;
        }
        assertThat(onPaper).isGreaterThan(0);
    }

    /** Dimensions are those of the same section in mm, to half a thousandth of an inch. */
    @Test
    void inInches_everyDimensionIsAsLongAsInMillimetres_andTheSheetSaysWhichItIs() {
        List<Drawing> mm = drawings(UnaryOperator.identity());
        List<Drawing> inches = drawings(UnaryOperator.identity(), LETTER_IN);
        for (int i = 0; i < COUNT; i++) {
            List<Double> long1 = numbers(mm.get(i));
            List<Double> long2 = numbers(inches.get(i));
            assertThat(long2).hasSameSizeAs(long1).hasSizeGreaterThan(8);
            for (int k = 0; k < long1.size(); k++) {
                // Half a unit of the last digit of each.
                assertThat(25.4 * long2.get(k)).isCloseTo(long1.get(k), within(0.0628));
            }
            assertThat(texts(inches.get(i)))
                    .extracting(Text::string)
                    .contains("section at full size, finished, lengths in inches", "in")
                    .contains("check bar 2 in")
                    .doesNotContain("mm");
            assertThat(inches.get(i).description()).endsWith("lengths in inches.");
        }
    }

    private static List<Double> numbers(Drawing drawing) {
        List<Double> numbers = new ArrayList<>();
        for (Element element : group(drawing, "dimensions").elements()) {
            if (element instanceof Text text) {
                for (String word : text.string().split("[ \u00d7\u2300]+")) {
                    if (word.matches("-?[0-9.]+")) {
                        numbers.add(Double.parseDouble(word));
                    }
                }
            }
        }
        return numbers;
    }

    @Test
    void outside_isOneClosedLoopAsLargeAsTheWood_inArcsToo() {
        List<Handle> handles = RandomHandles.of(SEED, COUNT);
        List<Drawing> arcs = drawings(o -> ArcFit.of(o, ArcFit.USUAL_TOLERANCE_MM).outline());
        for (int i = 0; i < COUNT; i++) {
            Path outside = (Path) group(arcs.get(i), "turned wood").elements().get(0);
            Outline outline = handles.get(i).outline();
            assertThat(outside.closed()).isTrue();
            assertThat(outside.segments())
                    .allMatch(segment -> segment instanceof Line || segment instanceof Arc);
            Bounds bounds = outside.bounds();
            double r = outline.greatest().r();
            assertThat(bounds.minXMm()).isCloseTo(outline.startX(), within(1e-9));
            assertThat(bounds.maxXMm()).isCloseTo(outline.endX(), within(1e-9));
            assertThat(bounds.maxYMm()).isCloseTo(r, within(1e-6));
            assertThat(bounds.minYMm()).isCloseTo(-r, within(1e-6));
            assertThat(arcs.get(i).elements())
                    .filteredOn(Path.class::isInstance)
                    .flatMap(element -> ((Path) element).segments())
                    .allMatch(segment -> segment instanceof Line || segment instanceof Arc);
        }
    }

    @Test
    void stoppedPiece_isMarkedTwice_othersNever() {
        int i = 0;
        for (Drawing drawing : drawings(UnaryOperator.identity())) {
            long marks =
                    texts(drawing).stream()
                            .filter(text -> text.string().equals(TitleBlock.MARK))
                            .count();
            assertThat(marks).isEqualTo(i % 3 == 0 ? 2 : 0);
            assertThat(texts(drawing)).extracting(Text::string).contains("mind this", "mind that");
            i++;
        }
    }

    private static Group group(Drawing drawing, String name) {
        return drawing.groups().stream()
                .filter(group -> group.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
