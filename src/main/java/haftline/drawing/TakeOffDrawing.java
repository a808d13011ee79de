package haftline.drawing;

import haftline.adjust.takeoff.Residual;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.shape.Node;
import java.util.ArrayList;
import java.util.List;

/**
 * What was taken off a handle: its readings on the fitted outline at full size, and beneath, at a
 * larger scale, how far each reading stands from it.
 */
public final class TakeOffDrawing {
    /** Between the axis of the outline and the middle of the residuals' strip, mm. */
    private static final double ROOM_MM = 12;

    /** Height of half the strip, mm. */
    private static final double STRIP_MM = 16;

    private static final double DOT_MM = 0.45;
    private static final double STRAY_MM = 1.2;

    /** From the edge of the scale to the cross of a stray that lies beyond it, mm. */
    private static final double BEYOND_MM = 4.5;

    private static final double ARROW_MM = 2.4;

    private static final double LETTER_MM = 2.5;
    private static final double SMALL_MM = 1.9;
    private static final double TICK_MM = 1;
    private static final double EVERY_MM = 10;
    private static final double EVERY_IN = 0.5;

    /** What the residuals' scale ends at a whole number of. */
    private static final double STEP_MM = 0.1;

    private static final double STEP_IN = 0.005;

    private static final double LEFT_MM = 3;

    private final TakeOff taken;
    private final double tolerance;
    private final Units units;
    private final double widest;
    private final double middle;
    private final double full;
    private final List<Element> outline = new ArrayList<>();
    private final List<Element> readings = new ArrayList<>();
    private final List<Element> strip = new ArrayList<>();
    private final List<Element> text = new ArrayList<>();

    private TakeOffDrawing(TakeOff taken, double toleranceMm, Units units) {
        this.taken = taken;
        this.tolerance = toleranceMm;
        this.units = units;
        this.widest = taken.outline().greatest().r();
        double most = 2 * toleranceMm;
        for (Residual residual : taken.residuals()) {
            most = residual.stray() ? most : Math.max(most, Math.abs(residual.mm()));
        }
        double step = isInch() ? STEP_IN * units.millimetres() : STEP_MM;
        this.full = Math.ceil(most / step) * step;
        this.middle = -widest - ROOM_MM - STRIP_MM;
    }

    /**
     * Draws it.
     *
     * @param taken what was taken off
     * @param toleranceMm the tolerance that was asked for, mm on the diameter
     * @param units unit of the figures
     * @return the drawing
     */
    public static Drawing of(TakeOff taken, double toleranceMm, Units units) {
        TakeOffDrawing drawing = new TakeOffDrawing(taken, toleranceMm, units);
        drawing.words();
        return drawing.drawn();
    }

    /**
     * Draws it without the words beneath, for a page that says them itself.
     *
     * @param taken what was taken off
     * @param toleranceMm the tolerance that was asked for, mm on the diameter
     * @param units unit of the figures
     * @return the drawing
     */
    public static Drawing plot(TakeOff taken, double toleranceMm, Units units) {
        return new TakeOffDrawing(taken, toleranceMm, units).drawn();
    }

    private boolean isInch() {
        return units == Units.INCH;
    }

    /** A residual on the scale: in hundredths of a mm or ten-thousandths of an inch at most. */
    private String scaled(double mm) {
        String figure =
                NumberText.said(NumberText.upTo(mm / units.millimetres(), isInch() ? 4 : 2));
        return (mm > 0 ? "+" : "") + figure;
    }

    private String left(double mm) {
        return NumberText.said(NumberText.fixed(mm / units.millimetres(), isInch() ? 4 : 2));
    }

    private Drawing drawn() {
        outline();
        readings();
        strip();
        return new Drawing(
                taken.shape().name(),
                "Readings, the outline taken off them, and what is left between the two.",
                List.of(
                        new Group("outline", outline),
                        new Group("readings", readings),
                        new Group("residuals", strip),
                        new Group("text", text)));
    }

    private void outline() {
        double wood = taken.woodMm();
        var upper =
                OutlinePath.follow(Path.from(0, 0), taken.outline())
                        .lineTo(wood, 0)
                        .open(Layer.OUTLINE);
        outline.add(upper);
        outline.add(upper.mirrored());
        outline.add(
                Path.line(Layer.CENTRE, new Vertex(-LEFT_MM, 0), new Vertex(wood + LEFT_MM, 0)));
        for (Node node : taken.shape().nodes()) {
            double x = node.place().x(wood);
            double r = taken.outline().r(x);
            outline.add(Path.line(Layer.DIMENSION, new Vertex(x, -r), new Vertex(x, r)));
        }
        names();
    }

    /** Each node's name over its place, a row higher where it would run into another. */
    private void names() {
        List<Bounds> taking = new ArrayList<>();
        for (Node node : taken.shape().nodes()) {
            double x = node.place().x(taken.woodMm());
            double y = widest + 2 * SMALL_MM;
            Text name = name(x, y, node);
            while (touches(name, taking)) {
                y += 2 * SMALL_MM;
                name = name(x, y, node);
            }
            taking.add(name.bounds());
            text.add(name);
        }
    }

    private static boolean touches(Text name, List<Bounds> taking) {
        return taking.stream().anyMatch(name.bounds()::touches);
    }

    private static Text name(double x, double y, Node node) {
        return Text.level(Layer.TEXT, x, y, SMALL_MM, Anchor.MIDDLE, node.name());
    }

    private void readings() {
        for (Residual residual : taken.residuals()) {
            double r = residual.reading().diameterMm() / 2;
            if (residual.stray()) {
                cross(readings, residual.x(), r);
            } else {
                readings.add(new Circle(Layer.DIMENSION, new Vertex(residual.x(), r), DOT_MM));
            }
        }
    }

    private static void cross(List<Element> to, double x, double y) {
        to.add(
                Path.line(
                        Layer.OUTLINE,
                        new Vertex(x - STRAY_MM, y - STRAY_MM),
                        new Vertex(x + STRAY_MM, y + STRAY_MM)));
        to.add(
                Path.line(
                        Layer.OUTLINE,
                        new Vertex(x - STRAY_MM, y + STRAY_MM),
                        new Vertex(x + STRAY_MM, y - STRAY_MM)));
    }

    private double y(double residual) {
        return middle + residual / full * STRIP_MM;
    }

    private void strip() {
        double wood = taken.woodMm();
        rule(0, Layer.DIMENSION);
        rule(tolerance, Layer.HIDDEN);
        rule(-tolerance, Layer.HIDDEN);
        for (double mm : new double[] {full, tolerance, 0, -tolerance, -full}) {
            text.add(
                    Text.level(
                            Layer.TEXT,
                            -1,
                            y(mm) - SMALL_MM / 2,
                            SMALL_MM,
                            Anchor.END,
                            scaled(mm)));
        }
        double foot = y(-full) - 2;
        strip.add(Path.line(Layer.DIMENSION, new Vertex(0, foot), new Vertex(wood, foot)));
        double every = isInch() ? EVERY_IN * units.millimetres() : EVERY_MM;
        for (int i = 0; i * every <= wood; i++) {
            double x = i * every;
            strip.add(
                    Path.line(Layer.DIMENSION, new Vertex(x, foot), new Vertex(x, foot - TICK_MM)));
            text.add(
                    Text.level(
                            Layer.TEXT,
                            x,
                            foot - TICK_MM - 1.5 * SMALL_MM,
                            SMALL_MM,
                            Anchor.MIDDLE,
                            NumberText.upTo(x / units.millimetres(), 1)));
        }
        for (Residual residual : taken.residuals()) {
            double x = residual.x();
            if (residual.stray()) {
                stray(x, residual.mm());
            } else {
                double y = y(residual.mm());
                if (Math.abs(y - middle) > DOT_MM) {
                    strip.add(Path.line(Layer.HATCH, new Vertex(x, middle), new Vertex(x, y)));
                }
                strip.add(new Circle(Layer.DIMENSION, new Vertex(x, y), DOT_MM));
            }
        }
    }

    /** A stray beyond the scale stands at its edge; an arrow and its figure say how far off. */
    private void stray(double x, double mm) {
        if (Math.abs(mm) <= full) {
            cross(strip, x, y(mm));
            return;
        }
        double side = Math.signum(mm);
        double edge = y(side * full);
        double at = edge - side * BEYOND_MM;
        cross(strip, x, at);
        strip.add(Path.line(Layer.DIMENSION, new Vertex(x, at), new Vertex(x, edge)));
        strip.add(new Arrowhead(Layer.DIMENSION, new Vertex(x, edge), 90 * side, ARROW_MM));
        boolean isLate = x > taken.woodMm() / 2;
        text.add(
                Text.level(
                        Layer.TEXT,
                        x + (isLate ? -1 : 1) * (STRAY_MM + 1),
                        at - SMALL_MM / 2,
                        SMALL_MM,
                        isLate ? Anchor.END : Anchor.START,
                        (mm > 0 ? "+" : "") + left(mm)));
    }

    private void rule(double mm, Layer layer) {
        strip.add(Path.line(layer, new Vertex(0, y(mm)), new Vertex(taken.woodMm(), y(mm))));
    }

    private void words() {
        Residual greatest = taken.greatest();
        double y = y(-full) - 2 - TICK_MM - 5 * SMALL_MM;
        List<String> lines = new ArrayList<>();
        lines.add(taken.shape().name());
        lines.add(
                taken.residuals().size()
                        + " readings, "
                        + taken.shape().nodes().size()
                        + (taken.shape().nodes().size() == 1 ? " node, " : " nodes, ")
                        + details());
        lines.add(
                "Left between reading and line, "
                        + units.heading()
                        + " on the diameter: rms "
                        + NumberText.fixed(taken.rmsMm() / units.millimetres(), isInch() ? 4 : 3)
                        + ", greatest "
                        + left(greatest.mm())
                        + " at "
                        + new LengthText(units).contour(greatest.x()));
        int strays = taken.strays().size();
        if (strays > 0) {
            lines.add(
                    strays
                            + (strays == 1
                                    ? " reading, marked with a cross, is"
                                    : " readings, marked with crosses, are")
                            + " left out"
                            + (taken.strays().stream().anyMatch(s -> Math.abs(s.mm()) > full)
                                    ? "; an arrow says beyond the scale, its figure how far off."
                                    : "."));
        }
        for (int i = 0; i < lines.size(); i++) {
            text.add(
                    Text.level(
                            Layer.TEXT,
                            0,
                            y - i * 2 * LETTER_MM,
                            i == 0 ? LETTER_MM * 1.2 : SMALL_MM,
                            Anchor.START,
                            lines.get(i)));
        }
    }

    private String details() {
        List<Detail> details = taken.shape().details();
        return details.isEmpty()
                ? "no detail"
                : String.join(", ", details.stream().map(Detail::kind).toList());
    }
}
