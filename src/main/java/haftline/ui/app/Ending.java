package haftline.ui.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The ending of a file's name that is typed into a chooser. Some choosers mark only what stands
 * before the ending, so that who types the whole name has the ending twice; others let it be typed
 * over, and nothing opens the file again.
 */
final class Ending {
    private Ending() {}

    /**
     * The file that is meant.
     *
     * @param chosen the file as it was typed
     * @param endings with their points; the first is added where there is none
     * @return the file with one ending
     */
    static Path meant(Path chosen, List<String> endings) {
        String name = chosen.getFileName().toString();
        String bare = without(name, endings);
        if (bare.equals(name)) {
            return chosen.resolveSibling(name + endings.get(0));
        }
        return without(bare, endings).equals(bare) ? chosen : chosen.resolveSibling(bare);
    }

    private static String without(String name, List<String> endings) {
        String small = name.toLowerCase(Locale.ROOT);
        return endings.stream()
                .filter(ending -> small.endsWith(ending) && small.length() > ending.length())
                .findFirst()
                .map(ending -> name.substring(0, name.length() - ending.length()))
                .orElse(name);
    }
}
