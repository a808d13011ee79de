package haftline.cli;

import haftline.write.FileName;
import haftline.write.OutputFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The files that {@code make} writes for a set, in memory until all of them are ready. */
final class Exports {
    private final List<OutputFile> files = new ArrayList<>();

    private Exports() {}

    static Exports of(ExaminedSet set, Set<Format> formats) {
        Exports exports = new Exports();
        List<String> names =
                FileName.unique(set.pieces().stream().map(ExaminedPiece::name).toList());
        return exports;
    }

    List<OutputFile> files() {
        return files;
    }

    String page(Path folder, Ink ink) {
        return "";
    }
}
