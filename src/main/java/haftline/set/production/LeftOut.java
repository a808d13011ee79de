package haftline.set.production;

/**
 * A piece that is not to be made.
 *
 * @param piece the piece's name
 * @param quantity how many were asked for
 * @param why what stops it, in words
 */
public record LeftOut(String piece, int quantity, String why) {}
