package haftline.set.production;

import haftline.figures.Blank;

/**
 * The blanks of one piece as they are sawn.
 *
 * @param piece the piece's name
 * @param stock key of its wood or plastic
 * @param stockName what that is called
 * @param acrossMm least side of the square or diameter of the rod, mm
 * @param lengthMm length to saw to, whole mm
 * @param count how many, spares included
 */
public record BlankNeed(
        String piece, String stock, String stockName, double acrossMm, double lengthMm, int count) {
    /** What is a whole number but for rounding is not raised to the next. */
    private static final double ROUNDING = 1e-9;

    /** The blanks of an order: {@link Blank}, its length raised to a whole mm for the saw. */
    static BlankNeed of(Order order) {
        Blank blank = Blank.of(order.figures().handle());
        return new BlankNeed(
                order.piece(),
                order.figures().handle().brief().stock().key(),
                order.figures().handle().brief().stock().name(),
                blank.sideMm(),
                Math.ceil(blank.lengthMm() - ROUNDING),
                order.blanks());
    }
}
