package haftline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of the demonstration set that a test may change. */
final class DemoCopy {
    private final Path root;

    private DemoCopy(Path root) {
        this.root = root;
    }

    static DemoCopy in(Path folder) throws IOException {
        for (String top : List.of("profiles", "shared")) {
            try (Stream<Path> files = Files.walk(Path.of(top))) {
                files.forEach(file -> copy(file, folder.resolve(file.toString())));
            }
        }
        return new DemoCopy(folder);
    }

    private static void copy(Path from, Path to) {
        try {
            if (Files.isDirectory(from)) {
                Files.createDirectories(to);
            } else {
                Files.copy(from, to);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String set() {
        return root.resolve(Run.DEMO).toString();
    }

    /** Replaces a text that must be in a file, everywhere in it. */
    DemoCopy change(String file, String from, String to) throws IOException {
        Path path = root.resolve(file);
        String text = Files.readString(path);
        if (!text.contains(from)) {
            throw new IllegalStateException(file + " does not hold " + from);
        }
        Files.writeString(path, text.replace(from, to));
        return this;
    }
}
