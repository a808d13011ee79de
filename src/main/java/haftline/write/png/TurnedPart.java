package haftline.write.png;

import haftline.curve.Outline;
import java.util.function.DoubleUnaryOperator;

/**
 * A turned part of a finished piece.
 *
 * @param startX mm from the shoulder
 * @param endX mm, greater
 * @param radius radius over x, mm
 * @param slope dr/dx over x
 * @param finish how it looks
 */
record TurnedPart(
        double startX,
        double endX,
        DoubleUnaryOperator radius,
        DoubleUnaryOperator slope,
        Finish finish) {
    static TurnedPart wood(Outline outline, double fromX, double toX, Finish finish) {
        return new TurnedPart(fromX, toX, outline::rAfter, outline::slope, finish);
    }

    /**
     * A ring or disc whose two rims are broken by a quarter round.
     *
     * @param rimMm radius of that quarter round
     */
    static TurnedPart ring(double fromX, double toX, double radiusMm, double rimMm, Finish finish) {
        double rim = Math.min(rimMm, Math.min((toX - fromX) / 2, radiusMm / 2));
        return new TurnedPart(
                fromX,
                toX,
                x ->
                        radiusMm
                                - rim
                                + Math.sqrt(
                                        Math.max(0, rim * rim - square(past(x, fromX, toX, rim)))),
                x -> {
                    double past = past(x, fromX, toX, rim);
                    return -past / Math.sqrt(Math.max(1e-6, rim * rim - past * past));
                },
                finish);
    }

    /** How far x lies beyond the level part: negative at the front rim. */
    private static double past(double x, double fromX, double toX, double rim) {
        return x < fromX + rim ? x - fromX - rim : Math.max(0, x - toX + rim);
    }

    /** Half of a flattened ball, its pole at the far end. */
    static TurnedPart dome(double fromX, double thicknessMm, double radiusMm, Finish finish) {
        return new TurnedPart(
                fromX,
                fromX + thicknessMm,
                x -> radiusMm * height((x - fromX) / thicknessMm),
                x -> {
                    double s = (x - fromX) / thicknessMm;
                    return -radiusMm / thicknessMm * s / Math.max(1e-3, height(s));
                },
                finish);
    }

    private static double height(double share) {
        return Math.sqrt(Math.max(0, 1 - share * share));
    }

    private static double square(double value) {
        return value * value;
    }
}
