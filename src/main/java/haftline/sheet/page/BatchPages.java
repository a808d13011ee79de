package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Hatching;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.set.production.BatchTable;
import haftline.set.production.BatchTables;
import haftline.set.production.CutPlan;
import haftline.set.production.Production;
import haftline.set.production.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A batch on sheets for the workshop: its tables, every stick as it is cut, and boxes to tick off.
 */
public final class BatchPages {
    /** The table that the drawn sticks follow. */
    private static final String CUTS = "cuts";

    private static final String PROGRESS = "progress";

    private static final double STICK_MM = 8;
    private static final double STICK_ROW_MM = 13.5;

    /** Left of the drawn sticks stands how many are cut so. */
    private static final double TIMES_MM = 16;

    /** Right of the longest stick stands its length. */
    private static final double LENGTH_MM = 30;

    private static final double LETTER_MM = 2.1;
    private static final double HATCH_MM = 1.6;

    private static final String FOOT =
            "Guards on, face shield or goggles, dust mask and extraction, nothing loose; blades"
                    + " covered until the work is done. The manuals of your machines, data sheets"
                    + " and local rules come before this sheet.";

    private final Production production;
    private final TextPages pages;
    private final Units units;

    private BatchPages(Production production, TextPages pages, Units units) {
        this.production = production;
        this.pages = pages;
        this.units = units;
    }

    /**
     * The sheets.
     *
     * @param production the batch
     * @param progress how far it is, where it was begun
     * @param tables its tables, in the order of the sheets
     * @param units unit of the lengths beside the drawn sticks
     * @param field the paper's field
     * @return one or more sheets
     */
    public static List<Drawing> of(
            Production production,
            Optional<Progress> progress,
            List<BatchTable> tables,
            Units units,
            Field field) {
        String pieces = production.pieces() + (production.pieces() == 1 ? " piece" : " pieces");
        String counts =
                production.orders().stream()
                        .map(order -> order.quantity() + " " + order.piece())
                        .collect(Collectors.joining(", "));
        TextPages pages =
                new TextPages(
                        production.set() + ", batch",
                        counts.isEmpty() ? "nothing to be made" : counts,
                        pieces + " \u00b7 parts " + production.batch(),
                        FOOT,
                        field);
        new BatchPages(production, pages, units).write(progress, tables);
        return pages.drawings();
    }

    private void write(Optional<Progress> progress, List<BatchTable> tables) {
        for (BatchTable table : tables) {
            if (table.key().equals(PROGRESS)) {
                continue;
            }
            TableBlock.write(pages, table);
            if (table.key().equals(CUTS)) {
                sticks();
            }
        }
        if (!production.orders().isEmpty()) {
            TickBoxes.write(pages, progress.orElseGet(() -> Progress.of(production)));
        }
    }

    private void sticks() {
        double longest =
                production.cuts().stream()
                        .flatMap(plan -> plan.cuts().stream())
                        .mapToDouble(cut -> cut.stick().lengthMm())
                        .max()
                        .orElse(0);
        double room = pages.rightMm() - TextPages.LEFT_MM - TIMES_MM - LENGTH_MM;
        for (CutPlan plan : production.cuts()) {
            for (CutPlan.Cut cut : plan.cuts()) {
                stick(plan, cut, room / longest);
            }
        }
        pages.down(5);
    }

    private void stick(CutPlan plan, CutPlan.Cut cut, double scale) {
        pages.need(STICK_ROW_MM);
        pages.down(STICK_ROW_MM);
        double bottom = pages.y();
        double left = TextPages.LEFT_MM + TIMES_MM;
        double length = cut.stick().lengthMm() * scale;
        pages.text(
                TextPages.LEFT_MM,
                bottom + STICK_MM / 2 - 1.5,
                3,
                Anchor.START,
                cut.times() + " \u00d7");
        pages.text(
                left,
                bottom + STICK_MM + 1,
                LETTER_MM,
                Anchor.START,
                Type.cut(
                        plan.stockName()
                                + ", "
                                + shown(cut.stick().acrossMm())
                                + " across"
                                + (cut.isBought() ? ", TO BUY" : ""),
                        pages.rightMm() - left,
                        LETTER_MM));
        double kerf = production.rack().orElseThrow().kerfMm() * scale;
        double x = left;
        for (CutPlan.Taken taken : cut.blanks()) {
            double wide = taken.blank().lengthMm() * scale;
            for (int n = 0; n < taken.count(); n++) {
                blank(x, bottom, wide, taken);
                x += wide + kerf;
            }
        }
        pages.box(left, bottom, length, STICK_MM, Layer.OUTLINE);
        offcut(x, bottom, left + length, cut);
        pages.text(
                left + length + 2,
                bottom + STICK_MM / 2 - 1.2,
                TableBlock.TEXT_MM,
                Anchor.START,
                shown(cut.stick().lengthMm()) + " " + units.symbol());
    }

    private void blank(double x, double bottom, double wide, CutPlan.Taken taken) {
        pages.box(x, bottom, wide, STICK_MM, Layer.TEXT);
        String length = shown(taken.blank().lengthMm());
        pages.text(
                x + wide / 2,
                bottom + STICK_MM / 2 + 0.5,
                TableBlock.TEXT_MM,
                Anchor.MIDDLE,
                BatchTables.mark(production.blanks().indexOf(taken.blank())));
        pages.text(
                x + wide / 2,
                bottom + STICK_MM / 2 - 2.9,
                LETTER_MM,
                Anchor.MIDDLE,
                Type.cut(length, wide - 1, LETTER_MM));
    }

    /** What is left is hatched; its length stands in it where there is room. */
    private void offcut(double x, double bottom, double end, CutPlan.Cut cut) {
        double wide = end - x;
        if (wide < HATCH_MM) {
            return;
        }
        String length = shown(cut.offcutMm());
        List<Path> loops = new ArrayList<>();
        loops.add(TextPages.rectangle(x, bottom, wide, STICK_MM, Layer.TEXT));
        double said = Type.widthMm(length, LETTER_MM);
        boolean fits = said + 3 < wide;
        if (fits) {
            double clear = said + 1.5;
            loops.add(
                    TextPages.rectangle(
                            x + (wide - clear) / 2,
                            bottom + STICK_MM / 2 - 2,
                            clear,
                            4,
                            Layer.TEXT));
            pages.text(x + wide / 2, bottom + STICK_MM / 2 - 1.1, LETTER_MM, Anchor.MIDDLE, length);
        }
        new Hatching(45, HATCH_MM).over(loops).forEach(pages::add);
    }

    private String shown(double mm) {
        return new LengthText(units).dimension(mm, 1);
    }
}
