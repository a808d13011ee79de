package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.figures.Figures;
import haftline.handle.Choices;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.Units;
import haftline.set.Family;
import haftline.set.FileSettings;
import haftline.set.Piece;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LineUpDrawingTest {
    private static LoadedSet demo() {
        try {
            return SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Family.Member member(LoadedSet loaded, Piece piece) {
        return new Family.Member(
                piece,
                Figures.of(((Resolution.Resolved) Resolve.of(loaded.brief(piece))).handle()));
    }

    private static Family family(LoadedSet loaded) {
        return Family.of(
                loaded.set().pieces().stream().map(piece -> member(loaded, piece)).toList());
    }

    private static Family many(int count, double ratio, String name) {
        LoadedSet loaded = demo();
        List<Family.Member> members = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Piece piece =
                    new Piece(
                            name + i,
                            "fork",
                            Optional.empty(),
                            Optional.empty(),
                            Choices.builder().lengthRatio(ratio).build());
            members.add(member(loaded, piece));
        }
        return Family.of(members);
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.elements()
                .filter(Text.class::isInstance)
                .map(element -> ((Text) element).string())
                .toList();
    }

    @Test
    void demoSet_standsOnOneA4_atFullSize() {
        LineUpDrawing.Sheets sheets =
                LineUpDrawing.of(
                        "Tidewater", "B2", family(demo()), List.of(), SheetFormat.STANDARD);
        assertThat(sheets.paper()).isEqualTo(FileSettings.Paper.A4);
        assertThat(sheets.drawings()).hasSize(1);
        Drawing drawing = sheets.drawings().get(0);
        // The frame of an A4 on its side.
        assertThat(drawing.bounds().widthMm()).isCloseTo(277, within(1e-9));
        assertThat(drawing.bounds().heightMm()).isCloseTo(190, within(1e-9));
        assertThat(texts(drawing))
                .contains("shucker", "butter spreader", "seafood fork", "citrus zester")
                .contains("swell \u230028.0  (+6.0, +27 %)")
                .contains("butt \u230019.0  (+3.0, +19 %)")
                .contains("shoulder", "swell", "butt", "check bar 50 mm")
                .anyMatch(text -> text.contains("pieces at 1:1"));
    }

    /** At full size the drawn wood is as long and as thick as it is. */
    @Test
    void shoulders_standInLine_andTheWoodIsTrue() {
        Family family = family(demo());
        Drawing drawing =
                LineUpDrawing.of("Tidewater", "B2", family, List.of(), SheetFormat.STANDARD)
                        .drawings()
                        .get(0);
        List<Double> shoulders = new ArrayList<>();
        for (Family.Member member : family.members()) {
            Bounds wood =
                    drawing.groups().stream()
                            .filter(group -> group.name().equals(member.piece().name()))
                            .flatMap(group -> group.elements().stream())
                            .filter(
                                    element ->
                                            element instanceof haftline.drawing.Path path
                                                    && path.layer() == Layer.OUTLINE
                                                    && path.segments().stream()
                                                            .anyMatch(Cubic.class::isInstance))
                            .map(Element::bounds)
                            .findFirst()
                            .orElseThrow();
            shoulders.add(wood.minXMm());
            assertThat(wood.widthMm()).isCloseTo(member.figures().handle().buttX(), within(1e-6));
            assertThat(wood.heightMm())
                    .isCloseTo(member.figures().grip().greatestMm(), within(1e-6));
        }
        assertThat(shoulders).allSatisfy(x -> assertThat(x).isEqualTo(shoulders.get(0)));
    }

    /** A handle of 300 mm is too long for A3 beside its blade: half size, and no check bar. */
    @Test
    void longPieces_areReducedToAStandardScale() {
        LineUpDrawing.Sheets sheets =
                LineUpDrawing.of(
                        "Long", "B2", many(2, 3.3, "ladle "), List.of(), SheetFormat.STANDARD);
        assertThat(texts(sheets.drawings().get(0)))
                .anyMatch(text -> text.contains("pieces at 1:2"))
                .contains("reduced: take no measure from it")
                .contains("sections and templates are at full size")
                .noneMatch(text -> text.startsWith("check bar"));
        assertThat(sheets.reduction()).isEqualTo(2);
        assertThat(sheets.drawings().get(0).bounds().widthMm()).isCloseTo(277, within(1e-9));
    }

    @Test
    void manyPieces_goOnFurtherSheets_andNothingLeavesTheFrame() {
        LineUpDrawing.Sheets sheets =
                LineUpDrawing.of(
                        "A set whose name is as long as forty letters",
                        "B2",
                        many(40, 1, "a fork with a name of forty characters, "),
                        List.of("a fork with a name of forty characters, 0"),
                        SheetFormat.STANDARD);
        assertThat(sheets.drawings().size()).isGreaterThan(1);
        assertThat(texts(sheets.drawings().get(0))).contains(TitleBlock.MARK);
        for (Drawing drawing : sheets.drawings()) {
            Bounds bounds = drawing.bounds();
            assertThat(bounds.minXMm()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(bounds.minYMm()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(bounds.maxXMm()).isLessThanOrEqualTo(400 + 1e-9);
            assertThat(bounds.maxYMm()).isLessThanOrEqualTo(277 + 1e-9);
        }
    }

    /** Letter is 18 mm shorter and 6 mm higher than A4: one sheet of it, at full size too. */
    @Test
    void onLetter_inInches_theSheetIsAsLargeAsThePaperLeaves() {
        SheetFormat letter =
                new SheetFormat(FileSettings.Paper.LETTER, FileSettings.Printer.TRUE, Units.INCH);
        LineUpDrawing.Sheets sheets =
                LineUpDrawing.of("Tidewater", "B2", family(demo()), List.of(), letter);
        assertThat(sheets.paper()).isEqualTo(FileSettings.Paper.LETTER);
        assertThat(sheets.drawings()).hasSize(1);
        Drawing drawing = sheets.drawings().get(0);
        assertThat(drawing.bounds()).isEqualTo(new Bounds(0, 0, 259, 195));
        assertThat(texts(drawing))
                .contains("swell \u23001.102  (+0.236, +27 %)", "check bar 2 in")
                .anyMatch(text -> text.contains("pieces at 1:1 \u00b7 inches"))
                .noneMatch(text -> text.contains("28.0") || text.contains(" mm"));
    }

    @Test
    void longPieces_onLetter_areReduced_notCutInTwo() {
        SheetFormat letter =
                new SheetFormat(FileSettings.Paper.LETTER, FileSettings.Printer.TRUE, Units.MM);
        LineUpDrawing.Sheets sheets =
                LineUpDrawing.of("Long", "B2", many(2, 3.3, "ladle "), List.of(), letter);
        assertThat(sheets.drawings()).hasSize(1);
        assertThat(sheets.drawings().get(0).bounds()).isEqualTo(new Bounds(0, 0, 259, 195));
    }

    @Test
    void noPieces_giveNoSheet() {
        assertThat(
                        LineUpDrawing.of(
                                        "None",
                                        "B2",
                                        Family.of(List.of()),
                                        List.of(),
                                        SheetFormat.STANDARD)
                                .drawings())
                .isEmpty();
    }
}
