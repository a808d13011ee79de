package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A drawing at full size.
 *
 * @param title what is drawn, not blank; may be any text a user typed
 * @param description a sentence about it, may be empty
 * @param groups what is on it, in the order of drawing within each layer
 */
public record Drawing(String title, String description, List<Group> groups) {
    /** How far below the drawing the check bar stands. */
    private static final double CHECK_BAR_GAP_MM = 6;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException where the title is blank or there is nothing on the drawing
     */
    public Drawing {
        Checks.named("drawing title", title);
        groups = List.copyOf(groups);
        if (groups.stream().allMatch(group -> group.elements().isEmpty())) {
            throw new IllegalArgumentException("drawing: expected at least one element");
        }
    }

    /**
     * The drawing with a further group.
     *
     * @param group the group
     * @return the larger drawing
     */
    public Drawing with(Group group) {
        return new Drawing(
                title, description, Stream.concat(groups.stream(), Stream.of(group)).toList());
    }

    /**
     * The drawing with a bar of known length under it, by which a print is checked.
     *
     * @param lengthMm length of the bar, over 0
     * @return the drawing with the bar
     */
    public Drawing withCheckBar(double lengthMm) {
        Bounds bounds = bounds();
        return with(
                CheckBar.of(
                        new Vertex(bounds.minXMm(), bounds.minYMm() - CHECK_BAR_GAP_MM), lengthMm));
    }

    /**
     * The drawing with every curve that is neither line nor arc replaced by lines and arcs.
     *
     * @param fitting how a curve is replaced
     * @return the drawing in lines and arcs
     */
    public Drawing withArcs(ArcFitting fitting) {
        List<Group> fitted = new ArrayList<>(groups.size());
        for (Group group : groups) {
            List<Element> elements = new ArrayList<>(group.elements().size());
            for (Element element : group.elements()) {
                elements.add(element instanceof Path path ? path.withArcs(fitting) : element);
            }
            fitted.add(new Group(group.name(), elements));
        }
        return new Drawing(title, description, fitted);
    }

    /**
     * Everything on the drawing.
     *
     * @return the elements of all groups
     */
    public Stream<Element> elements() {
        return groups.stream().flatMap(group -> group.elements().stream());
    }

    /**
     * The least rectangle that holds the drawing, text included.
     *
     * @return the rectangle
     */
    public Bounds bounds() {
        return Bounds.union(elements().map(Element::bounds).toList());
    }
}
