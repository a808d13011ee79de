package haftline.figures;

/**
 * How much material stands over a bore in one zone. Grooves count to their bottom.
 *
 * @param zone where
 * @param nominalMm least r - bore/2, mm, the bore on the axis
 * @param worstMm least r - bore/2 - wander, mm, at the worst azimuth; negative where the bore
 *     breaks out
 * @param atX where the worst wall is, mm from the shoulder
 * @param shortestWorstMm shortest distance between the bore's surface, wandered to the worst
 *     azimuth, its bottom and point included, and the outline of the zone, mm, the butt's face
 *     included where no cap's bore opens it; 0 where the bore breaks out
 * @param shortestAtX where on the surface that is, mm from the shoulder
 * @param limitMm the maker's limit for this zone and stock, mm, never under the stop
 */
public record Wall(
        Zone zone,
        double nominalMm,
        double worstMm,
        double atX,
        double shortestWorstMm,
        double shortestAtX,
        double limitMm) {
    /**
     * What is left over the limit.
     *
     * @return mm, negative where the wall is too thin
     */
    public double marginMm() {
        return worstMm - limitMm;
    }
}
