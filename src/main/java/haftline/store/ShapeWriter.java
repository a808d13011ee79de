package haftline.store;

import static haftline.store.ShapeKeys.*;

import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;

/** A shape as a document. */
final class ShapeWriter {
    private ShapeWriter() {}

    static Tree.Fields tree(Shape shape) {
        Tree.Fields tree = Document.head(KIND).text(NAME, shape.name()).note(NOTE, shape.note());
        tree.number(SHADOW_LINE, shape.shadowLineMm(), 0);
        shape.shoulderSlopeDeg().ifPresent(deg -> tree.number(SHOULDER_SLOPE, deg));
        tree.some(NODES, Tree.Rows.tall(shape.nodes().stream().map(ShapeWriter::node).toList()));
        shape.seatSlopeDeg().ifPresent(deg -> tree.number(SEAT_SLOPE, deg));
        tree.some(
                DETAILS,
                Tree.Rows.tall(shape.details().stream().map(ShapeWriter::detail).toList()));
        tree.some(
                MONOTONE, Tree.Rows.tall(shape.monotone().stream().map(ShapeWriter::run).toList()));
        return tree.unless(shape.butt() instanceof Butt.Square, BUTT, butt(shape.butt()));
    }

    private static Tree.Fields node(Node node) {
        Tree.Fields tree =
                Tree.Fields.flat()
                        .text(NODE_NAME, node.name())
                        .put(AT, place(node.place()))
                        .put(DIAMETER, size(node.size()))
                        .unless(
                                node.join() == Join.SMOOTH,
                                JOIN,
                                new Tree.Word(MapReader.written(node.join())));
        node.slopeDeg().ifPresent(deg -> tree.number(SLOPE, deg));
        return tree.yesNo(SLIDES, node.slides(), false);
    }

    private static Tree place(Place place) {
        if (place instanceof Place.Share share) {
            return new Tree.Number(share.share());
        }
        return place instanceof Place.FromShoulder shoulder
                ? Tree.Fields.flat().number(FROM_SHOULDER, shoulder.mm())
                : Tree.Fields.flat().number(FROM_BUTT, ((Place.FromButt) place).mm());
    }

    private static Tree size(Size size) {
        if (size instanceof Size.Plain plain) {
            return new Tree.Number(plain.diameterMm());
        }
        Size.Times times = (Size.Times) size;
        return Tree.Fields.flat().number(TIMES, times.factor()).word(OF, times.reference());
    }

    private static Tree.Fields detail(Detail detail) {
        Tree.Fields own =
                Tree.Fields.flat().put(AT, place(detail.place())).number(WIDTH, detail.widthMm());
        if (detail instanceof Detail.Bead bead) {
            own.number(HEIGHT, bead.heightMm());
        } else if (detail instanceof Detail.Cove cove) {
            own.number(DEPTH, cove.depthMm());
        } else if (detail instanceof Detail.Vee vee) {
            own.number(VEE_DEPTH, vee.depthMm());
        } else if (detail instanceof Detail.Fillet fillet) {
            own.number(FILLET_HEIGHT, fillet.heightMm());
        } else if (detail instanceof Detail.BurntLine line) {
            own.number(BURNT_DEPTH, line.depthMm());
        }
        return Tree.Fields.tall().put(detail.kind(), own);
    }

    private static Tree.Fields run(Shape.Run run) {
        return Tree.Fields.flat().text(RUN_FROM, run.from()).text(RUN_TO, run.to());
    }

    private static Tree butt(Butt butt) {
        if (butt instanceof Butt.Square) {
            return new Tree.Word(SQUARE);
        }
        if (butt instanceof Butt.Chamfered chamfered) {
            return Tree.Fields.flat().number(CHAMFERED, chamfered.lengthMm());
        }
        return butt instanceof Butt.Rounded rounded
                ? Tree.Fields.flat().number(ROUNDED, rounded.lengthMm())
                : Tree.Fields.flat().number(DOMED, butt.lengthMm());
    }
}
