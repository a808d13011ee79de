package haftline.curve;

/**
 * The least height of an outline over a straight line, measured square to the axis.
 *
 * @param x where it stands, mm; the first place where there are several
 * @param height radius less the line's height there, mm; negative where the outline dips under the
 *     line
 */
public record Gap(double x, double height) {
    /**
     * Returns the lesser of two gaps; of two equal ones, this.
     *
     * @param other the gap to compare with
     * @return the lesser
     */
    public Gap least(Gap other) {
        return other.height < height ? other : this;
    }
}
