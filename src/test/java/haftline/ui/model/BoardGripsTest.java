package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.Outcome;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.shape.Shape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Details and slopes by their grips, by keys and by typed angles. */
class BoardGripsTest {
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

    private View view() {
        return board.viewpoint().view().value();
    }

    private Grip grip(Grip.Kind kind) {
        return Grip.of(handle(), 0, view()).stream()
                .filter(grip -> grip.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private Detail detail() {
        return handle().brief().shape().details().get(0);
    }

    private double x(Detail detail) {
        return detail.place().x(handle().lengths().visibleWoodMm());
    }

    private void drag(Grip grip, double dx, double dy) {
        assertThat(board.press(grip.px(), grip.py(), REACH))
                .contains(new Hit.OnGrip(0, grip.kind()));
        board.dragTo(grip.px() + dx / 2, grip.py() + dy / 2, false);
        board.dragTo(grip.px() + dx, grip.py() + dy, false);
        board.release();
    }

    @Test
    void anEdgeIsDraggedWhileTheOtherStays() {
        board.details().add(new Detail.Cove(new Place.FromShoulder(40), 6, 1));
        double mm = view().scale();
        drag(grip(Grip.Kind.BACK), 2 * mm, 0);
        assertThat(detail().widthMm()).isCloseTo(8, within(1e-9));
        assertThat(x(detail()) - detail().widthMm() / 2).isCloseTo(37, within(1e-9));
        drag(grip(Grip.Kind.FRONT), 3 * mm, 0);
        assertThat(detail().widthMm()).isCloseTo(5, within(1e-9));
        assertThat(x(detail()) + detail().widthMm() / 2).isCloseTo(45, within(1e-9));
        assertThat(editor.status().value().undoName()).contains("change cove");
        editor.undo();
        editor.undo();
        assertThat(detail()).isEqualTo(new Detail.Cove(new Place.FromShoulder(40), 6, 1));
        assertThat(editor.status().value().undoName()).contains("add cove");
    }

    @Test
    void depthFollowsThePointerInStepsAndSaysWhyWhereItCannot() {
        board.details().add(new Detail.Cove(new Place.FromShoulder(50), 6, 1));
        drag(grip(Grip.Kind.PROUD), 0, 0.52 * view().scale());
        assertThat(detail().proudMm()).isCloseTo(-1.5, within(1e-9));
        assertThat(board.details().words()).contains("cove, 6 mm wide, 1.5 mm deep, at 50 mm");
        drag(grip(Grip.Kind.PROUD), 0, -90 * view().scale());
        assertThat(detail().proudMm()).isCloseTo(-0.05, within(1e-9));
        assertThat(editor.notice().value()).isEmpty();
        drag(grip(Grip.Kind.PROUD), 0, 90 * view().scale());
        assertThat(detail().proudMm()).isCloseTo(-0.05, within(1e-9));
        assertThat(editor.notice().value().orElseThrow()).contains("overhangs on a slope");
    }

    @Test
    void aVeeStopsAtTwiceItsWidth() {
        board.details().add(new Detail.Vee(new Place.FromShoulder(50), 2, 1));
        drag(grip(Grip.Kind.PROUD), 0, 90 * view().scale());
        assertThat(detail().proudMm()).isCloseTo(-4, within(1e-9));
        assertThat(editor.notice().value()).isEmpty();
    }

    @Test
    void anEdgeStopsAtTheEndOfTheWood() {
        board.details().add(new Detail.Flat(new Place.FromShoulder(5), 4));
        drag(grip(Grip.Kind.FRONT), -900, 0);
        assertThat(x(detail()) - detail().widthMm() / 2).isCloseTo(0, within(1e-6));
        assertThat(Grip.of(handle(), 0, view())).hasSize(2);
    }

    @Test
    void keysMoveWidenAndDeepenInOneStep() {
        board.details().add(new Detail.Vee(new Place.FromShoulder(40), 2, 0.8));
        board.details().nudge(0.1, 0, 0);
        board.details().nudge(0, 0.2, 0);
        board.details().nudge(0, 0, -0.1);
        board.endNudge();
        assertThat(detail()).isEqualTo(new Detail.Vee(new Place.FromShoulder(40.1), 2.2, 0.9));
        editor.undo();
        assertThat(detail()).isEqualTo(new Detail.Vee(new Place.FromShoulder(40), 2, 0.8));
        for (int i = 0; i < 400; i++) {
            board.details().nudge(0, -1, 0);
        }
        board.details().nudge(0, 0.1, 0);
        board.endNudge();
        assertThat(detail().widthMm()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void detailsAndNodesAreChosenInOneRingAndNeverTogether() {
        board.details().add(new Detail.BurntLine(new Place.FromShoulder(5), 0.8, 0.3));
        board.details().chosen().set(Optional.empty());
        board.selectNext(1);
        assertThat(board.selected().value()).contains(Shape.SHOULDER);
        board.selectNext(1);
        assertThat(board.details().detail()).isPresent();
        assertThat(board.selected().value()).isEmpty();
        board.deleteSelected();
        assertThat(handle().brief().shape().details()).isEmpty();
        assertThat(board.details().chosen().value()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"bead", "cove", "vee", "fillet", "burnt line", "flat"})
    void everyKindIsSizedWithinWhatItCanBe(String kind) {
        Place at = new Place.FromShoulder(40);
        Detail begun =
                List.of(
                                new Detail.Bead(at, 4, 1.2),
                                new Detail.Cove(at, 4, 1),
                                new Detail.Vee(at, 2, 1),
                                new Detail.Fillet(at, 2, 0.5),
                                new Detail.BurntLine(at, 1, 0.3),
                                new Detail.Flat(at, 5))
                        .stream()
                        .filter(detail -> detail.kind().equals(kind))
                        .findFirst()
                        .orElseThrow();
        board.details().add(begun);
        HeldDetail held = board.details().held(0);
        for (double wish : new double[] {-500, -3, -0.01, 0, 0.01, 0.7, 3, 500}) {
            // None of these may be refused by the detail's own checks.
            held.widenedBehind(wish);
            held.widenedInFront(wish);
            held.proud(wish);
            held.changed(wish, wish, -wish);
        }
        assertThat(held.changed(held.x(), begun.widthMm(), begun.proudMm())).isEqualTo(begun);
    }

    @Test
    void inInchesDetailsStepByThousandths() {
        editor.units().set(Units.INCH);
        board.details().add(new Detail.Cove(new Place.FromShoulder(40), 6, 1));
        drag(grip(Grip.Kind.BACK), 1.2 * view().scale(), 0);
        assertThat(detail().widthMm() / 0.127 % 1).isCloseTo(0, within(1e-3));
        assertThat(board.details().words().orElseThrow()).endsWith(" in");
    }

    @Test
    void aTypedSlopeIsTakenAndOneOutsideItsRangeSaysTheRange() {
        board.selected().set(java.util.Optional.of(Shape.SHOULDER));
        NodeSlope slope = board.slopes().now().orElseThrow();
        // The wood thins behind the ferrule, so that its slope lies between steep and level.
        assertThat(slope.greatestDeg()).isZero();
        assertThat(slope.leastDeg()).isLessThan(-5);
        assertThat(board.slopes().set("-4,5°").isDone()).isTrue();
        assertThat(board.slopes().now().orElseThrow().deg()).isCloseTo(-4.5, within(1e-6));
        Outcome refused = board.slopes().set("12");
        assertThat(refused.refusal().orElseThrow()).endsWith("; " + slope.range() + " is possible");
        assertThat(board.slopes().set("steep").refusal().orElseThrow()).contains(slope.range());
        assertThat(board.slopes().set("free").isDone()).isTrue();
        assertThat(handle().brief().shape().shoulderSlopeDeg()).isEmpty();
    }

    @Test
    void aSlopeIsTheBodysWhateverDetailLiesOverIt() {
        board.selected().set(java.util.Optional.of(Shape.SHOULDER));
        double bare = board.slopes().now().orElseThrow().deg();
        board.details().add(new Detail.Bead(new Place.FromShoulder(2.5), 5, 1.2));
        board.selected().set(java.util.Optional.of(Shape.SHOULDER));
        assertThat(board.slopes().now().orElseThrow().deg()).isCloseTo(bare, within(1e-9));
        assertThat(board.slopes().set("-2").isDone()).isTrue();
        assertThat(board.slopes().now().orElseThrow().deg()).isEqualTo(-2);
    }

    @Test
    void noOtherDetailIsChosenInThePlaceOfTheOneThatWent() {
        board.details().add(new Detail.BurntLine(new Place.FromShoulder(20), 0.8, 0.3));
        board.details().add(new Detail.BurntLine(new Place.FromShoulder(40), 0.8, 0.3));
        board.details().add(new Detail.BurntLine(new Place.FromShoulder(50), 0.8, 0.3));
        board.details().chosen().set(java.util.Optional.of(0));
        board.deleteSelected();
        board.deleteSelected();
        assertThat(handle().brief().shape().details()).hasSize(2);
        board.details().chosen().set(java.util.Optional.of(1));
        board.details().remove(new Hit.OnDetail(0, "burnt line"));
        assertThat(board.details().chosen().value()).contains(0);
        assertThat(x(detail())).isEqualTo(50);
    }

    @ParameterizedTest
    @ValueSource(strings = {Shape.SHOULDER, Shape.SEAT})
    void whatTheRangeTellsMayBeTyped(String end) {
        board.selected().set(java.util.Optional.of(end));
        String range = board.slopes().now().orElseThrow().range();
        for (String told : range.replace("from ", "").split(" to ")) {
            assertThat(board.slopes().set(told).isDone()).as(told).isTrue();
        }
    }

    @Test
    void whereTheOutlineTurnsOnlyLevelIsPossible() {
        board.selected().set(java.util.Optional.of("swell"));
        assertThat(board.slopes().now().orElseThrow().isOnlyLevel()).isTrue();
        assertThat(board.slopes().set("3").refusal().orElseThrow()).contains("only 0°");
        assertThat(board.slopes().set(OptionalDouble.of(0)).isDone()).isTrue();
        assertThat(SlopeGrip.of(handle(), "swell", view())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {Shape.SHOULDER, Shape.SEAT})
    void theArmTurnsTheSlopeInOneStepAndStopsAtItsRange(String end) {
        board.selected().set(java.util.Optional.of(end));
        SlopeGrip arm = SlopeGrip.of(handle(), end, view()).orElseThrow();
        assertThat(board.press(arm.px(), arm.py(), REACH)).contains(new Hit.OnSlope(end));
        board.dragTo(arm.px(), arm.py() + 6, false);
        double turned = board.slopes().now().orElseThrow().deg();
        assertThat(turned).isNotCloseTo(arm.slope().deg(), within(0.4));
        assertThat(turned * 2 % 1).isCloseTo(0, within(1e-4));
        board.dragTo(arm.px(), arm.py() - 9000, false);
        board.release();
        NodeSlope now = board.slopes().now().orElseThrow();
        // The last tenth of a degree that the range tells.
        double bound = end.equals(Shape.SEAT) ? Math.ceil(now.leastDeg() * 10) / 10 : 0;
        assertThat(now.deg()).isCloseTo(bound, within(1e-9));
        editor.undo();
        assertThat(board.slopes().now().orElseThrow().deg())
                .isCloseTo(arm.slope().deg(), within(1e-9));
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void aDetailIsTakenHoldOfOnItsBandAndHoweverThinItIs() {
        board.details().add(new Detail.Bead(new Place.FromShoulder(40), 4, 1.2));
        board.details().add(new Detail.BurntLine(new Place.FromShoulder(52), 0.3, 0.3));
        board.details().chosen().set(Optional.empty());
        double onBand = view().axisY() - 2 * view().scale();
        assertThat(board.hit(view().px(40), onBand, REACH)).contains(new Hit.OnDetail(0, "bead"));
        // In the section a bead is seen on the outline alone.
        double inSection = view().axisY() + 2 * view().scale();
        assertThat(board.hit(view().px(40), inSection, REACH)).isEmpty();
        assertThat(board.hit(view().px(52) + 4, onBand, REACH))
                .contains(new Hit.OnDetail(1, "burnt line"));
        assertThat(board.hit(view().px(52) + 7, onBand, REACH)).isEmpty();
    }

    @Test
    void aFlatHasNoBand() {
        board.details().add(new Detail.Flat(new Place.FromShoulder(40), 8));
        board.details().chosen().set(Optional.empty());
        double inTheWood = view().axisY() - 2 * view().scale();
        assertThat(board.hit(view().px(40), inTheWood, REACH)).isEmpty();
    }
}
