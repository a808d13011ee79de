package haftline.adjust.doubt;

/**
 * How the wall spreads at one place, for a curve under the board.
 *
 * @param x mm from the shoulder
 * @param lowMm 5 in 100 handles have less, mm
 * @param middleMm half have less, mm
 * @param highMm 5 in 100 have more, mm
 */
public record Band(double x, double lowMm, double middleMm, double highMm) {}
