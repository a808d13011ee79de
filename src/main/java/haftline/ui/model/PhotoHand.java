package haftline.ui.model;

import haftline.adjust.takeoff.PictureFit;
import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.adjust.takeoff.Reading;
import haftline.curve.Point;
import haftline.ui.model.PhotoState.Mark;
import java.util.List;
import java.util.Optional;

/**
 * What pointer and keys do over a photograph: set its points, trace the outline. Places are given
 * as they lie on the handle, mm from the shoulder and mm over the axis. Each point is one step.
 */
public final class PhotoHand {
    /** What a pointer over the photograph does. */
    public enum Tool {
        /** It shapes the piece, as without a photograph. */
        BOARD,
        /** It sets the points that tell scale and axis. */
        POINTS,
        /** It traces the outline. */
        TRACE
    }

    /**
     * A point in hand.
     *
     * @param index which of those that the tool sets
     * @param spot where it is held
     */
    public record Held(int index, Spot spot) {}

    private final PhotoModel model;
    private final Watched<Tool> tool = new Watched<>(Tool.BOARD);
    private final Watched<Optional<Integer>> chosen = new Watched<>(Optional.empty());
    private final Watched<Point> aim = new Watched<>(new Point(0, 0));
    private final Watched<Optional<Held>> held = new Watched<>(Optional.empty());

    private PictureFit lying = PhotoState.NONE.lying();

    PhotoHand(PhotoModel model) {
        this.model = model;
        model.state().watch(this::follow);
    }

    /** The aim stays over what it was over. */
    private void follow(PhotoState next) {
        if (!next.lying().equals(lying)) {
            aim.set(next.lying().at(lying.spot(aim.value())));
            lying = next.lying();
        }
    }

    private PhotoState now() {
        return model.state().value();
    }

    /**
     * What a pointer does.
     *
     * @return watched; set by {@link #use}
     */
    public Watched<Tool> tool() {
        return tool;
    }

    /**
     * Which of the tool's points is chosen.
     *
     * @return watched; empty where the next one would be new
     */
    public Watched<Optional<Integer>> chosen() {
        return chosen;
    }

    /**
     * Where the keyboard aims.
     *
     * @return watched; mm from the shoulder and over the axis
     */
    public Watched<Point> aim() {
        return aim;
    }

    /**
     * The point in hand.
     *
     * @return watched; empty where none is
     */
    public Watched<Optional<Held>> held() {
        return held;
    }

    /**
     * Takes a tool in hand.
     *
     * @param next the tool; without a photograph there is but the board
     */
    public void use(Tool next) {
        abandon();
        tool.set(now().picture().isEmpty() ? Tool.BOARD : next);
        chosen.set(firstUnset());
        model.note().set(next == Tool.TRACE && !now().isPlaced() ? now().wrong().orElse("") : "");
    }

    /** The point that a click would set: the first that is not there, else the first of all. */
    private Optional<Integer> firstUnset() {
        List<Mark> wanted = now().wanted();
        return tool.value() == Tool.POINTS
                ? wanted.stream()
                        .filter(mark -> !now().marks().containsKey(mark))
                        .findFirst()
                        .map(wanted::indexOf)
                : Optional.empty();
    }

    /**
     * The tool's points that are there.
     *
     * @return where they are in the picture; empty where one is not set
     */
    public List<Optional<Spot>> points() {
        return switch (tool.value()) {
            case BOARD -> List.of();
            case POINTS ->
                    now().wanted().stream()
                            .map(mark -> Optional.ofNullable(now().marks().get(mark)))
                            .toList();
            case TRACE -> now().trace().stream().map(Optional::of).toList();
        };
    }

    /**
     * A button goes down: the point there is taken in hand, else a new one, or the chosen of the
     * points to be set, is held there.
     *
     * @param at mm from the shoulder and over the axis
     * @param reachMm how near a point must be
     * @param isStraight whether a traced point stands at the place of the one before, as the second
     *     side of a step does
     */
    public void press(Point at, double reachMm, boolean isStraight) {
        Optional<Integer> there = nearest(at, reachMm);
        int index = there.orElse(chosen.value().orElse(next()));
        if (tool.value() == Tool.TRACE && there.isEmpty()) {
            index = next();
        }
        hold(index, isStraight && there.isEmpty() ? straight(at) : at);
    }

    private Optional<Integer> nearest(Point at, double reachMm) {
        Optional<Integer> found = Optional.empty();
        double least = reachMm;
        List<Optional<Spot>> points = points();
        for (int i = 0; i < points.size(); i++) {
            double far =
                    points.get(i)
                            .map(now().lying()::at)
                            .map(at::distanceTo)
                            .orElse(Double.POSITIVE_INFINITY);
            if (far <= least) {
                least = far;
                found = Optional.of(i);
            }
        }
        return found;
    }

    /** A new traced point, or the last of the points to be set. */
    private int next() {
        return tool.value() == Tool.TRACE ? now().trace().size() : now().wanted().size() - 1;
    }

    private Point straight(Point at) {
        List<Point> traced = now().traced();
        return tool.value() == Tool.TRACE && !traced.isEmpty()
                ? new Point(traced.get(traced.size() - 1).x(), at.r())
                : at;
    }

    private void hold(int index, Point at) {
        if (tool.value() == Tool.BOARD) {
            return;
        }
        if (tool.value() == Tool.TRACE && !now().isPlaced()) {
            model.note().set(now().wrong().orElse(""));
            return;
        }
        boolean isFar =
                2 * Math.abs(at.r()) > Reading.WIDEST_MM || Math.abs(at.x()) > Reading.LONGEST_MM;
        if (tool.value() == Tool.TRACE && isFar) {
            model.note().set("No handle reaches as far as that");
            return;
        }
        chosen.set(Optional.of(index));
        aim.set(at);
        held.set(Optional.of(new Held(index, now().lying().spot(at))));
    }

    /**
     * The pointer moves with the button held.
     *
     * @param at mm from the shoulder and over the axis
     * @param isStraight as for {@link #press}
     */
    public void drag(Point at, boolean isStraight) {
        held.value()
                .ifPresent(
                        point -> {
                            boolean isNew = point.index() == now().trace().size();
                            hold(point.index(), isStraight && isNew ? straight(at) : at);
                        });
    }

    /** The button goes up: the point stands where it was held, as one step. */
    public void release() {
        Optional<Held> point = held.value();
        held.set(Optional.empty());
        point.ifPresent(this::put);
    }

    private void put(Held point) {
        if (tool.value() == Tool.TRACE) {
            model.step(now().withTraced(point.index(), point.spot()));
            chosen.set(Optional.empty());
        } else {
            Mark mark = now().wanted().get(point.index());
            model.step(now().withMark(mark, point.spot()));
            now().wrong().ifPresent(model.note()::set);
            Optional<Integer> next = firstUnset();
            chosen.set(next.isPresent() ? next : Optional.of(point.index()));
        }
    }

    /** What is in hand goes back to where it was. */
    public void abandon() {
        held.set(Optional.empty());
    }

    /**
     * Moves the keyboard's aim.
     *
     * @param alongMm towards the butt
     * @param upMm away from the axis, upwards
     */
    public void moveAim(double alongMm, double upMm) {
        aim.set(new Point(aim.value().x() + alongMm, aim.value().r() + upMm));
    }

    /**
     * Sets the chosen point, or a new one, where the keyboard aims.
     *
     * @param isStraight as for {@link #press}
     */
    public void set(boolean isStraight) {
        int index = chosen.value().orElse(next());
        boolean isNew = tool.value() == Tool.TRACE && index == now().trace().size();
        hold(index, isStraight && isNew ? straight(aim.value()) : aim.value());
        release();
    }

    /**
     * Chooses the tool's next point or the one before, in a ring, and aims at it.
     *
     * @param by 1 for the next, -1 for the one before
     */
    public void choose(int by) {
        List<Optional<Spot>> points = points();
        if (!points.isEmpty()) {
            int at = chosen.value().orElse(by > 0 ? -1 : 0);
            int next = Math.floorMod(at + by, points.size());
            chosen.set(Optional.of(next));
            points.get(next).map(now().lying()::at).ifPresent(aim::set);
        }
    }

    /** No traced point is chosen any more: the next one is new. */
    public void chooseNone() {
        chosen.set(firstUnset());
    }

    /** Takes the chosen traced point away, else the last, as a step. */
    public void takeBack() {
        List<Spot> trace = now().trace();
        if (tool.value() == Tool.TRACE && !trace.isEmpty()) {
            int index = chosen.value().orElse(trace.size() - 1);
            chosen.set(Optional.empty());
            model.step(now().withoutTraced(Math.min(index, trace.size() - 1)));
        }
    }
}
