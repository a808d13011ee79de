package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Join;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** What the hand does to nodes: nudges, adds and removes them, joins them smoothly or crisply. */
final class NodeHand {
    private final EditorModel editor;
    private final Watched<Optional<String>> selected;
    private Optional<Nudge> nudge = Optional.empty();

    NodeHand(EditorModel editor, Watched<Optional<String>> selected) {
        this.editor = editor;
        this.selected = selected;
    }

    Optional<Handle> handle() {
        return editor.drawn().value().flatMap(worked -> worked.figures().map(Figures::handle));
    }

    Optional<PlacedNode> node(String name) {
        return handle().stream()
                .flatMap(handle -> handle.nodes().stream())
                .filter(node -> node.name().equals(name))
                .findFirst();
    }

    NodeEdits edits() {
        return new NodeEdits(handle().orElseThrow(), editor.scope().value());
    }

    /** Says why a node that a rule fixes does not move. */
    void refuseFixed(String name) {
        editor.refuse(
                node(name)
                        .filter(node -> !node.isFree())
                        .map(node -> "The " + name + " does not move: " + node.fixedBy())
                        .orElse(""));
    }

    /** The chosen node, where it may move; where it may not, that is said. */
    private Optional<PlacedNode> free() {
        Optional<PlacedNode> node = selected.value().flatMap(this::node);
        node.filter(one -> !one.isFree()).ifPresent(one -> refuseFixed(one.name()));
        return node.filter(PlacedNode::isFree);
    }

    /** Moves the chosen node a little; until {@link #endNudge} all nudges are one step. */
    void nudge(double dxMm, double dDiameterMm) {
        Optional<PlacedNode> node = free();
        if (node.isEmpty()) {
            return;
        }
        if (nudge.isEmpty()) {
            nudge = Optional.of(Nudge.of(node.get(), edits()));
            editor.begin("move " + node.get().name());
        }
        Nudge further = nudge.get().by(dxMm, dDiameterMm);
        if (editor.carryOn(further.command()).isDone()) {
            nudge = Optional.of(further);
        }
    }

    void endNudge() {
        if (nudge.isPresent()) {
            nudge = Optional.empty();
            editor.end();
        }
    }

    /** Lets go, whatever was under way. */
    void drop() {
        nudge = Optional.empty();
    }

    /** Adds a node on the outline at a place and chooses it. */
    Outcome add(double xMm) {
        Optional<Handle> handle = handle();
        if (handle.isEmpty()) {
            return refused("A node needs a handle that can be drawn");
        }
        List<PlacedNode> nodes = handle.get().nodes();
        if (!(xMm > 0 && xMm < nodes.get(nodes.size() - 1).x())) {
            return refused("A node stands between shoulder and seat");
        }
        double diameter = Snap.FREE.nearest(2 * handle.get().outline().r(xMm));
        String name = NodeEdits.freeName(handle.get().brief().shape());
        Outcome outcome = editor.runIfDrawable(edits().add(xMm, diameter));
        if (outcome.isDone()) {
            selected.set(Optional.of(name));
        }
        return outcome;
    }

    private Outcome refused(String why) {
        editor.refuse(why);
        return new Outcome.Refused(why);
    }

    void delete() {
        run((edits, node) -> edits.delete(node.name()));
    }

    void join(Join join) {
        run((edits, node) -> edits.join(node.name(), join));
    }

    void turnJoin() {
        selected.value()
                .flatMap(this::node)
                .ifPresent(node -> join(node.join() == Join.CRISP ? Join.SMOOTH : Join.CRISP));
    }

    private void run(BiFunction<NodeEdits, PlacedNode, Command> what) {
        free().ifPresent(node -> editor.runIfDrawable(what.apply(edits(), node)));
    }
}
