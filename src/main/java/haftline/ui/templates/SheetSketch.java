package haftline.ui.templates;

import haftline.set.TemplateSettings.Sheet;
import haftline.ui.theme.Palette;

/** A sheet in its proportions, with its margin and two cards with their gap. */
final class SheetSketch {
    private static final double MOST_WIDTH = 118;
    private static final double MOST_HEIGHT = 64;

    /** A margin or gap thinner than this could not be seen, px. */
    private static final double THINNEST = 3;

    private SheetSketch() {}

    static void paint(SketchPen pen, Sheet sheet) {
        Palette p = pen.palette();
        double scale = Math.min(MOST_WIDTH / sheet.widthMm(), MOST_HEIGHT / sheet.heightMm());
        double w = Math.max(14, sheet.widthMm() * scale);
        double h = Math.max(14, sheet.heightMm() * scale);
        double x = 30 + (MOST_WIDTH - w) / 2;
        double y = 10 + (MOST_HEIGHT - h) / 2;
        pen.polygon(p.panel(), p.ink(), 1.4, x, y, x + w, y, x + w, y + h, x, y + h);
        double m = Math.min(w / 3, Math.max(THINNEST, sheet.marginMm() * scale));
        double gap = Math.min(h / 3, Math.max(THINNEST, sheet.gapMm() * scale));
        double top = (h - 2 * m - gap) / 2;
        pen.gc().setFill(pen.card());
        if (top > 2 && w > 2 * m + 2) {
            pen.gc().fillRect(x + m, y + m, w - 2 * m, top);
            pen.gc().fillRect(x + m, y + m + top + gap, (w - 2 * m) * 0.72, top);
        }
        pen.gc().setLineDashes(3, 3);
        pen.gc().setStroke(p.soft());
        pen.gc().setLineWidth(1);
        pen.gc().strokeRect(x + m, y + m, Math.max(0, w - 2 * m), Math.max(0, h - 2 * m));
        pen.gc().setLineDashes();
        pen.across(x, x + w, 82);
        pen.middle(pen.length(sheet.widthMm()), 30 + MOST_WIDTH / 2, 95);
        pen.upright(20, y, y + h);
        double right = 168;
        pen.strong("height " + pen.length(sheet.heightMm()), right, 18);
        pen.strong("margin " + pen.length(sheet.marginMm()), right, 34);
        pen.pointer(p.soft(), right - 3, 30, x + w - m / 2, y + h * 0.3);
        pen.strong("gap " + pen.length(sheet.gapMm()), right, 50);
        pen.pointer(p.soft(), right - 3, 47, x + w - 2 * m - 6, y + m + top + gap / 2);
        double thick = Math.max(2, Math.min(14, sheet.thicknessMm()));
        pen.gc().setFill(pen.card());
        pen.gc().fillRect(right, 82 - thick, 92, thick);
        pen.gc().setStroke(p.ink());
        pen.gc().strokeRect(right + 0.5, 82.5 - thick, 91, thick - 1);
        pen.strong(pen.length(sheet.thicknessMm()) + " thick", right, 95);
    }
}
