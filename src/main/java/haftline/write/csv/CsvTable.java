package haftline.write.csv;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * A table of numbers and texts, each column of one kind.
 *
 * @param columns one or more columns
 * @param rows rows of as many cells as there are columns: {@link Double} in a column of numbers,
 *     {@link String} in one of texts, null for an empty cell
 */
public record CsvTable(List<Column> columns, List<List<Object>> rows) {
    private static final int MOST_DECIMALS = 9;

    /**
     * A column.
     *
     * @param name what it holds
     * @param unit unit of its numbers, empty where they have none and for texts
     * @param decimals digits after the point of its numbers; -1 for a column of texts
     */
    public record Column(String name, String unit, int decimals) {
        private static final int TEXT = -1;

        /**
         * Checks name and decimals.
         *
         * @throws IllegalArgumentException where the name is blank or the decimals out of range
         */
        public Column {
            Checks.named("column name", name);
            Checks.within("decimals of " + name, decimals, TEXT, MOST_DECIMALS);
        }

        /**
         * A column of numbers.
         *
         * @param name what it holds
         * @param unit its unit, or empty
         * @param decimals digits after the point, 0 to 9
         * @return the column
         */
        public static Column number(String name, String unit, int decimals) {
            return new Column(name, unit, decimals);
        }

        /**
         * A column of texts.
         *
         * @param name what it holds
         * @return the column
         */
        public static Column text(String name) {
            return new Column(name, "", TEXT);
        }

        /**
         * Whether it holds texts.
         *
         * @return true for texts, false for numbers
         */
        public boolean isText() {
            return decimals == TEXT;
        }

        /**
         * What stands at its head.
         *
         * @return name and unit: {@code diameter [mm]}
         */
        public String head() {
            return unit.isEmpty() ? name : name + " [" + unit + "]";
        }

        private void check(Object cell, int row) {
            boolean fits =
                    cell == null
                            || (isText()
                                    ? cell instanceof String
                                    : cell instanceof Double number && Double.isFinite(number));
            if (!fits) {
                throw new IllegalArgumentException(
                        "row " + row + ", " + name + ": " + cell + ", expected " + kind());
            }
        }

        private String kind() {
            return isText() ? "a text" : "a finite double";
        }
    }

    /**
     * Checks that every row fits its columns, and copies.
     *
     * @throws IllegalArgumentException where there is no column, or a row is too short, too long or
     *     of the wrong kind
     */
    public CsvTable {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("table: expected at least one column");
        }
        List<List<Object>> copies = new ArrayList<>(rows.size());
        for (List<Object> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "row "
                                + copies.size()
                                + ": "
                                + row.size()
                                + " cells, expected "
                                + columns.size());
            }
            for (int i = 0; i < row.size(); i++) {
                columns.get(i).check(row.get(i), copies.size());
            }
            // List.copyOf refuses null, which here is an empty cell.
            copies.add(Collections.unmodifiableList(new ArrayList<>(row)));
        }
        rows = Collections.unmodifiableList(copies);
    }

    /**
     * An empty table.
     *
     * @param columns its columns
     * @return the table
     */
    public static CsvTable of(Column... columns) {
        return new CsvTable(List.of(columns), List.of());
    }

    /**
     * The table with rows.
     *
     * @param more the rows
     * @return the longer table
     */
    public CsvTable withRows(List<List<Object>> more) {
        List<List<Object>> all = new ArrayList<>(rows);
        all.addAll(more);
        return new CsvTable(columns, all);
    }

    /**
     * A row, with null for an empty cell.
     *
     * @param cells doubles and strings
     * @return the row
     */
    public static List<Object> row(Object... cells) {
        return Collections.unmodifiableList(Arrays.asList(cells));
    }
}
