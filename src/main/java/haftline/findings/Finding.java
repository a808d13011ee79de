package haftline.findings;

import java.util.OptionalDouble;

/**
 * One thing that is wrong with a handle, or worth knowing. It holds figures only; its words are
 * made on demand, since most findings are made in the middle of a drag and never read.
 *
 * @param code what it is
 * @param gravity how grave
 * @param place where on the piece
 * @param atX mm from the shoulder; not a number where it has no place along the axis
 * @param figure the figure found, in {@code unit}; not a number where it has none
 * @param limit what it is held against, in {@code unit}; not a number where it has none
 * @param unit unit of figure and limit
 * @param subject what it is about where the code alone does not say, such as the name of a reading
 *     or a detail; may be empty
 */
public record Finding(
        Code code,
        Gravity gravity,
        Place place,
        double atX,
        double figure,
        double limit,
        Unit unit,
        String subject) {

    /** No figure, no limit or no place. */
    static final double NONE = Double.NaN;

    /** What a figure is counted in. */
    public enum Unit {
        /** Millimetres. */
        MM("mm"),
        /** Degrees. */
        DEG("deg"),
        /** A millimetre to the power of minus one. */
        PER_MM("1/mm"),
        /** A plain number. */
        PLAIN("");

        private final String text;

        Unit(String text) {
            this.text = text;
        }

        /**
         * The unit as it is written.
         *
         * @return its symbol, empty for a plain number
         */
        public String text() {
            return text;
        }
    }

    /**
     * A finding with figure and limit in mm.
     *
     * @param code what it is
     * @param gravity how grave
     * @param place where on the piece
     * @param atX mm from the shoulder, or not a number
     * @param figure mm
     * @param limit mm
     * @param subject what it is about, may be empty
     * @return the finding
     */
    static Finding mm(
            Code code,
            Gravity gravity,
            Place place,
            double atX,
            double figure,
            double limit,
            String subject) {
        return new Finding(code, gravity, place, atX, figure, limit, Unit.MM, subject);
    }

    /**
     * A finding without figures.
     *
     * @param code what it is
     * @param gravity how grave
     * @param place where on the piece
     * @param subject what it is about, may be empty
     * @return the finding
     */
    static Finding plain(Code code, Gravity gravity, Place place, String subject) {
        return new Finding(code, gravity, place, NONE, NONE, NONE, Unit.PLAIN, subject);
    }

    /**
     * Whether two findings say the same of the same part, whatever their figures.
     *
     * @param other another finding, perhaps of another handle
     * @return true where code, place and subject agree
     */
    public boolean isAbout(Finding other) {
        return code == other.code && place == other.place && subject.equals(other.subject);
    }

    /**
     * The place along the axis, if there is one.
     *
     * @return mm from the shoulder
     */
    public OptionalDouble knownX() {
        return known(atX);
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
