package haftline.sheet.page;

/** Something that is set in a column and takes as much height as it needs. */
interface Block {
    /**
     * Sets it.
     *
     * @param ink where it is drawn
     * @param x left edge, mm
     * @param top upper edge, mm, y growing upwards
     * @param width of the column, mm
     * @param k size of the type, 1 for body text of 11.5 points
     * @return the height taken, mm
     */
    double set(Ink ink, double x, double top, double width, double k);

    /** The height it takes. */
    default double heightMm(double width, double k) {
        return set(new Ink(), 0, 0, width, k);
    }
}
