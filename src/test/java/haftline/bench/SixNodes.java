package haftline.bench;

import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.P1;
import haftline.handle.SampleStock;
import haftline.handle.Wander;
import haftline.shape.Butt;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The piece that is timed: six smooth nodes between ferrule and cap, the parts of the worked
 * handle, in cherry.
 */
final class SixNodes {
    private SixNodes() {}

    static Brief brief() {
        Brief p1 = P1.brief(SampleStock.cherry(), new Wander(0.1, 0.005));
        return new Brief(
                "six nodes",
                p1.kit(),
                p1.metals(),
                p1.stock(),
                p1.adhesive(),
                shape(),
                p1.rules(),
                p1.rack(),
                Choices.builder().swellMm(23).build());
    }

    private static Shape shape() {
        return new Shape(
                "six nodes",
                "",
                OptionalDouble.empty(),
                List.of(
                        node("collar", 0.08, 0.64),
                        node("waist", 0.19, 0.60),
                        node("rise", 0.38, 0.80),
                        node("swell", 0.62, 1.00),
                        node("fall", 0.80, 0.88),
                        node("tail", 0.93, 0.70)),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                new Butt.Square(),
                0);
    }

    private static Node node(String name, double share, double ofSwell) {
        return new Node(
                name,
                new Place.Share(share),
                new Size.Times(ofSwell, Reference.SWELL),
                Join.SMOOTH,
                OptionalDouble.empty(),
                true);
    }
}
