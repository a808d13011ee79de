package haftline.stock;

import haftline.measure.Checks;
import java.util.List;

/**
 * A series of drills as they are sold.
 *
 * @param key catalogue key, such as {@code metric-0.5}
 * @param drills the drills by rising diameter
 * @param source the standard or rule of the series
 */
public record DrillSeries(String key, List<Drill> drills, Source source) implements Keyed {
    public DrillSeries {
        Checks.named("key", key);
        drills = List.copyOf(drills);
    }
}
