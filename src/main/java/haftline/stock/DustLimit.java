package haftline.stock;

import haftline.measure.Checks;
import java.util.Optional;

/**
 * A limit for wood dust in the air, as an authority states it. Local codes and current text go
 * first.
 *
 * @param key catalogue key
 * @param authority whose limit
 * @param what which dust, over what time
 * @param limitMgM3 mg/m3, where a number is stated
 * @param note what to mind
 */
public record DustLimit(
        String key, String authority, String what, Optional<Figure> limitMgM3, String note)
        implements Keyed {
    public DustLimit {
        Checks.named("key", key);
        Checks.named("authority", authority);
    }
}
