package haftline.adjust.doubt;

/** What is not quite as drawn. */
public enum Input {
    /** The ferrule's own sizes, from part to part and by the doubt of the readings. */
    FERRULE("the ferrule's sizes"),
    /** The cap's head, likewise. */
    CAP("the cap's head"),
    /** How near the turned diameters come to the drawn ones. */
    TURNING("turning the body"),
    /** How near the tenon comes to its size. */
    TENON("turning the tenon"),
    /** The bores' offset at their mouths. */
    MOUTH("the bores' mouths off the axis"),
    /** How the bores run off with depth. */
    DRIFT("the drill running off"),
    /** How near the bores come to their depth. */
    DEPTH("the bores' depth"),
    /** How much wider than drawn the holes are cut. */
    OVERSIZE("holes cut too wide"),
    /** The stock's density. */
    DENSITY("the stock's density"),
    /** Masses that were not weighed. */
    RECKONED("parts not weighed");

    private final String text;

    Input(String text) {
        this.text = text;
    }

    /**
     * In words.
     *
     * @return to stand in a list
     */
    public String text() {
        return text;
    }
}
