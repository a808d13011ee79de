package haftline.template;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A card as the layout sees it: grown by half the gap, cut into narrow columns, of each the lowest
 * and the highest place. Slots that open to the side count as filled.
 *
 * @param card the card
 * @param turned whether it lies turned by half a turn
 * @param offsetX x of the grown shape's left edge in the card's own (turned) coordinates, mm
 * @param offsetY y of its lowest place, mm
 * @param lower lowest place of each column over {@code offsetY}, mm
 * @param upper highest place of each column, mm
 * @param width width of the whole, mm
 * @param height height of the whole, mm
 */
record Silhouette(
        Card card,
        boolean turned,
        double offsetX,
        double offsetY,
        double[] lower,
        double[] upper,
        double width,
        double height) {
    /** Width of a column, mm: finer packs hardly tighter and takes longer. */
    static final double COLUMN_MM = 1;

    /** Chords of the flattened cards stay this near to their arcs, mm. */
    private static final double FLAT_MM = 0.01;

    /** Segments to a quarter turn of the grown shape's corners. */
    private static final int QUARTER = 16;

    static Silhouette of(Card card, double gapMm) {
        return of(card, grown(card, gapMm), false);
    }

    /** The same card turned by half a turn. */
    Silhouette otherWayUp(double gapMm) {
        return of(card, grown(card.turned(), gapMm), true);
    }

    static double grownArea(Card card, double gapMm) {
        return grown(card, gapMm).getArea();
    }

    private static Polygon grown(Card card, double gapMm) {
        BufferParameters round = new BufferParameters(QUARTER);
        // Left alone, the library first simplifies by a share of the distance.
        round.setSimplifyFactor(0);
        Polygon flat = Flattened.polygon(card.outline(), FLAT_MM);
        return (Polygon) new BufferOp(flat, round).getResultGeometry(reachMm(gapMm));
    }

    /** How far a shape is grown: half the gap, and what its chords and the corners' may cut off. */
    static double reachMm(double gapMm) {
        return gapMm / 2 + 2 * FLAT_MM;
    }

    private static Silhouette of(Card card, Polygon shape, boolean turned) {
        Coordinate[] ring = shape.getExteriorRing().getCoordinates();
        double minX = shape.getEnvelopeInternal().getMinX();
        double minY = shape.getEnvelopeInternal().getMinY();
        int columns = (int) Math.ceil(shape.getEnvelopeInternal().getWidth() / COLUMN_MM);
        double[] lower = new double[columns];
        double[] upper = new double[columns];
        Arrays.fill(lower, Double.POSITIVE_INFINITY);
        Arrays.fill(upper, Double.NEGATIVE_INFINITY);
        for (int i = 1; i < ring.length; i++) {
            spread(ring[i - 1], ring[i], minX, minY, lower, upper);
        }
        return new Silhouette(
                card,
                turned,
                minX,
                minY,
                lower,
                upper,
                shape.getEnvelopeInternal().getWidth(),
                shape.getEnvelopeInternal().getHeight());
    }

    /** Enters one straight side into every column that it touches. */
    private static void spread(
            Coordinate a, Coordinate b, double minX, double minY, double[] lower, double[] upper) {
        double from = (Math.min(a.x, b.x) - minX) / COLUMN_MM;
        double to = (Math.max(a.x, b.x) - minX) / COLUMN_MM;
        int first = Math.min(lower.length - 1, (int) Math.floor(from));
        int last = Math.min(lower.length - 1, (int) Math.floor(to));
        for (int i = first; i <= last; i++) {
            enter(at(a, b, minX + i * COLUMN_MM) - minY, i, lower, upper);
            enter(at(a, b, minX + (i + 1) * COLUMN_MM) - minY, i, lower, upper);
            if (a.x == b.x) {
                enter(a.y - minY, i, lower, upper);
                enter(b.y - minY, i, lower, upper);
            }
        }
    }

    private static double at(Coordinate a, Coordinate b, double x) {
        if (a.x == b.x) {
            return a.y;
        }
        double share = Math.max(0, Math.min(1, (x - a.x) / (b.x - a.x)));
        return a.y + share * (b.y - a.y);
    }

    private static void enter(double y, int column, double[] lower, double[] upper) {
        lower[column] = Math.min(lower[column], y);
        upper[column] = Math.max(upper[column], y);
    }
}
