package haftline.adjust.takeoff;

import haftline.shape.Butt;
import java.util.List;

/**
 * What the readings look like before a line is laid through them.
 *
 * @param kept readings that count
 * @param bodyReadings how many of them, from the shoulder, come before the butt's form
 * @param butt its form
 * @param body runs of the body
 * @param details laid over it
 */
record Sight(
        Kept kept, int bodyReadings, Butt butt, List<Run> body, List<DetailSearch.Seen> details) {
    Sight {
        body = List.copyOf(body);
        details = List.copyOf(details);
    }
}
