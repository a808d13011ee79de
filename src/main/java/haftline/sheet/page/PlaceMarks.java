package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Bounds;
import haftline.drawing.Element;
import haftline.drawing.Placing;
import haftline.drawing.Vertex;
import haftline.handle.Handle;
import haftline.sheet.Remark;
import java.util.ArrayList;
import java.util.List;

/**
 * The signs of findings under the places of a section that they speak of. A sign that would lie on
 * a dimension or on a graver sign is left out: the list of findings names every place in words.
 */
final class PlaceMarks {
    private static final double SIGN_MM = 2.4;

    /** Air between the outline and a sign, and round a sign. */
    private static final double CLEAR_MM = 0.5;

    private PlaceMarks() {}

    /**
     * Draws the signs.
     *
     * @param remarks the findings, gravest first
     * @param dimensions what is already written under the section
     */
    static void draw(
            Ink ink,
            Handle handle,
            Placing placing,
            List<Remark> remarks,
            List<? extends Element> dimensions) {
        List<Bounds> taken = new ArrayList<>(dimensions.stream().map(Element::bounds).toList());
        for (Remark remark : remarks) {
            if (remark.atX().isEmpty()) {
                continue;
            }
            double x = remark.atX().getAsDouble();
            Vertex edge = placing.of(new Vertex(x, -radius(handle, x)));
            double foot = edge.yMm() - CLEAR_MM - SIGN_MM;
            double half = Type.widthMm(remark.mark(), SIGN_MM) / 2;
            Bounds sign =
                    new Bounds(edge.xMm() - half, foot, edge.xMm() + half, foot + SIGN_MM)
                            .grown(CLEAR_MM);
            if (taken.stream().noneMatch(sign::touches)) {
                ink.text(edge.xMm(), foot, SIGN_MM, Anchor.MIDDLE, true, remark.mark());
                taken.add(sign);
            }
        }
    }

    /** What is seen of wood or metal at a place; that beyond the ends is metal. */
    private static double radius(Handle handle, double x) {
        double first = handle.outline().startX();
        double wood =
                x < first || x > handle.buttX()
                        ? 0
                        : Math.max(handle.outline().rBefore(x), handle.outline().rAfter(x));
        double metal = 0;
        if (x <= 0) {
            metal = handle.brief().kit().ferrule().outside().mean() / 2;
        } else if (x >= handle.buttX()) {
            metal = handle.brief().kit().cap().map(c -> c.headDiameter().mean() / 2).orElse(0.0);
        }
        return Math.max(wood, metal);
    }
}
