package haftline.store;

import static haftline.store.ProgressKeys.*;

import haftline.measure.Quote;
import haftline.set.production.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads a progress document. */
final class ProgressReader {
    private ProgressReader() {}

    static Optional<Progress> read(MapReader map) {
        String set = map.text(SET);
        String batch = map.text(BATCH);
        List<String> steps = map.texts(STEPS);
        List<Progress.PieceProgress> pieces = new ArrayList<>();
        map.maps(PIECES).forEach(each -> piece(each, steps).ifPresent(pieces::add));
        return map.build(() -> new Progress(set, batch, steps, pieces));
    }

    /** Tells of the pieces that the set does not have. */
    static void strangers(MapReader map, List<String> known) {
        for (MapReader each : map.maps(PIECES)) {
            String name = each.text(NAME);
            if (!known.contains(name)) {
                each.problem(
                        NAME,
                        "no piece " + Quote.of(name) + " in the set" + Hint.nearest(known, name));
            }
        }
    }

    private static Optional<Progress.PieceProgress> piece(MapReader map, List<String> steps) {
        String name = map.text(NAME);
        int quantity = map.whole(QUANTITY, 1);
        Integer[] done = new Integer[steps.size()];
        Arrays.fill(done, 0);
        for (MapReader each : map.maps(DONE)) {
            String step = each.text(STEP);
            int count = each.whole(COUNT, 0);
            int at = steps.indexOf(step);
            if (each.isSound() && at < 0) {
                each.problem(
                        STEP,
                        "no step " + Quote.of(step) + " in steps" + Hint.nearest(steps, step));
            }
            each.require(count <= quantity, COUNT, "at most the quantity, " + quantity);
            if (at >= 0) {
                done[at] = count;
            }
        }
        return map.build(() -> new Progress.PieceProgress(name, quantity, List.of(done)));
    }
}
