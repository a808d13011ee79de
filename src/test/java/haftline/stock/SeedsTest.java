package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The starter files as they lie there, read cell by cell and not by the catalogue's reader. */
class SeedsTest {
    private static final String[] WITH_SOURCES = {
        "woods",
        "reactions",
        "plastics",
        "metals",
        "adhesives",
        "drills",
        "flutes",
        "hands",
        "grips",
        "speeds",
        "climates",
        "dust"
    };

    private static List<CSVRecord> rows(String kind) {
        String path = "/haftline/starter/seeds/" + kind + ".csv";
        try (Reader in =
                new InputStreamReader(
                        SeedsTest.class.getResourceAsStream(path), StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in)
                    .getRecords();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Set<String> sourceKeys() {
        Set<String> keys = new HashSet<>();
        rows("sources").forEach(row -> keys.add(row.get("key")));
        return keys;
    }

    private static boolean isSource(String column) {
        return column.equals("source") || column.endsWith("_source");
    }

    @Test
    void everyCitedSource_exists_andEverySourceIsCited() {
        Set<String> keys = sourceKeys();
        Map<String, String> cited = new TreeMap<>();
        for (String kind : WITH_SOURCES) {
            for (CSVRecord row : rows(kind)) {
                row.toMap()
                        .forEach(
                                (column, cell) -> {
                                    if (isSource(column) && !cell.isEmpty()) {
                                        cited.put(cell, kind + ", " + column);
                                    }
                                });
            }
        }
        assertThat(keys).containsAll(cited.keySet());
        assertThat(cited.keySet()).containsAll(keys);
    }

    /** Adhesives share one source for their gaps and one for their times. */
    private static String sourceColumn(String kind, String column) {
        if (kind.equals("adhesives")) {
            if (column.startsWith("gap_")) {
                return "gap_source";
            }
            if (column.endsWith("_minutes") || column.endsWith("_hours")) {
                return "cure_source";
            }
        }
        if (column.equals("density_moisture_percent")) {
            return "density_source";
        }
        if (column.endsWith("_colour")) {
            return "colour_source";
        }
        String stem = column.replaceAll("_(kg_m3|n|mpa|percent|per_k)$", "");
        return stem + "_source";
    }

    @ParameterizedTest
    @ValueSource(strings = {"woods", "plastics", "metals", "adhesives"})
    void everyFigure_hasASource_andNoSourceStandsAlone(String kind) {
        for (CSVRecord row : rows(kind)) {
            Map<String, String> cells = row.toMap();
            Set<String> used = new HashSet<>();
            cells.forEach(
                    (column, cell) -> {
                        boolean name =
                                Set.of("key", "name", "botanical", "group", "reactions", "mixing")
                                        .contains(column);
                        if (!name && !isSource(column) && !cell.isEmpty()) {
                            String source = sourceColumn(kind, column);
                            used.add(source);
                            assertThat(cells.get(source))
                                    .as("%s, %s, %s", kind, cells.get("key"), column)
                                    .isNotEmpty();
                        }
                    });
            cells.forEach(
                    (column, cell) -> {
                        if (isSource(column) && !cell.isEmpty()) {
                            assertThat(used)
                                    .as("%s, %s, %s", kind, cells.get("key"), column)
                                    .contains(column);
                        }
                    });
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"reactions", "drills", "flutes", "hands", "grips", "speeds", "climates"})
    void everyRow_hasASource(String kind) {
        for (CSVRecord row : rows(kind)) {
            assertThat(row.get("source")).as(row.toString()).isNotEmpty();
        }
    }

    /** What is recalled says so in the title as well, and the other way round. */
    @Test
    void kinds_agreeWithTheTitles() {
        for (CSVRecord row : rows("sources")) {
            boolean recalled = row.get("kind").equals("from memory");
            boolean saysSo =
                    row.get("title").contains("recalled")
                            || row.get("title").contains("weigh your own");
            if (recalled) {
                assertThat(saysSo).as(row.get("key")).isTrue();
            }
            if (row.get("kind").equals("published")) {
                assertThat(row.get("title")).as(row.get("key")).doesNotContain("recalled");
            }
            assertThat(row.get("kind"))
                    .isIn(
                            "published",
                            "computed",
                            "estimate",
                            "from memory",
                            "common practice",
                            "invented");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sources", "woods", "plastics", "metals", "adhesives", "hands"})
    void files_arePlain(String kind) throws IOException {
        byte[] bytes =
                SeedsTest.class
                        .getResourceAsStream("/haftline/starter/seeds/" + kind + ".csv")
                        .readAllBytes();
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("\r", "\t", "\uFEFF", "\uFFFD").endsWith("\n");
    }
}
