package haftline.ui.templates;

import haftline.drawing.CardDrawing;
import haftline.drawing.Drawing;
import haftline.drawing.Layer;
import haftline.drawing.LetteringStyle;
import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import haftline.template.Card;
import haftline.template.Loop;
import haftline.template.Spot;
import haftline.template.Stroke;
import haftline.ui.sheet.DrawingPainter;
import haftline.ui.theme.Palette;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** How lettering, curves and prints come out. */
final class FileSketches {
    private FileSketches() {}

    /** The very letters that are written on cards. */
    static void lettering(SketchPen pen, TemplateSettings.Lettering lettering) {
        Palette p = pen.palette();
        pen.gc().setFill(pen.card());
        pen.gc().fillRect(12, 10, 150, 80);
        Spot a = new Spot(0, 0);
        Spot b = new Spot(150, 0);
        Spot c = new Spot(150, 80);
        Spot d = new Spot(0, 80);
        Loop edge =
                new Loop(
                        List.of(
                                Stroke.line(a, b),
                                Stroke.line(b, c),
                                Stroke.line(c, d),
                                Stroke.line(d, a)));
        haftline.template.Lettering word =
                new haftline.template.Lettering(
                        new Spot(75, 22), 36, haftline.template.Lettering.Align.MIDDLE, 0, "R 21");
        Drawing drawing =
                new CardDrawing(LetteringStyle.of(lettering))
                        .of(new Card("sample", edge, List.of(), List.of(word), List.of(), false));
        new DrawingPainter(pen.gc(), 1, 12, 90, new Inked(p)).paint(drawing);
        String[] words =
                switch (lettering) {
                    case STROKES ->
                            new String[] {"each line written", "once: quick, for", "laser and pen"};
                    case OUTLINES ->
                            new String[] {"round each letter,", "to be filled or", "engraved"};
                    case FONT ->
                            new String[] {"in the font of the", "program that reads", "the file"};
                    case NONE -> new String[] {"cards are cut", "without words"};
                };
        lines(pen, 174, 36, words);
    }

    private static void lines(SketchPen pen, double x, double y, String... words) {
        for (int i = 0; i < words.length; i++) {
            pen.strong(words[i], x, y + 16 * i);
        }
    }

    /**
     * Thin lines on a card.
     *
     * @param palette colours of the theme
     */
    private record Inked(Palette palette) implements DrawingPainter.Pens {
        @Override
        public Color colour(Layer layer) {
            return palette.ink();
        }

        @Override
        public double leastPx(Layer layer) {
            return 1.2;
        }
    }

    static void dxf(SketchPen pen, FileSettings.Dxf dxf) {
        Palette p = pen.palette();
        GraphicsContext gc = pen.gc();
        gc.setStroke(p.ink());
        gc.setLineWidth(1.8);
        gc.beginPath();
        gc.moveTo(14, 62);
        gc.bezierCurveTo(50, 8, 74, 30, 96, 50);
        gc.bezierCurveTo(112, 64, 134, 66, 158, 46);
        gc.stroke();
        if (dxf == FileSettings.Dxf.DRAWING) {
            pen.dashed(p.accent(), 14, 62, 50, 8);
            pen.dashed(p.accent(), 74, 30, 96, 50);
            pen.dashed(p.accent(), 96, 50, 112, 64);
            pen.dashed(p.accent(), 134, 66, 158, 46);
            for (double[] at : new double[][] {{50, 8}, {74, 30}, {112, 64}, {134, 66}}) {
                pen.circle(p.margin(), p.accent(), at[0], at[1], 2.6);
            }
            for (double[] at : new double[][] {{14, 62}, {96, 50}, {158, 46}}) {
                pen.circle(p.accent(), p.accent(), at[0], at[1], 2.6);
            }
        } else {
            for (double t : new double[] {0, 0.3, 0.62, 1}) {
                mark(pen, 14, 62, 50, 8, 74, 30, 96, 50, t);
            }
            for (double t : new double[] {0.45, 1}) {
                mark(pen, 96, 50, 112, 64, 134, 66, 158, 46, t);
            }
        }
        String[] words =
                switch (dxf) {
                    case CUTTING ->
                            new String[] {"lines and arcs, for", "cutters and most", "programs"};
                    case DRAWING ->
                            new String[] {
                                "true curves, for", "drawing on; never", "send to a cutter"
                            };
                    case OLD_CONTROLLER ->
                            new String[] {
                                "lines and arcs in", "the oldest form;", "layers tell the unit"
                            };
                };
        lines(pen, 174, 36, words);
    }

    private static void mark(
            SketchPen pen,
            double x0,
            double y0,
            double x1,
            double y1,
            double x2,
            double y2,
            double x3,
            double y3,
            double t) {
        double s = 1 - t;
        double x = s * s * s * x0 + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * x3;
        double y = s * s * s * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * y3;
        pen.circle(pen.palette().accent(), pen.palette().accent(), x, y, 2.6);
    }

    static void print(SketchPen pen, FileSettings files) {
        Palette p = pen.palette();
        double ratio =
                switch (files.paper()) {
                    case A4, A3 -> Math.sqrt(2);
                    case LETTER -> 11 / 8.5;
                };
        double h = files.paper() == FileSettings.Paper.A3 ? 84 : 72;
        double w = h / ratio;
        double x = 18;
        double y = (100 - h) / 2;
        pen.polygon(p.panel(), p.ink(), 1.2, x, y, x + w, y, x + w, y + h, x, y + h);
        pen.line(p.accent(), 2.4, x + 8, y + h - 8, x + w - 8, y + h - 8);
        pen.line(p.accent(), 2.4, x + 8, y + h - 8, x + 8, y + 10);
        double right = 100;
        FileSettings.Printer printer = files.printer();
        pen.strong("100 mm bars of a first print:", right, 24);
        pen.strong("short edge " + pen.length(printer.shortEdgeBarMm()), right, 42);
        pen.strong("long edge " + pen.length(printer.longEdgeBarMm()), right, 57);
        pen.text(
                printer.equals(FileSettings.Printer.TRUE)
                        ? "true: nothing is corrected"
                        : "the next print makes up for it",
                right,
                78);
    }
}
