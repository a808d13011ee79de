package haftline.sheet.html;

import haftline.sheet.CalliperRow;
import haftline.sheet.InstructionSheet;
import haftline.sheet.Measure;
import haftline.sheet.Rule;
import haftline.sheet.page.Field;
import haftline.sheet.page.SheetFigures;

/** The instruction sheet for a browser. */
public final class InstructionHtml {
    private final InstructionSheet sheet;
    private final Page page;
    private final Field field;
    private final String unit;

    private InstructionHtml(InstructionSheet sheet, Field field) {
        this.sheet = sheet;
        this.field = field;
        this.unit = sheet.units().heading();
        this.page =
                Page.titled(
                        sheet.piece().name() + ", instructions",
                        field,
                        "body { font-size: 10.5pt; } tr, li { break-inside: avoid; }\n");
    }

    /**
     * The document of an instruction sheet.
     *
     * @param sheet what it says
     * @param field the paper's field that it is printed on
     * @return the document, to be stored as UTF-8
     */
    public static String of(InstructionSheet sheet, Field field) {
        return new InstructionHtml(sheet, field).document();
    }

    private String document() {
        Parts.header(page, "Make the handle of this kit", sheet.piece(), "");
        page.element("p", sheet.intro())
                .raw("<figure>\n")
                .drawing(SheetFigures.letters(sheet, field.widthMm() - 2))
                .raw("</figure>\n<div class=\"columns\">\n<div>\n");
        measures();
        page.raw("</div>\n<div>\n");
        rules();
        page.raw("</div>\n</div>\n<div class=\"columns page\">\n<div>\n");
        page.raw("<section>\n").element("h2", "Cautions");
        Parts.list(page, "ul", "", sheet.cautions());
        page.raw("</section>\n");
        shape();
        page.raw("</div>\n<div>\n<section>\n").element("h2", "What you need");
        Parts.list(page, "ul", "", sheet.tools());
        page.raw("</section>\n<section>\n").element("h2", "How it is made");
        Parts.list(page, "ol", "", sheet.steps());
        page.raw("</section>\n</div>\n</div>\n");
        page.element(
                "footer",
                "Your own measures go before these figures; makers' data sheets and local rules go"
                        + " before this sheet.");
        return page.end();
    }

    private void measures() {
        page.raw("<section>\n")
                .element("h2", "Measure your own parts · " + unit)
                .raw("<table>\n<tr><th class=\"words\"></th><th class=\"words\">size</th>")
                .raw("<th>this batch</th><th>yours</th></tr>\n");
        for (Measure measure : sheet.measures()) {
            page.raw("<tr>")
                    .element("td", "letter", measure.letter())
                    .element("td", "words", measure.what())
                    .element("td", measure.figure())
                    .raw("<td class=\"box\"><div></div></td></tr>\n");
        }
        page.raw("</table>\n</section>\n");
    }

    private void rules() {
        page.raw("<section>\n")
                .element("h2", "Work out your own sizes · " + unit)
                .raw(
                        "<table>\n<tr><th class=\"words\"></th><th class=\"words\">size and its rule</th>")
                .raw("<th>this batch</th><th>yours</th></tr>\n");
        for (Rule rule : sheet.rules()) {
            page.raw("<tr>")
                    .element("td", "letter", rule.letter())
                    .raw("<td class=\"words\">")
                    .text(rule.what())
                    .raw("<br />")
                    .text("= " + rule.how())
                    .raw("</td>")
                    .element("td", rule.figure())
                    .raw("<td class=\"box\"><div></div></td></tr>\n");
        }
        page.raw("</table>\n</section>\n");
    }

    private void shape() {
        page.raw("<section>\n")
                .element("h2", "The shape in this batch · " + unit)
                .raw("<table>\n<tr><th class=\"words\">station</th><th>x from shoulder</th>")
                .raw("<th>turn to</th><th>finished</th></tr>\n");
        for (CalliperRow row : sheet.shape()) {
            page.raw("<tr>")
                    .element("td", "words", row.name())
                    .element("td", row.x())
                    .element("td", row.turnTo())
                    .element("td", row.finished())
                    .raw("</tr>\n");
        }
        page.raw("</table>\n</section>\n");
    }
}
