package haftline.drawing;

import haftline.measure.Checks;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.List;

/**
 * A bar of known length, to be measured on the print: ends marked with short strokes, the length
 * written above. A paper or a driver that scales shows here.
 */
public final class CheckBar {
    private static final double TICK_MM = 3;
    private static final double TEXT_HEIGHT_MM = 2.5;
    private static final double TEXT_GAP_MM = 1;

    private CheckBar() {}

    /**
     * A level bar of so many millimetres.
     *
     * @param topLeft the upper left corner of the room it takes
     * @param lengthMm its length, 1 mm and more
     * @return lines and text, on {@link Layer#DIMENSION}, never cut
     */
    public static Group of(Vertex topLeft, double lengthMm) {
        return of(topLeft, lengthMm, Units.MM);
    }

    /**
     * A level bar.
     *
     * @param topLeft the upper left corner of the room it takes
     * @param length its length in the unit, 1 mm and more
     * @param units the unit
     * @return lines and text, on {@link Layer#DIMENSION}, never cut
     */
    public static Group of(Vertex topLeft, double length, Units units) {
        double lengthMm = length * units.millimetres();
        Checks.within("check bar length", lengthMm, 1, Vertex.LIMIT_MM);
        double left = topLeft.xMm();
        double right = left + lengthMm;
        double y = topLeft.yMm() - TEXT_HEIGHT_MM - TEXT_GAP_MM;
        String text = "check bar " + NumberText.upTo(length, 2) + " " + units.symbol();
        return new Group(
                "check bar",
                List.of(
                        tick(left, y),
                        tick(right, y),
                        Path.line(Layer.DIMENSION, new Vertex(left, y), new Vertex(right, y)),
                        Text.level(
                                Layer.DIMENSION,
                                (left + right) / 2,
                                y + TEXT_GAP_MM,
                                TEXT_HEIGHT_MM,
                                Anchor.MIDDLE,
                                text)));
    }

    private static Path tick(double x, double y) {
        return Path.line(
                Layer.DIMENSION, new Vertex(x, y - TICK_MM / 2), new Vertex(x, y + TICK_MM / 2));
    }
}
