package haftline.write.pdf;

/** Which way the paper lies. */
public enum Orientation {
    /** The short edge is level. */
    PORTRAIT,
    /** The long edge is level. */
    LANDSCAPE,
    /** Whichever of the two needs fewer sheets; portrait where both need as many. */
    FEWEST_SHEETS
}
