package haftline.ui.model;

import haftline.measure.Units;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/**
 * What the editor remembers from run to run, in a small file of its own. A file that is missing,
 * spoilt or cannot be written is done without: nobody is kept from work by a preference.
 */
public final class Preferences {
    /** A menu longer than this is searched, not read. */
    static final int MOST_RECENT = 8;

    /** A window of which less than this can be seen is as good as lost, px. */
    private static final double LEAST_SEEN_PX = 100;

    private static final String UNITS = "units";
    private static final String DARK = "dark";
    private static final String GUIDE = "guide-dismissed";
    private static final String WINDOW = "window";
    private static final String RECENT = "recent.";
    private static final String UNFOLDED = "unfolded.";
    private static final String EXPORT = "export-folder";

    private final Path file;
    private final Properties kept = new Properties();

    /**
     * Where a window stood.
     *
     * @param x px from the left of the screens
     * @param y px from the top of the screens
     * @param width px
     * @param height px
     */
    public record Bounds(double x, double y, double width, double height) {
        /**
         * Whether enough of the window lies on a screen to be taken hold of.
         *
         * @param screens the screens that there are now
         * @return true where a screen still is
         */
        public boolean isOn(List<Bounds> screens) {
            return screens.stream()
                    .anyMatch(
                            screen ->
                                    overlap(x, width, screen.x, screen.width) >= LEAST_SEEN_PX
                                            && overlap(y, height, screen.y, screen.height)
                                                    >= LEAST_SEEN_PX
                                            && y >= screen.y);
        }

        private static double overlap(double a, double aSize, double b, double bSize) {
            return Math.min(a + aSize, b + bSize) - Math.max(a, b);
        }
    }

    /**
     * Preferences kept in a file.
     *
     * @param file the file; it need not exist
     */
    public Preferences(Path file) {
        this.file = file;
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(reader);
            } catch (IOException | IllegalArgumentException spoilt) {
                kept.clear();
            }
        }
    }

    /**
     * The folder where programs of this machine keep what they remember.
     *
     * @return the folder, which need not exist
     */
    public static Path usualFolder() {
        String roaming = System.getenv("APPDATA");
        String config = System.getenv("XDG_CONFIG_HOME");
        boolean isWindows =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        Path base;
        if (isWindows && roaming != null) {
            base = Path.of(roaming);
        } else if (config != null && !config.isBlank()) {
            base = Path.of(config);
        } else {
            base = Path.of(System.getProperty("user.home"), ".config");
        }
        return base.resolve("haftline");
    }

    /**
     * Writes them down.
     *
     * @return whether they could be
     */
    public boolean save() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                kept.store(writer, null);
            }
            return true;
        } catch (IOException unwritable) {
            return false;
        }
    }

    /**
     * Unit of lengths on the screen.
     *
     * @return millimetres unless chosen otherwise
     */
    public Units units() {
        return Units.INCH.symbol().equals(kept.getProperty(UNITS)) ? Units.INCH : Units.MM;
    }

    /**
     * Remembers the unit.
     *
     * @param units the unit
     */
    public void units(Units units) {
        kept.setProperty(UNITS, units.symbol());
    }

    /**
     * Whether the board is dark.
     *
     * @return light unless chosen otherwise
     */
    public boolean isDark() {
        return Boolean.parseBoolean(kept.getProperty(DARK));
    }

    /**
     * Remembers light or dark.
     *
     * @param dark whether the board is dark
     */
    public void dark(boolean dark) {
        kept.setProperty(DARK, Boolean.toString(dark));
    }

    /**
     * Whether the guide of the first run was dismissed.
     *
     * @return false on a first run
     */
    public boolean isGuideDismissed() {
        return Boolean.parseBoolean(kept.getProperty(GUIDE));
    }

    /**
     * Remembers whether the guide was dismissed.
     *
     * @param dismissed whether it was
     */
    public void guideDismissed(boolean dismissed) {
        kept.setProperty(GUIDE, Boolean.toString(dismissed));
    }

    /**
     * Whether a part of the inspector is unfolded.
     *
     * @param title its heading
     * @param usually how it is where nobody folded it
     * @return whether it is
     */
    public boolean isUnfolded(String title, boolean usually) {
        return Boolean.parseBoolean(kept.getProperty(UNFOLDED + title, Boolean.toString(usually)));
    }

    /**
     * Remembers whether a part of the inspector is unfolded.
     *
     * @param title its heading
     * @param unfolded whether it is
     */
    public void unfolded(String title, boolean unfolded) {
        kept.setProperty(UNFOLDED + title, Boolean.toString(unfolded));
    }

    /**
     * Where the window stood.
     *
     * @return its bounds, or empty where they are not known
     */
    public Optional<Bounds> window() {
        String[] parts = kept.getProperty(WINDOW, "").split(" ");
        if (parts.length != 4) {
            return Optional.empty();
        }
        try {
            Bounds bounds =
                    new Bounds(
                            Double.parseDouble(parts[0]),
                            Double.parseDouble(parts[1]),
                            Double.parseDouble(parts[2]),
                            Double.parseDouble(parts[3]));
            boolean isReal = bounds.width() > LEAST_SEEN_PX && bounds.height() > LEAST_SEEN_PX;
            return isReal ? Optional.of(bounds) : Optional.empty();
        } catch (NumberFormatException spoilt) {
            return Optional.empty();
        }
    }

    /**
     * Remembers where the window stands.
     *
     * @param bounds its bounds
     */
    public void window(Bounds bounds) {
        kept.setProperty(
                WINDOW,
                bounds.x() + " " + bounds.y() + " " + bounds.width() + " " + bounds.height());
    }

    /**
     * Sets that were opened or saved, as far as they are still there.
     *
     * @return the latest first
     */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            path(RECENT + i).filter(Files::isRegularFile).ifPresent(files::add);
        }
        return files;
    }

    /**
     * Remembers a set that was opened or saved.
     *
     * @param set its file
     */
    public void opened(Path set) {
        List<Path> files = recent();
        Path absolute = set.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        for (int i = 0; i < MOST_RECENT; i++) {
            if (i < files.size()) {
                kept.setProperty(RECENT + i, files.get(i).toString());
            } else {
                kept.remove(RECENT + i);
            }
        }
    }

    /**
     * The folder that was last exported to.
     *
     * @return the folder, or empty where there is none or it is no folder any more
     */
    public Optional<Path> exportFolder() {
        return path(EXPORT).filter(Files::isDirectory);
    }

    /**
     * Remembers the folder that was exported to.
     *
     * @param folder the folder
     */
    public void exportFolder(Path folder) {
        kept.setProperty(EXPORT, folder.toAbsolutePath().normalize().toString());
    }

    private Optional<Path> path(String key) {
        try {
            return Optional.ofNullable(kept.getProperty(key)).map(Path::of);
        } catch (InvalidPathException spoilt) {
            return Optional.empty();
        }
    }
}
