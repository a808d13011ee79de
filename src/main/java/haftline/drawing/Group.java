package haftline.drawing;

import haftline.measure.Checks;
import java.util.List;

/**
 * Things that belong together and have a name: a view, a gauge, a title.
 *
 * @param name what the group is, for a reader of the file; not blank
 * @param elements what it holds
 */
public record Group(String name, List<Element> elements) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException where the name is blank
     */
    public Group {
        Checks.named("group name", name);
        elements = List.copyOf(elements);
    }
}
