package haftline.edit;

/** Which pieces a change of the shape is for. */
public enum Scope {
    /** The piece at hand alone, which from then on differs from its set. */
    THIS_PIECE,
    /** Every piece that shares the shape. */
    ALL_PIECES
}
