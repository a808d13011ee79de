package haftline.sheet.html;

import haftline.measure.NumberText;
import haftline.sheet.DrillStep;
import haftline.sheet.DrilledEnd;
import haftline.sheet.LatheSheet;
import haftline.sheet.page.Field;
import haftline.sheet.page.LathePage;
import haftline.sheet.page.SheetFigures;
import java.util.List;

/** The lathe sheet for a browser; printed, it is one page. */
public final class LatheHtml {
    /** Body text at size 1, points. */
    private static final double BODY_PT = 11;

    /**
     * A browser that lacks the paper's font takes one that is up to a seventh wider, and more lines
     * wrap.
     */
    private static final double PRINT_SHARE = 0.9;

    /** Under this size of the type names and findings are long, and wrap the more. */
    private static final double CROWDED = 0.75;

    private static final double CROWDED_SHARE = 0.8;

    private final LatheSheet sheet;
    private final Page page;
    private final Field field;
    private final String unit;

    private LatheHtml(LatheSheet sheet, Field field, double sizePt) {
        this.sheet = sheet;
        this.field = field;
        this.unit = sheet.units().heading();
        this.page =
                Page.titled(
                        sheet.piece().name() + ", lathe sheet",
                        field,
                        "body { font-size: " + NumberText.upTo(sizePt, 2) + "pt; }\n");
    }

    /**
     * The document of a sheet.
     *
     * @param sheet what it says
     * @param field the paper's field that it is printed on
     * @return the document, to be stored as UTF-8
     */
    public static String of(LatheSheet sheet, Field field) {
        LathePage.Layout layout = LathePage.layout(sheet, field);
        double share = layout.size() < CROWDED ? CROWDED_SHARE : PRINT_SHARE;
        return new LatheHtml(sheet, field, BODY_PT * share * layout.size()).document(layout);
    }

    private String document(LathePage.Layout layout) {
        String mark = sheet.remarks().isEmpty() ? "" : sheet.remarks().get(0).mark() + " ";
        Parts.header(page, "Lathe sheet", sheet.piece(), mark + sheet.verdict());
        if (sheet.isStopped()) {
            page.raw("<div class=\"stop\">\n").element("strong", LatheSheet.NOT_TO_BE_MADE);
            sheet.piece().stops().forEach(stop -> Parts.remark(page, "p", stop));
            page.raw("</div>\n");
        }
        page.raw("<figure>\n")
                .drawing(
                        SheetFigures.section(
                                sheet.piece(),
                                sheet.units(),
                                field.widthMm() - 2,
                                layout.reduction()))
                .raw("</figure>\n");
        List<Runnable> sections =
                List.of(
                        () -> Parts.facts(page, "Blank", sheet.blank()),
                        this::drilling,
                        () -> Parts.facts(page, "Tenon", sheet.tenon()),
                        this::callipers,
                        () -> list("Order of work", "ol", "", sheet.steps()),
                        this::fit,
                        () -> list("Finished piece", "ul", "small", sheet.wholes()),
                        () -> Parts.remarks(page, sheet.remarks()),
                        () -> list("Cautions", "ul", "small", sheet.cautions()));
        page.raw("<div class=\"columns\">\n");
        column(sections, layout, true);
        column(sections, layout, false);
        page.raw("</div>\n");
        page.element(
                "footer",
                "Diameters and lengths in "
                        + unit
                        + ", from the measured batch "
                        + sheet.piece().batch()
                        + ": check them against the parts in hand. x is counted from the shoulder,"
                        + " towards the butt.");
        return page.end();
    }

    private void column(List<Runnable> sections, LathePage.Layout layout, boolean left) {
        page.raw("<div>\n");
        for (int i = 0; i < sections.size(); i++) {
            if (layout.left().get(i) == left) {
                page.raw("<section>\n");
                sections.get(i).run();
                page.raw("</section>\n");
            }
        }
        page.raw("</div>\n");
    }

    private void list(String title, String tag, String styleClass, List<String> lines) {
        page.element("h2", title);
        Parts.list(page, tag, styleClass, lines);
    }

    private void callipers() {
        page.element("h2", "Callipers · " + unit + " from the shoulder");
        Parts.callipers(page, sheet.callipers());
    }

    private void fit() {
        Parts.facts(page, "Fit and finish", sheet.fit());
        Parts.list(page, "ul", "small", sheet.joints());
        Parts.list(page, "ul", "small", sheet.finish());
    }

    private void drilling() {
        page.element("h2", "Drilling · " + unit)
                .raw("<table>\n<tr><th class=\"words\"></th><th>drill</th><th></th>")
                .raw("<th>stop<br />LIPS</th><th>stop<br />POINT</th><th>deep<br />faced</th>")
                .raw("<th>rpm<br />at most</th></tr>\n");
        for (DrilledEnd end : sheet.drilling()) {
            page.raw("<tr><td class=\"words\" colspan=\"7\">")
                    .element("strong", end.title())
                    .raw("</td></tr>\n");
            end.steps().forEach(this::step);
        }
        page.raw("</table>\n").element("p", "small", sheet.drillingNote());
    }

    private void step(DrillStep step) {
        page.raw("<tr>").element("td", "words number", Integer.toString(step.number()));
        page.element("td", "main", step.drill())
                .element("td", "words note", step.name())
                .element("td", "main", step.lips())
                .element("td", "main", step.point())
                .element("td", step.depth())
                .element("td", step.speed())
                .raw("</tr>\n");
    }
}
