package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.Choice;
import haftline.edit.DemoSet;
import haftline.edit.Difference;
import haftline.edit.Draft;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.edit.Scope;
import haftline.edit.SetEdits;
import haftline.edit.ShapeEdits;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PiecesModelTest {
    private EditorModel editor;
    private PiecesModel pieces;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        pieces = new PiecesModel(editor);
    }

    @Test
    void addedAndCopiedPiecesAreTakenInHand() {
        Draft before = editor.draft().value();
        pieces.add("fork");
        assertThat(pieces.names().value()).last().isEqualTo("fork");
        assertThat(editor.piece().value()).isEqualTo("fork");
        pieces.copy("shucker");
        pieces.copy("shucker");
        assertThat(pieces.names().value()).startsWith("shucker", "shucker 3", "shucker 2");
        assertThat(pieces.worked("shucker 2").brief().choices())
                .isEqualTo(pieces.worked("shucker").brief().choices());
        editor.undo();
        editor.undo();
        editor.undo();
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(pieces.names().value()).hasSize(4);
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void aRenamedPieceStaysInHand() {
        editor.choose("seafood fork");
        assertThat(pieces.rename("seafood fork", "oyster fork").isDone()).isTrue();
        assertThat(editor.piece().value()).isEqualTo("oyster fork");
        assertThat(pieces.rename("oyster fork", "shucker").refusal().orElseThrow())
                .contains("another piece is called");
        assertThat(pieces.rename("oyster fork", "  ").isDone()).isFalse();
        editor.undo();
        assertThat(editor.piece().value()).isEqualTo("seafood fork");
    }

    @Test
    void theLastPieceStays() {
        for (String name : List.of("shucker", "butter spreader", "seafood fork")) {
            assertThat(pieces.remove(name).isDone()).isTrue();
        }
        assertThat(editor.piece().value()).isEqualTo("citrus zester");
        assertThat(pieces.remove("citrus zester").refusal().orElseThrow())
                .contains("at least one piece");
    }

    @Test
    void movesUpAndDownTheRow() {
        pieces.move("shucker", 2);
        assertThat(pieces.names().value())
                .containsExactly("butter spreader", "seafood fork", "shucker", "citrus zester");
        pieces.move("shucker", -9);
        assertThat(pieces.names().value()).startsWith("shucker");
        assertThat(editor.piece().value()).isEqualTo("shucker");
    }

    @Test
    void whatIsAPiecesOwnIsToldAndReleased() {
        assertThat(pieces.summary("shucker").differences())
                .containsExactly(
                        Difference.of(Choice.LENGTH_RATIO),
                        Difference.of(Choice.SWELL),
                        Difference.of(Choice.USE));
        pieces.release("shucker", Difference.of(Choice.SWELL));
        assertThat(pieces.worked("shucker").brief().choices().swellMm()).hasValue(22);
        assertThat(editor.status().value().undoName()).contains("release swell");
        assertThat(pieces.summary("seafood fork").differences()).containsExactly(Difference.SHAPE);
        pieces.releaseAll("seafood fork");
        assertThat(editor.draft().value().shape("seafood fork"))
                .isEqualTo(editor.draft().value().set().shape());
        assertThat(pieces.summary("citrus zester").stock()).contains("crylic");
    }

    @Test
    void aPieceGivesItsShapeToAll() {
        var own = editor.draft().value().shape("seafood fork");
        assertThat(editor.draft().value().shape("shucker")).isNotEqualTo(own);
        assertThat(pieces.shareShape("seafood fork").isDone()).isTrue();
        assertThat(editor.draft().value().shape("shucker")).isEqualTo(own);
        assertThat(pieces.summary("seafood fork").differences()).doesNotContain(Difference.SHAPE);
        assertThat(pieces.shareShape("shucker").refusal().orElseThrow())
                .isEqualTo("\"shucker\" has no shape of its own");
    }

    @Test
    void aPieceIsWorkedOutOnlyWhenItChanges() {
        var before = pieces.worked("shucker");
        pieces.rename("seafood fork", "oyster fork");
        assertThat(pieces.worked("shucker")).isSameAs(before);
        pieces.release("shucker", Difference.of(Choice.SWELL));
        assertThat(pieces.worked("shucker")).isNotSameAs(before);
    }

    /** Generous, for a machine that does other things too: a hitch would be hundreds of these. */
    @Test
    void fiveHundredPiecesAreQuick() {
        OpenDocument many = DemoSet.open();
        for (int i = 0; i < 496; i++) {
            String from = many.draft().set().pieces().get(i % 4).name();
            many.apply(PieceEdits.copy(from));
        }
        EditorModel large = new EditorModel(many);
        PiecesModel all = new PiecesModel(large);
        assertThat(all.names().value()).hasSize(500);
        long start = System.nanoTime();
        all.names().value().forEach(all::summary);
        Duration first = Duration.ofNanos(System.nanoTime() - start);
        start = System.nanoTime();
        all.names().value().forEach(all::summary);
        Duration again = Duration.ofNanos(System.nanoTime() - start);
        BoardModel board = new BoardModel(large);
        board.selectNext(1);
        board.selectNext(1);
        Draft before = large.draft().value();
        start = System.nanoTime();
        for (int i = 0; i < 100; i++) {
            board.nudge(0, 0.01);
        }
        Duration hundredEvents = Duration.ofNanos(System.nanoTime() - start);
        board.endNudge();
        assertThat(large.draft().value()).isNotEqualTo(before);
        assertThat(first).isLessThan(Duration.ofSeconds(2));
        assertThat(again).isLessThan(Duration.ofMillis(500));
        assertThat(hundredEvents).isLessThan(Duration.ofMillis(1600));
    }

    /** A step that leaves the piece at hand as it is would seem to do nothing. */
    @Test
    void whatAStepChangesIsTakenInHand() {
        pieces.releaseAll("shucker");
        editor.choose("butter spreader");
        editor.undo();
        assertThat(editor.piece().value()).isEqualTo("shucker");
        editor.choose("citrus zester");
        editor.redo();
        assertThat(editor.piece().value()).isEqualTo("shucker");
        // What the set shares changes the piece at hand, too.
        editor.choose("butter spreader");
        editor.run(new ShapeEdits("butter spreader", Scope.ALL_PIECES).shadowLine(0.3));
        editor.choose("citrus zester");
        editor.undo();
        assertThat(editor.piece().value()).isEqualTo("citrus zester");
    }

    @Test
    void theSetIsRenamedInOneStep() {
        assertThat(editor.run(SetEdits.rename(" Low tide ")).isDone()).isTrue();
        assertThat(editor.draft().value().set().name()).isEqualTo("Low tide");
        assertThat(editor.run(SetEdits.rename(" ")).isDone()).isFalse();
        editor.undo();
        assertThat(editor.draft().value().set().name()).isEqualTo("Tidewater");
        assertThat(editor.status().value().isModified()).isFalse();
    }
}
