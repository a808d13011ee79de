package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Layer;
import haftline.measure.NumberText;
import haftline.set.production.BatchTable;
import java.util.List;

/** A table of a batch on pages: heading, columns under their names, notes. */
final class TableBlock {
    static final double TITLE_MM = 3.2;
    static final double TEXT_MM = 2.5;
    static final double SMALL_MM = 2.1;
    static final double ROW_MM = 5;
    private static final double NOTE_LINE_MM = 3.7;
    private static final double GAP_MM = 3.5;

    /** A text that made its column as wide as it is does not wrap for the sum of its words. */
    private static final double ROUNDING_MM = 0.01;

    /** A column of texts is not made narrower than this. */
    private static final double LEAST_TEXT_MM = 22;

    /** Where there is not room for all, a column of texts is first brought down to this. */
    private static final double LONG_TEXT_MM = 46;

    private final TextPages pages;
    private final BatchTable table;
    private final double[] widths;

    private TableBlock(TextPages pages, BatchTable table) {
        this.pages = pages;
        this.table = table;
        widths = widths();
    }

    /** Writes a table and its notes. */
    static void write(TextPages pages, BatchTable table) {
        new TableBlock(pages, table).write();
    }

    /** A heading over what follows, which takes so much room that the two stay together. */
    static void title(TextPages pages, String title, double withMm) {
        pages.need(TITLE_MM + 4 + withMm);
        pages.down(TITLE_MM + 1);
        pages.text(TextPages.LEFT_MM, pages.y(), TITLE_MM, Anchor.START, title);
        pages.down(1.8);
        pages.rule(TextPages.LEFT_MM, pages.rightMm(), pages.y(), Layer.TEXT);
    }

    private void write() {
        // What fits a page stays together; what does not begins with some rows under its heading.
        double all = ROW_MM * (table.rows().size() + 1);
        title(pages, table.title(), all < pages.roomMm() / 2 ? all : 4 * ROW_MM);
        if (!table.rows().isEmpty()) {
            head();
        }
        for (List<Object> row : table.rows()) {
            row(row);
        }
        pages.down(1.5);
        notes(pages, table.notes());
        pages.down(4);
    }

    /** Sentences under each other, small. */
    static void notes(TextPages pages, List<String> notes) {
        double width = pages.rightMm() - TextPages.LEFT_MM;
        for (String note : notes) {
            for (String line : Type.wrapped(note, width, SMALL_MM)) {
                pages.need(NOTE_LINE_MM);
                pages.down(NOTE_LINE_MM);
                pages.text(TextPages.LEFT_MM, pages.y(), SMALL_MM, Anchor.START, line);
            }
        }
    }

    private void head() {
        pages.down(ROW_MM - 0.6);
        double x = TextPages.LEFT_MM;
        for (int i = 0; i < widths.length; i++) {
            cell(x, i, SMALL_MM, head(table.columns().get(i)));
            x += widths[i] + GAP_MM;
        }
        pages.down(0.8);
    }

    private static String head(BatchTable.Column column) {
        return column.unit().isEmpty() ? column.name() : column.name() + ", " + column.unit();
    }

    private void row(List<Object> row) {
        int last = widths.length - 1;
        boolean isWrapped = table.columns().get(last).isText();
        String end = text(row, last);
        List<String> lines =
                isWrapped ? Type.wrapped(end, widths[last] + ROUNDING_MM, TEXT_MM) : List.of(end);
        double height = ROW_MM + (lines.size() - 1) * NOTE_LINE_MM;
        if (pages.need(height)) {
            head();
        }
        pages.down(ROW_MM - 0.5);
        double x = TextPages.LEFT_MM;
        for (int i = 0; i < last; i++) {
            cell(x, i, TEXT_MM, text(row, i));
            x += widths[i] + GAP_MM;
        }
        double y = pages.y();
        for (int i = 0; i < lines.size(); i++) {
            if (i > 0) {
                pages.down(NOTE_LINE_MM);
            }
            cell(x, last, TEXT_MM, lines.get(i));
        }
        pages.down(0.5);
        boolean isSum = "in all".equals(row.get(0));
        if (isSum) {
            pages.rule(TextPages.LEFT_MM, x + widths[last], y + ROW_MM - 1.3, Layer.TEXT);
        }
    }

    private void cell(double x, int column, double height, String string) {
        boolean isText = table.columns().get(column).isText();
        String shown = isText ? Type.cut(string, widths[column] + 1, height) : string;
        pages.text(
                isText ? x : x + widths[column],
                pages.y(),
                height,
                isText ? Anchor.START : Anchor.END,
                shown);
    }

    private String text(List<Object> row, int column) {
        Object value = row.get(column);
        if (value == null) {
            return "";
        }
        return value instanceof Double number
                ? NumberText.said(NumberText.fixed(number, table.columns().get(column).decimals()))
                : (String) value;
    }

    private double[] widths() {
        int count = table.columns().size();
        double[] all = new double[count];
        double over = -(pages.rightMm() - TextPages.LEFT_MM) + (count - 1) * GAP_MM;
        for (int i = 0; i < count; i++) {
            all[i] = wide(head(table.columns().get(i)), SMALL_MM);
            for (List<Object> row : table.rows()) {
                all[i] = Math.max(all[i], wide(text(row, i), TEXT_MM));
            }
            over += all[i];
        }
        // Long texts give way first, then the last column, which wraps, then the others.
        over -= narrowed(all, 0, count - 1, over, LONG_TEXT_MM);
        over -= narrowed(all, count - 1, count, over, LEAST_TEXT_MM);
        narrowed(all, 0, count - 1, over, LEAST_TEXT_MM);
        return all;
    }

    /** Makes columns of texts narrower, as far as is needed and allowed; by how much. */
    private double narrowed(double[] all, int from, int to, double over, double least) {
        double gained = 0;
        for (int i = from; i < to; i++) {
            if (table.columns().get(i).isText()) {
                double less = Math.max(0, Math.min(over - gained, all[i] - least));
                all[i] -= less;
                gained += less;
            }
        }
        return gained;
    }

    private static double wide(String string, double height) {
        return Type.widthMm(string, height);
    }
}
