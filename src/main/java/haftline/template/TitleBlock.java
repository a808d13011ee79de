package haftline.template;

import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;

/** Name and notes of a card, line under line, and a bar by which its scale is checked. */
final class TitleBlock {
    static final double NAME_MM = 4;
    static final double LINE_MM = 2.2;

    /** Blank between the feet of one line and the heads of the next, mm. */
    private static final double LEAD_MM = 1.7;

    /** Lettering smaller than this cannot be read on hardboard. */
    private static final double LEAST_SCALE = 0.45;

    private static final double BAR_TICK_MM = 1.6;

    /** Length of the check bar: as long as fits on the shortest card, mm and inches. */
    private static final double BAR_MM = 50;

    private static final double BAR_INCHES = 2;

    private final String name;
    private final List<String> lines = new ArrayList<>();
    private double scale = 1;

    /** A block under a name in larger letters; no name at all where it is empty. */
    TitleBlock(String name) {
        this.name = name;
    }

    /** Makes everything smaller where there is less height than it takes. */
    TitleBlock fitted(double heightMm) {
        scale = Math.max(LEAST_SCALE, Math.min(1, heightMm / heightMm()));
        return this;
    }

    TitleBlock line(String text) {
        lines.add(text);
        return this;
    }

    double heightMm() {
        double nameMm = name.isEmpty() ? -LEAD_MM : NAME_MM;
        return scale * (nameMm + lines.size() * (LINE_MM + LEAD_MM));
    }

    double widthMm() {
        double width = name.isEmpty() ? 0 : StrokeFont.widthMm(name, scale * NAME_MM);
        for (String line : lines) {
            width = Math.max(width, StrokeFont.widthMm(line, scale * LINE_MM));
        }
        return width;
    }

    /** Draws the block with the foot of its last line at a height. */
    void draw(List<Mark> marks, double leftX, double bottomY, double roomMm) {
        double y = bottomY;
        for (int i = lines.size() - 1; i >= 0; i--) {
            marks.add(text(leftX, y, scale * LINE_MM, lines.get(i)).within(roomMm));
            y += scale * (LINE_MM + LEAD_MM);
        }
        if (!name.isEmpty()) {
            marks.add(text(leftX, y, scale * NAME_MM, name).within(roomMm));
        }
    }

    private static Lettering text(double x, double y, double heightMm, String text) {
        return Lettering.level(x, y, heightMm, Lettering.Align.START, text);
    }

    /** A bar of known length with its right end at a place; its width with the text. */
    static double checkBar(List<Mark> marks, Units units, double rightX, double y) {
        double length = units == Units.MM ? BAR_MM : BAR_INCHES * units.millimetres();
        double left = rightX - length;
        marks.add(ScoreLine.between(left, y, rightX, y));
        marks.add(ScoreLine.between(left, y - BAR_TICK_MM / 2, left, y + BAR_TICK_MM / 2));
        marks.add(ScoreLine.between(rightX, y - BAR_TICK_MM / 2, rightX, y + BAR_TICK_MM / 2));
        String text =
                NumberText.upTo(length / units.millimetres(), 0) + " " + units.symbol() + " true";
        marks.add(Lettering.level((left + rightX) / 2, y + 0.9, 1.8, Lettering.Align.MIDDLE, text));
        return length;
    }
}
