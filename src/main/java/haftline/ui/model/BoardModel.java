package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.edit.Scope;
import haftline.edit.ShapeEdits;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Shape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
    private Optional<Nudge> nudge = Optional.empty();

    /**
     * The board of an editor.
     *
     * @param editor the editor
     */
    public BoardModel(EditorModel editor) {
        this.editor = editor;
        viewpoint = new Viewpoint(editor);
        editor.units().follow(units -> snap.set(Snap.of(units)));
        editor.piece().watch(piece -> selected.set(Optional.empty()));
        editor.drawn().watch(drawn -> follow());
    }

    /** What is no longer there is no longer chosen. */
    private void follow() {
        boolean isGone =
                selected.value().isPresent() && node(selected.value().orElseThrow()).isEmpty();
        if (isGone) {
            selected.set(Optional.empty());
        }
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

    // --- what is there ---------------------------------------------------------------------------

    /**
     * The handle that is drawn.
     *
     * @return the handle, or empty where none can be drawn
     */
    public Optional<Handle> handle() {
        return editor.drawn().value().flatMap(worked -> worked.figures().map(Figures::handle));
    }

    /**
     * A node of the handle that is drawn.
     *
     * @param name its name
     * @return the node, or empty
     */
    public Optional<PlacedNode> node(String name) {
        return nodes().stream().filter(node -> node.name().equals(name)).findFirst();
    }

    private List<PlacedNode> nodes() {
        return handle().map(Handle::nodes).orElse(List.of());
    }

    /**
     * What is under a pixel: the nearest node within reach, above or below the axis, else a detail.
     *
     * @param px from the left
     * @param py from the top
     * @param reachPx how near the pointer must come
     * @return what is there, or empty
     */
    public Optional<Hit> hit(double px, double py, double reachPx) {
        return handle().flatMap(handle -> HitTest.of(handle, view(), px, py, reachPx));
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
     * Chooses the next or the one before, in a ring, as the tabulator key does.
     *
     * @param by 1 for the next towards the butt, -1 for the one before
     */
    public void selectNext(int by) {
        List<PlacedNode> nodes = nodes();
        if (nodes.isEmpty()) {
            return;
        }
        int at = selected.value().map(this::index).orElse(by > 0 ? -1 : 0);
        selected.set(Optional.of(nodes.get(Math.floorMod(at + by, nodes.size())).name()));
    }

    private int index(String name) {
        List<PlacedNode> nodes = nodes();
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    // --- by hand ---------------------------------------------------------------------------------

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
        if (hit.isEmpty() || hit.get() instanceof Hit.OnDetail) {
            selected.set(Optional.empty());
        }
        drag = hit.flatMap(what -> take(what, px, py));
        return hit;
    }

    private Optional<Drag> take(Hit hit, double px, double py) {
        if (hit instanceof Hit.OnNode onNode) {
            selected.set(Optional.of(onNode.name()));
            if (!onNode.fixedBy().isEmpty()) {
                editor.refuse(whyFixed(onNode.name()));
                return Optional.empty();
            }
        }
        return handle().map(handle -> Drag.of(hit, edits(handle), view(), px, py));
    }

    private String whyFixed(String name) {
        return node(name)
                .filter(node -> !node.isFree())
                .map(node -> "The " + name + " does not move: " + node.fixedBy())
                .orElse("");
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
        nudge = Optional.empty();
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
        Optional<PlacedNode> node = selected.value().flatMap(this::node);
        if (node.isEmpty()) {
            return;
        }
        if (!node.get().isFree()) {
            editor.refuse(whyFixed(node.get().name()));
            return;
        }
        Handle handle = handle().orElseThrow();
        if (nudge.isEmpty()) {
            nudge = Optional.of(Nudge.of(node.get(), edits(handle)));
            editor.begin("move " + node.get().name());
        }
        Nudge further = nudge.get().by(dxMm, dDiameterMm);
        if (editor.carryOn(further.command()).isDone()) {
            nudge = Optional.of(further);
        }
    }

    /** The key goes up: the nudges are one step. */
    public void endNudge() {
        if (nudge.isPresent()) {
            nudge = Optional.empty();
            editor.end();
        }
    }

    /**
     * Adds a node on the outline under a pixel and chooses it.
     *
     * @param px from the left
     * @return done, or why not
     */
    public Outcome addNode(double px) {
        Optional<Handle> handle = handle();
        if (handle.isEmpty()) {
            return new Outcome.Refused("a node needs a handle that can be drawn");
        }
        double x = snap.value().nearest(view().mm(px));
        return addNodeAt(x);
    }

    /**
     * Adds a node on the outline at a place and chooses it.
     *
     * @param xMm from the shoulder
     * @return done, or why not
     */
    public Outcome addNodeAt(double xMm) {
        Handle handle = handle().orElseThrow();
        double seat = handle.nodes().get(handle.nodes().size() - 1).x();
        if (!(xMm > 0 && xMm < seat)) {
            editor.refuse("A node stands between shoulder and seat");
            return new Outcome.Refused("A node stands between shoulder and seat");
        }
        double diameter = Snap.FREE.nearest(2 * handle.outline().r(xMm));
        String name = NodeEdits.freeName(handle.brief().shape());
        Outcome outcome = editor.runIfDrawable(edits(handle).add(xMm, diameter));
        if (outcome.isDone()) {
            selected.set(Optional.of(name));
        }
        return outcome;
    }

    /** Removes the chosen node; an end stays and says why. */
    public void deleteSelected() {
        withSelected((edits, node) -> edits.delete(node.name()), false);
    }

    /**
     * Sets how the outline passes the chosen node.
     *
     * @param join smooth or crisp
     */
    public void join(Join join) {
        withSelected((edits, node) -> edits.join(node.name(), join), false);
    }

    /**
     * Sets the slope at the chosen node; an end has a slope too.
     *
     * @param slopeDeg degrees from the axis, or empty to leave it to the batten
     */
    public void slope(OptionalDouble slopeDeg) {
        withSelected((edits, node) -> edits.slope(node.name(), slopeDeg), true);
    }

    private interface OnNode {
        Command command(NodeEdits edits, PlacedNode node);
    }

    private void withSelected(OnNode what, boolean atEndsToo) {
        Optional<PlacedNode> node = selected.value().flatMap(this::node);
        if (node.isEmpty()) {
            return;
        }
        if (!node.get().isFree() && !atEndsToo) {
            editor.refuse(whyFixed(node.get().name()));
            return;
        }
        editor.runIfDrawable(what.command(edits(handle().orElseThrow()), node.get()));
    }

    /**
     * Lays a detail over the body.
     *
     * @param detail the detail
     * @return done, or why not
     */
    public Outcome addDetail(Detail detail) {
        return editor.runIfDrawable(shapeEdits().add(detail));
    }

    /**
     * Takes a detail off.
     *
     * @param detail the detail, as it was hit
     * @return done, or why not
     */
    public Outcome removeDetail(Hit.OnDetail detail) {
        return editor.runIfDrawable(shapeEdits().remove(detail.index(), detail.kind()));
    }

    private NodeEdits edits(Handle handle) {
        return new NodeEdits(handle, editor.scope().value());
    }

    private ShapeEdits shapeEdits() {
        return new ShapeEdits(editor.piece().value(), editor.scope().value());
    }

    /**
     * Whether the piece at hand shares its shape with others, so that {@link Scope} matters.
     *
     * @return true where it has no shape of its own
     */
    public boolean isShapeShared() {
        return editor.draft().value().piece(editor.piece().value()).shape().isEmpty();
    }

    /**
     * The shape of the piece at hand.
     *
     * @return the shape
     */
    public Shape shape() {
        return editor.draft().value().shape(editor.piece().value());
    }
}
