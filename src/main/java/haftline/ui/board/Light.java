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

    /** Heights that a coarse light tells apart. */
    private static final int COARSE_HEIGHTS = 64;

    /** Slopes that a coarse light tells apart, to one. */
    private static final int COARSE_SLOPES = 32;

    private static final int STEEPEST = 3;

    private static final int[][] COARSE = new int[2 * STEEPEST * COARSE_SLOPES + 1][];

    static {
        for (int i = 0; i <= STEPS; i++) {
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
        float rim = v * v;
        rim *= rim;
        float light = 0.36f + 0.76f * Math.max(0, facing);
        return (int) (256 * light * (1 - 0.22f * rim * rim));
    }

    /**
     * Dull light and highlight of a slice over the axis, for a picture that is soon another: from
     * the axis to the edge in {@link #COARSE_HEIGHTS} steps, the light from the ninth bit on, the
     * highlight in the lowest eight.
     *
     * @param slope dr/dx
     */
    static int[] coarse(float slope) {
        float kept = Math.max(-STEEPEST, Math.min(STEEPEST, slope));
        int at = Math.round((kept + STEEPEST) * COARSE_SLOPES);
        if (COARSE[at] == null) {
            COARSE[at] = heights((float) at / COARSE_SLOPES - STEEPEST);
        }
        return COARSE[at];
    }

    private static int[] heights(float slope) {
        float lean = 1 / (float) Math.sqrt(1 + slope * slope);
        int[] heights = new int[COARSE_HEIGHTS];
        for (int i = 0; i < heights.length; i++) {
            float v = (i + 0.5f) / heights.length;
            float depth = (float) Math.sqrt(1 - v * v);
            heights[i] = dull(v, depth, slope, lean) << 8 | shine(v, depth, slope, lean);
        }
        return heights;
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
