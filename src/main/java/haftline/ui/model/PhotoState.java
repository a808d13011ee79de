package haftline.ui.model;

import haftline.adjust.takeoff.PictureExactness;
import haftline.adjust.takeoff.PictureFit;
import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TracedSides;
import haftline.curve.Point;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A photograph under the board, what was marked on it and what was traced over it. All places are
 * kept as they are in the picture, so that the trace follows where the points are set anew.
 *
 * @param picture the photograph, or empty
 * @param lying how it lies under the board, to scale or not yet
 * @param marks the points that were set
 * @param apartMm how far apart the first and the second are, mm, or empty where it is not said
 * @param frontMm where the foremost point on the axis stands, mm from the shoulder
 * @param isOnAxis whether the first and the second tell the lathe axis too
 * @param trace what was traced, in the order of tracing
 */
public record PhotoState(
        Optional<Picture> picture,
        PictureFit lying,
        Map<Mark, Spot> marks,
        OptionalDouble apartMm,
        double frontMm,
        boolean isOnAxis,
        List<Spot> trace) {
    /** Steps and ends of the two sides are the same within so many pixels. */
    private static final double NEAR_PX = 4;

    /** No photograph. */
    public static final PhotoState NONE =
            new PhotoState(
                    Optional.empty(),
                    new PictureFit(1, 0, 0, 0),
                    Map.of(),
                    OptionalDouble.empty(),
                    0,
                    true,
                    List.of());

    /** A point that tells how the photograph lies. */
    public enum Mark {
        /** One of two points of known distance. */
        FIRST("first point", "1"),
        /** The other. */
        SECOND("second point", "2"),
        /** On the lathe axis, nearer to the shoulder. */
        FRONT("axis, at the front", "axis, front"),
        /** On the lathe axis, nearer to the butt. */
        BACK("axis, further back", "axis, back");

        private final String words;
        private final String sign;

        Mark(String words, String sign) {
            this.words = words;
            this.sign = sign;
        }

        /**
         * Its name.
         *
         * @return as in a sentence
         */
        public String words() {
            return words;
        }

        /**
         * What stands beside it on the photograph.
         *
         * @return a short text
         */
        public String sign() {
            return sign;
        }
    }

    /** Copies map and list. */
    public PhotoState {
        marks = Map.copyOf(marks);
        trace = List.copyOf(trace);
    }

    /**
     * The points that are to be set.
     *
     * @return two or four, in order
     */
    public List<Mark> wanted() {
        return isOnAxis ? List.of(Mark.FIRST, Mark.SECOND) : List.of(Mark.values());
    }

    /**
     * What is still in the way of a photograph to scale.
     *
     * @return a sentence without a full stop, or empty where nothing is
     */
    public Optional<String> wrong() {
        for (Mark mark : wanted()) {
            if (!marks.containsKey(mark)) {
                return Optional.of("Not to scale yet: set the " + mark.words());
            }
        }
        if (near(Mark.FIRST, Mark.SECOND)) {
            return Optional.of(tooNear("The two points"));
        }
        if (!isOnAxis && near(Mark.FRONT, Mark.BACK)) {
            return Optional.of(tooNear("The two points on the axis"));
        }
        return apartMm.isEmpty()
                ? Optional.of("Not to scale yet: type how far apart the two points are")
                : Optional.empty();
    }

    private boolean near(Mark one, Mark other) {
        return marks.get(one).to(marks.get(other)) < PictureFit.LEAST_APART_PX;
    }

    private static String tooNear(String what) {
        return what + " stand at the same place: set them far apart";
    }

    /**
     * Whether the photograph lies to scale.
     *
     * @return true where all points and their distance are known
     */
    public boolean isPlaced() {
        return picture.isPresent() && wrong().isEmpty();
    }

    /** How it lies by its points; as it lay where they do not tell. */
    PhotoState laid() {
        return isPlaced() ? with(fit(), marks, trace) : this;
    }

    private PictureFit fit() {
        Spot first = marks.get(Mark.FIRST);
        Spot second = marks.get(Mark.SECOND);
        double apart = apartMm.orElseThrow();
        return isOnAxis
                ? PictureFit.onAxis(first, second, frontMm, apart)
                : PictureFit.beside(
                        first, second, apart, marks.get(Mark.FRONT), marks.get(Mark.BACK), frontMm);
    }

    /**
     * How exact a trace can be.
     *
     * @return empty while the photograph is not to scale
     */
    public Optional<PictureExactness> exactness() {
        return isPlaced()
                ? Optional.of(
                        new PictureExactness(
                                lying.mmPerPixel(),
                                marks.get(Mark.FIRST).to(marks.get(Mark.SECOND))))
                : Optional.empty();
    }

    /**
     * What was traced, as it lies on the handle.
     *
     * @return mm from the shoulder and over the axis, in the order of tracing
     */
    public List<Point> traced() {
        return trace.stream().map(lying::at).toList();
    }

    /**
     * What was traced, as readings.
     *
     * @return in order of x; empty while the photograph is not to scale
     */
    public List<Reading> readings() {
        return isPlaced() ? TracedSides.of(traced(), NEAR_PX * lying.mmPerPixel()) : List.of();
    }

    private PhotoState with(PictureFit fit, Map<Mark, Spot> points, List<Spot> line) {
        return new PhotoState(picture, fit, points, apartMm, frontMm, isOnAxis, line);
    }

    PhotoState withMark(Mark mark, Spot spot) {
        Map<Mark, Spot> next = new EnumMap<>(Mark.class);
        next.putAll(marks);
        next.put(mark, spot);
        return with(lying, next, trace).laid();
    }

    PhotoState withTrace(List<Spot> line) {
        return with(lying, marks, line);
    }

    /** With a point of the trace at another place, or one more behind the last. */
    PhotoState withTraced(int index, Spot spot) {
        List<Spot> line = new ArrayList<>(trace);
        if (index < line.size()) {
            line.set(index, spot);
        } else {
            line.add(spot);
        }
        return withTrace(line);
    }

    PhotoState withoutTraced(int index) {
        List<Spot> line = new ArrayList<>(trace);
        line.remove(index);
        return withTrace(line);
    }

    PhotoState withApart(double mm) {
        return new PhotoState(
                        picture, lying, marks, OptionalDouble.of(mm), frontMm, isOnAxis, trace)
                .laid();
    }

    PhotoState withFront(double mm) {
        return new PhotoState(picture, lying, marks, apartMm, mm, isOnAxis, trace).laid();
    }

    PhotoState withOnAxis(boolean is) {
        return new PhotoState(picture, lying, marks, apartMm, frontMm, is, trace).laid();
    }

    /** Another photograph: nothing is marked on it. */
    PhotoState withPicture(Picture other, PictureFit fit) {
        return new PhotoState(
                Optional.of(other), fit, Map.of(), OptionalDouble.empty(), 0, isOnAxis, List.of());
    }
}
