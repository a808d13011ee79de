package haftline.adjust;

/** Who waits for what is worked out. Called from the threads that work. */
@FunctionalInterface
public interface Watch {
    /** Nobody: never stops it. */
    Watch NOBODY = () -> false;

    /**
     * Whether the answer is no longer wanted; asked many times a second.
     *
     * @return true to end the work
     */
    boolean isOver();

    /**
     * Tells how far it is, where that is known.
     *
     * @param done how much is done
     * @param of how much there will be
     */
    default void made(int done, int of) {
        // Who only waits need not be told.
    }
}
