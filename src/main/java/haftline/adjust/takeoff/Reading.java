package haftline.adjust.takeoff;

import haftline.measure.Checks;

/**
 * One calliper reading. Two at one place are the two sides of a step.
 *
 * @param x mm along the axis, growing towards the butt
 * @param diameterMm diameter read there, mm, 0 to 200
 * @param line line of the file that it stands in, from 1; 0 where it was not read from a file
 */
public record Reading(double x, double diameterMm, int line) {
    /** The widest that is turned as a handle, mm. */
    public static final double WIDEST_MM = 200;

    /** The longest that is measured, mm. */
    public static final double LONGEST_MM = 1000;

    /** Checks the ranges. */
    public Reading {
        Checks.within("x", x, -LONGEST_MM, 2 * LONGEST_MM);
        Checks.within("diameter", diameterMm, 0, WIDEST_MM);
    }
}
