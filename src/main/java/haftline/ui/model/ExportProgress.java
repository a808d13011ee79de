package haftline.ui.model;

import java.util.List;

/**
 * How far an export is.
 *
 * @param stage the stage
 * @param planned what will be, or was, written
 * @param share how much of the writing is done, 0 to 1
 * @param text what to say of it, may be empty
 */
public record ExportProgress(Stage stage, List<Planned> planned, double share, String text) {
    /** Copies the list. */
    public ExportProgress {
        planned = List.copyOf(planned);
    }

    /**
     * Whether the files can be written now.
     *
     * @return true once all are known, and again after they were written or were not
     */
    public boolean canWrite() {
        return !planned.isEmpty()
                && (stage == Stage.READY || stage == Stage.WRITTEN || stage == Stage.FAILED);
    }

    /**
     * Whether it is still being looked what will be written.
     *
     * @return true until all files are known or it is known that there are none
     */
    public boolean isBeingPlanned() {
        return stage == Stage.PLANNING || stage == Stage.LAYING_OUT;
    }

    /** The same, with other words where it has none of its own. */
    ExportProgress saying(String words) {
        return text.isEmpty() ? new ExportProgress(stage, planned, share, words) : this;
    }

    /** The stages of an export. */
    public enum Stage {
        /** It is looked which files there will be. */
        PLANNING,
        /** The files of the pieces are known, the templates are still being laid out. */
        LAYING_OUT,
        /** All are known and can be written. */
        READY,
        /** Nothing can be written; the text says why. */
        BLOCKED,
        /** They are being written. */
        WRITING,
        /** They were written. */
        WRITTEN,
        /** They were not written; the text says why. */
        FAILED
    }

    /**
     * A file that will be written.
     *
     * @param name its name in the folder
     * @param replaces whether one of that name is there
     */
    public record Planned(String name, boolean replaces) {}
}
