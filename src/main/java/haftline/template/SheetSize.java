package haftline.template;

import haftline.measure.Checks;
import haftline.set.TemplateSettings;

/**
 * The sheet that cards are cut from.
 *
 * @param widthMm along x, mm, 20 to 5000
 * @param heightMm along y, mm, 20 to 5000
 * @param marginMm kept free along the edges, mm, 0 to 100
 * @param gapMm between two cards, mm, 0 to 50
 */
public record SheetSize(double widthMm, double heightMm, double marginMm, double gapMm) {
    /** Checks the ranges. */
    public SheetSize {
        Checks.withinMm("sheet width", widthMm, 20, 5000);
        Checks.withinMm("sheet height", heightMm, 20, 5000);
        Checks.withinMm("sheet margin", marginMm, 0, 100);
        Checks.withinMm("gap between cards", gapMm, 0, 50);
        Checks.within(
                "room inside the margins", Math.min(widthMm, heightMm) - 2 * marginMm, 1, 5000);
    }

    /**
     * The sheet of a workshop.
     *
     * @param sheet what the maker has
     * @return its size
     */
    public static SheetSize of(TemplateSettings.Sheet sheet) {
        return new SheetSize(sheet.widthMm(), sheet.heightMm(), sheet.marginMm(), sheet.gapMm());
    }
}
