package haftline.findings;

/** A part of the finished piece. */
public enum Place {
    /** The blade. */
    BLADE,
    /** The tang. */
    TANG,
    /** The ferrule. */
    FERRULE,
    /** The tenon. */
    TENON,
    /** The visible wood. */
    BODY,
    /** The bores. */
    BORE,
    /** The butt and the wood over the cap's bore. */
    CAP,
    /** The blank. */
    BLANK,
    /** The stock itself. */
    STOCK,
    /** The whole piece. */
    PIECE
}
