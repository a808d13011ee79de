package haftline.edit;

import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Handle;
import haftline.set.Piece;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Commands on the nodes of one handle. In the scope of one piece, moving a node only overrides the
 * shape for that piece; in the scope of all pieces, and for everything but a move, it is the shape
 * that changes, each place and size staying of the kind that it is.
 *
 * @param handle the handle at hand, which gives the lengths and reference diameters
 * @param scope which pieces are changed
 */
public record NodeEdits(Handle handle, Scope scope) {
    /** A share to six places is a ten-thousandth of a millimetre, and is still read with ease. */
    private static final double SHARE_STEPS = 1e6;

    /**
     * Moves a node.
     *
     * @param node its name
     * @param xMm where to, mm from the shoulder; empty to leave its place as it is
     * @param diameterMm new diameter, mm; empty to leave it as it is
     * @return the command
     */
    public Command move(String node, OptionalDouble xMm, OptionalDouble diameterMm) {
        String name = "move " + node;
        if (scope == Scope.THIS_PIECE) {
            return new Command(
                    name,
                    draft ->
                            draft.withChoices(
                                    piece(), own -> overridden(own, node, xMm, diameterMm)));
        }
        return new Command(
                name,
                draft -> {
                    Draft freed = draft;
                    if (xMm.isPresent()) {
                        freed = withoutOverride(freed, b -> b.nodePlaceByShape(node));
                    }
                    if (diameterMm.isPresent()) {
                        freed = withoutOverride(freed, b -> b.nodeDiameterByShape(node));
                    }
                    return changed(freed, node, old -> moved(old, xMm, diameterMm));
                });
    }

    private Choices overridden(
            Choices own, String node, OptionalDouble xMm, OptionalDouble diameterMm) {
        ChoicesBuilder builder = own.toBuilder();
        xMm.ifPresent(x -> builder.nodePlace(node, share(x)));
        diameterMm.ifPresent(d -> builder.nodeDiameterMm(node, d));
        return builder.build();
    }

    private Draft withoutOverride(Draft draft, UnaryOperator<ChoicesBuilder> release) {
        Draft own =
                draft.withChoices(piece(), choices -> release.apply(choices.toBuilder()).build());
        return own.withSet(
                own.set().withCommon(release.apply(own.set().common().toBuilder()).build()));
    }

    private Node moved(Node node, OptionalDouble xMm, OptionalDouble diameterMm) {
        Node placed = xMm.isPresent() ? node.pinnedAt(like(node.place(), xMm.getAsDouble())) : node;
        return diameterMm.isPresent()
                ? placed.withSize(like(node.size(), diameterMm.getAsDouble()))
                : placed;
    }

    /**
     * A place given in the way of another one.
     *
     * @param old the other: a share, or from the shoulder, or from the butt
     * @param xMm mm from the shoulder
     * @return the place, in the same way
     */
    public Place like(Place old, double xMm) {
        if (old instanceof Place.FromShoulder) {
            return new Place.FromShoulder(xMm);
        }
        return old instanceof Place.FromButt
                ? new Place.FromButt(wood() - xMm)
                : new Place.Share(share(xMm));
    }

    private Size like(Size old, double diameterMm) {
        return old instanceof Size.Times times
                ? times(diameterMm, times.reference())
                : new Size.Plain(diameterMm);
    }

    private Size times(double diameterMm, Reference reference) {
        return new Size.Times(rounded(diameterMm / brief().referenceMm(reference)), reference);
    }

    private double share(double xMm) {
        return rounded(xMm / wood());
    }

    private static double rounded(double share) {
        return Math.round(share * SHARE_STEPS) / SHARE_STEPS;
    }

    /**
     * Adds a smooth node, placed by proportion and sized by the swell, so that it suits other kits
     * too.
     *
     * @param xMm where, mm from the shoulder, between the ends
     * @param diameterMm its diameter, mm
     * @return the command
     */
    public Command add(double xMm, double diameterMm) {
        return new Command(
                "add node",
                draft ->
                        draft.withShape(
                                piece(),
                                scope,
                                shape -> {
                                    Node added =
                                            new Node(
                                                    freeName(shape),
                                                    new Place.Share(share(xMm)),
                                                    times(diameterMm, Reference.SWELL),
                                                    Join.SMOOTH,
                                                    OptionalDouble.empty(),
                                                    false);
                                    List<Node> nodes = new ArrayList<>(shape.nodes());
                                    nodes.add(indexAt(draft, xMm), added);
                                    return shape.withNodes(nodes);
                                }));
    }

    /**
     * Name that the next node added to a shape gets.
     *
     * @param shape the shape
     * @return {@code node 1} or the first such name that is free
     */
    public static String freeName(Shape shape) {
        int number = 1;
        List<String> taken = shape.nodes().stream().map(Node::name).toList();
        while (taken.contains("node " + number)) {
            number++;
        }
        return "node " + number;
    }

    private int indexAt(Draft draft, double xMm) {
        Choices choices = draft.set().choices(draft.piece(piece()));
        int index = 0;
        for (Node node : draft.shape(piece()).nodes()) {
            if (nominalX(node, choices, wood()) < xMm) {
                index++;
            }
        }
        return index;
    }

    /**
     * Where a node stands before it slides.
     *
     * @param node the node
     * @param choices what is decided for its piece
     * @param visibleWoodMm length of the visible wood
     * @return mm from the shoulder
     */
    public static double nominalX(Node node, Choices choices, double visibleWoodMm) {
        Double share = choices.nodePlaces().get(node.name());
        return (share == null ? node.place() : new Place.Share(share)).x(visibleWoodMm);
    }

    /**
     * Removes a node, with what was decided for it. Runs without a turn that began or ended at it
     * end at its neighbour.
     *
     * @param node its name
     * @return the command
     */
    public Command delete(String node) {
        return new Command(
                "remove " + node,
                draft -> {
                    Draft freed =
                            withoutOverride(
                                    draft, b -> b.nodePlaceByShape(node).nodeDiameterByShape(node));
                    return freed.withShape(piece(), scope, shape -> without(shape, node));
                });
    }

    private static Shape without(Shape shape, String node) {
        List<String> order = new ArrayList<>();
        order.add(Shape.SHOULDER);
        shape.nodes().forEach(each -> order.add(each.name()));
        order.add(Shape.SEAT);
        int at = index(shape, node) + 1;
        List<Shape.Run> runs = new ArrayList<>();
        for (Shape.Run run : shape.monotone()) {
            String from = run.from().equals(node) ? order.get(at + 1) : run.from();
            String to = run.to().equals(node) ? order.get(at - 1) : run.to();
            if (order.indexOf(from) < order.indexOf(to)) {
                runs.add(new Shape.Run(from, to));
            }
        }
        List<Node> nodes = new ArrayList<>(shape.nodes());
        nodes.remove(at - 1);
        return shape.withMonotone(List.of()).withNodes(nodes).withMonotone(runs);
    }

    /**
     * Sets how the outline passes a node.
     *
     * @param node its name
     * @param join smooth or crisp
     * @return the command
     */
    public Command join(String node, Join join) {
        String word = join == Join.CRISP ? "crisp" : "smooth";
        return new Command(
                "make " + node + " " + word,
                draft -> changed(draft, node, old -> old.withJoin(join)));
    }

    /**
     * Sets the slope at a node, or at one of the two ends.
     *
     * @param node its name, {@link Shape#SHOULDER} or {@link Shape#SEAT}
     * @param slopeDeg degrees from the axis, or empty to leave it to the batten
     * @return the command
     */
    public Command slope(String node, OptionalDouble slopeDeg) {
        return new Command(
                slopeDeg.isPresent() ? "slope at " + node : "free slope at " + node,
                draft -> {
                    if (node.equals(Shape.SHOULDER)) {
                        return draft.withShape(
                                piece(), scope, shape -> shape.withShoulderSlopeDeg(slopeDeg));
                    }
                    if (node.equals(Shape.SEAT)) {
                        return draft.withShape(
                                piece(), scope, shape -> shape.withSeatSlopeDeg(slopeDeg));
                    }
                    return changed(draft, node, old -> old.withSlopeDeg(slopeDeg));
                });
    }

    /**
     * Lets a node slide to where its flat spot is least, or holds it where it is.
     *
     * @param node its name
     * @param slides whether it slides
     * @return the command
     */
    public Command slide(String node, boolean slides) {
        return new Command(
                slides ? "let " + node + " slide" : "hold " + node,
                draft ->
                        changed(
                                draft,
                                node,
                                old ->
                                        new Node(
                                                old.name(),
                                                old.place(),
                                                old.size(),
                                                old.join(),
                                                old.slopeDeg(),
                                                slides)));
    }

    /**
     * Gives a node another name; what was decided for it goes along.
     *
     * @param node its name now
     * @param newName unique in its shape
     * @return the command
     */
    public Command rename(String node, String newName) {
        return new Command(
                "rename " + node,
                draft -> {
                    if (newName.equals(Shape.SHOULDER) || newName.equals(Shape.SEAT)) {
                        throw new IllegalArgumentException(
                                "\"" + newName + "\" is the name of an end; choose another");
                    }
                    Draft renamed =
                            draft.withShape(piece(), scope, shape -> renamed(shape, node, newName));
                    List<Piece> pieces = new ArrayList<>();
                    for (Piece each : renamed.set().pieces()) {
                        boolean sharesIt =
                                each.name().equals(piece())
                                        || scope == Scope.ALL_PIECES && each.shape().isEmpty();
                        pieces.add(
                                sharesIt
                                        ? each.withChoices(renamed(each.choices(), node, newName))
                                        : each);
                    }
                    Choices common = renamed.set().common();
                    return renamed.withSet(
                            renamed.set()
                                    .withPieces(pieces)
                                    .withCommon(
                                            scope == Scope.ALL_PIECES
                                                    ? renamed(common, node, newName)
                                                    : common));
                });
    }

    private static Shape renamed(Shape shape, String node, String newName) {
        List<Node> nodes = new ArrayList<>(shape.nodes());
        int at = index(shape, node);
        nodes.set(at, nodes.get(at).withName(newName));
        List<Shape.Run> runs =
                shape.monotone().stream()
                        .map(
                                run ->
                                        new Shape.Run(
                                                run.from().equals(node) ? newName : run.from(),
                                                run.to().equals(node) ? newName : run.to()))
                        .toList();
        return shape.withMonotone(List.of()).withNodes(nodes).withMonotone(runs);
    }

    private static Choices renamed(Choices choices, String node, String newName) {
        Map<String, Double> diameters = new HashMap<>(choices.nodeDiametersMm());
        Map<String, Double> places = new HashMap<>(choices.nodePlaces());
        ChoicesBuilder builder =
                choices.toBuilder().nodeDiameterByShape(node).nodePlaceByShape(node);
        if (diameters.containsKey(node)) {
            builder.nodeDiameterMm(newName, diameters.get(node));
        }
        if (places.containsKey(node)) {
            builder.nodePlace(newName, places.get(node));
        }
        return builder.build();
    }

    private Draft changed(Draft draft, String node, UnaryOperator<Node> change) {
        return draft.withShape(
                piece(),
                scope,
                shape -> {
                    List<Node> nodes = new ArrayList<>(shape.nodes());
                    int at = index(shape, node);
                    nodes.set(at, change.apply(nodes.get(at)));
                    return shape.withNodes(nodes);
                });
    }

    private static int index(Shape shape, String node) {
        for (int i = 0; i < shape.nodes().size(); i++) {
            if (shape.nodes().get(i).name().equals(node)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no node \"" + node + "\" in the shape");
    }

    private String piece() {
        return handle.name();
    }

    private double wood() {
        return handle.lengths().visibleWoodMm();
    }

    private Brief brief() {
        return handle.brief();
    }
}
