package haftline.ui.model;

/** What is under the pointer. */
public sealed interface Hit {
    /**
     * A node.
     *
     * @param name its name
     * @param fixedBy why it cannot be moved; empty for a free one
     */
    record OnNode(String name, String fixedBy) implements Hit {}

    /**
     * A detail.
     *
     * @param index its place in the shape's list
     * @param kind the trade's word for it
     */
    record OnDetail(int index, String kind) implements Hit {}

    /**
     * A grip of the chosen detail.
     *
     * @param index the detail's place in the shape's list
     * @param kind what is changed there
     */
    record OnGrip(int index, Grip.Kind kind) implements Hit {}

    /**
     * The arm at the chosen node that turns its slope.
     *
     * @param node the node's name
     */
    record OnSlope(String node) implements Hit {}
}
