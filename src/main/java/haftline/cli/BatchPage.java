package haftline.cli;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.production.BatchTable;
import haftline.set.production.Production;
import java.util.ArrayList;
import java.util.List;

/** A batch on a page: its tables one under the other. */
final class BatchPage {
    private static final int GAP = 2;

    /** A column of texts is not cut shorter than this, even where the page is overrun. */
    private static final int LEAST_TEXT = 10;

    private static final int MOST_TEXT = 26;

    /** A last column that wraps gives way to this. */
    private static final int LEAST_WRAPPED = 18;

    private static final String CAUTION =
            "Saw, drill and turn by the manuals of your machines and local rules, which come before"
                    + " this page: guards on, push stick, face shield or goggles, dust mask and"
                    + " extraction, nothing loose. Cover the blades until the work is done.";

    private final Paper paper;

    private BatchPage(Ink ink) {
        paper = new Paper(ink, 0, 0);
    }

    static String of(Batch batch, Units units, Ink ink) {
        BatchPage page = new BatchPage(ink);
        Production production = batch.production();
        String count = production.pieces() + (production.pieces() == 1 ? " piece" : " pieces");
        page.paper.heading(production.set() + ", batch " + production.batch(), count, count);
        batch.tables(units).forEach(page::table);
        page.paper.marked("Mind  ", ink.strong("Mind  "), CAUTION);
        return page.paper.text();
    }

    private void table(BatchTable table) {
        if (table.rows().isEmpty() && table.notes().isEmpty()) {
            return;
        }
        paper.line(paper.ink().strong(table.title()));
        if (!table.rows().isEmpty()) {
            rows(table);
        }
        for (String note : table.notes()) {
            paper.marked("  ", "  ", note);
        }
        paper.blank();
    }

    private void rows(BatchTable table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.columns().stream().map(BatchTable.Column::name).toList());
        lines.add(table.columns().stream().map(column -> Paper.harmless(column.unit())).toList());
        for (List<Object> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(cell(row.get(i), table.columns().get(i)));
            }
            lines.add(cells);
        }
        int[] widths = widths(lines, table.columns());
        for (int i = 0; i < lines.size(); i++) {
            boolean isBare = lines.get(i).stream().allMatch(String::isEmpty);
            if (!isBare) {
                line(lines.get(i), widths, table.columns(), i < 2);
            }
        }
    }

    static String cell(Object value, BatchTable.Column column) {
        if (value == null) {
            return "";
        }
        return value instanceof Double number
                ? NumberText.fixed(number, column.decimals())
                : Paper.harmless((String) value);
    }

    private static int[] widths(List<List<String>> lines, List<BatchTable.Column> columns) {
        int[] widths = new int[columns.size()];
        int all = 0;
        for (int i = 0; i < widths.length; i++) {
            for (List<String> line : lines) {
                widths[i] = Math.max(widths[i], Paper.width(line.get(i)));
            }
            boolean isLast = i == widths.length - 1;
            if (columns.get(i).isText() && !isLast) {
                widths[i] = Math.min(widths[i], MOST_TEXT);
            }
            all += widths[i] + GAP;
        }
        int last = widths.length - 1;
        int over = all - Paper.WIDTH;
        if (columns.get(last).isText()) {
            over -= narrowed(widths, last, over, LEAST_WRAPPED);
        }
        // Then the widest of the other texts gives way, and after it the next.
        for (int i = 0; over > 0 && i < widths.length; i++) {
            over -= narrowed(widths, widestText(widths, columns), over, LEAST_TEXT);
        }
        return widths;
    }

    /** Makes a column narrower, as far as is needed and allowed; by how much. */
    private static int narrowed(int[] widths, int column, int over, int least) {
        int less = Math.max(0, Math.min(over, widths[column] - least));
        widths[column] -= less;
        return less;
    }

    private static int widestText(int[] widths, List<BatchTable.Column> columns) {
        int widest = 0;
        for (int i = 0; i < widths.length - 1; i++) {
            boolean isWider = widths[i] > widths[widest] || !columns.get(widest).isText();
            if (columns.get(i).isText() && isWider) {
                widest = i;
            }
        }
        return widest;
    }

    private void line(
            List<String> cells, int[] widths, List<BatchTable.Column> columns, boolean isHead) {
        int last = widths.length - 1;
        StringBuilder line = new StringBuilder("  ");
        int indent = GAP;
        for (int i = 0; i < last; i++) {
            line.append(fitted(cells.get(i), widths[i], columns.get(i)));
            line.append(" ".repeat(GAP));
            indent += widths[i] + GAP;
        }
        List<String> wrapped =
                columns.get(last).isText()
                        ? Paper.wrapped(cells.get(last), Math.max(LEAST_TEXT, widths[last]))
                        : List.of(Paper.padLeft(cells.get(last), widths[last]));
        line.append(wrapped.isEmpty() ? "" : wrapped.get(0));
        String text = line.toString();
        paper.line(isHead ? paper.ink().faint(text.stripTrailing()) : text);
        for (int i = 1; i < wrapped.size(); i++) {
            paper.line(" ".repeat(indent) + wrapped.get(i));
        }
    }

    private static String fitted(String cell, int width, BatchTable.Column column) {
        return column.isText()
                ? Paper.pad(Paper.cut(cell, width), width)
                : Paper.padLeft(cell, width);
    }
}
