package haftline.adjust.doubt;

/**
 * How much of a figure's variance one input explains by itself: its first-order index.
 *
 * @param input the input
 * @param ofWall share of the variance of the least wall over its limit
 * @param ofBalance share of the variance of the balance point
 */
public record Weight(Input input, double ofWall, double ofBalance) {}
