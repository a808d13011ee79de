package haftline.figures;

/** A stretch of the wood over a bore. */
public enum Zone {
    /** The tenon over the tang's bore. */
    TENON,
    /** The visible wood over the tang's bore. */
    BODY,
    /** The visible wood over the cap's bore. */
    CAP
}
