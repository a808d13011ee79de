package haftline.stock;

import haftline.measure.NearestWord;
import haftline.measure.Quote;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads catalogue files: comma-separated, UTF-8, one header row, decimal points. The starter
 * catalogues travel inside the program; a maker's own files are read from where they lie, and their
 * kind is told from their header row.
 */
public final class CatalogueReader {
    /** The starter set of 100 woods is 50 kB; a file beyond this is not a catalogue. */
    private static final int GREATEST_FILE_BYTES = 4_000_000;

    private static final String STARTER_FOLDER = "/haftline/starter/seeds/";
    private static final String STARTER_NAME = "seeds/";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Spreadsheets pad cells with blanks, and leave empty lines at the end. */
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setTrim(true).setIgnoreEmptyLines(true).get();

    private CatalogueReader() {}

    /**
     * The starter catalogues; each is read when it is first asked for.
     *
     * @return the catalogues
     */
    public static Catalogues starter() {
        return new Catalogues(Map.of());
    }

    /**
     * The starter catalogues and a maker's own files, whose entries are added and take the place of
     * starter entries of the same key.
     *
     * @param files files in the format of the starter catalogues, later ones over earlier ones
     * @return the catalogues
     * @throws CatalogueException where a file cannot be read or has no known header row
     */
    public static Catalogues starterWith(List<Path> files) throws CatalogueException {
        Map<String, List<Sheet>> further = new TreeMap<>();
        for (Path file : files) {
            Sheet sheet = parse(file.toString(), decode(file.toString(), bytes(file)), null);
            further.computeIfAbsent(sheet.layout().kind(), kind -> new ArrayList<>()).add(sheet);
        }
        return new Catalogues(further);
    }

    /** The starter file of a kind. */
    static Sheet starterSheet(Layout layout) throws CatalogueException {
        String name = layout.kind() + ".csv";
        try (InputStream in = CatalogueReader.class.getResourceAsStream(STARTER_FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(
                        "starter catalogue " + name + " is missing from the program");
            }
            String file = STARTER_NAME + name;
            return parse(file, decode(file, in.readAllBytes()), layout);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Path file) throws CatalogueException {
        try {
            if (Files.isDirectory(file)) {
                throw problem(file.toString(), 0, "", "is a folder; expected a file");
            }
            // A device or a pipe has no end.
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw problem(file.toString(), 0, "", "is not a plain file");
            }
            if (Files.size(file) > GREATEST_FILE_BYTES) {
                throw problem(
                        file.toString(),
                        0,
                        "",
                        "larger than " + GREATEST_FILE_BYTES / 1_000_000 + " MB");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw problem(file.toString(), 0, "", "no such file");
        } catch (AccessDeniedException e) {
            throw problem(file.toString(), 0, "", "may not be read; look at its permissions");
        } catch (IOException e) {
            throw problem(file.toString(), 0, "", "cannot be read: " + e.getMessage());
        }
    }

    private static String decode(String file, byte[] bytes) throws CatalogueException {
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') >= 0) {
                throw problem(file, 0, "", "is not a text file");
            }
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw problem(file, 0, "", "is not UTF-8 text; save it as \"CSV UTF-8\"");
        }
    }

    /** Parses a file; without a layout its kind is told from the header row. */
    private static Sheet parse(String file, String text, Layout expected)
            throws CatalogueException {
        List<CatalogueProblem> problems = new ArrayList<>();
        List<Sheet.Line> lines = new ArrayList<>();
        List<String> header = null;
        Layout layout = expected;
        int read = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
            for (CSVRecord cells : parser) {
                int line = lineOf(parser, cells);
                read = (int) parser.getCurrentLineNumber();
                if (header == null) {
                    header = cells.toList();
                    layout = layout == null ? Layout.fitting(header) : layout;
                    checkHeader(file, line, header, layout);
                } else if (cells.size() != header.size()) {
                    problems.add(
                            new CatalogueProblem(
                                    file,
                                    line,
                                    "",
                                    cells.size()
                                            + " cells where the header has "
                                            + header.size()
                                            + "; a text with a comma in it needs quotes"));
                } else {
                    lines.add(new Sheet.Line(line, cells.toList()));
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw problem(
                    file,
                    read + 1,
                    "",
                    "quotes are not closed, or text stands behind them, from this line on");
        }
        if (header == null) {
            throw problem(file, 0, "", "is empty; expected a header row");
        }
        return new Sheet(file, layout, header, lines, problems);
    }

    /** The parser stands at the end of the record; line breaks within texts are counted back. */
    private static int lineOf(CSVParser parser, CSVRecord cells) {
        int line = (int) parser.getCurrentLineNumber();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            for (int at = cell.indexOf('\n'); at >= 0; at = cell.indexOf('\n', at + 1)) {
                line--;
            }
        }
        return line;
    }

    private static void checkHeader(String file, int line, List<String> header, Layout layout)
            throws CatalogueException {
        if (header.size() == 1 && header.get(0).contains(";")) {
            throw problem(
                    file, line, "header", "cells are parted by semicolons; save it with commas");
        }
        List<CatalogueProblem> problems = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!seen.add(column)) {
                problems.add(
                        new CatalogueProblem(
                                file, line, Quote.plain(column), "column stands there twice"));
            } else if (!layout.knows(column)) {
                String nearest =
                        NearestWord.to(layout.columns(), column)
                                .map(near -> "; did you mean \"" + near + "\"?")
                                .orElse("");
                problems.add(
                        new CatalogueProblem(
                                file,
                                line,
                                Quote.plain(column),
                                "no such column in a catalogue of " + layout.kind() + nearest));
            }
        }
        for (String column : layout.required()) {
            if (!seen.contains(column)) {
                problems.add(
                        new CatalogueProblem(
                                file,
                                line,
                                column,
                                "column is missing; a catalogue of "
                                        + layout.kind()
                                        + " needs it"));
            }
        }
        if (!problems.isEmpty()) {
            throw new CatalogueException(problems);
        }
    }

    private static CatalogueException problem(String file, int line, String field, String message) {
        return new CatalogueException(new CatalogueProblem(file, line, field, message));
    }
}
