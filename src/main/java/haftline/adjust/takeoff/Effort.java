package haftline.adjust.takeoff;

/**
 * What a take-off may still spend on its search. An outline with very many corners, as a spoilt
 * drawing has, would keep it busy for many minutes; then it stops improving and gives what it has.
 * Work is counted and not timed, so that the same readings give the same shape on every machine.
 */
final class Effort {
    /**
     * Most work, in readings times figures of a draft, over all of its trials: some ten seconds of
     * one core. The starter shapes spend up to half of it in a thousand readings, up to a thirtieth
     * in a hundred.
     */
    static final long MOST = 4_000_000_000L;

    /** What drawing an outline costs beside turning its slopes into a triangle, in figures. */
    private static final int DRAWING = 10;

    private final long most;
    private long spent;

    Effort(long most) {
        this.most = most;
    }

    /** One more trial of a draft. */
    void spend(int readings, int figures) {
        spent += (long) readings * (DRAWING + figures);
    }

    /** Whether nothing is left. */
    boolean isSpent() {
        return spent >= most;
    }
}
