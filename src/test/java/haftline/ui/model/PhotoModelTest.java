package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.adjust.takeoff.Reading;
import haftline.curve.Outline;
import haftline.curve.Point;
import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.measure.Units;
import haftline.store.ReadingsFile;
import haftline.store.Tracing;
import haftline.support.BenchPhotograph;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoState.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoModelTest {
    @TempDir Path folder;

    private final Background background = new Background();
    private EditorModel editor;
    private PhotoModel model;
    private PhotoHand hand;

    private record Plain(Path file, int width, int height) implements Picture {
        @Override
        public int fullWidth() {
            return 2 * width;
        }

        @Override
        public int fullHeight() {
            return 2 * height;
        }
    }

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        model =
                new PhotoModel(
                        editor,
                        file -> {
                            if (!file.toString().endsWith("jpg")) {
                                throw new IOException("that is no picture");
                            }
                            return new Plain(file, 1600, 1000);
                        },
                        background,
                        Runnable::run);
        hand = model.hand();
    }

    private void openPicture() {
        model.open(Path.of("old.jpg"));
        background.work();
    }

    /** A click on a place of the picture, wherever that lies now. */
    private void click(Spot spot) {
        hand.press(model.state().value().lying().at(spot), 1, false);
        hand.release();
    }

    private void place() {
        openPicture();
        click(new Spot(300, 500));
        click(new Spot(1300, 500));
        assertThat(model.apart("100 mm")).isEmpty();
    }

    @Test
    void liesUnderThePieceBeforeItIsToScale() {
        Draft before = editor.draft().value();
        assertThat(model.strength()).isZero();
        model.open(Path.of("old.jpg"));
        assertThat(model.isReading().value()).isTrue();
        background.work();
        assertThat(model.isReading().value()).isFalse();
        assertThat(model.strength()).isEqualTo(PhotoModel.USUAL_SHARE);
        assertThat(hand.tool().value()).isEqualTo(Tool.POINTS);
        assertThat(model.state().value().isPlaced()).isFalse();
        assertThat(model.state().value().wrong().orElseThrow()).contains("first point");
        var handle = editor.drawn().value().orElseThrow().figures().orElseThrow().handle();
        Point left = model.state().value().lying().at(new Spot(0, 500));
        Point right = model.state().value().lying().at(new Spot(1600, 500));
        assertThat(left.x()).isLessThan(handle.ferruleFaceX());
        assertThat(right.x()).isGreaterThan(handle.buttX());
        model.isShown().set(false);
        assertThat(model.strength()).isZero();
        assertThat(editor.draft().value()).isEqualTo(before);
    }

    @Test
    void twoClicksAndADistancePutItToScale() {
        place();
        PhotoState state = model.state().value();
        assertThat(state.isPlaced()).isTrue();
        assertThat(state.lying().mmPerPixel()).isCloseTo(0.1, within(1e-12));
        assertThat(state.lying().at(new Spot(300, 500)).x()).isCloseTo(0, within(1e-9));
        assertThat(state.lying().at(new Spot(1300, 500)).x()).isCloseTo(100, within(1e-9));
        assertThat(new PhotoWords(Units.MM).placing(state))
                .contains("a pixel is 0.10 mm")
                .contains("± 0.14 mm from both sides")
                .contains("± 0.20 mm from one")
                .contains("± 0.14 %");
        assertThat(new PhotoWords(Units.INCH).placing(state)).contains("a pixel is 0.0039 in");
        assertThat(new PhotoWords(Units.MM).picture(state.picture().orElseThrow()))
                .isEqualTo("old.jpg, 1600 × 1000 pixels, reduced from 3200 × 2000");
        assertThat(model.front("12.5")).isEmpty();
        assertThat(model.state().value().lying().at(new Spot(300, 500)).x())
                .isCloseTo(12.5, within(1e-9));
    }

    @Test
    void aPointIsDraggedWhileThePictureLiesStill() {
        place();
        var lying = model.state().value().lying();
        hand.press(new Point(100, 0), 2, false);
        hand.drag(new Point(101, 3), false);
        assertThat(model.state().value().lying()).isEqualTo(lying);
        assertThat(hand.held().value()).isPresent();
        hand.abandon();
        hand.release();
        assertThat(model.state().value().lying()).isEqualTo(lying);
        hand.press(new Point(100, 0), 2, false);
        hand.drag(new Point(101, 3), false);
        hand.release();
        // The point has moved over the picture, and the picture has come after it.
        Spot second = model.state().value().marks().get(Mark.SECOND);
        assertThat(second.v()).isCloseTo(470, within(1e-6));
        assertThat(model.state().value().lying().at(second).r()).isCloseTo(0, within(1e-9));
        model.undo();
        assertThat(model.state().value().lying()).isEqualTo(lying);
        model.redo();
        assertThat(model.state().value().marks().get(Mark.SECOND)).isEqualTo(second);
    }

    @Test
    void theAxisMayHavePointsOfItsOwn() {
        openPicture();
        model.onAxis(false);
        click(new Spot(100, 900));
        click(new Spot(1500, 900));
        assertThat(model.apart("5 1/2 in")).isEmpty();
        assertThat(model.state().value().wrong().orElseThrow()).contains("axis, at the front");
        click(new Spot(300, 400));
        click(new Spot(1200, 520));
        PhotoState state = model.state().value();
        assertThat(state.isPlaced()).isTrue();
        assertThat(state.lying().mmPerPixel()).isCloseTo(5.5 * 25.4 / 1400, within(1e-12));
        assertThat(state.lying().at(new Spot(300, 400)).x()).isCloseTo(0, within(1e-9));
        assertThat(state.lying().at(new Spot(1200, 520)).r()).isCloseTo(0, within(1e-9));
    }

    @Test
    void saysInWordsWhatIsWrong() {
        model.open(Path.of("notes.txt"));
        background.work();
        assertThat(model.note().value()).isEqualTo("that is no picture");
        assertThat(model.state().value()).isEqualTo(PhotoState.NONE);
        openPicture();
        for (String text : List.of("0", "-3 mm", "", "far", "2000 mm")) {
            assertThat(model.apart(text).orElseThrow())
                    .isEqualTo("expected a length from 1 to 1000 mm");
        }
        editor.units().set(Units.INCH);
        assertThat(model.apart("0").orElseThrow()).contains("from 0.0394 to 39.37 in");
        editor.units().set(Units.MM);
        assertThat(model.front("here")).isPresent();
        click(new Spot(300, 500));
        assertThat(model.note().value()).contains("set the second point");
        hand.use(Tool.TRACE);
        click(new Spot(700, 300));
        assertThat(model.state().value().trace()).isEmpty();
        assertThat(model.note().value()).contains("Not to scale yet");
        hand.use(Tool.POINTS);
        hand.set(false);
        assertThat(model.state().value().wrong().orElseThrow()).contains("same place");
        assertThat(model.apart("100")).isEmpty();
        assertThat(model.state().value().isPlaced()).isFalse();
        assertThat(model.readings()).isEmpty();
        assertThat(model.note().value()).contains("8 readings or more").contains("there are 0");
    }

    @Test
    void isTracedPointByPointAndTakenBackPointByPoint() {
        place();
        hand.use(Tool.TRACE);
        click(new Spot(300, 400));
        click(new Spot(800, 380));
        assertThat(model.state().value().traced().get(1).x()).isCloseTo(50, within(1e-9));
        assertThat(model.state().value().traced().get(1).r()).isCloseTo(12, within(1e-9));
        // With Shift straight over the one before.
        hand.press(new Point(50.7, 9), 0.5, true);
        hand.release();
        assertThat(model.state().value().traced().get(2).x()).isCloseTo(50, within(1e-9));
        assertThat(new PhotoWords(Units.MM).trace(model.state().value()))
                .isEqualTo("3 points, 3 above the axis and 0 below, from 0.0 to 50.0 mm.");
        // A point that is there is moved, not doubled.
        hand.press(new Point(0.2, 10.1), 0.5, false);
        hand.drag(new Point(0.2, 10.6), false);
        hand.release();
        assertThat(model.state().value().trace()).hasSize(3);
        assertThat(model.state().value().traced().get(0).r()).isCloseTo(10.6, within(1e-9));
        model.undo();
        assertThat(model.state().value().traced().get(0).r()).isCloseTo(10, within(1e-9));
        hand.takeBack();
        assertThat(model.state().value().trace()).hasSize(2);
        model.undo();
        model.undo();
        model.undo();
        assertThat(model.state().value().trace()).hasSize(1);
        model.redo();
        assertThat(model.state().value().trace()).hasSize(2);
        model.clearTrace();
        assertThat(model.state().value().trace()).isEmpty();
        model.undo();
        assertThat(model.state().value().trace()).hasSize(2);
        hand.press(new Point(20, 300), 0.5, false);
        assertThat(hand.held().value()).isEmpty();
        assertThat(model.note().value()).contains("No handle reaches");
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    @Test
    void keysDoAllThatThePointerDoes() {
        openPicture();
        hand.choose(1);
        hand.choose(1);
        assertThat(hand.chosen().value()).contains(0);
        hand.set(false);
        assertThat(hand.chosen().value()).contains(1);
        hand.moveAim(60, 0);
        hand.set(false);
        assertThat(model.apart("48")).isEmpty();
        assertThat(model.state().value().isPlaced()).isTrue();
        // The aim is still over the second point.
        assertThat(hand.aim().value().x()).isCloseTo(48, within(1e-9));
        hand.use(Tool.TRACE);
        hand.choose(1);
        assertThat(hand.chosen().value()).isEmpty();
        for (int i = 0; i < 3; i++) {
            hand.moveAim(5, 1);
            hand.set(false);
        }
        assertThat(model.state().value().trace()).hasSize(3);
        hand.choose(-1);
        assertThat(hand.chosen().value()).contains(2);
        hand.choose(1);
        hand.moveAim(0, 2);
        hand.set(false);
        assertThat(model.state().value().trace()).hasSize(3);
        hand.choose(1);
        hand.takeBack();
        assertThat(model.state().value().trace()).hasSize(2);
        model.stronger(0.2);
        assertThat(model.share().value()).isEqualTo(0.9);
        model.stronger(5);
        assertThat(model.share().value()).isEqualTo(1);
        model.remove();
        assertThat(model.state().value().picture()).isEmpty();
        assertThat(hand.tool().value()).isEqualTo(Tool.BOARD);
        model.undo();
        assertThat(model.state().value().trace()).hasSize(2);
    }

    /** A maker with a steady hand traces a grainy picture of a known handle, both its sides. */
    @Test
    void aTraceOfAPhotographComesBackToTheHandle() throws Exception {
        Outline known =
                editor.drawn().value().orElseThrow().figures().orElseThrow().handle().outline();
        known = known.part(0, known.endX());
        BenchPhotograph photo = new BenchPhotograph(known, 15.1, 0.07, 7);
        SplittableRandom shake = new SplittableRandom(17);
        openPicture();
        click(shaken(photo.spot(0, 0), shake));
        click(shaken(photo.spot(known.endX(), 0), shake));
        assertThat(model.apart(known.endX() + " mm")).isEmpty();
        assertThat(model.state().value().lying().turnDeg()).isCloseTo(7, within(0.2));
        assertThat(model.state().value().lying().mmPerPixel()).isCloseTo(0.07, within(2e-4));
        hand.use(Tool.TRACE);
        for (int side : new int[] {1, -1}) {
            for (double x = 0.3; x < known.endX(); x += 2.4) {
                click(shaken(photo.edge(x, side), shake));
            }
        }
        List<Reading> readings = model.readings().orElseThrow();
        double exact = model.state().value().exactness().orElseThrow().bothSidesMm();
        double square = 0;
        for (Reading reading : readings) {
            double x = Math.max(0, Math.min(known.endX(), reading.x()));
            square += Math.pow(reading.diameterMm() - 2 * known.r(x), 2);
        }
        // The hand shakes by half a pixel, which is half of what the words promise.
        assertThat(Math.sqrt(square / readings.size())).isLessThan(exact);

        Path csv = folder.resolve("trace.csv");
        model.save(csv);
        assertThat(model.note().value()).startsWith("Saved as ");
        assertThat(Files.readString(csv)).startsWith("x [mm],diameter [mm]\r\n");
        List<Reading> again = ReadingsFile.read(csv, Optional.empty(), Tracing.PLAIN);
        assertThat(again).hasSameSizeAs(readings);
        assertThat(again.get(3).diameterMm())
                .isCloseTo(readings.get(3).diameterMm(), within(0.0051));

        TakeOffModel takeOff = new TakeOffModel(editor, Runnable::run, Runnable::run);
        takeOff.take(
                readings, "old.jpg", model.state().value().exactness().orElseThrow().toleranceMm());
        var taken = takeOff.state().value().taken().orElseThrow();
        assertThat(takeOff.settings().value().toleranceMm()).isCloseTo(0.15, within(1e-9));
        assertThat(takeOff.isTable()).isFalse();
        assertThat(taken.shape().name()).isEqualTo("old");
        double worst = 0;
        for (double x = 1; x < known.endX() - 1; x += 0.5) {
            double there = x + taken.outline().startX() - readings.get(0).x();
            worst = Math.max(worst, Math.abs(2 * (taken.outline().r(there) - known.r(x))));
        }
        assertThat(worst).isLessThan(0.15);
        assertThat(editor.status().value().undoName()).isEmpty();
        assertThat(takeOff.accept().isDone()).isTrue();
        assertThat(editor.worked().value().brief().shape().name()).isEqualTo("old");
        takeOff.open(csv);
        assertThat(takeOff.settings().value().toleranceMm()).isEqualTo(0.1);
    }

    private static Spot shaken(Spot spot, SplittableRandom shake) {
        return new Spot(
                spot.u() + 0.5 * shake.nextGaussian(), spot.v() + 0.5 * shake.nextGaussian());
    }

    @Test
    void savingWhereNothingCanBeIsSaidSo() {
        place();
        model.save(folder.resolve("nowhere").resolve("a.csv"));
        assertThat(model.note().value()).isNotBlank().doesNotStartWith("Saved");
    }
}
