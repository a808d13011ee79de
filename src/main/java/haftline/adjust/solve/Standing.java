package haftline.adjust.solve;

/** How a demand stands after an adjustment. */
public enum Standing {
    /** It is met. */
    MET("met"),
    /** No way was found to meet it together with the others; there may be one. */
    NOT_WITHIN_REACH("not met within reach"),
    /** Nothing that may move can meet it; the answer says why. */
    IMPOSSIBLE("impossible");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /**
     * What it is called.
     *
     * @return in plain words
     */
    public String words() {
        return words;
    }
}
