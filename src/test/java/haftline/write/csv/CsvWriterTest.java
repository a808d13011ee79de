package haftline.write.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import haftline.support.Golden;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {
    /** Stations of an invented handle, with a text that spreadsheets would run. */
    public static CsvTable stations() {
        return CsvTable.of(
                        CsvTable.Column.number("x from shoulder", "mm", 2),
                        CsvTable.Column.number("diameter", "mm", 2),
                        CsvTable.Column.number("wall, least", "mm", 2),
                        CsvTable.Column.text("note"))
                .withRows(
                        List.of(
                                CsvTable.row(-11.5, 11.9, 2.85, "tenon's end"),
                                CsvTable.row(-0.001, 14.0, null, "shoulder, \"sharp\""),
                                CsvTable.row(1234.5, 23.0, 8.4, "=HYPERLINK(\"x\")"),
                                CsvTable.row(105.0, 14.0, null, null)));
    }

    @Test
    void stations_areAsTheyWereLookedAt() throws Exception {
        Golden.assertMatches("csv/stations.csv", CsvWriter.write(stations()));
    }

    @Test
    void lines_endInCrLfAndNumbersHaveDecimalPoints() {
        String[] lines = CsvWriter.write(stations()).split("\r\n", -1);
        assertThat(lines)
                .containsExactly(
                        "x from shoulder [mm],diameter [mm],\"wall, least [mm]\",note",
                        "-11.50,11.90,2.85,tenon's end",
                        "0.00,14.00,,\"shoulder, \"\"sharp\"\"\"",
                        "1234.50,23.00,8.40,\"'=HYPERLINK(\"\"x\"\")\"",
                        "105.00,14.00,,",
                        "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
    void texts_thatSpreadsheetsWouldRunAreMarkedAsText(String text) {
        CsvTable table =
                CsvTable.of(CsvTable.Column.text("a")).withRows(List.of(CsvTable.row(text)));
        assertThat(CsvWriter.write(table)).contains("'" + text);
    }

    @Test
    void tables_refuseWhatDoesNotFit() {
        CsvTable table =
                CsvTable.of(CsvTable.Column.number("d", "mm", 1), CsvTable.Column.text("n"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.withRows(List.of(CsvTable.row(1.0))))
                .withMessage("row 0: 1 cells, expected 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.withRows(List.of(CsvTable.row("x", "y"))))
                .withMessage("row 0, d: x, expected a finite double");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.withRows(List.of(CsvTable.row(Double.NaN, "y"))));
        assertThatIllegalArgumentException().isThrownBy(CsvTable::of);
    }
}
