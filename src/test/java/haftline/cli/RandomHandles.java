package haftline.cli;

import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random handles for tests of other rooms, good ones and ones that cannot be made. */
public final class RandomHandles {
    private RandomHandles() {}

    /** So many handles that can at least be drawn. */
    public static List<Handle> of(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Handle> handles = new ArrayList<>();
        while (handles.size() < count) {
            Brief brief = SampleBriefs.random(random);
            if (Resolve.of(brief) instanceof Resolution.Resolved resolved) {
                handles.add(resolved.handle());
            }
        }
        return handles;
    }
}
