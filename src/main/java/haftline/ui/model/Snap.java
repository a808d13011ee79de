package haftline.ui.model;

import haftline.measure.Units;

/** The steps in which a dragged node moves, along the axis and in diameter. */
public enum Snap {
    /** A hundredth of a millimetre, finer than anyone turns. */
    FREE(0.01),
    /** Half a millimetre. */
    HALF_MILLIMETRE(0.5),
    /** A sixty-fourth of an inch. */
    SIXTY_FOURTH(25.4 / 64);

    private final double stepMm;

    Snap(double stepMm) {
        this.stepMm = stepMm;
    }

    /**
     * The step.
     *
     * @return mm
     */
    public double stepMm() {
        return stepMm;
    }

    /**
     * The step that suits a unit.
     *
     * @param units unit of lengths on the screen
     * @return half a millimetre or a sixty-fourth of an inch
     */
    public static Snap of(Units units) {
        return units == Units.MM ? HALF_MILLIMETRE : SIXTY_FOURTH;
    }

    /**
     * The nearest whole step.
     *
     * @param mm a length
     * @return mm, without the noise of a sum of steps
     */
    public double nearest(double mm) {
        // A millionth of a millimetre is noise, but 64ths need their six decimals.
        return Math.round(Math.round(mm / stepMm) * stepMm * 1e6) / 1e6;
    }
}
