package haftline.ui.board;

import haftline.shape.Join;
import java.util.OptionalDouble;

/**
 * What a hand does to the piece on the board; each call of {@link #drag} belongs to one gesture.
 */
public interface BoardActions {
    /**
     * A node is taken hold of or clicked on.
     *
     * @param node its name
     */
    void grab(String node);

    /**
     * The node in hand is wanted at a place.
     *
     * @param x mm from the shoulder
     * @param diameterMm mm
     * @param snap whether to take the nearest step
     */
    void drag(double x, double diameterMm, boolean snap);

    /** The node in hand is let go: the gesture is one step. */
    void release();

    /** The node in hand goes back to where it was taken. */
    void letBack();

    /** Nothing is selected any more. */
    void deselect();

    /**
     * A node is wanted at a place on the outline.
     *
     * @param x mm from the shoulder
     */
    void add(double x);

    /**
     * A node is taken away.
     *
     * @param node its name
     */
    void remove(String node);

    /**
     * A node is moved by a small step.
     *
     * @param node its name
     * @param alongMm mm towards the butt
     * @param diameterMm mm on the diameter
     */
    void nudge(String node, double alongMm, double diameterMm);

    /**
     * A node's join is chosen.
     *
     * @param node its name
     * @param join how the curves meet there
     */
    void join(String node, Join join);

    /**
     * A node's slope is fixed or left free.
     *
     * @param node its name
     * @param degrees degrees from the axis, or empty for free
     */
    void slope(String node, OptionalDouble degrees);
}
