package haftline.write.pdf;

import haftline.measure.Checks;

/**
 * A sheet of paper, upright.
 *
 * @param name what it is called
 * @param widthMm the short edge, 100 to 5000
 * @param heightMm the long edge, not shorter
 */
public record Paper(String name, double widthMm, double heightMm) {
    /** ISO 216. */
    public static final Paper A4 = new Paper("A4", 210, 297);

    /** ISO 216. */
    public static final Paper A3 = new Paper("A3", 297, 420);

    /** ANSI/ASME Y14.1, size A: 8 1/2 by 11 inches. */
    public static final Paper LETTER = new Paper("Letter", 215.9, 279.4);

    /** PDF 1.7 (ISO 32000-1, annex C) knows pages of up to 14 400 units, 5080 mm. */
    private static final double GREATEST_MM = 5000;

    /** A bar of 4 inches and its margins want so much. */
    private static final double LEAST_MM = 140;

    /**
     * Checks name and sizes.
     *
     * @throws IllegalArgumentException where the name is blank or a size out of range
     */
    public Paper {
        Checks.named("paper", name);
        Checks.within("paper width", widthMm, LEAST_MM, GREATEST_MM);
        Checks.within("paper height", heightMm, widthMm, GREATEST_MM);
    }
}
