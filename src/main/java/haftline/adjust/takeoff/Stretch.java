package haftline.adjust.takeoff;

/**
 * A run of readings that one simple curve fits.
 *
 * @param from first reading
 * @param to last reading, included
 * @param kind the curve
 * @param order of a polynomial
 * @param start where a butt's form begins, mm
 * @param cost squares over the readings' variance, and the price of its parameters
 */
record Stretch(int from, int to, Kind kind, int order, double start, double cost) {
    /** What fits it. */
    enum Kind {
        /** A polynomial of the diameter in x. */
        POLYNOMIAL,
        /** A circle's arc. */
        ARC,
        /** The butt's chamfer of 45 degrees. */
        CHAMFERED,
        /** The butt's quarter round. */
        ROUNDED,
        /** The butt's dome. */
        DOMED;

        boolean isButt() {
            return this != POLYNOMIAL && this != ARC;
        }
    }

    int count() {
        return to - from + 1;
    }
}
