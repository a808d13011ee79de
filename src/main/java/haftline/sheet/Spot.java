package haftline.sheet;

/**
 * What a letter on a drawing means: a size across the axis at one place, or a length between two.
 * In mm, x from the shoulder, y from the axis.
 *
 * @param fromX where it is, or begins
 * @param toX where it ends; the same for a size across
 * @param radiusMm distance of the edge from the axis there
 */
public record Spot(double fromX, double toX, double radiusMm) {
    static Spot across(double x, double radiusMm) {
        return new Spot(x, x, radiusMm);
    }

    static Spot along(double fromX, double toX, double radiusMm) {
        return new Spot(fromX, toX, radiusMm);
    }

    /**
     * Whether it is a size across the axis.
     *
     * @return false for a length along it
     */
    public boolean isAcross() {
        return fromX == toX;
    }
}
