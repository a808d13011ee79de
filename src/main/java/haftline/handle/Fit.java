package haftline.handle;

/** How a tang is held in its bore. */
public enum Fit {
    /** Pressed into an undersize bore, so that the fibres part and grip. */
    PRESSED,
    /** Bonded with adhesive in a bore a little over size. */
    BONDED
}
