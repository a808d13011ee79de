package haftline.ui.model;

import haftline.set.production.Progress;
import java.util.Optional;

/** How far a batch is, in words. */
final class ProgressWords {
    private ProgressWords() {}

    /**
     * The words.
     *
     * @param progress how far it is; empty where none was begun
     * @param isSaved whether the set has a file, beside which progress is kept
     * @param batchNow the measured batch that the set uses now
     */
    static String of(Optional<Progress> progress, boolean isSaved, String batchNow) {
        if (progress.isEmpty()) {
            return isSaved
                    ? "No batch was begun"
                    : "Save the set to begin a batch: its progress is kept beside it";
        }
        Progress far = progress.get();
        String batch =
                far.batch().equals(batchNow)
                        ? ""
                        : "; begun with parts " + far.batch() + ", the set now uses " + batchNow;
        return (far.isFinished()
                        ? "All " + far.ticksInAll() + " steps are done"
                        : far.ticks() + " of " + far.ticksInAll() + " steps are done")
                + batch;
    }
}
