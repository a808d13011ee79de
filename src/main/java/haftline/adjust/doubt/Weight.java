package haftline.adjust.doubt;

/**
 * How much of a figure's variance one input accounts for: its Shapley effect. Over all inputs they
 * add up to 1, or to 0 for a figure that nothing moves.
 *
 * @param input the input
 * @param ofWall share of the variance of the least wall over its limit, 0 to 1
 * @param ofBalance share of the variance of the balance point, 0 to 1
 */
public record Weight(Input input, double ofWall, double ofBalance) {}
