package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that is cut out of a sheet: a gauge or a template.
 *
 * @param name what it is, for the file and the sheet's list
 * @param outline its edge, anticlockwise
 * @param openings holes in it, anticlockwise
 * @param marks what is scored and written on it
 * @param findings what is wrong with it
 * @param stopped whether it is not to be made, because its piece or it itself cannot be made so
 */
public record Card(
        String name,
        Loop outline,
        List<Loop> openings,
        List<Mark> marks,
        List<TemplateFinding> findings,
        boolean stopped) {
    /** Copies the lists and turns the loops anticlockwise. */
    public Card {
        Checks.named("card name", name);
        outline = outline.anticlockwise();
        openings = openings.stream().map(Loop::anticlockwise).toList();
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        stopped |= findings.stream().anyMatch(f -> f.gravity() == Gravity.STOP);
    }

    /**
     * The card moved.
     *
     * @param dx along x, mm
     * @param dy along y, mm
     * @return the moved card
     */
    public Card moved(double dx, double dy) {
        return new Card(
                name,
                outline.moved(dx, dy),
                openings.stream().map(opening -> opening.moved(dx, dy)).toList(),
                marks.stream().map(mark -> mark.moved(dx, dy)).toList(),
                findings,
                stopped);
    }

    /**
     * The card turned by half a turn about the origin.
     *
     * @return the turned card
     */
    public Card turned() {
        return new Card(
                name,
                outline.turned(),
                openings.stream().map(Loop::turned).toList(),
                marks.stream().map(Mark::turned).toList(),
                findings,
                stopped);
    }

    /**
     * The card with other edges and further findings.
     *
     * @param newOutline its edge
     * @param newOpenings its holes
     * @param further findings to add
     * @return the changed copy
     */
    Card withEdges(Loop newOutline, List<Loop> newOpenings, List<TemplateFinding> further) {
        List<TemplateFinding> all = new ArrayList<>(findings);
        all.addAll(further);
        return new Card(name, newOutline, newOpenings, marks, all, stopped);
    }

    /**
     * Area of material.
     *
     * @return mm2, openings taken off
     */
    public double area() {
        return outline.area() - openings.stream().mapToDouble(Loop::area).sum();
    }

    /**
     * Least rectangle that holds its edge.
     *
     * @return the rectangle
     */
    public Box box() {
        return outline.box();
    }
}
