package haftline.ui.board;

import haftline.stock.Colours;
import haftline.stock.Stock;
import haftline.stock.Wood;

/**
 * The look of a stock as a solid: a turned surface cuts it as a lathe does, so that rings open to
 * ellipses on a swell and run straight along the sides. All of it is invented for pictures.
 */
abstract class Grain {
    /** Where the tree's pith lies from the axis: in front and a little above, mm. */
    private static final float PITH_Z = -38;

    private static final float PITH_Y = 4;

    final int body;
    final int early;
    final int late;

    private Grain(Colours colours) {
        body = colours.body();
        early = colours.early();
        late = colours.late();
    }

    static Grain of(Stock stock) {
        Colours colours = stock.colours();
        if (stock instanceof Wood wood) {
            return switch (wood.grain()) {
                case RING_POROUS -> new Rings(colours, 2.3f, 3.2f, 1.0f, 0.5f);
                case DIFFUSE -> new Rings(colours, 1.9f, 1.9f, 0.82f, 0.24f);
                case BANDED -> new Rings(colours, 2.4f, 3, 1.0f, 0.1f);
                case FIGURED -> new Figured(colours);
            };
        }
        return new Swirl(colours);
    }

    /** Moves to a place along the axis, mm; {@link #at} then answers for that slice. */
    abstract void slice(float x);

    /** Colour at a height over and a depth before the axis, mm. */
    abstract int at(float y, float z);

    /** How glossy it is, 0 to 255. */
    abstract int gloss();

    private static float ring(float y, float z) {
        float dy = y - PITH_Y;
        float dz = z - PITH_Z;
        return (float) Math.sqrt(dy * dy + dz * dz);
    }

    /** Growth rings with fibres and pores. */
    private static class Rings extends Grain {
        private static final int RING_STEPS = 64;
        private static final float FIBRES_PER_MM = 5.5f;

        private final float perMm;
        private final float pores;
        private final int[] ramp = new int[RING_STEPS];
        private float bend;
        private float lean;
        private float along;

        Rings(Colours colours, float pitchMm, float sharp, float contrast, float pores) {
            super(colours);
            perMm = 1 / pitchMm;
            this.pores = pores;
            for (int i = 0; i < RING_STEPS; i++) {
                double t = (i + 0.5) / RING_STEPS;
                // A ring grows darker towards its late wood and breaks off at the next spring.
                double dark = Math.pow(t, sharp) * Math.min(1, (1 - t) * 9);
                double share = contrast * (dark * 1.35 - 0.28);
                int towards = share > 0 ? late : early;
                ramp[i] = Tint.mix(body, towards, (int) Math.min(230, Math.abs(share) * 230));
            }
        }

        @Override
        void slice(float x) {
            bend = 0.9f * Noise.wave(x * 0.021f) + 0.35f * Noise.wave(x * 0.063f + 9);
            lean = 0.10f * Noise.wave(x * 0.034f + 31) + 0.004f * x;
            along = x;
        }

        @Override
        int at(float y, float z) {
            float fibre = Noise.streak(along * 0.11f, y * FIBRES_PER_MM + z * 1.3f);
            float t = (ring(y, z) + bend + lean * y + 0.16f * fibre) * perMm;
            float part = t - (float) Math.floor(t);
            int colour = ramp[(int) (part * RING_STEPS) & RING_STEPS - 1];
            int light = 256 + (int) (fibre * 15);
            float pore = Noise.streak(along * 0.42f + 57, y * 9.7f + z * 2.1f);
            // Pores crowd into the spring's wood.
            if (pore > 1.02f - pores * (part < 0.35f ? 0.75f : 0.34f)) {
                light -= 34;
            }
            return Tint.lit(colour, light, 0);
        }

        @Override
        int gloss() {
            return 46;
        }
    }

    /** Streaks and a cross figure that catches the light. */
    private static final class Figured extends Rings {
        private float flash;

        Figured(Colours colours) {
            super(colours, 2.6f, 1.4f, 1.05f, 0.3f);
        }

        @Override
        void slice(float x) {
            super.slice(x);
            flash = x;
        }

        @Override
        int at(float y, float z) {
            float curl = Noise.wave(flash * 0.30f + 0.06f * y + Noise.wave(y * 0.17f));
            float streak = Noise.wave(y * 0.34f + 0.004f * flash + 77);
            int colour = super.at(y, z);
            if (streak > 0.35f) {
                colour = Tint.mix(colour, late, (int) ((streak - 0.35f) * 190));
            }
            return Tint.lit(colour, 256 + (int) (curl * 22), 0);
        }
    }

    /** Cast resin: clouds with pearl in them, clear to some depth, polished. */
    private static final class Swirl extends Grain {
        private float along;

        Swirl(Colours colours) {
            super(colours);
        }

        @Override
        void slice(float x) {
            along = x;
        }

        @Override
        int at(float y, float z) {
            float u = along * 0.045f;
            float w = y * 0.09f + z * 0.05f;
            float fold = Noise.cloud(u * 1.7f, w * 1.7f) * 2.6f;
            float sheet = Math.abs(Noise.wave(u * 1.4f + fold + w));
            float deep = Noise.cloud(u + 11, w + fold * 0.35f + 5);
            int colour =
                    Tint.mix(body, deep > 0 ? early : late, (int) Math.min(220, 340 * deep * deep));
            float thread = 1 - sheet * 5;
            return thread > 0 ? Tint.mix(colour, early, (int) (thread * 150)) : colour;
        }

        @Override
        int gloss() {
            return 150;
        }
    }
}
