package haftline.ui.templates;

import haftline.set.TemplateSettings.Cutting;
import haftline.ui.theme.Palette;
import javafx.scene.shape.ArcType;

/** The tool beside the line that it cuts. */
final class ToolSketch {
    private static final double RIGHT = 272;
    private static final double EDGE = 64;

    private ToolSketch() {}

    static void paint(SketchPen pen, Cutting cutting) {
        switch (cutting.tool()) {
            case HAND_SAW -> saw(pen);
            case LASER -> laser(pen, cutting.kerfMm());
            case ROUTER -> router(pen, cutting.bitMm(), cutting.cornersRelieved());
        }
    }

    private static void saw(SketchPen pen) {
        Palette p = pen.palette();
        pen.gc().setFill(pen.card());
        pen.gc().fillRect(8, EDGE, RIGHT - 8, 28);
        pen.gc().setFill(p.stop().interpolate(p.margin(), 0.72));
        pen.gc().fillRect(8, 46, RIGHT - 8, EDGE - 46);
        pen.gc().setFill(p.panel());
        pen.gc().fillRect(8, 30, RIGHT - 8, 16);
        pen.gc().setFill(p.paper().interpolate(p.line(), 0.6));
        pen.gc().fillRect(8, 8, RIGHT - 8, 22);
        teeth(pen, 30, 46);
        pen.line(p.ink(), 1.8, 8, EDGE, RIGHT, EDGE);
        pen.text("waste", 14, 23);
        pen.strong("the saw, on the waste side", 112, 42);
        pen.strong("filed away, down to the line", 112, 59);
        pen.strong("card; the line is its true edge", 14, 83);
    }

    private static void teeth(SketchPen pen, double top, double bottom) {
        Palette p = pen.palette();
        double x = 8;
        pen.gc().beginPath();
        pen.gc().moveTo(x, top + 2);
        for (; x < 98; x += 9) {
            pen.gc().lineTo(x, bottom - 3);
            pen.gc().lineTo(x + 9, bottom - 9);
        }
        pen.gc().lineTo(x, top + 2);
        pen.gc().closePath();
        pen.finish(p.steel(), p.soft(), 1);
    }

    private static void laser(SketchPen pen, double kerfMm) {
        Palette p = pen.palette();
        double half = 14;
        double path = EDGE - half;
        pen.gc().setFill(pen.card());
        pen.gc().fillRect(8, EDGE, RIGHT - 8, 28);
        pen.gc().setFill(p.paper().interpolate(p.line(), 0.6));
        pen.gc().fillRect(8, 8, RIGHT - 8, path - half - 8);
        pen.gc().setFill(p.near().interpolate(p.margin(), 0.62));
        pen.gc().fillRect(8, path - half, 96 - 8, 2 * half);
        pen.gc().fillArc(96 - half, path - half, 2 * half, 2 * half, -90, 180, ArcType.CHORD);
        pen.gc().setFill(p.paper().interpolate(p.line(), 0.6));
        pen.line(p.ink(), 1.8, 8, path, RIGHT, path);
        pen.dashed(p.ink(), 8, EDGE, RIGHT, EDGE);
        pen.circle(p.near(), p.near(), 96, path, 3);
        pen.upright(52, path - half, EDGE);
        pen.text("waste", 14, 24);
        pen.strong("kerf " + pen.length(kerfMm), 128, 31);
        pen.pointer(p.soft(), 126, 28, 104, 38);
        pen.strong("line in the file, half a kerf out", 118, 46);
        pen.strong("card; dashed, its true edge", 14, 83);
    }

    private static void router(SketchPen pen, double bitMm, boolean isRelieved) {
        Palette p = pen.palette();
        double x = 96;
        double y = 70;
        double r = 24;
        // The card fills all but what lies right of and over the corner.
        pen.polygon(pen.card(), pen.card(), 1, 8, 8, x, 8, x, y, RIGHT, y, RIGHT, 92, 8, 92);
        if (isRelieved) {
            // The round goes through the corner, 1.05 of the bit's radius.
            double wide = 1.05 * r;
            double off = wide / Math.sqrt(2);
            pen.gc().setFill(p.margin());
            pen.gc().fillOval(x + off - wide, y - off - wide, 2 * wide, 2 * wide);
            pen.gc().setStroke(p.ink());
            pen.gc().setLineWidth(1.8);
            pen.gc()
                    .strokeArc(
                            x + off - wide,
                            y - off - wide,
                            2 * wide,
                            2 * wide,
                            135,
                            180,
                            ArcType.OPEN);
            pen.line(p.ink(), 1.8, x, 8, x, y - 2 * off);
            pen.line(p.ink(), 1.8, x + 2 * off, y, RIGHT, y);
            bit(pen, x + off, y - off, r);
        } else {
            pen.gc().setFill(p.stop().interpolate(p.margin(), 0.45));
            pen.gc().beginPath();
            pen.gc().moveTo(x, y - r);
            pen.gc().lineTo(x, y);
            pen.gc().lineTo(x + r, y);
            pen.gc().arc(x + r, y - r, r, r, 270, -90);
            pen.gc().fill();
            bit(pen, x + r, y - r, r);
            pen.line(p.ink(), 1.8, x, 8, x, y);
            pen.line(p.ink(), 1.8, x, y, RIGHT, y);
            pen.pointer(p.stop(), 86, 82, x + 3, y - 2);
        }
        pen.strong("bit " + pen.length(bitMm), 154, 26);
        if (isRelieved) {
            pen.strong("corner opened by a", 154, 44);
            pen.strong("round for the bit", 154, 57);
        } else {
            pen.strong("line in the file:", 154, 44);
            pen.strong("the true edge", 154, 57);
        }
        pen.strong(isRelieved ? "card" : "left by the bit", 12, 86);
    }

    /** Seen from above, its end unfilled so that what it leaves is seen. */
    private static void bit(SketchPen pen, double x, double y, double r) {
        pen.circle(pen.palette().steel().deriveColor(0, 1, 1, 0.3), pen.palette().soft(), x, y, r);
        pen.line(pen.palette().soft(), 1, x - 4, y, x + 4, y);
        pen.line(pen.palette().soft(), 1, x, y - 4, x, y + 4);
    }
}
