package haftline.write.csv;

import haftline.write.OutputException;
import haftline.write.OutputFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Tables of stations that somebody measured into: a new table in their place would throw away what
 * was read at the lathe, so they are kept beside it.
 */
public final class FilledTables {
    /** What the name of a table of stations ends in, behind its piece's. */
    public static final String STATIONS = "-stations.csv";

    private static final String MEASURED = "measured";

    /** Larger than any table of stations; whoever put it there may want it. */
    private static final long GREATEST_BYTES = 4_000_000;

    private FilledTables() {}

    /**
     * Copies each filled-in table that is about to be replaced under a free name with a tilde
     * behind.
     *
     * @param folder where files are to be written
     * @param files the files that are to be written
     * @return the copies by the name of the table
     * @throws OutputException where a table cannot be read or kept; nothing is replaced then
     */
    public static Map<String, Path> keep(Path folder, List<OutputFile> files)
            throws OutputException {
        Map<String, Path> kept = new LinkedHashMap<>();
        for (OutputFile file : files) {
            Path there = folder.resolve(file.name());
            if (file.name().endsWith(STATIONS) && Files.isRegularFile(there)) {
                try {
                    if (isFilledIn(there)) {
                        kept.put(file.name(), copy(there));
                    }
                } catch (IOException e) {
                    throw new OutputException(
                            there, "the measured table of that name cannot be kept", e);
                }
            }
        }
        return kept;
    }

    private static Path copy(Path table) throws IOException {
        for (int i = 1; ; i++) {
            Path copy = table.resolveSibling(table.getFileName() + "~" + (i == 1 ? "" : i));
            try {
                return Files.copy(table, copy);
            } catch (FileAlreadyExistsException taken) {
                // Readings of an earlier time: they are as dear.
            }
        }
    }

    /** Whether a figure was measured; what cannot be told counts as if. */
    private static boolean isFilledIn(Path table) throws IOException {
        if (Files.size(table) > GREATEST_BYTES) {
            return true;
        }
        // Every separator and digit is ASCII, whatever a spreadsheet saved the rest as.
        String text = Files.readString(table, StandardCharsets.ISO_8859_1);
        String head = text.lines().findFirst().orElse("");
        char between = head.indexOf(';') >= 0 ? ';' : head.indexOf('\t') >= 0 ? '\t' : ',';
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(between).setTrim(true).get();
        List<CSVRecord> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            parser.forEach(rows::add);
        } catch (IOException | UncheckedIOException damaged) {
            return true;
        }
        Optional<Integer> column = measured(rows);
        return column.isEmpty()
                || rows.stream()
                        .skip(1)
                        .anyMatch(
                                row ->
                                        row.size() > column.get()
                                                && !row.get(column.get()).isBlank());
    }

    private static Optional<Integer> measured(List<CSVRecord> rows) {
        List<String> head = rows.isEmpty() ? List.of() : rows.get(0).toList();
        for (int i = 0; i < head.size(); i++) {
            if (head.get(i).startsWith(MEASURED)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
