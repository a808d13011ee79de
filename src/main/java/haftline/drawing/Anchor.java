package haftline.drawing;

/** Which point of a line of text stands at its position; always on the baseline. */
public enum Anchor {
    /** The left end. */
    START(0),
    /** The middle. */
    MIDDLE(0.5),
    /** The right end. */
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** The share of the text's width that lies before the anchor. */
    double share() {
        return share;
    }
}
