package haftline.store;

import static haftline.store.ShapeKeys.*;

import haftline.measure.Quote;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a shape document. */
final class ShapeReader {
    private ShapeReader() {}

    static Optional<Shape> read(MapReader map) {
        String name = map.text(NAME);
        String note = map.text(NOTE);
        double shadowLine = map.length(SHADOW_LINE, 0);
        OptionalDouble shoulder = map.optionalNumber(SHOULDER_SLOPE);
        OptionalDouble seat = map.optionalNumber(SEAT_SLOPE);
        List<Node> nodes = nodes(map);
        List<Detail> details = details(map);
        List<Shape.Run> runs = runs(map, nodes);
        Butt butt = map.value(BUTT).flatMap(ShapeReader::butt).orElse(new Butt.Square());
        return map.build(
                () ->
                        new Shape(
                                name,
                                note,
                                shoulder,
                                nodes,
                                seat,
                                details,
                                runs,
                                butt,
                                shadowLine));
    }

    private static List<Node> nodes(MapReader map) {
        List<Node> nodes = new ArrayList<>();
        Map<String, Value> names = new LinkedHashMap<>();
        Node before = null;
        for (MapReader each : map.maps(NODES)) {
            Optional<Node> read = node(each);
            if (read.isEmpty()) {
                continue;
            }
            Node node = read.get();
            Value name = each.value(NODE_NAME).orElseThrow();
            if (node.name().equals(Shape.SHOULDER) || node.name().equals(Shape.SEAT)) {
                name.problem("found " + name.found() + ", the name of an end; expected another");
            } else if (names.putIfAbsent(node.name(), name) != null) {
                name.problem("found " + name.found() + " a second time, expected another name");
            }
            if (before != null) {
                checkOrder(before, node, each);
            }
            before = node;
            nodes.add(node);
        }
        return nodes;
    }

    /** Places measured from different ends can only be compared once the wood's length is known. */
    private static void checkOrder(Node before, Node node, MapReader map) {
        OptionalDouble advance = advance(before.place(), node.place());
        if (advance.isPresent() && advance.getAsDouble() == 0) {
            map.problem(
                    AT, "stands at the same place as " + Quote.of(before.name()) + " before it");
        } else if (advance.isPresent() && advance.getAsDouble() < 0) {
            map.problem(
                    AT,
                    "stands in front of "
                            + Quote.of(before.name())
                            + ", expected nodes in order from shoulder to butt");
        }
    }

    private static OptionalDouble advance(Place before, Place after) {
        if (before instanceof Place.Share a && after instanceof Place.Share b) {
            return OptionalDouble.of(b.share() - a.share());
        }
        if (before instanceof Place.FromShoulder a && after instanceof Place.FromShoulder b) {
            return OptionalDouble.of(b.mm() - a.mm());
        }
        if (before instanceof Place.FromButt a && after instanceof Place.FromButt b) {
            return OptionalDouble.of(a.mm() - b.mm());
        }
        return OptionalDouble.empty();
    }

    private static Optional<Node> node(MapReader map) {
        String name = map.text(NODE_NAME);
        Optional<Place> place = map.value(AT).flatMap(ShapeReader::place);
        Optional<Size> size = map.value(DIAMETER).flatMap(ShapeReader::size);
        Join join = map.word(JOIN, Join.values()).orElse(Join.SMOOTH);
        OptionalDouble slope = map.optionalNumber(SLOPE);
        boolean slides = map.yesNo(SLIDES, false);
        if (slope.isPresent() && join == Join.CRISP) {
            map.problem(SLOPE, "a crisp node has two slopes, so none may be given");
        }
        return map.build(
                () -> new Node(name, place.orElseThrow(), size.orElseThrow(), join, slope, slides));
    }

    /** A place between the ends, which belong to the ferrule and the seat. */
    private static Optional<Place> place(Value value) {
        if (!value.isMap()) {
            return Optional.of(new Place.Share(value.number(SHARE.range(), AT.expected())));
        }
        MapReader map = value.map(PLACE);
        if (!onlyOneOf(map, AT.expected(), FROM_SHOULDER, FROM_BUTT)) {
            return Optional.empty();
        }
        OptionalDouble fromShoulder = map.optionalLength(FROM_SHOULDER);
        double fromButt = map.length(FROM_BUTT, 1);
        return map.build(
                () ->
                        fromShoulder.isPresent()
                                ? new Place.FromShoulder(fromShoulder.getAsDouble())
                                : new Place.FromButt(fromButt));
    }

    /** Whether a map has just one of the keys; told where it has none or several. */
    static boolean onlyOneOf(MapReader map, String expected, Key... keys) {
        List<String> given = Arrays.stream(keys).filter(map::has).map(key -> key.name()).toList();
        if (given.isEmpty() && map.isSound()) {
            map.self().problem("found an empty map, expected " + expected);
        } else if (given.size() > 1) {
            map.self().problem("found " + String.join(" and ", given) + ", expected one of them");
        }
        return given.size() == 1;
    }

    private static Optional<Size> size(Value value) {
        if (!value.isMap()) {
            return Optional.of(new Size.Plain(value.length(PLAIN.range(), DIAMETER.expected())));
        }
        MapReader map = value.map(SIZE);
        double times = map.number(TIMES, 1);
        Optional<Reference> of = map.word(OF, Reference.values());
        return map.build(() -> new Size.Times(times, of.orElseThrow()));
    }

    private static List<Detail> details(MapReader map) {
        List<Detail> details = new ArrayList<>();
        for (MapReader each : map.maps(DETAILS)) {
            if (onlyOneOf(each, "one of: " + DETAIL.listed(), DETAIL.keys().toArray(Key[]::new))) {
                DETAIL.keys().stream()
                        .filter(each::has)
                        .findFirst()
                        .flatMap(kind -> each.map(kind).flatMap(own -> detail(kind, own)))
                        .ifPresent(details::add);
            }
        }
        return details;
    }

    private static Optional<Detail> detail(Key kind, MapReader map) {
        Optional<Place> at = map.value(AT).flatMap(ShapeReader::place);
        if (kind == BEAD) {
            double width = map.length(WIDTH, 1);
            double height = map.length(HEIGHT, 0.5);
            map.require(height <= width / 2, HEIGHT, "at most half of the width");
            return map.build(() -> new Detail.Bead(at.orElseThrow(), width, height));
        }
        if (kind == COVE) {
            double width = map.length(WIDTH, 1);
            double depth = map.length(DEPTH, 0.5);
            map.require(depth <= width / 2, DEPTH, "at most half of the width");
            return map.build(() -> new Detail.Cove(at.orElseThrow(), width, depth));
        }
        if (kind == VEE) {
            double width = map.length(WIDTH, 1);
            double depth = map.length(VEE_DEPTH, 0.5);
            map.require(depth <= 2 * width, VEE_DEPTH, "at most twice the width");
            return map.build(() -> new Detail.Vee(at.orElseThrow(), width, depth));
        }
        if (kind == FILLET) {
            double width = map.length(WIDTH, 1);
            double height = map.length(FILLET_HEIGHT, 0.5);
            map.require(height != 0, FILLET_HEIGHT, "a fillet raised or sunk; a flat is neither");
            return map.build(() -> new Detail.Fillet(at.orElseThrow(), width, height));
        }
        if (kind == FLAT) {
            double width = map.length(WIDTH, 1);
            return map.build(() -> new Detail.Flat(at.orElseThrow(), width));
        }
        double width = map.length(BURNT_WIDTH, 1);
        double depth = map.length(BURNT_DEPTH, 0.5);
        return map.build(() -> new Detail.BurntLine(at.orElseThrow(), width, depth));
    }

    private static List<Shape.Run> runs(MapReader map, List<Node> nodes) {
        List<String> order = new ArrayList<>();
        order.add(Shape.SHOULDER);
        nodes.forEach(node -> order.add(node.name()));
        order.add(Shape.SEAT);
        List<Shape.Run> runs = new ArrayList<>();
        for (MapReader each : map.maps(MONOTONE)) {
            String from = each.text(RUN_FROM);
            String to = each.text(RUN_TO);
            if (map.isSound()) {
                requireNode(each, RUN_FROM, from, order);
                requireNode(each, RUN_TO, to, order);
                each.require(
                        order.indexOf(from) < order.indexOf(to),
                        RUN_TO,
                        "a node behind " + Quote.of(from));
            }
            runs.add(new Shape.Run(from, to));
        }
        return runs;
    }

    private static void requireNode(MapReader map, Key key, String name, List<String> known) {
        if (!known.contains(name)) {
            map.problem(key, "no node " + Quote.of(name) + Hint.nearest(known, name));
        }
    }

    private static Optional<Butt> butt(Value value) {
        if (value.word().equals(Optional.of(SQUARE))) {
            return Optional.of(new Butt.Square());
        }
        if (!value.isMap()) {
            value.expected(BUTT.expected());
            return Optional.empty();
        }
        MapReader map = value.map(BUTT_FORM);
        if (!onlyOneOf(map, BUTT.expected(), CHAMFERED, ROUNDED, DOMED)) {
            return Optional.empty();
        }
        OptionalDouble chamfered = map.optionalLength(CHAMFERED);
        OptionalDouble rounded = map.optionalLength(ROUNDED);
        double domed = map.length(DOMED, 1);
        return map.build(
                () -> {
                    if (chamfered.isPresent()) {
                        return new Butt.Chamfered(chamfered.getAsDouble());
                    }
                    return rounded.isPresent()
                            ? new Butt.Rounded(rounded.getAsDouble())
                            : new Butt.Domed(domed);
                });
    }
}
