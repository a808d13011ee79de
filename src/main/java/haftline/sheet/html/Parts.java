package haftline.sheet.html;

import haftline.sheet.CalliperRow;
import haftline.sheet.Fact;
import haftline.sheet.LatheSheet;
import haftline.sheet.Remark;
import haftline.sheet.SheetPiece;
import haftline.sheet.page.SheetFigures;
import java.util.List;

/** What several sheets have in common. */
final class Parts {
    private static final double PICTURE_WIDE_MM = 85;
    private static final double PICTURE_HIGH_MM = 22;

    /** Longer names are set smaller, so that they stay within two lines. */
    private static final int LONG_NAME = 18;

    private Parts() {}

    static void header(Page page, String kind, SheetPiece piece, String verdict) {
        page.raw("<header>\n<div>\n").element("div", "kind", kind);
        page.element("h1", piece.name().length() > LONG_NAME ? "long" : "short", piece.name());
        page.element("p", LatheSheet.identityOf(piece));
        if (!verdict.isEmpty()) {
            page.raw("<p>").element("strong", verdict).raw("</p>\n");
        }
        page.raw("</div>\n")
                .drawing(SheetFigures.picture(piece, PICTURE_WIDE_MM, PICTURE_HIGH_MM))
                .raw("</header>\n");
    }

    static void facts(Page page, String title, List<Fact> facts) {
        page.element("h2", title);
        if (facts.isEmpty()) {
            return;
        }
        page.raw("<table>\n");
        for (Fact fact : facts) {
            page.raw("<tr>")
                    .element("td", "words label", fact.label())
                    .element("td", "main", fact.figure())
                    .element("td", "words note", fact.note())
                    .raw("</tr>\n");
        }
        page.raw("</table>\n");
    }

    static void list(Page page, String tag, String styleClass, List<String> lines) {
        page.raw("<" + tag + " class=\"" + styleClass + "\">\n");
        lines.forEach(line -> page.element("li", line));
        page.raw("</" + tag + ">\n");
    }

    static void remarks(Page page, List<Remark> remarks) {
        page.element("h2", "Findings").raw("<ul class=\"plain small\">\n");
        if (remarks.isEmpty()) {
            page.element("li", "Nothing found.");
        }
        remarks.forEach(remark -> remark(page, "li", remark));
        page.raw("</ul>\n");
    }

    static void remark(Page page, String tag, Remark remark) {
        page.element(
                tag,
                remark.mark()
                        + " "
                        + remark.message()
                        + "."
                        + remark.remedy().map(text -> " → " + text).orElse(""));
    }

    static void callipers(Page page, List<CalliperRow> rows) {
        page.raw("<table>\n<tr><th class=\"words\"></th><th class=\"words\">station</th><th>x</th>")
                .raw("<th>rough</th><th>TURN TO</th><th>finished</th></tr>\n");
        for (CalliperRow row : rows) {
            page.raw("<tr>")
                    .element("td", "words number", Integer.toString(row.number()))
                    .element("td", "words", row.name())
                    .element("td", row.x())
                    .element("td", row.rough())
                    .element("td", "main", row.turnTo())
                    .element("td", row.finished())
                    .raw("</tr>\n");
        }
        page.raw("</table>\n");
    }
}
