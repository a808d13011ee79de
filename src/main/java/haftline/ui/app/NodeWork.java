package haftline.ui.app;

import haftline.figures.Figures;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.ui.board.BoardActions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * What a hand on the board does to the set: a dragged node becomes the piece's own, a node added,
 * removed or joined otherwise changes the shape that the pieces share.
 */
public final class NodeWork implements BoardActions {
    /** Steps that a drag snaps to, mm: half a millimetre, or a sixty-fourth of an inch. */
    private static final double MM_STEP = 0.5;

    private static final double INCH_STEP = 25.4 / 64;

    /** No node is dragged thinner than this, mm. */
    private static final double THINNEST = 2;

    private static final double THICKEST = 150;

    /** Room that a dragged node leaves its neighbours, mm. */
    private static final double BESIDE = 1;

    private final Desk desk;
    private String held;
    private double woodMm;
    private double reachLow;
    private double reachHigh;

    /**
     * Work on what is on a desk.
     *
     * @param desk the desk
     */
    public NodeWork(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void grab(String node) {
        desk.selectNode(Optional.of(node));
        Optional<Figures> figures = desk.examined().figures();
        if (figures.isEmpty()) {
            return;
        }
        held = node;
        woodMm = figures.get().handle().buttX();
        List<PlacedNode> nodes = figures.get().handle().nodes();
        for (int i = 1; i < nodes.size() - 1; i++) {
            if (nodes.get(i).name().equals(node)) {
                reachLow = nodes.get(i - 1).x() + BESIDE;
                reachHigh = nodes.get(i + 1).x() - BESIDE;
            }
        }
    }

    @Override
    public void drag(double x, double diameterMm, boolean snap) {
        if (held == null) {
            return;
        }
        double step = desk.units() == Units.MM ? MM_STEP : INCH_STEP;
        double place = snap ? Math.round(x / step) * step : x;
        double across = snap ? Math.round(diameterMm / step) * step : diameterMm;
        place = Math.max(reachLow, Math.min(reachHigh, place));
        across = Math.max(THINNEST, Math.min(THICKEST, across));
        desk.preview(moved(desk.settled(), held, place / woodMm, across));
    }

    private HandleSet moved(HandleSet set, String node, double share, double diameterMm) {
        Piece piece = set.pieces().get(desk.pieceIndex());
        Choices own =
                piece.choices().toBuilder()
                        .nodePlace(node, Math.max(0, Math.min(1, share)))
                        .nodeDiameterMm(node, diameterMm)
                        .build();
        return desk.withPiece(set, with(piece, own));
    }

    private static Piece with(Piece piece, Choices choices) {
        return new Piece(piece.name(), piece.kit(), piece.stock(), piece.shape(), choices);
    }

    @Override
    public void release() {
        if (held != null) {
            String label = "move " + held;
            held = null;
            desk.settle(label);
        }
    }

    @Override
    public void letBack() {
        if (held != null) {
            held = null;
            desk.letBack();
        }
    }

    @Override
    public void deselect() {
        desk.selectNode(Optional.empty());
    }

    @Override
    public void nudge(String name, double alongMm, double diameterMm) {
        placed(name)
                .filter(PlacedNode::isFree)
                .ifPresent(
                        node -> {
                            grab(name);
                            drag(node.x() + alongMm, 2 * node.radiusMm() + diameterMm, false);
                            release();
                        });
    }

    /**
     * Moves a node to a stated place and diameter, as one step.
     *
     * @param name the node
     * @param x mm from the shoulder
     * @param diameterMm mm
     */
    public void put(String name, double x, double diameterMm) {
        grab(name);
        drag(x, diameterMm, false);
        release();
    }

    private Optional<PlacedNode> placed(String name) {
        return desk.examined()
                .figures()
                .flatMap(
                        f ->
                                f.handle().nodes().stream()
                                        .filter(n -> n.name().equals(name))
                                        .findFirst());
    }

    @Override
    public void add(double x) {
        Handle handle = desk.examined().figures().map(Figures::handle).orElse(null);
        if (handle == null || x <= BESIDE || x >= handle.buttX() - BESIDE) {
            return;
        }
        for (PlacedNode node : handle.nodes()) {
            if (Math.abs(node.x() - x) < BESIDE) {
                return;
            }
        }
        Shape shape = handle.brief().shape();
        String name = newName(shape);
        double diameter = Math.round(2 * handle.outline().r(x) * 10) / 10.0;
        Node added =
                new Node(
                        name,
                        new Place.Share(x / handle.buttX()),
                        new Size.Plain(diameter),
                        Join.SMOOTH,
                        OptionalDouble.empty(),
                        false);
        int at = 0;
        for (PlacedNode node : handle.nodes()) {
            at += node.isFree() && node.x() < x ? 1 : 0;
        }
        List<Node> nodes = new ArrayList<>(shape.nodes());
        nodes.add(at, added);
        reshape("add " + name, nodes);
        desk.selectNode(Optional.of(name));
    }

    private static String newName(Shape shape) {
        for (int i = 1; ; i++) {
            String name = "node " + i;
            if (shape.nodes().stream().noneMatch(n -> n.name().equals(name))) {
                return name;
            }
        }
    }

    @Override
    public void remove(String name) {
        List<Node> nodes = new ArrayList<>(desk.set().shape(desk.piece()).nodes());
        if (nodes.removeIf(node -> node.name().equals(name))) {
            desk.selectNode(Optional.empty());
            reshape("remove " + name, nodes);
        }
    }

    @Override
    public void join(String name, Join join) {
        edit(
                name,
                (join == Join.CRISP ? "crisp " : "smooth ") + name,
                node ->
                        new Node(
                                node.name(),
                                node.place(),
                                node.size(),
                                join,
                                join == Join.CRISP ? OptionalDouble.empty() : node.slopeDeg(),
                                node.slides() && join == Join.SMOOTH));
    }

    @Override
    public void slope(String name, OptionalDouble degrees) {
        edit(
                name,
                degrees.isPresent() ? "level " + name : "free slope of " + name,
                node ->
                        new Node(
                                node.name(),
                                node.place(),
                                node.size(),
                                Join.SMOOTH,
                                degrees,
                                node.slides()));
    }

    private void edit(String name, String label, UnaryOperator<Node> change) {
        List<Node> nodes = new ArrayList<>(desk.set().shape(desk.piece()).nodes());
        nodes.replaceAll(node -> node.name().equals(name) ? change.apply(node) : node);
        reshape(label, nodes);
    }

    private void reshape(String label, List<Node> nodes) {
        desk.change(
                label,
                set -> {
                    Piece piece = set.pieces().get(desk.pieceIndex());
                    if (piece.shape().isPresent()) {
                        Shape own = piece.shape().get().withNodes(nodes);
                        return desk.withPiece(
                                set,
                                new Piece(
                                        piece.name(),
                                        piece.kit(),
                                        piece.stock(),
                                        Optional.of(own),
                                        piece.choices()));
                    }
                    return set.withShape(set.shape().withNodes(nodes));
                });
    }
}
