package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Join;
import java.util.List;
import java.util.Optional;

/**
 * The drawing board: where the piece stands on the screen, what is under the pointer, what is
 * chosen, and all that is done to it by hand.
 */
public final class BoardModel {
    private final EditorModel editor;
    private final Viewpoint viewpoint;
    private final Watched<Optional<String>> selected = new Watched<>(Optional.empty());
    private final Watched<Optional<Hit>> hovered = new Watched<>(Optional.empty());
    private final Watched<Snap> snap = new Watched<>(Snap.HALF_MILLIMETRE);
    private Optional<Drag> drag = Optional.empty();
    private final NodeHand nodes;
    private final DetailsModel details;
    private final SlopeModel slopes;

    /**
     * The board of an editor.
     *
     * @param editor the editor
     */
    public BoardModel(EditorModel editor) {
        this.editor = editor;
        viewpoint = new Viewpoint(editor);
        nodes = new NodeHand(editor, selected);
        details = new DetailsModel(editor);
        slopes = new SlopeModel(editor, selected);
        editor.units().follow(units -> snap.set(Snap.of(units)));
        editor.opened().watch(document -> drop());
        editor.piece().watch(piece -> drop());
        editor.drawn().watch(drawn -> follow());
        selected.watch(node -> node.ifPresent(one -> details.chosen().set(Optional.empty())));
        details.chosen().watch(detail -> detail.ifPresent(one -> selected.set(Optional.empty())));
    }

    /**
     * The details laid over the body. One of them or one node is chosen at a time.
     *
     * @return the details
     */
    public DetailsModel details() {
        return details;
    }

    /** Nothing is chosen or held any more: another piece is at hand. */
    private void drop() {
        drag = Optional.empty();
        nodes.drop();
        hovered.set(Optional.empty());
        selected.set(Optional.empty());
        details.drop();
    }

    /** What is no longer there is no longer chosen. */
    private void follow() {
        boolean isGone =
                selected.value().isPresent() && node(selected.value().orElseThrow()).isEmpty();
        if (isGone) {
            selected.set(Optional.empty());
        }
        details.follow();
    }

    /**
     * Where the piece stands on the screen.
     *
     * @return the view, to be zoomed, moved and fitted
     */
    public Viewpoint viewpoint() {
        return viewpoint;
    }

    private View view() {
        return viewpoint.view().value();
    }

    /**
     * The handle that is drawn.
     *
     * @return the handle, or empty where none can be drawn
     */
    public Optional<Handle> handle() {
        return nodes.handle();
    }

    /**
     * A node of the handle that is drawn.
     *
     * @param name its name
     * @return the node, or empty
     */
    public Optional<PlacedNode> node(String name) {
        return nodes.node(name);
    }

    /**
     * What is under a pixel: a grip of what is chosen, the nearest node within reach, above or
     * below the axis, else a detail.
     *
     * @param px from the left
     * @param py from the top
     * @param reachPx how near the pointer must come
     * @return what is there, or empty
     */
    public Optional<Hit> hit(double px, double py, double reachPx) {
        return handle().flatMap(
                        handle ->
                                HitTest.grip(handle, view(), this, px, py)
                                        .or(() -> HitTest.of(handle, view(), px, py, reachPx)));
    }

    /**
     * What the cross-hair reads under a pixel.
     *
     * @param px from the left
     * @return the figures there, or empty beside the wood
     */
    public Optional<ReadOut> readOut(double px) {
        double x = view().mm(px);
        return handle().filter(handle -> x >= handle.tenonEndX() && x <= handle.buttX())
                .map(handle -> ReadOut.of(handle, x));
    }

    /**
     * Name of the node that keys act on.
     *
     * @return watched; may be set
     */
    public Watched<Optional<String>> selected() {
        return selected;
    }

    /**
     * What is under the pointer.
     *
     * @return watched; set by {@link #hover}
     */
    public Watched<Optional<Hit>> hovered() {
        return hovered;
    }

    /**
     * The pointer moves with no button held.
     *
     * @param px from the left
     * @param py from the top
     * @param reachPx how near the pointer must come
     */
    public void hover(double px, double py, double reachPx) {
        hovered.set(hit(px, py, reachPx));
    }

    /**
     * Steps in which a drag moves.
     *
     * @return watched; may be set
     */
    public Watched<Snap> snap() {
        return snap;
    }

    /**
     * Chooses the next node or detail or the one before, in a ring.
     *
     * @param by 1 for the next towards the butt, -1 for the one before
     */
    public void selectNext(int by) {
        List<Target> ring = Target.all(handle());
        if (ring.isEmpty()) {
            return;
        }
        Optional<Target> now = ring.stream().filter(each -> each.isChosen(this)).findFirst();
        int at = now.map(ring::indexOf).orElse(by > 0 ? -1 : 0);
        Target next = ring.get(Math.floorMod(at + by, ring.size()));
        selected.set(next.node());
        details.chosen().set(next.detail());
    }

    /**
     * A button goes down: what is under the pointer is taken hold of and, if it is a node, chosen.
     * A node that a rule fixes stays where it is and says why.
     *
     * @param px from the left
     * @param py from the top
     * @param reachPx how near the pointer must come
     * @return what was taken hold of, or empty
     */
    public Optional<Hit> press(double px, double py, double reachPx) {
        endNudge();
        Optional<Hit> hit = hit(px, py, reachPx);
        if (hit.isEmpty()) {
            selected.set(Optional.empty());
            details.chosen().set(Optional.empty());
        }
        drag = hit.flatMap(what -> take(what, px, py));
        return hit;
    }

    private Optional<Drag> take(Hit hit, double px, double py) {
        if (hit instanceof Hit.OnNode onNode) {
            selected.set(Optional.of(onNode.name()));
            if (!onNode.fixedBy().isEmpty()) {
                nodes.refuseFixed(onNode.name());
                return Optional.empty();
            }
            return node(onNode.name())
                    .map(node -> new NodeDrag(node, nodes.edits(), view(), px, py));
        }
        if (hit instanceof Hit.OnSlope onSlope) {
            return handle().flatMap(handle -> SlopeGrip.of(handle, onSlope.node(), view()))
                    .map(grip -> new SlopeDrag(grip, nodes.edits(), px, py));
        }
        if (hit instanceof Hit.OnGrip grip) {
            HeldDetail held = details.held(grip.index());
            return Optional.of(new GripDrag(held, grip.kind(), view(), px, py));
        }
        int index = ((Hit.OnDetail) hit).index();
        details.chosen().set(Optional.of(index));
        return Optional.of(new DetailDrag(details.held(index), view(), px));
    }

    /**
     * The pointer moves with the button held: what was taken hold of follows.
     *
     * @param px from the left
     * @param py from the top
     * @param isFine whether to leave out the snap
     */
    public void dragTo(double px, double py, boolean isFine) {
        if (drag.isEmpty()) {
            return;
        }
        Drag now = drag.get();
        Snap steps = isFine ? Snap.FREE : snap.value();
        Optional<Command> command = now.to(view(), px, py, steps);
        boolean isUnderWay = editor.document().isInGesture();
        if (command.isPresent() && !isUnderWay) {
            editor.begin(command.get().name());
        }
        if (command.isPresent() || isUnderWay) {
            editor.carryOn(command.orElse(Command.nothing("move")));
        }
    }

    /** The button goes up: the drag is one step. */
    public void release() {
        if (drag.isPresent()) {
            drag = Optional.empty();
            editor.end();
        }
    }

    /** The drag is given up: everything is as before it. */
    public void abandon() {
        drag = Optional.empty();
        nodes.drop();
        details.abandon();
        editor.cancel();
    }

    /**
     * Whether something is being dragged.
     *
     * @return true between {@link #press} on something free and {@link #release}
     */
    public boolean isDragging() {
        return drag.isPresent();
    }

    /**
     * Moves the chosen node a little; until {@link #endNudge} all nudges are one step.
     *
     * @param dxMm towards the butt, mm
     * @param dDiameterMm in diameter, mm
     */
    public void nudge(double dxMm, double dDiameterMm) {
        nodes.nudge(dxMm, dDiameterMm);
    }

    /** The key goes up: the nudges are one step. */
    public void endNudge() {
        details.endNudge();
        nodes.endNudge();
    }

    /**
     * Adds a node on the outline under a pixel and chooses it.
     *
     * @param px from the left
     * @return done, or why not
     */
    public Outcome addNode(double px) {
        return addNodeAt(snap.value().nearest(view().mm(px)));
    }

    /**
     * Adds a node on the outline at a place and chooses it.
     *
     * @param xMm from the shoulder
     * @return done, or why not
     */
    public Outcome addNodeAt(double xMm) {
        return nodes.add(xMm);
    }

    /** Removes the chosen node or detail; an end stays and says why. */
    public void deleteSelected() {
        details.removeChosen();
        nodes.delete();
    }

    /**
     * Sets how the outline passes the chosen node.
     *
     * @param join smooth or crisp
     */
    public void join(Join join) {
        nodes.join(join);
    }

    /** Joins the chosen node smoothly where it is crisp, with a crisp edge where it is smooth. */
    public void turnJoin() {
        nodes.turnJoin();
    }

    /**
     * Where something goes that is added without a pointer: behind the chosen node or detail, else
     * into the longest stretch without either.
     *
     * @return mm from the shoulder
     */
    public double freePlace() {
        List<Target> ring = Target.all(handle());
        double widest = 0;
        double place = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            double gap = ring.get(i + 1).x() - ring.get(i).x();
            double middle = (ring.get(i + 1).x() + ring.get(i).x()) / 2;
            if (ring.get(i).isChosen(this)) {
                return middle;
            }
            if (gap > widest) {
                widest = gap;
                place = middle;
            }
        }
        return place;
    }

    /**
     * The slope at the chosen node; an end has a slope too.
     *
     * @return what it is, and how it is set
     */
    public SlopeModel slopes() {
        return slopes;
    }
}
