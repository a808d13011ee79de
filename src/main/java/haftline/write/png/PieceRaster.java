package haftline.write.png;

import haftline.drawing.BladeForm;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** The dots of one or more pieces: light times cover, and cover, in linear light. */
final class PieceRaster {
    /** Samples each way within a dot; upright cover is reckoned exactly. */
    private static final int SAMPLES = 2;

    /** A place this near to a higher one is shaded by it, mm. */
    private static final double SHADE_MM = 1.3;

    private static final int SHADE_LOOKS = 9;

    /** Half the width of the dark line where two parts meet, mm. */
    private static final double JOINT_MM = 0.09;

    private static final int CHANNELS = 4;

    private final int width;
    private final int height;
    private final double dotsPerMm;
    private final float[] dots;

    PieceRaster(int width, int height, double dotsPerMm) {
        this.width = width;
        this.height = height;
        this.dotsPerMm = dotsPerMm;
        dots = new float[CHANNELS * width * height];
    }

    float cover(int column, int row) {
        return dots[CHANNELS * (row * width + column) + 3];
    }

    /** The piece over what lies behind it. */
    Rgb over(Rgb behind, int column, int row) {
        int at = CHANNELS * (row * width + column);
        double rest = 1 - dots[at + 3];
        return new Rgb(
                dots[at] + rest * behind.red(),
                dots[at + 1] + rest * behind.green(),
                dots[at + 2] + rest * behind.blue());
    }

    /**
     * Draws a piece.
     *
     * @param piece the piece
     * @param shoulderPx where its shoulder stands, dots from the left
     * @param axisPx where its axis lies, dots from the top
     */
    void draw(PieceModel piece, double shoulderPx, double axisPx) {
        int from = (int) Math.floor(shoulderPx + piece.leftX() * dotsPerMm);
        int to = (int) Math.ceil(shoulderPx + piece.rightX() * dotsPerMm);
        // Each column of dots is written by one thread alone.
        IntStream.range(Math.max(0, from), Math.min(width, to + 1))
                .parallel()
                .forEach(column -> column(piece, shoulderPx, axisPx, column));
    }

    private void column(PieceModel piece, double shoulderPx, double axisPx, int column) {
        for (int i = 0; i < SAMPLES; i++) {
            double x = (column + (i + 0.5) / SAMPLES - shoulderPx) / dotsPerMm;
            TurnedPart part = piece.partAt(x);
            if (part != null) {
                double radius = part.radius().applyAsDouble(x);
                Slice slice = slice(piece, part, x, radius);
                strip(column, axisPx, radius, -radius, slice::light);
            } else if (x < 0) {
                double top = piece.blade().top(x);
                double bottom = piece.blade().bottom(x);
                strip(column, axisPx, top, bottom, y -> bladeLight(piece, x, y, top, bottom));
            }
        }
    }

    /** One sample column between two heights, mm above the axis. */
    private void strip(
            int column, double axisPx, double top, double bottom, DoubleFunction<Rgb> light) {
        double from = axisPx - top * dotsPerMm;
        double to = axisPx - bottom * dotsPerMm;
        for (int row = Math.max(0, (int) from); row < Math.min(height, Math.ceil(to)); row++) {
            for (int j = 0; j < SAMPLES; j++) {
                double high = Math.max(from, row + (double) j / SAMPLES);
                double low = Math.min(to, row + (j + 1.0) / SAMPLES);
                if (low > high) {
                    double y = (axisPx - (high + low) / 2) / dotsPerMm;
                    add(column, row, light.apply(y).toned(), (float) ((low - high) / SAMPLES));
                }
            }
        }
    }

    private void add(int column, int row, Rgb light, float share) {
        int at = CHANNELS * (row * width + column);
        dots[at] += (float) light.red() * share;
        dots[at + 1] += (float) light.green() * share;
        dots[at + 2] += (float) light.blue() * share;
        dots[at + 3] += share;
    }

    /** What all places of one x share. */
    private record Slice(TurnedPart part, double x, double radius, double lean, double open) {
        Rgb light(double y) {
            double up = y / radius;
            double front = Math.sqrt(Math.max(0, 1 - up * up));
            double length = Math.sqrt(1 + lean * lean);
            return part.finish()
                    .light(x, y, radius * front, -lean / length, up / length, front / length, open);
        }
    }

    private static Slice slice(PieceModel piece, TurnedPart part, double x, double radius) {
        double shade = 0;
        for (int i = -SHADE_LOOKS; i <= SHADE_LOOKS; i++) {
            double away = SHADE_MM * i / SHADE_LOOKS;
            double rise = piece.radiusAt(x + away) - radius;
            if (rise > 0) {
                shade = Math.max(shade, Math.atan2(rise, Math.abs(away) + 0.05));
            }
        }
        double open = 1 - 0.5 * shade / (Math.PI / 2);
        for (TurnedPart other : piece.parts()) {
            double toJoint = Math.min(Math.abs(x - other.startX()), Math.abs(x - other.endX()));
            open *= 1 - 0.45 * Math.exp(-toJoint * toJoint / (JOINT_MM * JOINT_MM));
        }
        return new Slice(part, x, radius, part.slope().applyAsDouble(x), open);
    }

    private static Rgb bladeLight(PieceModel piece, double x, double y, double top, double bottom) {
        double share = (y - bottom) / (top - bottom);
        boolean isBevel = share < BladeForm.BEVEL;
        double brushed =
                0.030 * Noise.at(x / 16, y * 6, 2.5) + 0.02 * Noise.at(x / 40, y * 13, 8.5);
        double up = isBevel ? -0.17 : 0.11 + 0.13 * (share - 0.4);
        double ny = up + brushed;
        double nz = Math.sqrt(1 - ny * ny);
        // A fine line of light where the bevel was ground.
        double line = Math.abs(share - BladeForm.BEVEL) * (top - bottom);
        double edge = Math.min(share, 1 - share) * (top - bottom);
        double open =
                (1.02 + 0.30 * Math.exp(-line * line / 0.02))
                        * (0.62 + 0.38 * Light.smooth(0, 0.45, edge));
        return piece.steel().light(x / 3, y, 0, 0, ny, nz, open);
    }
}
