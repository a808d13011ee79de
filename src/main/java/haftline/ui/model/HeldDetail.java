package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.edit.ShapeEdits;
import haftline.handle.Handle;
import haftline.shape.Detail;
import haftline.shape.DetailLimits;

/**
 * A detail as it was when it was taken hold of, and what may become of it: it stays on the wood and
 * within the sizes that its kind can have.
 *
 * @param edits commands on the handle as it was then
 * @param index its place in the shape's list
 * @param detail the detail as it was then
 */
record HeldDetail(NodeEdits edits, int index, Detail detail) {
    static HeldDetail of(NodeEdits edits, int index) {
        return new HeldDetail(edits, index, edits.handle().brief().shape().details().get(index));
    }

    double x() {
        return detail.place().x(edits.handle().lengths().visibleWoodMm());
    }

    double frontX() {
        return x() - detail.widthMm() / 2;
    }

    double backX() {
        return x() + detail.widthMm() / 2;
    }

    private double seatX() {
        Handle handle = edits.handle();
        return handle.nodes().get(handle.nodes().size() - 1).x();
    }

    /** The detail elsewhere, as near to the wish as the wood reaches. */
    Detail at(Detail of, double x) {
        double half = of.widthMm() / 2;
        double within = Math.min(Math.max(half, seatX() - half), Math.max(half, x));
        return of.at(edits.like(of.place(), within));
    }

    /** Another width; the edge towards the butt stays where it is. */
    Detail widenedInFront(double widthMm) {
        double width = Math.min(limits().width(widthMm), backX());
        return at(detail.sized(width, detail.proudMm()), backX() - width / 2);
    }

    /** Another width; the edge towards the ferrule stays where it is. */
    Detail widenedBehind(double widthMm) {
        double width = Math.min(limits().width(widthMm), seatX() - frontX());
        return at(detail.sized(width, detail.proudMm()), frontX() + width / 2);
    }

    /** Another place and size, as a hand on the keys asks for them. */
    Detail changed(double x, double widthMm, double proudMm) {
        Detail wide = detail.sized(limits().width(widthMm), detail.proudMm());
        return at(wide.sized(wide.widthMm(), DetailLimits.of(wide).proud(proudMm)), x);
    }

    /** Another height or depth. */
    Detail proud(double mm) {
        return detail.sized(detail.widthMm(), limits().proud(mm));
    }

    private DetailLimits limits() {
        return DetailLimits.of(detail);
    }

    Command move(double x) {
        return shape().move(index, detail.kind(), at(detail, x).place());
    }

    Command replace(Detail changed) {
        return shape().replace(index, changed);
    }

    private ShapeEdits shape() {
        return new ShapeEdits(edits.handle().name(), edits.scope());
    }
}
