package haftline.measure;

/** The unit in which lengths are shown and, where a text names none, read. */
public enum Units {
    /** Millimetres. */
    MM("mm", 1),
    /** Inches of 25.4 mm, exactly (international inch, 1959). */
    INCH("in", 25.4);

    private final String symbol;
    private final double millimetres;

    Units(String symbol, double millimetres) {
        this.symbol = symbol;
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
     * How many millimetres one unit is.
     *
     * @return 1 or 25.4
     */
    public double millimetres() {
        return millimetres;
    }
}
