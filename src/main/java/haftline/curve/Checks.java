package haftline.curve;

import java.util.Locale;

/** The checks that every record of this package makes on what it is given. */
final class Checks {
    /**
     * How far below the axis a computed radius may fall by rounding before it counts as a mistake,
     * mm. A millionth of a micron: far over rounding at the size of a handle, far under any tool.
     */
    static final double AXIS_ROUNDING_MM = 1e-9;

    private Checks() {}

    static void finite(String name, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value);
        }
    }

    static void radius(String name, double value) {
        if (!(value >= -AXIS_ROUNDING_MM && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    name + " must be a radius of 0 or more in mm, not " + value);
        }
    }

    static void positive(String name, double value) {
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    name + " must be finite and greater than 0, not " + value);
        }
    }

    static void notNegative(String name, double value) {
        if (!(value >= 0 && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    name + " must be finite and 0 or more, not " + value);
        }
    }

    static void increasing(double startX, double endX) {
        finite("startX", startX);
        finite("endX", endX);
        if (!(endX > startX)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "endX must be greater than startX; got startX %s, endX %s",
                            startX,
                            endX));
        }
    }

    /** Refuses a stretch of x that has no point in common with [startX, endX]. */
    static void overlap(double fromX, double toX, double startX, double endX) {
        if (!(fromX <= toX && fromX <= endX && toX >= startX)) {
            throw new IllegalArgumentException(
                    "the stretch from "
                            + fromX
                            + " to "
                            + toX
                            + " must run forward and touch ["
                            + startX
                            + ", "
                            + endX
                            + "]");
        }
    }

    static void inside(String name, double value, double least, double greatest) {
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(
                    name + " must lie in [" + least + ", " + greatest + "], not " + value);
        }
    }
}
