package haftline.drawing;

import haftline.curve.Outline;
import haftline.figures.Figures;
import java.util.List;
import java.util.function.UnaryOperator;

/** What a section shows of a piece before anything is written beside it, at full size. */
public final class SectionView {
    /** How far the centre line runs past what is drawn, mm. */
    private static final double CENTRE_OVER_MM = 4;

    private final Group hatching;
    private final Group wood;
    private final Group parts;

    private SectionView(Figures figures, UnaryOperator<Outline> shown) {
        WoodSection section = new WoodSection(figures, shown.apply(figures.handle().outline()));
        hatching = new Group("cut face", section.hatching());
        wood = new Group("turned wood", section.edges());
        parts = new Group("metal parts", new PartOutlines(figures.handle(), shown).all());
    }

    /**
     * The section of a piece.
     *
     * @param figures its figures
     * @param shown how a curve is to be drawn: as it is, or fitted with lines and arcs
     * @return the view, x from the shoulder, y from the axis
     */
    public static SectionView of(Figures figures, UnaryOperator<Outline> shown) {
        return new SectionView(figures, shown);
    }

    /**
     * Wood and metal, without the centre line.
     *
     * @return the least rectangle that holds them
     */
    public Bounds object() {
        return bounds(wood).with(bounds(parts));
    }

    /**
     * The cut wood, the metal parts and the centre line.
     *
     * @return the groups
     */
    public List<Group> groups() {
        return List.of(hatching, wood, parts, new Group("axis", List.of(axis())));
    }

    private Element axis() {
        Bounds object = object();
        return Path.line(
                Layer.CENTRE,
                new Vertex(object.minXMm() - CENTRE_OVER_MM, 0),
                new Vertex(object.maxXMm() + CENTRE_OVER_MM, 0));
    }

    private static Bounds bounds(Group group) {
        return Bounds.union(group.elements().stream().map(Element::bounds).toList());
    }
}
