package haftline.adjust.takeoff;

import haftline.curve.EndSlope;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A draft as a shape: nodes named as a turner would, places by proportion. */
final class ShapeOf {
    private static final String NOTE =
            "Taken off a handle by calliper. Diameters are in mm, so it is that handle's size"
                    + " whatever the kit.";

    /** Shares are written to this many parts: a hundredth of a millimetre on 100 mm. */
    private static final double PARTS = 10_000;

    private ShapeOf() {}

    static Shape draft(Draft draft, String name) {
        List<Node> nodes = new ArrayList<>();
        Set<String> taken = new HashSet<>(Set.of(Shape.SHOULDER, Shape.SEAT));
        for (int i = 0; i < draft.nodes().size(); i++) {
            DraftNode node = draft.nodes().get(i);
            nodes.add(
                    new Node(
                            unique(word(draft, i), taken),
                            new Place.Share(Math.round(node.x() / draft.woodMm() * PARTS) / PARTS),
                            new Size.Plain(node.diameterMm()),
                            node.crisp() ? Join.CRISP : Join.SMOOTH,
                            OptionalDouble.empty(),
                            false));
        }
        List<Detail> details =
                draft.details().stream().map(LaidDetail::detail).flatMap(Optional::stream).toList();
        return new Shape(
                name,
                NOTE,
                degrees(draft.first()),
                nodes,
                degrees(draft.last()),
                details,
                List.of(),
                draft.butt(),
                0);
    }

    /** An end is level or free. */
    private static OptionalDouble degrees(EndSlope slope) {
        return slope.free() ? OptionalDouble.empty() : OptionalDouble.of(0);
    }

    private static String word(Draft draft, int i) {
        DraftNode node = draft.nodes().get(i);
        if (node.crisp()) {
            return "edge";
        }
        double before = i > 0 ? draft.nodes().get(i - 1).diameterMm() : draft.shoulderMm();
        boolean last = i + 1 == draft.nodes().size();
        double after = last ? draft.seatMm() : draft.nodes().get(i + 1).diameterMm();
        if (node.diameterMm() > before && node.diameterMm() > after) {
            return "swell";
        }
        return node.diameterMm() < before && node.diameterMm() < after ? "waist" : "slope";
    }

    private static String unique(String word, Set<String> taken) {
        String name = word;
        for (int k = 2; !taken.add(name); k++) {
            name = word + " " + k;
        }
        return name;
    }
}
