package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Layer;
import java.util.List;

/**
 * A ruled table. Columns of figures are as wide as their widest figure; one column of words takes
 * what is left and wraps.
 */
final class Table implements Block {
    private static final double HEAD_MM = 2;
    private static final double WORDS_MM = 2.3;
    private static final double GAP_MM = 2.6;
    private static final double LEAST_WORDS_MM = 12;

    /** Room for four figures by hand, and a line high enough to write in. */
    private static final double BOX_MM = 19;

    private static final double BOX_HIGH_MM = 7;

    /** How a column is set. */
    enum Kind {
        /** Words from the left, which wrap. */
        WORDS,
        /** Figures under each other. */
        FIGURE,
        /** Figures that are read first: larger and wide. */
        MAIN,
        /** A short number in front of the row. */
        NUMBER,
        /** A letter in front of the row, as it stands on the drawing. */
        LETTER,
        /** An empty box to write into; what stands in the cell is not shown. */
        BOX;

        double capMm() {
            return switch (this) {
                case WORDS -> WORDS_MM;
                case FIGURE -> 3.1;
                case MAIN -> 4.0;
                case NUMBER -> 2.6;
                case LETTER -> 3.1;
                case BOX -> 3.6;
            };
        }

        boolean isFromLeft() {
            return this == WORDS || this == NUMBER || this == LETTER;
        }

        boolean isWide() {
            return this == MAIN || this == LETTER;
        }
    }

    /** A column: what stands over it, in one line or two, and how it is set. */
    record Column(String head, String under, Kind kind) {}

    /** A row: its cells, or a title over the rows that follow. */
    record Row(List<String> cells, String title) {
        static Row of(List<String> cells) {
            return new Row(List.copyOf(cells), "");
        }

        static Row titled(String title) {
            return new Row(List.of(), title);
        }
    }

    private final List<Column> columns;
    private final List<Row> rows;

    Table(List<Column> columns, List<Row> rows) {
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
    }

    @Override
    public double set(Ink ink, double x, double top, double width, double k) {
        double[] widths = widths(width, k);
        double y = head(ink, x, top, width, widths, k);
        for (Row row : rows) {
            y =
                    row.title().isEmpty()
                            ? row(ink, x, y, widths, k, row)
                            : title(ink, x, y, width, k, row);
            ink.rule(x, x + width, y);
        }
        return top - y;
    }

    private double[] widths(double width, double k) {
        double[] widths = new double[columns.size()];
        int words = -1;
        double taken = 0;
        for (int i = 0; i < widths.length; i++) {
            Column column = columns.get(i);
            if (column.kind() == Kind.WORDS) {
                words = i;
                continue;
            }
            if (column.kind() == Kind.BOX) {
                widths[i] = BOX_MM * k;
                taken += widths[i];
                continue;
            }
            double widest =
                    Math.max(
                            Type.widthMm(column.head(), HEAD_MM * k),
                            Type.widthMm(column.under(), HEAD_MM * k));
            for (Row row : rows) {
                if (row.title().isEmpty()) {
                    widest =
                            Math.max(
                                    widest,
                                    Type.widthMm(row.cells().get(i), column.kind().capMm() * k));
                }
            }
            widths[i] = widest + GAP_MM * k;
            taken += widths[i];
        }
        double left = width - taken;
        if (words >= 0) {
            widths[words] = Math.max(LEAST_WORDS_MM * k, left);
        } else {
            for (int i = 0; i < widths.length; i++) {
                widths[i] += left / widths.length;
            }
        }
        return widths;
    }

    private double head(Ink ink, double x, double top, double width, double[] widths, double k) {
        double cap = HEAD_MM * k;
        boolean two = columns.stream().anyMatch(column -> !column.under().isEmpty());
        double y = top - cap - 0.3 * k;
        double at = x;
        for (int i = 0; i < widths.length; i++) {
            Column column = columns.get(i);
            double second = y - Type.LEADING * cap;
            put(ink, at, widths[i], y, cap, column.kind(), column.head(), k);
            put(ink, at, widths[i], second, cap, column.kind(), column.under(), k);
            at += widths[i];
        }
        double foot = (two ? y - Type.LEADING * cap : y) - 1.2 * k;
        ink.rule(x, x + width, foot);
        return foot;
    }

    private static void put(
            Ink ink,
            double left,
            double width,
            double y,
            double cap,
            Kind kind,
            String string,
            double k) {
        boolean fromLeft = kind.isFromLeft();
        ink.text(
                fromLeft ? left : left + width - GAP_MM / 2 * k,
                y,
                cap,
                fromLeft ? Anchor.START : Anchor.END,
                false,
                string);
    }

    private double title(Ink ink, double x, double top, double width, double k, Row row) {
        double cap = WORDS_MM * k;
        double baseline = top - 1.4 * k - cap;
        double low = baseline;
        for (String line : Type.wrapped(row.title(), width, cap)) {
            ink.text(x, baseline, cap, Anchor.START, true, line);
            low = baseline;
            baseline -= Type.LEADING * cap;
        }
        return low - Blocks.DESCENT * cap - 0.5 * k;
    }

    private double row(Ink ink, double x, double top, double[] widths, double k, Row row) {
        double main =
                columns.stream().mapToDouble(column -> column.kind().capMm()).max().orElse(1) * k;
        double baseline = top - 0.95 * k - main;
        double low = baseline;
        double at = x;
        for (int i = 0; i < widths.length; i++) {
            Kind kind = columns.get(i).kind();
            double cap = kind.capMm() * k;
            String cell = row.cells().get(i);
            if (kind == Kind.WORDS) {
                double y = baseline;
                for (String line : Type.wrapped(cell, widths[i] - k, cap)) {
                    ink.text(at, y, cap, Anchor.START, false, line);
                    low = Math.min(low, y);
                    y -= Type.LEADING * cap;
                }
            } else if (kind == Kind.NUMBER || kind == Kind.LETTER) {
                ink.text(at, baseline, cap, Anchor.START, kind.isWide(), cell);
            } else if (kind != Kind.BOX) {
                double right = at + widths[i] - GAP_MM / 2 * k;
                ink.text(right, baseline, cap, Anchor.END, kind.isWide(), cell);
            }
            at += widths[i];
        }
        double foot = Math.min(baseline - 1.15 * k, low - Blocks.DESCENT * WORDS_MM * k - 0.5 * k);
        int box = box();
        if (box >= 0) {
            foot = Math.min(foot, top - BOX_HIGH_MM * k);
            double right = x;
            for (int i = 0; i <= box; i++) {
                right += widths[i];
            }
            double left = right - widths[box] + GAP_MM / 2 * k;
            ink.box(Layer.OUTLINE, left, foot + 0.6 * k, right, top - 0.6 * k);
        }
        return foot;
    }

    private int box() {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).kind() == Kind.BOX) {
                return i;
            }
        }
        return -1;
    }
}
