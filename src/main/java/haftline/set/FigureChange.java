package haftline.set;

import java.util.Locale;

/**
 * One figure of a handle with the parts of two batches.
 *
 * @param what which figure
 * @param step which step of a bore, from 1, the deepest first; 1 for every other figure
 * @param before the figure with the batch before; not a number where it has none
 * @param after the figure with the new batch; not a number where it has none
 */
public record FigureChange(What what, int step, double before, double after) {
    /** Differences under this are rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * What is worked to, and how small a difference of it is not worked to: a drill is another or
     * not, callipers on metal and tenon repeat within 0.05 mm, a depth stop is set to half a
     * millimetre (all common practice, no source).
     */
    public enum What {
        /** Drill for the tang, mm. */
        TANG_DRILL("tang drill", 0),
        /** Depth of the tang's bore to full diameter from the tenon's end, mm. */
        TANG_DEPTH("depth of the tang's bore", 0.5),
        /** Drill for the cap's spigot, mm. */
        CAP_DRILL("cap drill", 0),
        /** Depth of the cap's bore to full diameter from the butt, mm. */
        CAP_DEPTH("depth of the cap's bore", 0.5),
        /** Diameter of the tenon, mm. */
        TENON_DIAMETER("tenon", 0.05),
        /** Length of the tenon, mm. */
        TENON_LENGTH("length of the tenon", 0.25),
        /** Diameter of the wood at the shoulder, mm. */
        SHOULDER_DIAMETER("diameter at the shoulder", 0.1),
        /** Diameter of the wood at the seat, mm. */
        SEAT_DIAMETER("diameter at the seat", 0.1),
        /** Ferrule's front face to butt, cap included, mm. */
        LENGTH("length of the handle", 0.5),
        /** Shoulder to the wood's butt face, mm. */
        VISIBLE_WOOD("visible wood", 0.5),
        /** Least wall of the tenon at the worst wander, mm. */
        TENON_WALL("wall of the tenon", 0.1),
        /** Least wall over the tang's bore at the worst wander, mm. */
        BODY_WALL("wall over the tang's bore", 0.1),
        /** Least wall over the cap's bore at the worst wander, mm. */
        CAP_WALL("wall over the cap's bore", 0.1),
        /** Balance point behind the ferrule's front face, mm. */
        BALANCE("balance behind the ferrule's front", 0.5),
        /** Mass of the finished piece, g. */
        MASS("mass", 0.5);

        private final String words;
        private final double worth;

        What(String words, double worth) {
            this.words = words;
            this.worth = worth;
        }

        /**
         * Its name in the trade's words.
         *
         * @return lower case
         */
        public String words() {
            return words;
        }

        /**
         * Whether it is set or turned at the lathe; else it follows from what is.
         *
         * @return false for walls, balance and mass
         */
        public boolean isWork() {
            return compareTo(TENON_WALL) < 0;
        }

        /**
         * Whether it is a wall, which is never told thicker than it is.
         *
         * @return true for the walls of tenon, body and cap
         */
        public boolean isWall() {
            return this == TENON_WALL || this == BODY_WALL || this == CAP_WALL;
        }

        /**
         * The largest difference that nobody works to.
         *
         * @return in the figure's unit, 0 where any difference counts
         */
        public double worth() {
            return worth;
        }

        /**
         * The figure's name as it is written in answers for other programs.
         *
         * @return lower-case words joined by underscores, the unit behind
         */
        public String text() {
            return name().toLowerCase(Locale.ROOT) + (this == MASS ? "_g" : "_mm");
        }
    }

    /**
     * The figure in the trade's words.
     *
     * @return such as {@code tang drill, step 2}
     */
    public String words() {
        return step == 1 ? what.words() : what.words() + ", step " + step;
    }

    /**
     * A value of this figure as it may be told in steps: a wall is rounded down.
     *
     * @param value the figure, in its unit
     * @param step what the text ends at, in the same unit, above 0
     * @return the value, a wall on a step
     */
    public double told(double value, double step) {
        return what.isWall() ? Math.floor(value / step + ROUNDING) * step : value;
    }

    /**
     * How much the figure grew.
     *
     * @return in the figure's unit; not a number where one batch has no such figure
     */
    public double difference() {
        return after - before;
    }

    /**
     * Whether somebody at the lathe would work otherwise.
     *
     * @return true where the difference is over its worth, or the figure is there only once
     */
    public boolean isChange() {
        return Double.isNaN(before) != Double.isNaN(after)
                || Math.abs(difference()) > what.worth() + ROUNDING;
    }
}
