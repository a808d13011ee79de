package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.Scope;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Place;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BoardModelTest {
    private static final double REACH = 8;
    private EditorModel editor;
    private BoardModel board;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        board = new BoardModel(editor);
        board.viewpoint().fit(new View.Area(40, 100, 1000, 300));
    }

    private Handle handle() {
        return board.handle().orElseThrow();
    }

    private PlacedNode free() {
        return handle().nodes().stream().filter(PlacedNode::isFree).findFirst().orElseThrow();
    }

    private PlacedNode node(String name) {
        return board.node(name).orElseThrow();
    }

    private double px(PlacedNode node) {
        return board.viewpoint().view().value().px(node.x());
    }

    private double py(PlacedNode node) {
        return board.viewpoint().view().value().py(node.radiusMm());
    }

    @Test
    void hitsTheNearestNodeAboveAndBelowTheAxis() {
        PlacedNode node = free();
        View view = board.viewpoint().view().value();
        assertThat(board.hit(px(node) + 3, py(node) - 3, REACH))
                .contains(new Hit.OnNode(node.name(), ""));
        assertThat(board.hit(px(node), view.py(-node.radiusMm()) + 3, REACH))
                .contains(new Hit.OnNode(node.name(), ""));
        assertThat(board.hit(px(node), py(node) - 30, REACH)).isEmpty();
    }

    @Test
    void dragIsOneStepAndFiguresFollowWhileDragging() {
        PlacedNode node = free();
        double mass = editor.worked().value().figures().orElseThrow().balance().totalG();
        assertThat(board.press(px(node), py(node), REACH)).isPresent();
        for (int i = 1; i <= 20; i++) {
            board.dragTo(px(node), py(node) - i, false);
        }
        assertThat(editor.worked().value().figures().orElseThrow().balance().totalG())
                .isGreaterThan(mass);
        board.release();
        assertThat(editor.status().value().undoName()).contains("move " + node.name());
        PlacedNode moved = node(node.name());
        assertThat(2 * moved.radiusMm() % 0.5).isCloseTo(0, within(1e-9));
        assertThat(moved.radiusMm()).isGreaterThan(node.radiusMm());
        editor.undo();
        assertThat(node(node.name())).isEqualTo(node);
        assertThat(editor.status().value().isModified()).isFalse();
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void dragOutwardsDoesNotPinTheNodeAlongTheAxis() {
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node) + 3, py(node) - 20, false);
        board.release();
        assertThat(editor.draft().value().piece("butter spreader").choices().nodePlaces())
                .isEmpty();
        assertThat(editor.draft().value().piece("butter spreader").choices().nodeDiametersMm())
                .containsOnlyKeys(node.name());
    }

    @Test
    void dragBackToWhereItBeganIsNoStep() {
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 30, false);
        board.dragTo(px(node), py(node), false);
        board.release();
        assertThat(editor.status().value().undoName()).isEmpty();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void dragStopsBeforeTheNeighbour() {
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node) + 5000, py(node), false);
        board.release();
        assertThat(board.handle()).isPresent();
        assertThat(node(node.name()).x()).isGreaterThan(node.x());
        for (int i = 1; i < handle().nodes().size(); i++) {
            assertThat(handle().nodes().get(i).x() - handle().nodes().get(i - 1).x())
                    .isGreaterThanOrEqualTo(PlacedNode.LEAST_SPACING_MM - 1e-9);
        }
    }

    @Test
    void snapsToSixtyFourthsInInches() {
        editor.units().set(Units.INCH);
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 23, false);
        board.release();
        double parts = 2 * node(node.name()).radiusMm() / 25.4 * 64;
        assertThat(parts).isCloseTo(Math.rint(parts), within(1e-4));
    }

    @Test
    void anEndDoesNotMoveAndSaysWhy() {
        PlacedNode shoulder = node("shoulder");
        board.press(px(shoulder), py(shoulder), REACH);
        assertThat(board.isDragging()).isFalse();
        board.dragTo(px(shoulder), py(shoulder) - 40, false);
        assertThat(editor.notice().value())
                .contains("The shoulder does not move: the ferrule's outside diameter fixes it");
        assertThat(editor.status().value().isModified()).isFalse();
        board.nudge(0, 1);
        board.deleteSelected();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void heldNudgesAreOneStep() {
        PlacedNode node = free();
        board.selected().set(Optional.of(node.name()));
        for (int i = 0; i < 5; i++) {
            board.nudge(0, 0.1);
        }
        board.nudge(1, 0);
        board.endNudge();
        assertThat(2 * node(node.name()).radiusMm())
                .isCloseTo(2 * node.radiusMm() + 0.5, within(0.011));
        assertThat(node(node.name()).x()).isCloseTo(node.x() + 1, within(0.011));
        editor.undo();
        assertThat(node(node.name())).isEqualTo(node);
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void addedNodeLiesOnTheOutlineAndIsChosen() {
        double x = 40;
        double before = handle().outline().r(x);
        assertThat(board.addNodeAt(x).isDone()).isTrue();
        PlacedNode added = node(board.selected().value().orElseThrow());
        assertThat(added.x()).isCloseTo(x, within(1e-3));
        assertThat(added.radiusMm()).isCloseTo(before, within(0.006));
        assertThat(board.addNodeAt(-3).isDone()).isFalse();
        board.deleteSelected();
        assertThat(board.node(added.name())).isEmpty();
        assertThat(board.selected().value()).isEmpty();
    }

    @Test
    void joinAndSlopeAreSetOnTheChosenNode() {
        PlacedNode node = free();
        board.selected().set(Optional.of(node.name()));
        board.join(Join.CRISP);
        assertThat(node(node.name()).join()).isEqualTo(Join.CRISP);
        board.join(Join.SMOOTH);
        assertThat(node(node.name()).join()).isEqualTo(Join.SMOOTH);
        board.selected().set(Optional.of("shoulder"));
        board.slopes().set(OptionalDouble.of(2));
        board.slopes().set(OptionalDouble.of(80));
        assertThat(editor.notice().value().orElseThrow()).contains("is possible");
        assertThat(board.handle()).isPresent();
    }

    @Test
    void forAllPiecesChangesTheSharedShape() {
        editor.scope().set(Scope.ALL_PIECES);
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 30, false);
        board.release();
        double mm = 2 * node(node.name()).radiusMm();
        assertThat(mm).isGreaterThan(2 * node.radiusMm());
        assertThat(editor.draft().value().piece("butter spreader").choices().nodeDiametersMm())
                .isEmpty();
        assertThat(editor.draft().value().set().shape()).isNotEqualTo(DemoSet.load().set().shape());
        assertThat(
                        2
                                * editor.document()
                                        .worked("shucker")
                                        .figures()
                                        .orElseThrow()
                                        .handle()
                                        .nodes()
                                        .get(1)
                                        .radiusMm())
                .isNotEqualTo(
                        2
                                * DemoSet.open()
                                        .worked("shucker")
                                        .figures()
                                        .orElseThrow()
                                        .handle()
                                        .nodes()
                                        .get(1)
                                        .radiusMm());
    }

    @Test
    void readsOutTheFiguresUnderTheCrossHair() {
        ReadOut body = ReadOut.of(handle(), 5);
        assertThat(body.diameterMm()).isEqualTo(2 * handle().outline().r(5));
        double bore = handle().tangBore().radiusAt(5);
        double wander = handle().wander().at(5 + handle().tenon().lengthMm());
        assertThat(body.wallMm().orElseThrow())
                .isCloseTo(handle().outline().r(5) - bore - wander, within(1e-12));
        assertThat(board.readOut(-500)).isEmpty();
        double middle =
                (handle().tangBore().xAt(handle().tangBore().reachMm()) + handle().buttX() - 25)
                        / 2;
        assertThat(ReadOut.of(handle(), middle).slopeDeg()).isFinite();
    }

    @Test
    void aDetailIsDraggedAlongTheWoodAndStaysOnIt() {
        board.details().add(new Detail.Bead(new Place.Share(0.6), 5, 1));
        board.details().chosen().set(Optional.empty());
        double x = 0.6 * handle().lengths().visibleWoodMm();
        View view = board.viewpoint().view().value();
        double py = view.py(handle().outline().r(x));
        assertThat(board.press(view.px(x), py, REACH)).contains(new Hit.OnDetail(0, "bead"));
        board.dragTo(view.px(x - 10), py, false);
        board.release();
        assertThat(editor.status().value().undoName()).contains("move bead");
        assertThat(detailX()).isCloseTo(x - 10, within(0.26));
        double moved = detailX();
        double there = view.py(handle().outline().r(moved));
        board.press(view.px(moved), there, REACH);
        board.dragTo(-9000, there, false);
        board.release();
        assertThat(detailX()).isCloseTo(2.5, within(1e-3));
        assertThat(board.handle()).isPresent();
        assertThat(board.details().remove(new Hit.OnDetail(0, "bead")).isDone()).isTrue();
        assertThat(board.details().remove(new Hit.OnDetail(0, "bead")).isDone()).isFalse();
    }

    private double detailX() {
        return handle().brief()
                .shape()
                .details()
                .get(0)
                .place()
                .x(handle().lengths().visibleWoodMm());
    }

    @Test
    void partsThatCannotBeDrawnLeaveTheLastDrawingAndSayWhy() {
        InspectorModel inspector = new InspectorModel(editor);
        Handle before = handle();
        assertThat(
                        inspector
                                .section(InspectorModel.Step.PARTS)
                                .row("blade length")
                                .orElseThrow()
                                .enter("12")
                                .isDone())
                .isTrue();
        assertThat(editor.worked().value().impossible().orElseThrow())
                .contains("make the handle longer");
        assertThat(handle()).isEqualTo(before);
        board.selectNext(1);
        board.selectNext(1);
        board.nudge(0, 1);
        board.endNudge();
        editor.choose("shucker");
        assertThat(handle().name()).isEqualTo("shucker");
        editor.choose("butter spreader");
        assertThat(board.handle()).as("never drawn since it was chosen").isEmpty();
        assertThat(board.press(1, 1, REACH)).isEmpty();
        assertThat(board.addNode(100).isDone()).isFalse();
        assertThat(board.addNodeAt(10).isDone()).isFalse();
        editor.undo();
        editor.undo();
        assertThat(board.handle()).isPresent();
    }

    @Test
    void anAbandonedDragLeavesNothing() {
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 40, false);
        board.abandon();
        board.dragTo(px(node), py(node) - 80, false);
        board.release();
        assertThat(node(node.name())).isEqualTo(node);
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void anotherPieceTakenInHandEndsTheDrag() {
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 40, false);
        editor.choose("shucker");
        board.dragTo(px(node), py(node) - 60, false);
        board.release();
        assertThat(editor.draft().value().piece("shucker").choices())
                .isEqualTo(DemoSet.open().draft().piece("shucker").choices());
        editor.undo();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void anotherDocumentOfTheSameNamesEndsTheDrag() {
        editor.choose("shucker");
        PlacedNode node = free();
        board.press(px(node), py(node), REACH);
        board.dragTo(px(node), py(node) - 40, false);
        editor.show(DemoSet.open());
        board.dragTo(px(node), py(node) - 60, false);
        board.release();
        assertThat(editor.status().value().isModified()).isFalse();
        assertThat(board.selected().value()).isEmpty();
    }

    @Test
    void besideTheBoardFiguresRestUntilTheyAreCaughtUpOrTheHandLetsGo() {
        // Longer than this test can take.
        editor.rest(3_600_000);
        PlacedNode node = free();
        double x = px(node);
        double y = py(node);
        board.press(x, y, REACH);
        board.dragTo(x, y - 4, true);
        assertThat(editor.worked().value().figures())
                .as("the first step is told")
                .isEqualTo(editor.drawn().value().orElseThrow().figures());
        board.dragTo(x, y - 8, true);
        assertThat(editor.isBehind().value()).isTrue();
        assertThat(editor.worked().value().figures())
                .isNotEqualTo(editor.drawn().value().orElseThrow().figures());
        editor.catchUp();
        assertThat(editor.isBehind().value()).isFalse();
        assertThat(editor.worked().value()).isEqualTo(editor.drawn().value().orElseThrow());
        assertThat(editor.draft().value()).isEqualTo(editor.document().draft());
        board.dragTo(x, y - 12, true);
        assertThat(editor.isBehind().value()).isTrue();
        board.release();
        assertThat(editor.isBehind().value()).isFalse();
        assertThat(editor.worked().value()).isEqualTo(editor.drawn().value().orElseThrow());
        assertThat(editor.told().value()).isEqualTo(editor.drawn().value());
    }
}
