package haftline.ui.model;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.production.BatchTable;
import haftline.set.production.BatchTables;
import haftline.set.production.CutPlan;
import haftline.set.production.Production;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a batch takes, row by row, for a list that is read from the top. */
public final class PlanRows {
    /** The table after which the sticks are drawn. */
    private static final String CUTS = "cuts";

    /** Letters that a column of texts is wide at most; the last one takes what is left. */
    private static final int MOST_LETTERS = 24;

    /** A row. */
    public interface Row {}

    /**
     * A heading.
     *
     * @param text the words
     */
    public record Heading(String text) implements Row {}

    /**
     * A sentence.
     *
     * @param text the sentence
     */
    public record Note(String text) implements Row {}

    /**
     * Cells beside each other.
     *
     * @param cells their words
     * @param columns their columns
     * @param isHead whether they name the columns
     */
    public record Cells(List<String> cells, Columns columns, boolean isHead) implements Row {
        /** Copies the list. */
        public Cells {
            cells = List.copyOf(cells);
        }
    }

    /**
     * The columns of a table.
     *
     * @param letters how many letters each is wide
     * @param words how many letters the longest word of each has
     * @param isText whether each holds texts, which stand left
     */
    public record Columns(List<Integer> letters, List<Integer> words, List<Boolean> isText) {
        /** Copies the lists. */
        public Columns {
            letters = List.copyOf(letters);
            words = List.copyOf(words);
            isText = List.copyOf(isText);
        }
    }

    /**
     * A stick that is drawn.
     *
     * @param stock what its wood or plastic is called
     * @param cut how it is cut
     * @param marks the letter of each blank, in the order of the cut's blanks
     * @param kerfMm width of the saw's cut, mm
     * @param longestMm length of the longest stick, which sets the scale, mm
     */
    public record Stick(
            String stock, CutPlan.Cut cut, List<String> marks, double kerfMm, double longestMm)
            implements Row {
        /** Copies the list. */
        public Stick {
            marks = List.copyOf(marks);
        }
    }

    private PlanRows() {}

    /**
     * The rows of a batch.
     *
     * @param production the batch
     * @param units unit of the lengths
     * @return headings, cells, sticks and sentences in the order of the work
     */
    public static List<Row> of(Production production, Units units) {
        List<Row> rows = new ArrayList<>();
        for (BatchTable table : BatchTables.of(production, units)) {
            rows.add(new Heading(table.title()));
            if (table.key().equals(CUTS)) {
                sticks(rows, production);
            }
            if (!table.rows().isEmpty()) {
                cells(rows, table);
            }
            table.notes().forEach(note -> rows.add(new Note(note)));
        }
        return List.copyOf(rows);
    }

    private static void sticks(List<Row> rows, Production production) {
        double longest =
                production.cuts().stream()
                        .flatMap(plan -> plan.cuts().stream())
                        .mapToDouble(cut -> cut.stick().lengthMm())
                        .max()
                        .orElse(0);
        for (CutPlan plan : production.cuts()) {
            for (CutPlan.Cut cut : plan.cuts()) {
                List<String> marks =
                        cut.blanks().stream()
                                .map(
                                        taken ->
                                                BatchTables.mark(
                                                        production.blanks().indexOf(taken.blank())))
                                .toList();
                rows.add(
                        new Stick(
                                plan.stockName(),
                                cut,
                                marks,
                                production.rack().orElseThrow().kerfMm(),
                                longest));
            }
        }
    }

    private static void cells(List<Row> rows, BatchTable table) {
        List<List<String>> all = new ArrayList<>();
        List<String> head = new ArrayList<>();
        for (BatchTable.Column column : table.columns()) {
            head.add(
                    column.unit().isEmpty() ? column.name() : column.name() + "\n" + column.unit());
        }
        all.add(head);
        for (List<Object> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(cell(row.get(i), table.columns().get(i)));
            }
            all.add(cells);
        }
        Columns columns = columns(all, table);
        for (int i = 0; i < all.size(); i++) {
            rows.add(new Cells(all.get(i), columns, i == 0));
        }
    }

    private static String cell(Object value, BatchTable.Column column) {
        if (value == null) {
            return "";
        }
        return value instanceof Double number
                ? NumberText.fixed(number, column.decimals())
                : (String) value;
    }

    private static int longestLine(String cell) {
        return cell.lines().mapToInt(String::length).max().orElse(0);
    }

    private static int longestWord(String cell) {
        return Stream.of(cell.split("\\s+")).mapToInt(String::length).max().orElse(0);
    }

    private static Columns columns(List<List<String>> all, BatchTable table) {
        List<Integer> letters = new ArrayList<>();
        List<Integer> words = new ArrayList<>();
        List<Boolean> isText = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            int widest = 0;
            int word = 0;
            for (List<String> row : all) {
                widest = Math.max(widest, longestLine(row.get(i)));
                word = Math.max(word, longestWord(row.get(i)));
            }
            isText.add(table.columns().get(i).isText());
            letters.add(isText.get(i) ? Math.min(widest, MOST_LETTERS) : widest);
            words.add(Math.min(word, MOST_LETTERS));
        }
        return new Columns(letters, words, isText);
    }
}
