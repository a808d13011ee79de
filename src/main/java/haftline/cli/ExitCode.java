package haftline.cli;

/** What the program tells the shell. */
final class ExitCode {
    /** Done. */
    static final int DONE = 0;

    /**
     * Done, and something is not as it must be: a piece cannot be made so, a demand is not met, a
     * turned piece is off its design.
     */
    static final int STOPPED = 1;

    /** The command line makes no sense. */
    static final int USAGE = 2;

    /** A document was refused. */
    static final int DOCUMENT = 3;

    /** Something could not be written. */
    static final int CANNOT_WRITE = 4;

    /** A mistake in the program; the number that sysexits.h gives to an internal software error. */
    static final int BUG = 70;

    private ExitCode() {}
}
