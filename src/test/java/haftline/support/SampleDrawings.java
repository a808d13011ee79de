package haftline.support;

import haftline.drawing.Anchor;
import haftline.drawing.Circle;
import haftline.drawing.Dimension;
import haftline.drawing.DimensionRows;
import haftline.drawing.DimensionStyle;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Hatching;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.PathBuilder;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * Drawings of an invented handle, close to what the program makes, for the tests of the writers and
 * for the eye.
 */
public final class SampleDrawings {
    /**
     * A name that tries every reader: markup, quotes, right to left, a picture, a control
     * character, a code.
     */
    public static final String HOSTILE =
            "<&\"'> ]]> \u0007 \u05D9\u05D3\u05D9\u05EA \u0645\u0642\u0628\u0636 \uD83E\uDDAA %%u \\U+0041 ^J ";

    private static final double TENON_MM = 11.5;
    private static final double TENON_RADIUS_MM = 5.95;
    private static final double WOOD_MM = 101;
    private static final double DOME_MM = 4;
    private static final double BUTT_RADIUS_MM = 7;
    private static final double BORE_RADIUS_MM = 3.1;
    private static final double BORE_END_MM = 35.5;
    private static final double BORE_TIP_MM = 37.363;
    private static final double CAP_BORE_RADIUS_MM = 3.05;
    private static final double CAP_BORE_END_MM = 91;
    private static final double CAP_BORE_TIP_MM = 89.167;

    private SampleDrawings() {}

    /** From the tenon's end at some radius along the upper outline to the butt's rim. */
    private static PathBuilder upperOutline(double startMm) {
        return Path.from(-TENON_MM, startMm)
                .lineTo(-TENON_MM, TENON_RADIUS_MM - 0.5)
                .lineTo(-TENON_MM + 0.5, TENON_RADIUS_MM)
                .lineTo(0, TENON_RADIUS_MM)
                .lineTo(0, 7)
                .cubicTo(6, 6.2, 13, 5.9, 20, 6.1)
                .cubicTo(35, 6.5, 50, 11.5, 65, 11.5)
                .cubicTo(77, 11.5, 87, 8.8, WOOD_MM - 4, BUTT_RADIUS_MM + 0.8)
                .lineTo(WOOD_MM - 4, BUTT_RADIUS_MM)
                .lineTo(WOOD_MM, BUTT_RADIUS_MM);
    }

    /** The half-profile as one closed loop along the axis: nothing else. */
    public static Drawing halfProfile() {
        Path loop = upperOutline(0).lineTo(WOOD_MM, 0).close(Layer.OUTLINE);
        return new Drawing("Half-profile", "", List.of(new Group("profile", List.of(loop))));
    }

    /** A half-section: above the axis the outside, below it the cut. */
    public static Drawing halfSection(String name) {
        List<Element> wood = new ArrayList<>();
        Path upper = upperOutline(0).lineTo(WOOD_MM, 0).open(Layer.OUTLINE);
        wood.add(upper);
        wood.add(upper.mirrored());
        wood.add(line(Layer.OUTLINE, 0, TENON_RADIUS_MM, 0, 0));
        wood.add(line(Layer.OUTLINE, -TENON_MM + 0.5, TENON_RADIUS_MM, -TENON_MM + 0.5, 0));
        wood.add(line(Layer.OUTLINE, WOOD_MM - 4, BUTT_RADIUS_MM, WOOD_MM - 4, 0));
        wood.add(
                Path.from(-TENON_MM, -BORE_RADIUS_MM)
                        .lineTo(BORE_END_MM, -BORE_RADIUS_MM)
                        .lineTo(BORE_TIP_MM, 0)
                        .open(Layer.OUTLINE));
        wood.add(line(Layer.OUTLINE, BORE_END_MM, -BORE_RADIUS_MM, BORE_END_MM, 0));
        wood.add(
                Path.from(WOOD_MM, -CAP_BORE_RADIUS_MM)
                        .lineTo(CAP_BORE_END_MM, -CAP_BORE_RADIUS_MM)
                        .lineTo(CAP_BORE_TIP_MM, 0)
                        .open(Layer.OUTLINE));
        wood.add(line(Layer.OUTLINE, CAP_BORE_END_MM, -CAP_BORE_RADIUS_MM, CAP_BORE_END_MM, 0));
        wood.add(line(Layer.CENTRE, -TENON_MM - 8, 0, WOOD_MM + DOME_MM + 6, 0));
        List<Element> hatch = Hatching.standard().over(List.of(cutFace()));
        return new Drawing(
                name,
                "Half-section of an invented handle at full size, lengths in millimetres.",
                List.of(
                        new Group("cut face", hatch),
                        new Group("turned wood", wood),
                        new Group("metal parts", metal()),
                        new Group("dimensions", dimensions()),
                        new Group("title", title(name))));
    }

    private static Path cutFace() {
        Path lower = upperOutline(BORE_RADIUS_MM).open(Layer.HATCH).mirrored();
        PathBuilder loop = Path.from(-TENON_MM, -BORE_RADIUS_MM);
        lower.segments().forEach(loop::add);
        return loop.lineTo(WOOD_MM, -CAP_BORE_RADIUS_MM)
                .lineTo(CAP_BORE_END_MM, -CAP_BORE_RADIUS_MM)
                .lineTo(CAP_BORE_TIP_MM, 0)
                .lineTo(BORE_TIP_MM, 0)
                .lineTo(BORE_END_MM, -BORE_RADIUS_MM)
                .close(Layer.HATCH);
    }

    private static List<Element> metal() {
        List<Element> out = new ArrayList<>();
        Path ferrule =
                Path.from(0, 7)
                        .lineTo(-12, 7)
                        .lineTo(-12, 6)
                        .lineTo(-TENON_MM - 0.5, 6)
                        .open(Layer.PART);
        Path cap =
                Path.from(WOOD_MM, BUTT_RADIUS_MM)
                        .ellipseTo(WOOD_MM + DOME_MM, 0, WOOD_MM, 0, DOME_MM, BUTT_RADIUS_MM, false)
                        .open(Layer.PART);
        out.add(ferrule);
        out.add(ferrule.mirrored());
        out.add(cap);
        out.add(cap.mirrored());
        return out;
    }

    private static List<Element> dimensions() {
        DimensionStyle style = DimensionStyle.standard();
        List<Element> out = new ArrayList<>();
        double row = -12 - style.rowMm();
        Vertex shoulder = new Vertex(0, -7);
        Vertex tenonEnd = new Vertex(-TENON_MM, -TENON_RADIUS_MM);
        Vertex butt = new Vertex(WOOD_MM, -BUTT_RADIUS_MM);
        Vertex boreEnd = new Vertex(BORE_END_MM, -BORE_RADIUS_MM);
        Vertex capBoreEnd = new Vertex(CAP_BORE_END_MM, -CAP_BORE_RADIUS_MM);
        out.addAll(
                DimensionRows.below(style, row)
                        .add(0, tenonEnd, boreEnd, "47")
                        .add(0, new Vertex(WOOD_MM - 4, -BUTT_RADIUS_MM), butt, "4")
                        .add(1, tenonEnd, shoulder, "11.5")
                        .add(1, shoulder, new Vertex(65, -11.5), "65")
                        .add(1, capBoreEnd, butt, "10")
                        .add(2, shoulder, butt, "101")
                        .add(3, tenonEnd, butt, "112.5")
                        .elements());
        out.addAll(
                Dimension.vertical(
                        style,
                        new Vertex(-TENON_MM, -TENON_RADIUS_MM),
                        new Vertex(-TENON_MM, TENON_RADIUS_MM),
                        -TENON_MM - 14,
                        Dimension.DIAMETER + "11.9"));
        out.addAll(
                Dimension.vertical(
                        style,
                        new Vertex(WOOD_MM, -BUTT_RADIUS_MM),
                        new Vertex(WOOD_MM, BUTT_RADIUS_MM),
                        WOOD_MM + 14,
                        Dimension.DIAMETER + "14"));
        double top = 12 + style.rowMm();
        double[][] stations = {{0, 7}, {20, 6.1}, {65, 11.5}, {97, 7.8}};
        for (double[] station : stations) {
            out.addAll(
                    Dimension.station(
                            style,
                            new Vertex(station[0], station[1]),
                            top,
                            Dimension.DIAMETER + NumberText.upTo(2 * station[1], 1)));
        }
        return out;
    }

    private static List<Element> title(String name) {
        return List.of(
                Text.level(
                        Layer.TEXT,
                        -TENON_MM,
                        -54,
                        3.5,
                        Anchor.START,
                        Text.shortened(name, 110, 3.5)),
                Text.level(
                        Layer.TEXT,
                        -TENON_MM,
                        -59,
                        2.5,
                        Anchor.START,
                        "Scale 1:1, millimetres. Bores: \u23006.2, 47 deep; \u23006.1, 10 deep."));
    }

    /** A card to be cut, with a marked line, holes and a name that a laser need not read. */
    public static Drawing card(String name) {
        Path edge =
                Path.from(3, 0)
                        .lineTo(117, 0)
                        .arcTo(120, 3, Math.tan(Math.PI / 8))
                        .lineTo(120, 27)
                        .arcTo(117, 30, Math.tan(Math.PI / 8))
                        .lineTo(80, 30)
                        .arcTo(40, 30, -0.5)
                        .lineTo(3, 30)
                        .arcTo(0, 27, Math.tan(Math.PI / 8))
                        .lineTo(0, 3)
                        .arcTo(3, 0, Math.tan(Math.PI / 8))
                        .close(Layer.CUT);
        return new Drawing(
                "Card for " + name,
                "",
                List.of(
                        new Group(
                                "card",
                                List.of(
                                        edge,
                                        new Circle(Layer.CUT, new Vertex(8, 15), 2.5),
                                        new Circle(Layer.CUT, new Vertex(112, 15), 2.5),
                                        line(Layer.SCORE, 60, 0, 60, 20),
                                        line(Layer.SCORE, 20, 4, 100, 4),
                                        line(Layer.SCORE, 100, 4, 20, 4),
                                        Text.level(
                                                Layer.TEXT,
                                                16,
                                                6,
                                                2.5,
                                                Anchor.START,
                                                Text.shortened(name, 80, 2.5))))));
    }

    private static Path line(Layer layer, double x0, double y0, double x1, double y1) {
        return Path.line(layer, new Vertex(x0, y0), new Vertex(x1, y1));
    }

    /** Wider and higher than any home printer's paper, with every kind of curve on every seam. */
    public static Drawing large() {
        List<Element> out = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            out.add(new Circle(Layer.CUT, new Vertex(240, 180), 15 * (i + 1)));
        }
        out.add(
                Path.from(0, 0)
                        .lineTo(480, 0)
                        .cubicTo(520, 120, 440, 240, 480, 360)
                        .lineTo(0, 360)
                        .cubicTo(-40, 240, 40, 120, 0, 0)
                        .close(Layer.OUTLINE));
        out.add(
                Path.from(440, 180)
                        .ellipseTo(40, 180, 240, 180, 200, 120, true)
                        .open(Layer.CENTRE));
        for (int i = 1; i < 8; i++) {
            out.add(line(Layer.HIDDEN, 60.0 * i, 0, 60.0 * i, 360));
        }
        out.add(Text.level(Layer.TEXT, 240, 178, 8, Anchor.MIDDLE, "Test of the seams \u230048"));
        return new Drawing("Large drawing", "", List.of(new Group("all", out)));
    }
}
