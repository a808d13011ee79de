package haftline.sheet;

/**
 * A figure with its name.
 *
 * @param label what it is of
 * @param figure the figure with its unit
 * @param note what goes with it, may be empty
 */
public record Fact(String label, String figure, String note) {}
