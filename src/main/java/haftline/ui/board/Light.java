package haftline.ui.board;

/** Light from the front and above on a round surface. */
final class Light {
    private static final float LX = -0.20f;
    private static final float LY = 0.42f;
    private static final float LZ = 0.885f;

    /** Half way between the light and the eye, which looks along -z. */
    private static final float HX = -0.103f;

    private static final float HY = 0.216f;
    private static final float HZ = 0.971f;

    private static final int STEPS = 256;
    private static final int[] SHINE = new int[STEPS + 1];
    private static final int[] MIRROR = new int[2 * STEPS + 1];

    /** By height over radius, 0 to 1: how far it faces the light. */
    private static final float[] TO_LIGHT = new float[STEPS + 1];

    /** How far it faces half way between light and eye. */
    private static final float[] HALF_WAY = new float[STEPS + 1];

    /** How much of the light is left towards the rim, 256 being all. */
    private static final float[] LEFT = new float[STEPS + 1];

    static {
        for (int i = 0; i <= STEPS; i++) {
            float v = (float) i / STEPS;
            float depth = (float) Math.sqrt(1 - v * v);
            TO_LIGHT[i] = LY * v + LZ * depth;
            HALF_WAY[i] = HY * v + HZ * depth;
            LEFT[i] = 256 * left(v);
            SHINE[i] = (int) (255 * Math.pow((double) i / STEPS, 42));
        }
        for (int i = -STEPS; i <= STEPS; i++) {
            MIRROR[i + STEPS] = (int) (256 * room((double) i / STEPS));
        }
    }

    private Light() {}

    /** What a polished cylinder mirrors at a height: bench below, window, ceiling above. */
    private static double room(double y) {
        double window = bell(y, 0.46, 0.13) * 0.62 + bell(y, 0.70, 0.05) * 0.18;
        double bench = bell(y, -0.55, 0.20) * 0.30;
        double horizon = bell(y, 0.10, 0.13) * 0.20;
        double rim = Math.pow(Math.abs(y), 7) * 0.42;
        return 0.86 + window + bench - horizon - rim;
    }

    private static double bell(double y, double centre, double width) {
        double t = (y - centre) / width;
        return Math.exp(-t * t);
    }

    /**
     * How bright a dull surface is, 256 being as it is.
     *
     * @param v height over radius, -1 to 1
     * @param depth root of 1 - v^2
     * @param slope dr/dx
     * @param lean 1 / root of 1 + slope^2
     */
    static int dull(float v, float depth, float slope, float lean) {
        float facing = (LY * v + LZ * depth - LX * slope) * lean;
        return (int) (256 * light(facing) * left(v));
    }

    private static float light(float facing) {
        return 0.36f + 0.76f * Math.max(0, facing);
    }

    private static float left(float v) {
        float rim = v * v;
        rim *= rim;
        return 1 - 0.22f * rim * rim;
    }

    /** As {@link #dull}, over the axis only, off a table: for a picture that is soon another. */
    static int quickDull(float v, float slope, float lean) {
        int i = (int) (v * STEPS);
        return (int) (light((TO_LIGHT[i] - LX * slope) * lean) * LEFT[i]);
    }

    /** As {@link #shine}, over the axis only, off a table. */
    static int quickShine(float v, float slope, float lean) {
        float facing = (HALF_WAY[(int) (v * STEPS)] - HX * slope) * lean;
        return facing <= 0 ? 0 : SHINE[Math.min(STEPS, (int) (facing * STEPS))];
    }

    /** Highlight, 0 to 255. */
    static int shine(float v, float depth, float slope, float lean) {
        float facing = (HY * v + HZ * depth - HX * slope) * lean;
        return facing <= 0 ? 0 : SHINE[Math.min(STEPS, (int) (facing * STEPS))];
    }

    /** How bright polished metal is, 256 being as it is. */
    static int metal(float v, float slope, float lean) {
        float y = v * lean - 0.35f * slope * lean;
        return MIRROR[STEPS + (int) (Math.max(-1, Math.min(1, y)) * STEPS)];
    }
}
