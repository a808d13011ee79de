package haftline.edit;

import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The demonstration set, read from the repository or from a copy that a test may write to. */
public final class DemoSet {
    /** All that the set is read from. */
    private static final List<String> FILES =
            List.of(
                    "profiles/sets/tidewater.yaml",
                    "profiles/shapes/waisted.yaml",
                    "profiles/shapes/waisted-chamfered.yaml",
                    "shared/parts/tidewater.yaml",
                    "shared/rules.yaml",
                    "shared/workshop-tidewater.yaml");

    private DemoSet() {}

    public static LoadedSet load() {
        return read(Path.of(FILES.get(0)));
    }

    public static OpenDocument open() {
        return OpenDocument.of(load());
    }

    /** Copies the set and its files under a folder; returns the set's file. */
    public static Path copyTo(Path folder) {
        try {
            for (String file : FILES) {
                Path to = folder.resolve(file);
                Files.createDirectories(to.getParent());
                Files.copy(Path.of(file), to);
            }
            // Not the common one, so that a test can tell whether it went along.
            Path workshop = folder.resolve("shared/workshop-tidewater.yaml");
            String text = Files.readString(workshop);
            Files.writeString(workshop, text + "\ntemplates: {tool: laser}\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder.resolve(FILES.get(0));
    }

    public static LoadedSet read(Path file) {
        try {
            return SetFile.read(file);
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }
}
