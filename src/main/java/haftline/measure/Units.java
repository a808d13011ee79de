package haftline.measure;

/** The unit in which lengths are shown and, where a text names none, read. */
public enum Units {
    /** Millimetres. */
    MM("mm", "mm", "millimetres", 1),
    /** Inches of 25.4 mm, exactly (international inch, 1959). */
    INCH("in", "inches", "inches", 25.4);

    private final String symbol;
    private final String heading;
    private final String words;
    private final double millimetres;

    Units(String symbol, String heading, String words, double millimetres) {
        this.symbol = symbol;
        this.heading = heading;
        this.words = words;
        this.millimetres = millimetres;
    }

    /**
     * The symbol that follows a number.
     *
     * @return {@code mm} or {@code in}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * What a heading calls it, where {@code in} would be read as a word.
     *
     * @return {@code mm} or {@code inches}
     */
    public String heading() {
        return heading;
    }

    /**
     * What a sentence calls it.
     *
     * @return {@code millimetres} or {@code inches}
     */
    public String words() {
        return words;
    }

    /**
     * How many millimetres one unit is.
     *
     * @return 1 or 25.4
     */
    public double millimetres() {
        return millimetres;
    }
}
