package haftline.template;

import haftline.measure.Checks;
import java.util.List;

/**
 * A line of text on a card. It may be engraved as single strokes or as outlines, or left off: no
 * cut depends on it.
 *
 * @param foot where its anchor stands, on the baseline
 * @param heightMm height of its capitals, 0.5 to 50
 * @param align which end of it stands there
 * @param rotationDeg direction of the baseline, degrees anticlockwise from +x
 * @param text what it says
 */
public record Lettering(Spot foot, double heightMm, Align align, double rotationDeg, String text)
        implements Mark {
    /** Which point of a text stands at its foot. */
    public enum Align {
        /** Its left end. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        END
    }

    /** Checks the ranges. */
    public Lettering {
        Checks.withinMm("lettering height", heightMm, 0.5, 50);
        Checks.withinDegrees("lettering rotation", rotationDeg, -360, 360);
        Checks.named("lettering", text);
    }

    /** A level line of text. */
    static Lettering level(double x, double y, double heightMm, Align align, String text) {
        return new Lettering(new Spot(x, y), heightMm, align, 0, text);
    }

    /** A line of text that reads from below upwards. */
    static Lettering upright(double x, double y, double heightMm, Align align, String text) {
        return new Lettering(new Spot(x, y), heightMm, align, 90, text);
    }

    /** The same text no wider than there is room, lower where it must be. */
    Lettering within(double roomMm) {
        double width = widthMm();
        return width <= roomMm
                ? this
                : new Lettering(
                        foot, Math.max(0.5, heightMm * roomMm / width), align, rotationDeg, text);
    }

    /**
     * How wide it is in single strokes.
     *
     * @return mm
     */
    public double widthMm() {
        return StrokeFont.widthMm(text, heightMm);
    }

    /**
     * The text in single strokes.
     *
     * @return chains, one for each time the pen is set down
     */
    public List<List<Stroke>> strokes() {
        return StrokeFont.write(this);
    }

    /**
     * The text as outlines of a pen's strokes.
     *
     * @param penMm width of the pen, mm, over 0
     * @return loops; clockwise ones are holes
     */
    public List<Loop> outlines(double penMm) {
        return PenOutline.of(this, penMm);
    }

    @Override
    public Lettering moved(double dx, double dy) {
        return new Lettering(foot.moved(dx, dy), heightMm, align, rotationDeg, text);
    }

    @Override
    public Lettering turned() {
        double turned = rotationDeg >= 180 ? rotationDeg - 180 : rotationDeg + 180;
        return new Lettering(foot.turned(), heightMm, align, turned, text);
    }
}
