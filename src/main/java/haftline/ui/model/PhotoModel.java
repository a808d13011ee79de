package haftline.ui.model;

import haftline.adjust.takeoff.PictureFit;
import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.curve.Point;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.measure.Length;
import haftline.measure.OutOfRange;
import haftline.store.ReadingsFile;
import haftline.store.SaveException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;

/**
 * A photograph under the board. An aid of the window, no part of the handle: the set, its history
 * and its file know nothing of it; it has a history of its own.
 */
public final class PhotoModel {
    /** How strong the photograph shows where nobody said. */
    public static final double USUAL_SHARE = 0.7;

    /** Weaker than this nobody would find it again. */
    private static final double LEAST_SHARE = 0.1;

    /** Before it is to scale a photograph is this much wider than the handle is long. */
    private static final double WIDER = 1.3;

    /** Where the piece cannot be drawn, the handle is taken to be this long, mm. */
    private static final double USUAL_LENGTH_MM = 120;

    private static final double LEAST_APART_MM = 1;

    private final EditorModel editor;
    private final Latest reading;
    private final Picture.Reader reader;
    private final PhotoHand hand;
    private final Watched<PhotoState> state = new Watched<>(PhotoState.NONE);
    private final Watched<Double> share = new Watched<>(USUAL_SHARE);
    private final Watched<Boolean> isShown = new Watched<>(true);
    private final Watched<Boolean> isReading = new Watched<>(false);
    private final Watched<String> note = new Watched<>("");
    private final Deque<PhotoState> before = new ArrayDeque<>();
    private final Deque<PhotoState> after = new ArrayDeque<>();

    /**
     * No photograph yet.
     *
     * @param editor the editor
     * @param reader reads pictures
     * @param background where they are read
     * @param drawing where what is watched changes
     */
    public PhotoModel(
            EditorModel editor, Picture.Reader reader, Executor background, Executor drawing) {
        this.editor = editor;
        this.reader = reader;
        reading = new Latest(background, drawing);
        hand = new PhotoHand(this);
    }

    /**
     * The photograph, its points and what was traced.
     *
     * @return watched
     */
    public Watched<PhotoState> state() {
        return state;
    }

    /**
     * What is done to it by hand.
     *
     * @return the hand
     */
    public PhotoHand hand() {
        return hand;
    }

    /**
     * How strong the photograph shows.
     *
     * @return watched, 0.1 to 1; set by {@link #stronger} and {@link #share(double)}
     */
    public Watched<Double> share() {
        return share;
    }

    /**
     * Sets how strong the photograph shows.
     *
     * @param wanted taken into 0.1 to 1
     */
    public void share(double wanted) {
        share.set(Math.max(LEAST_SHARE, Math.min(1, wanted)));
    }

    /**
     * Lets the photograph show more or less strongly.
     *
     * @param by share to add
     */
    public void stronger(double by) {
        share(Math.round((share.value() + by) * 100) / 100.0);
    }

    /**
     * Whether the photograph is to be seen.
     *
     * @return watched; may be set
     */
    public Watched<Boolean> isShown() {
        return isShown;
    }

    /**
     * Whether one is being read.
     *
     * @return watched
     */
    public Watched<Boolean> isReading() {
        return isReading;
    }

    /**
     * How strong it shows on the board now.
     *
     * @return 0 where there is none or it is hidden
     */
    public double strength() {
        return state.value().picture().isPresent() && isShown.value() ? share.value() : 0;
    }

    /**
     * What is to be said, such as why a picture could not be read.
     *
     * @return watched; may be empty
     */
    public Watched<String> note() {
        return note;
    }

    /**
     * Puts a picture under the board, as a step. One that cannot be read leaves all as it is.
     *
     * @param file a PNG or JPEG file
     */
    public void open(Path file) {
        isReading.set(true);
        note.set("");
        reading.call(
                () -> reader.read(file),
                picture -> {
                    isReading.set(false);
                    isShown.set(true);
                    step(state.value().withPicture(picture, loose(picture)));
                    hand.use(PhotoHand.Tool.POINTS);
                    // The shoulder, which is in sight.
                    hand.aim().set(new Point(0, 0));
                },
                failed -> {
                    isReading.set(false);
                    note.set(failed);
                });
    }

    /** Across the piece, so that all of it is seen. */
    private PictureFit loose(Picture picture) {
        Optional<Handle> handle =
                editor.drawn().value().flatMap(Worked::figures).map(Figures::handle);
        double from = handle.map(Handle::ferruleFaceX).orElse(0.0);
        double to = handle.map(Handle::buttX).orElse(USUAL_LENGTH_MM);
        return PictureFit.upright(
                WIDER * (to - from) / picture.width(),
                new Spot(picture.width() / 2.0, picture.height() / 2.0),
                new Point((from + to) / 2, 0));
    }

    /** Takes the photograph away, as a step. */
    public void remove() {
        step(PhotoState.NONE);
        hand.use(PhotoHand.Tool.BOARD);
    }

    /**
     * Reads the distance of the two points that was typed, as a step.
     *
     * @param text a length
     * @return empty where it was taken, else what is expected
     */
    public Optional<String> apart(String text) {
        OptionalDouble mm = Length.parse(text, editor.units().value());
        if (mm.isEmpty()
                || mm.getAsDouble() < LEAST_APART_MM
                || mm.getAsDouble() > PictureFit.LONGEST_MM) {
            return Optional.of(
                    "expected a length "
                            + OutOfRange.range(
                                    LEAST_APART_MM, PictureFit.LONGEST_MM, editor.units().value()));
        }
        step(state.value().withApart(mm.getAsDouble()));
        return Optional.empty();
    }

    /**
     * Reads the place of the foremost point on the axis that was typed, as a step.
     *
     * @param text a length from the shoulder, negative before it
     * @return empty where it was taken, else what is expected
     */
    public Optional<String> front(String text) {
        OptionalDouble mm = Length.parse(text, editor.units().value());
        if (mm.isEmpty() || Math.abs(mm.getAsDouble()) > PictureFit.LONGEST_MM) {
            return Optional.of("expected a length from the shoulder, negative before it");
        }
        step(state.value().withFront(mm.getAsDouble()));
        return Optional.empty();
    }

    /**
     * Says whether the two points of known distance lie on the lathe axis, as a step.
     *
     * @param is false where two more points tell the axis
     */
    public void onAxis(boolean is) {
        step(state.value().withOnAxis(is));
        hand.chooseNone();
    }

    /** A step that can be gone back. */
    void step(PhotoState next) {
        if (!next.equals(state.value())) {
            before.push(state.value());
            after.clear();
            state.set(next);
            note.set("");
        }
    }

    /** Goes one step back in what was done to the photograph, if there is one. */
    public void undo() {
        go(before, after);
    }

    /** Goes one step forward again, if there is one. */
    public void redo() {
        go(after, before);
    }

    private void go(Deque<PhotoState> from, Deque<PhotoState> to) {
        hand.abandon();
        if (!from.isEmpty()) {
            to.push(state.value());
            state.set(from.pop());
            hand.use(hand.tool().value());
        }
    }

    /**
     * Whether there is a step to go back.
     *
     * @return true where there is
     */
    public boolean canUndo() {
        return !before.isEmpty();
    }

    /** Takes all that was traced away, as a step. */
    public void clearTrace() {
        hand.chooseNone();
        step(state.value().withTrace(List.of()));
    }

    /**
     * What was traced, ready for the take-off.
     *
     * @return the readings, or empty where they are too few, which is said
     */
    public Optional<List<Reading>> readings() {
        List<Reading> readings = state.value().readings();
        if (readings.size() < TakeOff.FEWEST) {
            note.set(
                    "A take-off wants "
                            + TakeOff.FEWEST
                            + " readings or more from the shoulder to the butt; there are "
                            + readings.size());
            return Optional.empty();
        }
        return Optional.of(readings);
    }

    /**
     * Saves what was traced as a table of readings.
     *
     * @param to the file; one of that name is kept as a backup
     */
    public void save(Path to) {
        try {
            ReadingsFile.save(to, state.value().readings());
            note.set("Saved as " + to.toAbsolutePath().normalize() + ".");
        } catch (SaveException failed) {
            note.set(failed.getMessage());
        }
    }
}
