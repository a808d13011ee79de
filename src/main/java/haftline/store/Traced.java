package haftline.store;

import haftline.adjust.takeoff.Reading;
import java.util.List;

/**
 * What was read of a traced outline.
 *
 * @param readings the readings in the order of the file
 * @param unit what the file says of its unit; another scale may have been asked for
 */
public record Traced(List<Reading> readings, Unit unit) {
    /** Copies the list. */
    public Traced {
        readings = List.copyOf(readings);
    }

    /**
     * The unit of a drawing.
     *
     * @param mm mm a unit
     * @param isSaid whether the file says so; else it is what such files are usually in
     */
    public record Unit(double mm, boolean isSaid) {}
}
