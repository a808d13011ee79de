package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.DemoSet;
import haftline.edit.NewSet;
import haftline.edit.OpenDocument;
import haftline.figures.Figures;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import haftline.store.LoadedSet;
import haftline.ui.model.EditorModel;
import haftline.ui.model.InspectorModel;
import haftline.ui.model.Overlay;
import haftline.ui.model.ReadOut;
import haftline.ui.model.Row;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;

/** Where the words over the piece stand. */
class BoardWordsTest {
    private static final Sheet SHEET = new Sheet(860, 455);

    private final Figures figures =
            DemoSet.open().worked("butter spreader").figures().orElseThrow();
    private final View view =
            View.fitting(
                    figures.handle().ferruleFaceX(),
                    figures.handle().buttX(),
                    figures.handle().outline().greatest().r(),
                    SHEET.area());

    private List<Rectangle2D> words(List<Rectangle2D> grips) {
        return painter(grips, SHEET, view).wordsAbove();
    }

    private DimensionPainter painter(List<Rectangle2D> grips, Sheet sheet, View at) {
        BoardScene scene =
                new BoardScene(
                        figures,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Units.MM,
                        Palette.PAPER,
                        false,
                        0,
                        Overlay.NONE);
        return new DimensionPainter(new Pen(new Ink()), scene, sheet, at, grips);
    }

    @Test
    void diametersKeepOffGripsAndOffTheOverallLength() {
        PlacedNode swell =
                figures.handle().nodes().stream()
                        .filter(node -> node.name().equals("swell"))
                        .findFirst()
                        .orElseThrow();
        Rectangle2D grip =
                new Rectangle2D(view.px(swell.x()) - 5, view.py(swell.radiusMm()) - 25, 10, 10);
        assertThat(words(List.of())).anyMatch(grip::intersects);
        List<Rectangle2D> kept = words(List.of(grip));
        assertThat(kept).hasSameSizeAs(words(List.of())).noneMatch(grip::intersects);
        assertThat(kept.subList(1, kept.size())).noneMatch(kept.get(0)::intersects);
    }

    /** A bead's grips beside the swell fill the room over it up to the ruler. */
    @Test
    void aDiameterThatHasNoRoomOverItsNodeStandsAside() {
        PlacedNode swell =
                figures.handle().nodes().stream()
                        .filter(node -> node.name().equals("swell"))
                        .findFirst()
                        .orElseThrow();
        double top = view.py(swell.radiusMm());
        Rectangle2D grips = new Rectangle2D(view.px(swell.x()) - 9, 0, 18, top - 8);
        List<Rectangle2D> kept = words(List.of(grips));
        assertThat(kept).hasSameSizeAs(words(List.of()));
        assertThat(kept.subList(1, kept.size()))
                .noneMatch(grips::intersects)
                .noneMatch(kept.get(0)::intersects)
                .allMatch(box -> box.getMinX() >= 0 && box.getMaxX() <= SHEET.width());
    }

    @Test
    void whereNoRoomIsFreeNoDiameterIsLeftOut() {
        List<Rectangle2D> all = List.of(new Rectangle2D(0, 0, SHEET.width(), SHEET.height()));
        assertThat(words(all)).hasSameSizeAs(words(List.of()));
    }

    /** On the board of a window of 1366 x 768 no room under the ruler is free of words. */
    @Test
    void theReadOutCoversNoDimensionWhereverThePointerIs() {
        Sheet sheet = new Sheet(860, 564);
        View wide =
                View.fitting(
                        figures.handle().ferruleFaceX(),
                        figures.handle().buttX(),
                        figures.handle().outline().greatest().r(),
                        sheet.area());
        DimensionPainter painter = painter(List.of(), sheet, wide);
        painter.paint();
        CrossHair.Kept kept = painter.kept(List.of());
        // Overall, four nodes and their diameters, two bores, the wood, the balance and its marks.
        assertThat(kept.words()).hasSize(14);
        CrossHair crossHair = new CrossHair();
        crossHair.keepOff(kept, sheet.width());
        for (double px = 2; px < sheet.width(); px += 6) {
            ReadOut read = new ReadOut(10, 20, OptionalDouble.empty(), 0, OptionalDouble.empty());
            crossHair.show(
                    px, Optional.of(read), new Shown(Units.MM), sheet.width(), sheet.height());
            Node card = crossHair.card();
            ReadOutCard sized = (ReadOutCard) card;
            Rectangle2D box =
                    new Rectangle2D(
                            card.getLayoutX(), card.getLayoutY(), sized.wide(), sized.tall());
            assertThat(kept.words()).as("pointer at %s", px).noneMatch(box::intersects);
            assertThat(px < box.getMinX() || px > box.getMaxX()).isTrue();
            assertThat(box.getMaxX()).isLessThan(sheet.width());
            assertThat(box.getMaxY()).isLessThanOrEqualTo(sheet.curvesTop());
        }
    }

    /** A thick tang leaves both walls short at the shoulder. */
    @Test
    void theFiguresOfTwoWallsThatAreShortAtOnePlaceStandBesideEachOther() {
        LoadedSet begun = NewSet.in(Path.of(""), DemoSet.open().loaded());
        EditorModel editor = new EditorModel(OpenDocument.unsaved(begun));
        Row tang =
                new InspectorModel(editor)
                        .section(InspectorModel.Step.PARTS)
                        .row("tang diameter")
                        .orElseThrow();
        assertThat(tang.enter("0.38 in").isDone()).isTrue();
        Figures thick = editor.worked().value().figures().orElseThrow();
        Sheet sheet = new Sheet(860, 564);
        View at =
                View.fitting(
                        thick.handle().ferruleFaceX(),
                        thick.handle().buttX(),
                        thick.handle().outline().greatest().r(),
                        sheet.area());
        BoardScene scene =
                new BoardScene(
                        thick,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Units.INCH,
                        Palette.PAPER,
                        false,
                        0,
                        Overlay.NONE);
        assertThat(thick.walls()).filteredOn(wall -> wall.marginMm() < 0).hasSize(2);
        LeastWalls walls = new LeastWalls(new Pen(new Ink()), scene, sheet, at, 400);
        walls.paint(
                new Columns(thick.handle(), at.mm(0.5), 1 / at.scale(), 860),
                sheet.wallBottom(),
                (sheet.wallBottom() - sheet.wallTop()) / 9);
        List<Rectangle2D> written = walls.written();
        assertThat(written).hasSizeGreaterThanOrEqualTo(2);
        for (int i = 0; i < written.size(); i++) {
            for (Rectangle2D other : written.subList(i + 1, written.size())) {
                assertThat(written.get(i).intersects(other)).isFalse();
            }
        }
    }
}
