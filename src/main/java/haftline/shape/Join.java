package haftline.shape;

/** How the outline passes a node. */
public enum Join {
    /** Without a break in direction. */
    SMOOTH,
    /** With a corner. */
    CRISP
}
