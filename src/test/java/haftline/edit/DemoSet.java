package haftline.edit;

import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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

    /** Copies the set under a folder and adds pieces until it has so many. */
    public static Path longCopyTo(Path folder, int pieces) {
        Path set = copyTo(folder);
        List<String> kits = List.of("shucker", "spreader", "fork", "zester");
        StringBuilder more = new StringBuilder();
        for (int i = 4; i < pieces; i++) {
            more.append("  - name: piece " + (i + 1) + "\n")
                    .append("    kit: " + kits.get(i % kits.size()) + "\n")
                    .append("    length_ratio: 1." + (20 + i % 25) + "\n");
        }
        try {
            Files.writeString(set, more, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return set;
    }

    public static LoadedSet read(Path file) {
        try {
            return SetFile.read(file);
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }
}
