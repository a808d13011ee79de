package haftline.set.production;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A table of a batch, for whatever page or file it goes to.
 *
 * @param key its name in files, one lower-case word
 * @param title its heading
 * @param columns the columns
 * @param rows rows of as many cells: {@link Double} in a column of numbers, {@link String} in one
 *     of texts, null for an empty cell
 * @param notes sentences that belong to it
 */
public record BatchTable(
        String key,
        String title,
        List<Column> columns,
        List<List<Object>> rows,
        List<String> notes) {
    /**
     * A column.
     *
     * @param name what it holds
     * @param unit unit of its numbers, empty where they have none and for texts
     * @param decimals digits after the point of its numbers; -1 for a column of texts
     */
    public record Column(String name, String unit, int decimals) {
        static Column text(String name) {
            return new Column(name, "", -1);
        }

        static Column count(String name) {
            return new Column(name, "", 0);
        }

        /**
         * Whether it holds texts.
         *
         * @return true for texts, false for numbers
         */
        public boolean isText() {
            return decimals < 0;
        }
    }

    /** Copies the lists; null is an empty cell, which List.copyOf refuses. */
    public BatchTable {
        columns = List.copyOf(columns);
        List<List<Object>> copies = new ArrayList<>();
        for (List<Object> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        key + ": " + row.size() + " cells, expected " + columns.size());
            }
            copies.add(Collections.unmodifiableList(new ArrayList<>(row)));
        }
        rows = Collections.unmodifiableList(copies);
        notes = List.copyOf(notes);
    }
}
