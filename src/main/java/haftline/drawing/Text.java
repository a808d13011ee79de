package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of text.
 *
 * @param layer the layer it lies on
 * @param position where its anchor stands, on the baseline
 * @param heightMm height of its capitals, over 0 (ISO 3098 measures lettering so)
 * @param anchor which point of it stands at the position
 * @param rotationDeg direction of the baseline, degrees anticlockwise from +x
 * @param string what it says, as the user wrote it; writers make it safe for their format
 */
public record Text(
        Layer layer,
        Vertex position,
        double heightMm,
        Anchor anchor,
        double rotationDeg,
        String string)
        implements Element {
    /**
     * Width of an average character against the height of a capital, in a common sans-serif font
     * (measured on English prose in DejaVu Sans, which is a wide one, so that what is planned with
     * it fits elsewhere too).
     */
    private static final double CHARACTER_WIDTH = 0.82;

    /** Letters are set smaller by so much before words are lost. */
    private static final double LEAST_SHARE = 0.85;

    private static final double ROUNDING = 1e-9;

    /** How far letters such as g reach under the baseline, against the height of a capital. */
    private static final double DESCENT = 0.33;

    private static final String CUT_SHORT = "\u2026";

    /**
     * Checks height and rotation.
     *
     * @throws IllegalArgumentException where the height is not over 0 or the rotation not a number
     */
    public Text {
        Checks.within("text height", heightMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
        Checks.within("rotation", rotationDeg, -Angle.FULL_TURN_DEG, Angle.FULL_TURN_DEG);
        if (string == null) {
            throw new IllegalArgumentException("text: expected one, even an empty one");
        }
    }

    /**
     * A level line of text.
     *
     * @param layer the layer it lies on
     * @param xMm where its anchor stands
     * @param yMm its baseline
     * @param heightMm height of its capitals
     * @param anchor which point of it stands there
     * @param string what it says
     * @return the text
     */
    public static Text level(
            Layer layer, double xMm, double yMm, double heightMm, Anchor anchor, String string) {
        return new Text(layer, new Vertex(xMm, yMm), heightMm, anchor, 0, string);
    }

    /**
     * The text a drawing has room for: the whole of it, or its start and an ellipsis.
     *
     * @param string any text
     * @param roomMm width there is
     * @param heightMm height of the capitals it will be drawn with
     * @return the text or as much of it as is likely to fit
     */
    public static String shortened(String string, double roomMm, double heightMm) {
        int room = (int) Math.max(1, Math.floor(roomMm / (heightMm * CHARACTER_WIDTH)));
        if (string.codePointCount(0, string.length()) <= room) {
            return string;
        }
        return string.substring(0, string.offsetByCodePoints(0, room - 1)) + CUT_SHORT;
    }

    /**
     * The height at which a text has room, a little under the wished one where that saves it from
     * being cut short.
     *
     * @param string any text
     * @param roomMm width there is
     * @param heightMm wished height of the capitals
     * @return mm, {@value #LEAST_SHARE} of the wish at least
     */
    public static double fittingMm(String string, double roomMm, double heightMm) {
        double width = string.codePointCount(0, string.length()) * heightMm * CHARACTER_WIDTH;
        // A text that is as wide as its room but for rounding is not cut short.
        double share = width <= roomMm ? 1 : roomMm / width - ROUNDING;
        return heightMm * Math.max(LEAST_SHARE, share);
    }

    /**
     * A text as the lines that a drawing has room for, parted at blanks.
     *
     * @param string any text
     * @param roomMm width there is
     * @param heightMm height of the capitals it will be drawn with
     * @return its lines; a word longer than the room is shortened
     */
    public static List<String> wrapped(String string, double roomMm, double heightMm) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : string.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && !longer.equals(shortened(longer, roomMm, heightMm))) {
                lines.add(line);
                longer = word;
            }
            line = shortened(longer, roomMm, heightMm);
        }
        lines.add(line);
        return List.copyOf(lines);
    }

    /**
     * How wide the text is likely to come out.
     *
     * @return mm, an estimate
     */
    public double estimatedWidthMm() {
        return string.codePointCount(0, string.length()) * heightMm * CHARACTER_WIDTH;
    }

    @Override
    public Bounds bounds() {
        double width = estimatedWidthMm();
        Vertex left = position.towards(rotationDeg, -width * anchor.share());
        Vertex right = left.towards(rotationDeg, width);
        double up = rotationDeg + 90;
        return Bounds.of(
                        left.towards(up, -heightMm * DESCENT),
                        right.towards(up, -heightMm * DESCENT))
                .with(Bounds.of(left.towards(up, heightMm), right.towards(up, heightMm)));
    }
}
