package haftline.template;

/** Something on a card that is not cut through. */
public sealed interface Mark permits ScoreLine, Lettering {
    /**
     * The mark moved.
     *
     * @param dx along x, mm
     * @param dy along y, mm
     * @return the moved mark
     */
    Mark moved(double dx, double dy);

    /**
     * The mark turned by half a turn about the origin.
     *
     * @return the turned mark
     */
    Mark turned();
}
