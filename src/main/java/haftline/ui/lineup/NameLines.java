package haftline.ui.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A name in two lines at most: letters are never squeezed. */
final class NameLines {
    private NameLines() {}

    /**
     * The lines of a name.
     *
     * @param name the name
     * @param room for a line, px
     * @param width of a text, px
     * @return one line or two; what is left over is cut off under an ellipsis
     */
    static List<String> of(String name, double room, ToDoubleFunction<String> width) {
        if (width.applyAsDouble(name) <= room) {
            return List.of(name);
        }
        List<String> words = new ArrayList<>(List.of(name.strip().split("\\s+")));
        String first = words.remove(0);
        while (!words.isEmpty() && width.applyAsDouble(first + " " + words.get(0)) <= room) {
            first = first + " " + words.remove(0);
        }
        return words.isEmpty()
                ? List.of(cut(first, room, width))
                : List.of(cut(first, room, width), cut(String.join(" ", words), room, width));
    }

    private static String cut(String line, double room, ToDoubleFunction<String> width) {
        if (width.applyAsDouble(line) <= room) {
            return line;
        }
        String shorter = line;
        while (!shorter.isEmpty() && width.applyAsDouble(shorter + "…") > room) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.strip() + "…";
    }
}
