package haftline.edit;

/** A part of a kit, in the order of measuring. */
public enum KitPart {
    /** The blade. */
    BLADE,
    /** The tang. */
    TANG,
    /** The ferrule. */
    FERRULE,
    /** The end cap. */
    CAP
}
