package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.cli.PiecePaper;
import haftline.cli.PiecePaper.Kind;
import haftline.drawing.Element;
import haftline.drawing.Text;
import haftline.edit.DemoSet;
import haftline.edit.PieceEdits;
import haftline.measure.Units;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperModelTest {
    private final Background background = new Background();
    private final EditorModel editor = new EditorModel(DemoSet.open());
    private final PaperModel papers =
            new PaperModel(editor, background.latest(), background.latest());

    private List<String> words() {
        return papers.shown()
                .value()
                .paper()
                .orElseThrow()
                .pages()
                .get(0)
                .elements()
                .filter(Text.class::isInstance)
                .map(element -> ((Text) element).string())
                .toList();
    }

    @Test
    void everyPaperFillsItsPaperAndNoMore() {
        for (Kind kind : Kind.values()) {
            papers.choose(kind);
            background.work();
            var paper = papers.shown().value().paper().orElseThrow();
            assertThat(paper.pages()).isNotEmpty();
            // How wide words are is only estimated without their font.
            paper.pages().stream()
                    .flatMap(page -> page.elements())
                    .filter(element -> !(element instanceof Text))
                    .map(Element::bounds)
                    .forEach(
                            bounds -> {
                                assertThat(paper.leftMm() + bounds.minXMm()).isNotNegative();
                                assertThat(paper.footMm() + bounds.minYMm()).isNotNegative();
                                assertThat(paper.leftMm() + bounds.maxXMm())
                                        .isLessThanOrEqualTo(paper.widthMm());
                                assertThat(paper.footMm() + bounds.maxYMm())
                                        .isLessThanOrEqualTo(paper.heightMm());
                            });
        }
    }

    @Test
    void theLatheSheetFollowsTheUnitsAndHasItsCheckBars() {
        papers.choose(Kind.LATHE);
        background.work();
        assertThat(words()).anyMatch(text -> text.contains("lengths in mm"));
        assertThat(papers.shown().value().paper().orElseThrow().marks().get(0))
                .filteredOn(Text.class::isInstance)
                .extracting(element -> ((Text) element).string())
                .contains("100 mm", "4 in");
        editor.units().set(Units.INCH);
        papers.refresh();
        background.work();
        assertThat(words()).anyMatch(text -> text.contains("lengths in inches"));
    }

    @Test
    void everyPageBearsItsOwnNumber() {
        papers.choose(Kind.INSTRUCTIONS);
        background.work();
        PiecePaper paper = papers.shown().value().paper().orElseThrow();
        assertThat(paper.marks()).hasSameSizeAs(paper.pages()).hasSize(2);
        for (int i = 0; i < paper.pages().size(); i++) {
            String number = "page " + (i + 1);
            assertThat(strings(paper.marks().get(i).stream()))
                    .anyMatch(text -> text.endsWith(number));
        }
    }

    @Test
    void aLongNameLeavesThePagesTheirNumbers() {
        String longName = "oyster shucker with the waisted handle, oiled, left-handed ".repeat(3);
        editor.run(PieceEdits.rename(editor.piece().value(), longName.strip()));
        papers.choose(Kind.INSTRUCTIONS);
        background.work();
        PiecePaper paper = papers.shown().value().paper().orElseThrow();
        for (int i = 0; i < paper.pages().size(); i++) {
            String number = "\u2026, page " + (i + 1);
            assertThat(strings(paper.marks().get(i).stream()))
                    .anyMatch(text -> text.endsWith(number));
        }
    }

    @Test
    void aLongNameLeavesTheCautionAtTheFootWhole() {
        String longName = "oyster shucker with the waisted handle, oiled, left-handed";
        editor.run(PieceEdits.rename(editor.piece().value(), longName));
        papers.choose(Kind.INSTRUCTIONS);
        background.work();
        for (var page : papers.shown().value().paper().orElseThrow().pages()) {
            assertThat(strings(page.elements()))
                    .anyMatch(text -> text.endsWith("local rules go before this sheet."));
        }
    }

    private static List<String> strings(Stream<Element> elements) {
        return elements.filter(Text.class::isInstance)
                .map(element -> ((Text) element).string())
                .toList();
    }

    @Test
    void theDrawingFollowsTheUnits() {
        papers.choose(Kind.DRAWING);
        background.work();
        assertThat(words()).anyMatch(text -> text.endsWith(" mm"));
        editor.units().set(Units.INCH);
        papers.refresh();
        background.work();
        assertThat(words())
                .anyMatch(text -> text.endsWith(" in"))
                .noneMatch(text -> text.endsWith(" mm"));
    }

    @Test
    void whatIsSavedIsWhatTheMainCommandWrites(@TempDir Path folder) throws Exception {
        papers.choose(Kind.LATHE);
        background.work();
        assertThat(papers.fileName()).hasValue("shucker-lathe.pdf");
        Path file = folder.resolve("mine.pdf");
        papers.save(file);
        background.work();
        assertThat(papers.saved().value()).isEqualTo("Saved as mine.pdf");
        byte[] made =
                haftline.cli.Making.plan(DemoSet.load(), haftline.measure.Units.MM)
                        .ofPieces(java.util.Set.of("pdf"))
                        .stream()
                        .filter(planned -> planned.name().equals("shucker-lathe.pdf"))
                        .findFirst()
                        .orElseThrow()
                        .made()
                        .orElseThrow()
                        .content();
        assertThat(Files.readAllBytes(file)).isEqualTo(made);
        assertThat(new String(made, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    @Test
    void aFolderThatIsNoneIsToldAndNothingIsSaved(@TempDir Path folder) throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("file"), "x");
        papers.choose(Kind.CARE);
        background.work();
        papers.save(inTheWay.resolve("card.pdf"));
        background.work();
        assertThat(papers.saved().value()).isEmpty();
        assertThat(editor.notice().value()).isPresent();
    }
}
