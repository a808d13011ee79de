package haftline.cli;

import haftline.write.PlannedFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Files that the page tells of on one line, such as {@code fork-section.svg .dxf, fork.png}. */
final class FileGroup {
    private final List<PlannedFile> files = new ArrayList<>();
    private final Map<String, Supplier<String>> asides = new HashMap<>();

    void add(PlannedFile file) {
        files.add(file);
    }

    /**
     * Adds a file with a word about it.
     *
     * @param aside asked for once the file was made or refused: what it holds, or why there is none
     */
    void add(PlannedFile file, Supplier<String> aside) {
        files.add(file);
        asides.put(file.name(), aside);
    }

    List<PlannedFile> files() {
        return List.copyOf(files);
    }

    /** The line, once the files were made; empty where there is no file. */
    String line(Set<String> made) {
        StringBuilder line = new StringBuilder();
        String before = "";
        for (PlannedFile file : files) {
            int dot = file.name().lastIndexOf('.');
            String stem = file.name().substring(0, dot);
            String aside = asides.getOrDefault(file.name(), () -> "").get();
            if (!made.contains(file.name())) {
                line.append(line.isEmpty() ? "" : ", ").append("no ").append(file.name());
                line.append(aside.isEmpty() ? "" : ": ").append(aside);
                before = "";
                continue;
            }
            if (stem.equals(before)) {
                line.append(' ').append(file.name().substring(dot));
            } else {
                line.append(line.isEmpty() ? "" : ", ").append(file.name());
            }
            line.append(aside.isEmpty() ? "" : " (" + aside + ")");
            before = stem;
        }
        return line.toString();
    }
}
