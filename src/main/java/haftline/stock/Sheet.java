package haftline.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A parsed catalogue file, its cells not yet understood.
 *
 * @param file its name, for messages
 * @param layout its columns
 * @param header its header row
 * @param lines its other rows
 * @param problems lines that could not be parted into cells
 */
record Sheet(
        String file,
        Layout layout,
        List<String> header,
        List<Line> lines,
        List<CatalogueProblem> problems) {
    /** A maker mends a few errors at a time; more only bury the first. */
    private static final int GREATEST_PROBLEM_COUNT = 50;

    /**
     * One line.
     *
     * @param number line in the file, from 1
     * @param cells its cells
     */
    record Line(int number, List<String> cells) {}

    Sheet {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
    }

    /**
     * Reads every row.
     *
     * @param reading takes a row; what is wrong with it goes to the row
     * @throws CatalogueException where anything was wrong in the file
     */
    void read(Consumer<Row> reading) throws CatalogueException {
        List<CatalogueProblem> found = new ArrayList<>(problems);
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            columns.put(header.get(i), i);
        }
        for (Line line : lines) {
            Row row = new Row(file, line.number(), columns, line.cells(), found);
            try {
                reading.accept(row);
            } catch (IllegalArgumentException e) {
                row.problem("", e.getMessage());
            }
        }
        if (!found.isEmpty()) {
            throw new CatalogueException(
                    found.subList(0, Math.min(found.size(), GREATEST_PROBLEM_COUNT)));
        }
    }
}
