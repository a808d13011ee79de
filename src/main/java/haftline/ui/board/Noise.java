package haftline.ui.board;

import java.util.SplittableRandom;

/** Repeatable unevenness for pictures, -1 to 1. */
final class Noise {
    private static final int SIZE = 256;
    private static final int MASK = SIZE - 1;
    private static final float[] LINE = new float[SIZE + 1];
    private static final float[] FIELD = new float[SIZE * SIZE];

    static {
        // Any seed does; it is fixed so that a wood looks the same tomorrow.
        SplittableRandom random = new SplittableRandom(1809);
        for (int i = 0; i < SIZE; i++) {
            LINE[i] = (float) random.nextDouble(-1, 1);
        }
        LINE[SIZE] = LINE[0];
        for (int i = 0; i < FIELD.length; i++) {
            FIELD[i] = (float) random.nextDouble(-1, 1);
        }
    }

    private Noise() {}

    /** Smooth along one axis. */
    static float wave(float t) {
        float floor = (float) Math.floor(t);
        float part = t - floor;
        int i = (int) floor & MASK;
        float ease = part * part * (3 - 2 * part);
        return LINE[i] + (LINE[i + 1] - LINE[i]) * ease;
    }

    /** Threads: smooth along the first axis, sudden across the second. */
    static float streak(float along, float across) {
        int row = ((int) Math.floor(across) & MASK) << 8;
        // Each thread begins elsewhere, or their ends would line up.
        float shifted = along + FIELD[row] * 17;
        float floor = (float) Math.floor(shifted);
        float part = shifted - floor;
        int i = (int) floor;
        float here = FIELD[row | i & MASK];
        return here + (FIELD[row | i + 1 & MASK] - here) * part;
    }

    /** Smooth along both axes. */
    static float cloud(float x, float y) {
        float fx = (float) Math.floor(x);
        float fy = (float) Math.floor(y);
        float px = x - fx;
        float py = y - fy;
        float ex = px * px * (3 - 2 * px);
        float ey = py * py * (3 - 2 * py);
        int i = (int) fx & MASK;
        int j = (int) fx + 1 & MASK;
        int a = ((int) fy & MASK) << 8;
        int b = ((int) fy + 1 & MASK) << 8;
        float top = FIELD[a | i] + (FIELD[a | j] - FIELD[a | i]) * ex;
        float low = FIELD[b | i] + (FIELD[b | j] - FIELD[b | i]) * ex;
        return top + (low - top) * ey;
    }
}
