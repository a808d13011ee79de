package haftline.write.csv;

import haftline.measure.NumberText;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/**
 * Writes a table as CSV after RFC 4180: commas, lines that end in CR LF, quotes where they are
 * needed, decimal points whatever the locale, one line of headings with the unit in brackets.
 */
public final class CsvWriter {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;

    /**
     * A spreadsheet takes a cell that begins so for a formula, or strips the character and then
     * does.
     */
    private static final String FORMULA_STARTS = "=+-@\t\r\n";

    private CsvWriter() {}

    /**
     * Writes a table.
     *
     * @param table the table
     * @return the file, to be stored as UTF-8
     */
    public static String write(CsvTable table) {
        StringBuilder out = new StringBuilder();
        line(out, table.columns().stream().map(column -> guarded(column.head())));
        for (List<Object> row : table.rows()) {
            line(
                    out,
                    IntStream.range(0, row.size())
                            .mapToObj(i -> cell(table.columns().get(i), row.get(i))));
        }
        return out.toString();
    }

    private static void line(StringBuilder out, Stream<String> cells) {
        out.append(FORMAT.format(cells.toArray())).append(FORMAT.getRecordSeparator());
    }

    private static String cell(CsvTable.Column column, Object cell) {
        if (cell == null) {
            return "";
        }
        return column.isText()
                ? guarded((String) cell)
                : NumberText.fixed((Double) cell, column.decimals());
    }

    /** A leading apostrophe marks a cell as text in every spreadsheet. */
    private static String guarded(String text) {
        boolean isFormula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        return isFormula ? "'" + text : text;
    }
}
