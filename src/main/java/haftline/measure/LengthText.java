package haftline.measure;

/**
 * Lengths as they stand on a page at the lathe: as fine as they can be worked to and no finer.
 * Inches carry three decimals, and the nearest sixty-fourth where a rule or a drill is taken in
 * hand.
 */
public final class LengthText {
    private static final int INCH_DECIMALS = 3;

    /**
     * Metal is measured in hundredths of a mm, and a fit of tenths is lost where it is told
     * coarser: the decimals of the tables, so that one size is one figure wherever it stands.
     */
    private static final int METAL_DECIMALS = 2;

    /** Turned contours are measured no finer, mm (common practice, no source). */
    private static final int CONTOUR_DECIMALS = 1;

    /** Measured parts are compared to this, so that what they differ by shows. */
    private static final int FINE_INCH_DECIMALS = 4;

    private static final double FINE_STEP_MM = 0.01;
    private static final double FINE_STEP_IN_MM = Units.INCH.millimetres() / 10_000;

    private static final double WALL_STEP_MM = 0.1;
    private static final double WALL_STEP_IN_MM = Units.INCH.millimetres() / 1000;

    /** A wall that is a whole number of steps but for rounding is that number. */
    private static final double ROUNDING = 1e-9;

    private final Units units;

    /**
     * Texts in one unit.
     *
     * @param units the unit
     */
    public LengthText(Units units) {
        this.units = units;
    }

    /**
     * The unit of the texts.
     *
     * @return the unit
     */
    public Units units() {
        return units;
    }

    /**
     * A turned size or a length, without its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String contour(double mm) {
        return number(mm, CONTOUR_DECIMALS);
    }

    /**
     * A length beside its dimension line, without its unit: no zero trails behind a millimetre (ISO
     * 129-1, from memory), three decimals make up an inch.
     *
     * @param mm the length, mm
     * @param decimals greatest count of digits after the point, in mm
     * @return the text
     */
    public String dimension(double mm, int decimals) {
        return units == Units.MM
                ? NumberText.said(NumberText.upTo(mm, decimals))
                : number(mm, decimals);
    }

    /**
     * A size of metal, or one turned to fit metal, without its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String metal(double mm) {
        return number(mm, METAL_DECIMALS);
    }

    /**
     * A small difference, without its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String difference(double mm) {
        return number(mm, METAL_DECIMALS);
    }

    /**
     * A turned size or a length, with its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String withUnit(double mm) {
        return contour(mm) + " " + unit();
    }

    /**
     * A size that is compared with another, as fine as parts are measured, with its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String fine(double mm) {
        return Length.text(mm, units, units == Units.MM ? METAL_DECIMALS : FINE_INCH_DECIMALS);
    }

    /**
     * What {@link #fine} ends at.
     *
     * @return mm
     */
    public double fineStepMm() {
        return units == Units.MM ? FINE_STEP_MM : FINE_STEP_IN_MM;
    }

    /**
     * A wall, rounded down, for none may be called thicker than it is; without its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String wall(double mm) {
        double step = units == Units.MM ? WALL_STEP_MM : WALL_STEP_IN_MM;
        return number(Math.floor(mm / step + ROUNDING) * step, CONTOUR_DECIMALS);
    }

    /**
     * A drill's diameter, as it is stamped, without its unit.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String drill(double mm) {
        String tenths = NumberText.fixed(mm, CONTOUR_DECIMALS);
        String whole = NumberText.upTo(mm, METAL_DECIMALS);
        return units == Units.MM
                // Tenths, so that the points of a column stand under each other.
                ? (whole.length() > tenths.length() ? whole : tenths)
                : NumberText.fixed(mm / units.millimetres(), INCH_DECIMALS);
    }

    /**
     * A length in a sentence: with its unit, and in inches with the nearest sixty-fourth.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String inWords(double mm) {
        String fraction = fraction(mm);
        return contour(mm) + " " + unit() + (fraction.isEmpty() ? "" : " (" + fraction + ")");
    }

    /**
     * The nearest sixty-fourth of an inch; nothing in millimetres, and for nothing.
     *
     * @param mm the length, mm
     * @return the text
     */
    public String fraction(double mm) {
        if (units == Units.MM || mm < 0) {
            return "";
        }
        Length.Fraction nearest = Length.nearest64th(mm);
        String text = nearest.text();
        return nearest.sixtyFourths() == 0
                ? ""
                : "≈ " + text.substring(0, text.length() - " in".length());
    }

    /**
     * The symbol of the unit.
     *
     * @return {@code mm} or {@code in}
     */
    public String unit() {
        return units.symbol();
    }

    private String number(double mm, int decimals) {
        return NumberText.said(
                NumberText.fixed(
                        mm / units.millimetres(), units == Units.MM ? decimals : INCH_DECIMALS));
    }
}
