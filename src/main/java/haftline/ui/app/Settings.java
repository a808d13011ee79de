package haftline.ui.app;

import haftline.measure.Units;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

/**
 * What the editor remembers between runs. A file that cannot be read or written is done without.
 */
public final class Settings {
    private static final int MOST_RECENT = 8;

    private final Path file;
    private final Properties kept = new Properties();

    /**
     * Settings kept in a file.
     *
     * @param file the file; it need not exist
     */
    public Settings(Path file) {
        this.file = file;
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(reader);
            } catch (IOException | IllegalArgumentException unreadable) {
                kept.clear();
            }
        }
    }

    /**
     * Where a program of this machine keeps its settings.
     *
     * @return the file
     */
    public static Path usualFile() {
        String config = System.getenv("XDG_CONFIG_HOME");
        Path home = Path.of(System.getProperty("user.home"));
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("win");
        String roaming = System.getenv("APPDATA");
        Path base =
                windows && roaming != null
                        ? Path.of(roaming)
                        : config == null || config.isBlank()
                                ? home.resolve(".config")
                                : Path.of(config);
        return base.resolve("haftline").resolve("editor.properties");
    }

    /** Writes them down. */
    public void save() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                kept.store(writer, null);
            }
        } catch (IOException unwritable) {
            // Forgetting a preference is no reason to trouble the maker.
            return;
        }
    }

    Units units() {
        return kept.getProperty("units", "mm").equals("in") ? Units.INCH : Units.MM;
    }

    void units(Units units) {
        kept.setProperty("units", units.symbol());
    }

    boolean dark() {
        return kept.getProperty("board", "paper").equals("slate");
    }

    void dark(boolean dark) {
        kept.setProperty("board", dark ? "slate" : "paper");
    }

    boolean guideSeen() {
        return Boolean.parseBoolean(kept.getProperty("guide-seen"));
    }

    void guideSeen(boolean seen) {
        kept.setProperty("guide-seen", Boolean.toString(seen));
    }

    List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            String path = kept.getProperty("recent." + i);
            if (path != null && Files.isRegularFile(Path.of(path))) {
                files.add(Path.of(path));
            }
        }
        return files;
    }

    void opened(Path set) {
        List<Path> files = recent();
        Path absolute = set.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        for (int i = 0; i < MOST_RECENT; i++) {
            if (i < files.size()) {
                kept.setProperty("recent." + i, files.get(i).toString());
            } else {
                kept.remove("recent." + i);
            }
        }
    }

    /** Where the window was: x, y, width, height; empty where it is not known. */
    List<Double> window() {
        List<Double> place = new ArrayList<>();
        for (String part : kept.getProperty("window", "").split(" ")) {
            try {
                place.add(Double.parseDouble(part));
            } catch (NumberFormatException none) {
                return List.of();
            }
        }
        return place.size() == 4 ? place : List.of();
    }

    void window(double x, double y, double width, double height) {
        kept.setProperty("window", x + " " + y + " " + width + " " + height);
    }
}
