package haftline.set;

import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Metals;
import haftline.handle.Rules;
import haftline.measure.Checks;
import haftline.parts.Batch;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.shape.Shape;
import haftline.stock.Rack;
import java.util.List;
import java.util.Optional;

/**
 * A set of pieces that is to read as one family; a single piece is a set of one.
 *
 * @param name what the maker calls it
 * @param note free text, may be empty
 * @param shape the style that the pieces share
 * @param parts the measured kits, all batches
 * @param batch id of the batch in use
 * @param rules the maker's rules
 * @param workshop what the maker's place has
 * @param rack the drills that the maker owns
 * @param stock key of the wood or plastic of pieces that name none
 * @param adhesive key of the adhesive
 * @param common what is decided for all pieces that do not decide otherwise
 * @param pieces at least one, names unique, each with a kit of the batch
 */
public record HandleSet(
        String name,
        String note,
        Shape shape,
        PartsList parts,
        String batch,
        Rules rules,
        Workshop workshop,
        Rack rack,
        String stock,
        String adhesive,
        Choices common,
        List<Piece> pieces) {
    /** Checks names and that every piece's kit is in the batch. */
    public HandleSet {
        Checks.named("set name", name);
        Checks.named("stock", stock);
        Checks.named("adhesive", adhesive);
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("set " + name + ": no piece");
        }
        if (pieces.stream().map(Piece::name).distinct().count() != pieces.size()) {
            throw new IllegalArgumentException("set " + name + ": two pieces have one name");
        }
        Batch inUse = inUse(parts, batch);
        for (Piece piece : pieces) {
            kit(inUse, piece.kit());
        }
    }

    /**
     * A set of a maker whose workshop is the common one.
     *
     * @param name what the maker calls it
     * @param note free text, may be empty
     * @param shape the style that the pieces share
     * @param parts the measured kits, all batches
     * @param batch id of the batch in use
     * @param rules the maker's rules
     * @param rack the drills that the maker owns
     * @param stock key of the wood or plastic of pieces that name none
     * @param adhesive key of the adhesive
     * @param common what is decided for all pieces that do not decide otherwise
     * @param pieces at least one, names unique, each with a kit of the batch
     */
    public HandleSet(
            String name,
            String note,
            Shape shape,
            PartsList parts,
            String batch,
            Rules rules,
            Rack rack,
            String stock,
            String adhesive,
            Choices common,
            List<Piece> pieces) {
        this(
                name,
                note,
                shape,
                parts,
                batch,
                rules,
                Workshop.COMMON_PRACTICE,
                rack,
                stock,
                adhesive,
                common,
                pieces);
    }

    private static Batch inUse(PartsList parts, String batch) {
        return parts.batch(batch)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "batch " + batch + ": not in " + parts.name()));
    }

    private static Kit kit(Batch batch, String name) {
        return batch.kit(name)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "kit " + name + ": not in batch " + batch.id()));
    }

    /**
     * The batch in use.
     *
     * @return the batch
     */
    public Batch batchInUse() {
        return inUse(parts, batch);
    }

    /**
     * Finds a piece by its name.
     *
     * @param pieceName the piece's name
     * @return the piece, or empty
     */
    public Optional<Piece> piece(String pieceName) {
        return pieces.stream().filter(piece -> piece.name().equals(pieceName)).findFirst();
    }

    /**
     * A piece's measured parts from the batch in use.
     *
     * @param piece a piece of this set
     * @return its kit
     */
    public Kit kit(Piece piece) {
        return kit(batchInUse(), piece.kit());
    }

    /**
     * A piece's shape: its own, else the set's.
     *
     * @param piece a piece of this set
     * @return its shape
     */
    public Shape shape(Piece piece) {
        return piece.shape().orElse(shape);
    }

    /**
     * What is decided for a piece: its own choices over the common ones.
     *
     * @param piece a piece of this set
     * @return its choices
     */
    public Choices choices(Piece piece) {
        return piece.choices().over(common);
    }

    /**
     * Everything from which one piece's handle follows.
     *
     * @param piece a piece of this set
     * @param materials where the keys of stock, metals and adhesive are looked up
     * @return its brief
     * @throws IllegalArgumentException where a key is not in the catalogues
     */
    public Brief brief(Piece piece, Materials materials) {
        return brief(piece, kit(piece), materials);
    }

    /**
     * Everything from which one piece's handle would follow with other parts.
     *
     * @param piece a piece of this set
     * @param kit its metal parts, of whichever batch
     * @param materials where the keys of stock, metals and adhesive are looked up
     * @return its brief
     * @throws IllegalArgumentException where a key is not in the catalogues
     */
    public Brief brief(Piece piece, Kit kit, Materials materials) {
        String capMetal = kit.cap().map(EndCap::material).orElse(kit.ferrule().material());
        return new Brief(
                piece.name(),
                kit,
                new Metals(
                        materials.metal(kit.blade().material()),
                        materials.metal(kit.ferrule().material()),
                        materials.metal(capMetal)),
                materials.stock(piece.stock().orElse(stock)),
                materials.adhesive(adhesive),
                shape(piece),
                rules,
                rack,
                choices(piece));
    }

    /**
     * The same set with another batch in use.
     *
     * @param newParts the measured kits, all batches
     * @param newBatch id of the batch in use
     * @return the changed copy
     */
    public HandleSet withBatch(PartsList newParts, String newBatch) {
        return new HandleSet(
                name, note, shape, newParts, newBatch, rules, workshop, rack, stock, adhesive,
                common, pieces);
    }

    /**
     * The same set with other pieces.
     *
     * @param newPieces at least one
     * @return the changed copy
     */
    public HandleSet withPieces(List<Piece> newPieces) {
        return new HandleSet(
                name, note, shape, parts, batch, rules, workshop, rack, stock, adhesive, common,
                newPieces);
    }

    /**
     * The same set in another shape.
     *
     * @param newShape the style that the pieces share
     * @return the changed copy
     */
    public HandleSet withShape(Shape newShape) {
        return new HandleSet(
                name, note, newShape, parts, batch, rules, workshop, rack, stock, adhesive, common,
                pieces);
    }

    /**
     * The same set with other common choices.
     *
     * @param newCommon what is decided for all pieces that do not decide otherwise
     * @return the changed copy
     */
    public HandleSet withCommon(Choices newCommon) {
        return new HandleSet(
                name, note, shape, parts, batch, rules, workshop, rack, stock, adhesive, newCommon,
                pieces);
    }

    /**
     * The same set in another stock.
     *
     * @param newStock key of the wood or plastic of pieces that name none
     * @return the changed copy
     */
    public HandleSet withStock(String newStock) {
        return new HandleSet(
                name, note, shape, parts, batch, rules, workshop, rack, newStock, adhesive, common,
                pieces);
    }

    /**
     * The same set with another adhesive.
     *
     * @param newAdhesive its key
     * @return the changed copy
     */
    public HandleSet withAdhesive(String newAdhesive) {
        return new HandleSet(
                name,
                note,
                shape,
                parts,
                batch,
                rules,
                workshop,
                rack,
                stock,
                newAdhesive,
                common,
                pieces);
    }

    /**
     * The same set under another name.
     *
     * @param newName what the maker calls it
     * @return the changed copy
     */
    public HandleSet withName(String newName) {
        return new HandleSet(
                newName, note, shape, parts, batch, rules, workshop, rack, stock, adhesive, common,
                pieces);
    }

    /**
     * The same set made in another workshop.
     *
     * @param newWorkshop what the maker's place has
     * @return the changed copy
     */
    public HandleSet withWorkshop(Workshop newWorkshop) {
        return new HandleSet(
                name,
                note,
                shape,
                parts,
                batch,
                rules,
                newWorkshop,
                rack,
                stock,
                adhesive,
                common,
                pieces);
    }

    /**
     * The same set made by other rules.
     *
     * @param newRules the maker's rules
     * @return the changed copy
     */
    public HandleSet withRules(Rules newRules) {
        return new HandleSet(
                name, note, shape, parts, batch, newRules, workshop, rack, stock, adhesive, common,
                pieces);
    }
}
