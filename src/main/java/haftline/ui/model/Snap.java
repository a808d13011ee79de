package haftline.ui.model;

import haftline.measure.Units;

/** The steps in which a dragged node moves, along the axis and in diameter. */
public enum Snap {
    /** A hundredth of a millimetre, finer than anyone turns. */
    FREE(0.01),
    /** Half a millimetre. */
    HALF_MILLIMETRE(0.5),
    /** A sixty-fourth of an inch. */
    SIXTY_FOURTH(25.4 / 64),
    /** A tenth of a millimetre, for the sizes of details. */
    TENTH_MILLIMETRE(0.1),
    /** Five thousandths of an inch, for the sizes of details. */
    FIVE_THOUSANDTHS(0.127);

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
     * The step for the sizes of details, which are a fraction of those of nodes.
     *
     * @return a finer step
     */
    public Snap forDetails() {
        return switch (this) {
            case HALF_MILLIMETRE -> TENTH_MILLIMETRE;
            case SIXTY_FOURTH -> FIVE_THOUSANDTHS;
            default -> this;
        };
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
