package haftline.adjust.doubt;

/** Who waits for a run. Called from the run's own threads. */
public interface Watch {
    /** Nobody: never stops a run. */
    Watch NOBODY =
            new Watch() {
                @Override
                public void made(int handles, int of) {
                    // Nobody is told.
                }

                @Override
                public boolean isOver() {
                    return false;
                }
            };

    /**
     * Tells how far the run is.
     *
     * @param handles how many are done
     * @param of how many there will be
     */
    void made(int handles, int of);

    /**
     * Whether the answer is no longer wanted.
     *
     * @return true to end the run
     */
    boolean isOver();
}
