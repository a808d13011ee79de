package haftline.ui.templates;

import haftline.set.TemplateSettings.Gauges;
import haftline.set.TemplateSettings.Gauges.Cards;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/** Which gauges share a card, and what a profile gauge bears on. */
final class GaugeSketches {
    private static final double PART = 78;
    private static final double TOP = 24;
    private static final double BOTTOM = 72;

    private GaugeSketches() {}

    static void cards(SketchPen pen, Gauges gauges) {
        boolean slotsAlone = gauges.cards() != Cards.ALL_ON_ONE;
        boolean rodAlone = gauges.cards() == Cards.EACH_ALONE;
        List<String> parts = new ArrayList<>();
        if (gauges.profile()) {
            parts.add("profile");
        }
        if (gauges.storyRod()) {
            parts.add("story rod");
        }
        if (gauges.slots()) {
            parts.add("slots");
        }
        double x = 10;
        for (int i = 0; i < parts.size(); i++) {
            String part = parts.get(i);
            boolean joined =
                    i > 0
                            && !(part.equals("slots")
                                    ? slotsAlone
                                    : part.equals("story rod") && rodAlone);
            x += i == 0 || joined ? 0 : 12;
            card(pen, part, x, joined, i + 1 < parts.size() && joins(parts.get(i + 1), gauges));
            pen.middle(part, x + PART / 2, 90);
            x += PART;
        }
    }

    private static boolean joins(String next, Gauges gauges) {
        return next.equals("slots")
                ? gauges.cards() == Cards.ALL_ON_ONE
                : gauges.cards() != Cards.EACH_ALONE;
    }

    private static void card(
            SketchPen pen, String part, double x, boolean joinedLeft, boolean joinedRight) {
        Palette p = pen.palette();
        GraphicsContext gc = pen.gc();
        gc.beginPath();
        gc.moveTo(x, TOP);
        gc.lineTo(x + PART, TOP);
        gc.lineTo(x + PART, BOTTOM);
        switch (part) {
            case "profile" -> {
                gc.lineTo(x + PART - 6, BOTTOM);
                gc.lineTo(x + PART - 6, BOTTOM - 14);
                gc.bezierCurveTo(
                        x + PART - 26, BOTTOM - 34, x + 40, BOTTOM - 6, x + 22, BOTTOM - 18);
                gc.lineTo(x + 12, BOTTOM - 20);
                gc.lineTo(x + 12, BOTTOM);
            }
            case "story rod" -> {
                for (double at : new double[] {62, 47, 25, 12}) {
                    gc.lineTo(x + at + 4, BOTTOM);
                    gc.lineTo(x + at, BOTTOM - 8);
                    gc.lineTo(x + at - 4, BOTTOM);
                }
            }
            default -> {
                double at = 68;
                for (double width : new double[] {7, 10, 13}) {
                    gc.lineTo(x + at, BOTTOM);
                    gc.lineTo(x + at, BOTTOM - 22);
                    gc.lineTo(x + at - width, BOTTOM - 22);
                    gc.lineTo(x + at - width, BOTTOM);
                    at -= width + 8;
                }
            }
        }
        gc.lineTo(x, BOTTOM);
        gc.closePath();
        pen.finish(pen.card(), p.ink(), 1.5);
        // Where two share a card there is no edge between them.
        if (joinedLeft) {
            pen.line(pen.card(), 3, x, TOP + 3, x, BOTTOM - 3);
        }
        if (joinedRight) {
            pen.line(pen.card(), 3, x + PART, TOP + 3, x + PART, BOTTOM - 3);
        }
    }

    static void register(SketchPen pen, Gauges gauges) {
        Palette p = pen.palette();
        GraphicsContext gc = pen.gc();
        boolean onFerrule = gauges.register() == Gauges.Register.FERRULE_FACE;
        double front = 66;
        double shoulder = 112;
        double axis = 92;
        pen.polygon(
                pen.wood(),
                p.ink(),
                1,
                front,
                axis,
                front,
                axis - 20,
                shoulder,
                axis - 20,
                shoulder,
                axis);
        gc.beginPath();
        gc.moveTo(shoulder, axis);
        gc.lineTo(shoulder, axis - 32);
        gc.bezierCurveTo(150, axis - 22, 180, axis - 26, 262, axis - 50);
        gc.lineTo(262, axis);
        gc.closePath();
        pen.finish(pen.wood(), p.ink(), 1.2);
        if (onFerrule) {
            pen.polygon(
                    p.steel(), p.ink(), 1.2, front, axis, front, axis - 32, shoulder, axis - 32,
                    shoulder, axis);
        }
        double bears = onFerrule ? front : shoulder;
        double hook = onFerrule ? axis - 12 : axis - 22;
        gc.beginPath();
        gc.moveTo(bears - 16, 26);
        gc.lineTo(262, 26);
        gc.lineTo(262, axis - 53);
        gc.bezierCurveTo(180, axis - 29, 150, axis - 25, shoulder + 6, axis - 34);
        if (onFerrule) {
            gc.lineTo(shoulder, axis - 40);
            gc.lineTo(shoulder - 4, axis - 36);
            gc.lineTo(bears + 6, axis - 36);
            gc.lineTo(bears, axis - 40);
        } else {
            gc.lineTo(bears + 4, axis - 40);
            gc.lineTo(bears, axis - 38);
        }
        gc.lineTo(bears, hook);
        gc.lineTo(bears - 16, hook);
        gc.closePath();
        pen.finish(pen.card(), p.ink(), 1.5);
        pen.line(p.accent(), 3.2, bears, onFerrule ? axis - 31 : axis - 31, bears, hook);
        pen.strong("gauge", 150, 45);
        pen.strong(onFerrule ? "ferrule" : "tenon", front + 5, 87);
        pen.strong("bears", 6, 58);
        pen.strong("here", 6, 71);
        pen.pointer(p.accent(), 34, 64, bears - 2, onFerrule ? axis - 20 : axis - 26);
        pen.strong("relief " + pen.length(gauges.reliefMm()), 6, 18);
        pen.pointer(p.soft(), 60, 22, bears + 3, axis - 41);
        pen.strong("clearance " + pen.length(gauges.clearanceMm()), 160, 18);
    }
}
