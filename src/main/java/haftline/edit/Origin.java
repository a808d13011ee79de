package haftline.edit;

import haftline.store.LoadedSet;
import haftline.store.References;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/**
 * Where journalled work belongs: the set's file and what it said of other files.
 *
 * @param name name of the set
 * @param seenFrom the file from whose folder the references are seen
 * @param file the set's file, or empty for a set that was never saved
 * @param shape path of the shape document, may be empty
 * @param parts path of the parts document, may be empty
 * @param batch whether the set names its batch
 * @param rules path of the rules document, if any
 * @param workshop path of the workshop document, if any
 * @param catalogues paths of catalogue files
 * @param pieceShapes paths of the shapes of pieces that have their own, by the piece's name
 */
record Origin(
        String name,
        Path seenFrom,
        Optional<Path> file,
        String shape,
        String parts,
        boolean batch,
        Optional<String> rules,
        Optional<String> workshop,
        List<String> catalogues,
        Map<String, String> pieceShapes) {
    private static final String CATALOGUE = "catalogue.";
    private static final String PIECE = "piece.";

    static Origin of(LoadedSet content, Optional<Path> file) {
        References said = content.references();
        return new Origin(
                content.set().name(),
                content.file().toAbsolutePath(),
                file.map(Path::toAbsolutePath),
                said.shape(),
                said.parts(),
                said.batch().isPresent(),
                said.rules(),
                said.workshop(),
                said.catalogues(),
                said.pieceShapes());
    }

    /** The references as the set said them; the rack as it was read back. */
    References references(LoadedSet recovered) {
        return new References(
                shape,
                parts,
                batch ? Optional.of(recovered.set().batch()) : Optional.empty(),
                rules,
                workshop,
                catalogues,
                recovered.references().rack(),
                pieceShapes);
    }

    String text() {
        Properties kept = new Properties();
        kept.setProperty("name", name);
        kept.setProperty("seen-from", seenFrom.toString());
        file.ifPresent(path -> kept.setProperty("file", path.toString()));
        kept.setProperty("shape", shape);
        kept.setProperty("parts", parts);
        kept.setProperty("batch", Boolean.toString(batch));
        rules.ifPresent(path -> kept.setProperty("rules", path));
        workshop.ifPresent(path -> kept.setProperty("workshop", path));
        for (int i = 0; i < catalogues.size(); i++) {
            kept.setProperty(CATALOGUE + i, catalogues.get(i));
        }
        pieceShapes.forEach((piece, path) -> kept.setProperty(PIECE + piece, path));
        try {
            StringWriter text = new StringWriter();
            kept.store(text, null);
            return text.toString();
        } catch (IOException e) {
            throw new UncheckedIOException("a string takes every text", e);
        }
    }

    static Origin read(Path from) throws IOException {
        Properties kept = new Properties();
        try (Reader reader = Files.newBufferedReader(from, StandardCharsets.UTF_8)) {
            kept.load(reader);
        } catch (IllegalArgumentException spoilt) {
            throw new IOException(from + ": " + spoilt.getMessage(), spoilt);
        }
        Map<String, String> shapes = new TreeMap<>();
        Map<String, String> catalogues = new TreeMap<>();
        for (String key : kept.stringPropertyNames()) {
            if (key.startsWith(PIECE)) {
                shapes.put(key.substring(PIECE.length()), kept.getProperty(key));
            } else if (key.startsWith(CATALOGUE)) {
                catalogues.put(key, kept.getProperty(key));
            }
        }
        return new Origin(
                kept.getProperty("name", ""),
                Path.of(kept.getProperty("seen-from", "")),
                Optional.ofNullable(kept.getProperty("file")).map(Path::of),
                kept.getProperty("shape", ""),
                kept.getProperty("parts", ""),
                Boolean.parseBoolean(kept.getProperty("batch")),
                Optional.ofNullable(kept.getProperty("rules")),
                Optional.ofNullable(kept.getProperty("workshop")),
                List.copyOf(catalogues.values()),
                shapes);
    }
}
