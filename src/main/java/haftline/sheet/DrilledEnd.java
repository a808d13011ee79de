package haftline.sheet;

import java.util.List;

/**
 * The drills of one end of the blank.
 *
 * @param title which end, and what comes before the drills
 * @param steps the drills in their order
 */
public record DrilledEnd(String title, List<DrillStep> steps) {
    /** Copies the list. */
    public DrilledEnd {
        steps = List.copyOf(steps);
    }
}
