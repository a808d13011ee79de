package haftline.store;

import static haftline.store.SetKeys.*;

import haftline.handle.Choices;
import haftline.set.HandleSet;
import haftline.set.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A set as a document. */
final class SetWriter {
    private SetWriter() {}

    static Tree.Fields tree(HandleSet set, References references) {
        Tree.Fields tree = Document.head(KIND).text(NAME, set.name()).note(NOTE, set.note());
        tree.text(SHAPE, references.shape()).text(PARTS, references.parts());
        boolean last =
                set.batch()
                        .equals(set.parts().batches().get(set.parts().batches().size() - 1).id());
        if (references.batch().isPresent() || !last) {
            tree.text(BATCH, set.batch());
        }
        references.rules().ifPresent(path -> tree.text(SetKeys.RULES, path));
        references.workshop().ifPresent(path -> tree.text(WORKSHOP, path));
        tree.some(
                CATALOGUES,
                Tree.Rows.flat(references.catalogues().stream().map(Tree.Text::new).toList()));
        tree.text(STOCK, set.stock());
        tree.unless(
                set.adhesive().equals(SetReader.USUAL_ADHESIVE),
                ADHESIVE,
                new Tree.Text(set.adhesive()));
        tree.put(RACK, Tree.Rows.flat(references.rack().stream().map(SetWriter::item).toList()));
        choices(tree, set.common());
        List<Tree.Fields> pieces = new ArrayList<>();
        set.pieces().forEach(piece -> pieces.add(piece(piece, references)));
        return tree.put(PIECES, Tree.Rows.tall(pieces));
    }

    private static Tree item(References.RackItem item) {
        if (item.flutesMm().isEmpty() && item.pointDeg().isEmpty()) {
            return drill(item.name());
        }
        Tree.Fields tree = Tree.Fields.flat().put(DRILL, drill(item.name()));
        item.flutesMm().ifPresent(mm -> tree.number(FLUTES, mm));
        item.pointDeg().ifPresent(deg -> tree.number(POINT, deg));
        return tree;
    }

    /** A drill in mm looks better without the quotation marks that a text of digits needs. */
    private static Tree drill(String name) {
        return name.matches("[0-9]{1,3}(\\.[0-9]+)?") ? new Tree.Word(name) : new Tree.Text(name);
    }

    private static Tree.Fields piece(Piece piece, References references) {
        Tree.Fields tree = Tree.Fields.tall().text(PIECE_NAME, piece.name()).text(KIT, piece.kit());
        piece.stock().ifPresent(key -> tree.text(PIECE_STOCK, key));
        if (piece.shape().isPresent()) {
            String path = references.pieceShapes().get(piece.name());
            if (path == null) {
                throw new IllegalArgumentException(
                        "piece " + piece.name() + ": its own shape has no file");
            }
            tree.text(PIECE_SHAPE, path);
        }
        choices(tree, piece.choices());
        return tree;
    }

    private static void choices(Tree.Fields tree, Choices choices) {
        choices.use().ifPresent(use -> tree.word(ChoicesKeys.USE, use));
        choices.lengthRatio().ifPresent(x -> tree.number(ChoicesKeys.LENGTH_RATIO, x));
        choices.swellMm().ifPresent(mm -> tree.number(ChoicesKeys.SWELL, mm));
        choices.buttMm().ifPresent(mm -> tree.number(ChoicesKeys.BUTT, mm));
        choices.fit().ifPresent(fit -> tree.word(ChoicesKeys.FIT, fit));
        choices.tangDrillMm().ifPresent(mm -> tree.number(ChoicesKeys.TANG_DRILL, mm));
        choices.tangDepthMm().ifPresent(mm -> tree.number(ChoicesKeys.TANG_DEPTH, mm));
        choices.capDrillMm().ifPresent(mm -> tree.number(ChoicesKeys.CAP_DRILL, mm));
        choices.capDepthMm().ifPresent(mm -> tree.number(ChoicesKeys.CAP_DEPTH, mm));
        Tree.Fields tenon = Tree.Fields.flat();
        choices.tenonDiameterMm().ifPresent(mm -> tenon.number(ChoicesKeys.TENON_DIAMETER, mm));
        choices.tenonLengthMm().ifPresent(mm -> tenon.number(ChoicesKeys.TENON_LENGTH, mm));
        tree.some(ChoicesKeys.TENON, tenon);
        choices.wander()
                .ifPresent(wander -> tree.put(WanderReader.WANDER, RulesWriter.wander(wander)));
        Tree.Fields blank = Tree.Fields.flat();
        choices.blankSideMm().ifPresent(mm -> blank.number(ChoicesKeys.BLANK_SIDE, mm));
        choices.blankLengthMm().ifPresent(mm -> blank.number(ChoicesKeys.BLANK_LENGTH, mm));
        tree.some(ChoicesKeys.BLANK, blank);
        tree.some(ChoicesKeys.NODES, nodes(choices));
    }

    private static Tree.Fields nodes(Choices choices) {
        Set<String> names = new TreeSet<>(choices.nodeDiametersMm().keySet());
        names.addAll(choices.nodePlaces().keySet());
        Tree.Fields nodes = Tree.Fields.tall();
        for (String name : names) {
            Tree.Fields node = Tree.Fields.flat();
            Double diameter = choices.nodeDiametersMm().get(name);
            if (diameter != null) {
                node.number(ChoicesKeys.NODE_DIAMETER, diameter);
            }
            Double share = choices.nodePlaces().get(name);
            if (share != null) {
                node.number(ChoicesKeys.NODE_AT, share);
            }
            nodes.put(name, node);
        }
        return nodes;
    }
}
