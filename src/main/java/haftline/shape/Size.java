package haftline.shape;

import haftline.measure.Checks;

/** How a node's diameter is given. */
public sealed interface Size {
    /**
     * A plain diameter.
     *
     * @param diameterMm mm, 1 to 200
     */
    record Plain(double diameterMm) implements Size {
        /** Checks the range. */
        public Plain {
            Checks.withinMm("diameter", diameterMm, 1, 200);
        }
    }

    /**
     * A multiple of a reference.
     *
     * @param factor 0.1 to 10
     * @param reference what it is a multiple of
     */
    record Times(double factor, Reference reference) implements Size {
        /** Checks the range. */
        public Times {
            Checks.within(
                    "diameter, multiple of " + reference.name().toLowerCase(java.util.Locale.ROOT),
                    factor,
                    0.1,
                    10);
        }
    }
}
