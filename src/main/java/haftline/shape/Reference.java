package haftline.shape;

/** A diameter that a kit or a set gives, of which a node's diameter may be a multiple. */
public enum Reference {
    /** Outside diameter of the ferrule. */
    FERRULE,
    /** Diameter on which the cap's head seats; without a cap the maker's butt diameter. */
    SEAT,
    /** The set's common greatest diameter. */
    SWELL
}
