package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Arrowhead;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Vertex;
import java.util.List;

/**
 * Numbers or letters in rings over a drawing, each with a leader down to what it names, moved apart
 * where they would overlap.
 */
final class Balloons {
    /** From the top of what is drawn to where the leaders bend, mm. */
    private static final double CLEAR_MM = 2;

    private static final double BEND_MM = 3;
    private static final double RING_MM = 2.9;
    private static final double PITCH_MM = 7;
    private static final double LETTER_MM = 2.6;
    private static final double ARROW_MM = 1.7;

    /** A ring and what it names. */
    record Balloon(String sign, Vertex at) {}

    private Balloons() {}

    /** Height over the top of what is drawn. */
    static double heightMm() {
        return CLEAR_MM + BEND_MM + 2 * RING_MM;
    }

    /**
     * Draws them.
     *
     * @param balloons from the left
     * @param topY top of what is drawn
     * @param left where the first ring may begin
     * @param right where the last one must end
     */
    static void draw(Ink ink, List<Balloon> balloons, double topY, double left, double right) {
        int count = balloons.size();
        double pitch = Math.min(PITCH_MM, (right - left) / count);
        double ring = Math.min(RING_MM, pitch * 0.44);
        double[] at = spread(balloons, left + ring, right - ring, pitch);
        double bend = topY + CLEAR_MM;
        double y = bend + BEND_MM + ring;
        for (int i = 0; i < count; i++) {
            Vertex foot = balloons.get(i).at();
            ink.add(
                    Path.from(foot.xMm(), foot.yMm() + ARROW_MM / 2)
                            .lineTo(foot.xMm(), bend)
                            .lineTo(at[i], y - ring)
                            .open(Layer.DIMENSION));
            ink.add(new Arrowhead(Layer.DIMENSION, foot, -90, ARROW_MM));
            ink.ring(Layer.TEXT, at[i], y, ring);
            String sign = balloons.get(i).sign();
            double cap =
                    Math.min(LETTER_MM * ring / RING_MM, 1.5 * ring / Math.max(1, width(sign)));
            ink.text(at[i], y - cap / 2, cap, Anchor.MIDDLE, true, sign);
        }
    }

    private static double width(String sign) {
        return Type.widthMm(sign, 1);
    }

    /** As near over their feet as the pitch lets them: half-way between two one-sided answers. */
    private static double[] spread(
            List<Balloon> balloons, double left, double right, double pitch) {
        int count = balloons.size();
        double[] up = new double[count];
        double[] down = new double[count];
        for (int i = 0; i < count; i++) {
            double least = i == 0 ? left : up[i - 1] + pitch;
            up[i] = Math.max(least, balloons.get(i).at().xMm());
        }
        for (int i = count - 1; i >= 0; i--) {
            double most = i == count - 1 ? right : down[i + 1] - pitch;
            down[i] = Math.min(most, balloons.get(i).at().xMm());
        }
        double[] at = new double[count];
        for (int i = 0; i < count; i++) {
            double leftMost = left + i * pitch;
            double rightMost = right - (count - 1 - i) * pitch;
            at[i] = Math.max(leftMost, Math.min(rightMost, (up[i] + down[i]) / 2));
        }
        return at;
    }
}
