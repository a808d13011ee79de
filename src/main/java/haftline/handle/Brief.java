package haftline.handle;

import haftline.measure.Checks;
import haftline.parts.Kit;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.stock.Adhesive;
import haftline.stock.Rack;
import haftline.stock.Stock;

/**
 * Everything from which one handle follows. To try a change is to resolve a changed brief.
 *
 * @param name name of the piece
 * @param kit its metal parts, as measured
 * @param metals what they are made of
 * @param stock its wood or plastic
 * @param adhesive what it is bonded with
 * @param shape its style
 * @param rules the maker's rules
 * @param rack the drills that the maker owns
 * @param choices what the maker decided over the rules
 */
public record Brief(
        String name,
        Kit kit,
        Metals metals,
        Stock stock,
        Adhesive adhesive,
        Shape shape,
        Rules rules,
        Rack rack,
        Choices choices) {
    /**
     * A maker who says nothing of swell or butt gets a kit table knife's (common practice, no
     * source), mm.
     */
    private static final double USUAL_SWELL = 22;

    private static final double USUAL_BUTT = 15;

    /** Checks the name. */
    public Brief {
        Checks.named("piece name", name);
    }

    /**
     * The same brief with other choices.
     *
     * @param newChoices the choices
     * @return the changed copy
     */
    public Brief withChoices(Choices newChoices) {
        return new Brief(name, kit, metals, stock, adhesive, shape, rules, rack, newChoices);
    }

    /**
     * The same piece in another shape.
     *
     * @param newShape the shape
     * @return the changed copy
     */
    public Brief withShape(Shape newShape) {
        return new Brief(name, kit, metals, stock, adhesive, newShape, rules, rack, choices);
    }

    /**
     * The same brief with other parts.
     *
     * @param newKit the parts
     * @return the changed copy
     */
    public Brief withKit(Kit newKit) {
        return new Brief(name, newKit, metals, stock, adhesive, shape, rules, rack, choices);
    }

    /**
     * The same brief in another stock.
     *
     * @param newStock the stock
     * @return the changed copy
     */
    public Brief withStock(Stock newStock) {
        return new Brief(name, kit, metals, newStock, adhesive, shape, rules, rack, choices);
    }

    /**
     * The wander that applies: as chosen, else by the rules.
     *
     * @return the wander
     */
    public Wander wander() {
        return choices.wander().orElse(rules.wander());
    }

    /**
     * How the piece is held: as chosen, else by three fingers, as most table ware is (common
     * practice, no source).
     *
     * @return the use
     */
    public Use use() {
        return choices.use().orElse(Use.THREE_FINGERS);
    }

    /**
     * A diameter of which a node's may be a multiple.
     *
     * @param reference which
     * @return mm
     */
    public double referenceMm(Reference reference) {
        return switch (reference) {
            case FERRULE -> kit.ferrule().outside().greatest();
            case SEAT ->
                    kit.cap()
                            .map(cap -> cap.headDiameter().mean())
                            .orElseGet(() -> choices.buttMm().orElse(USUAL_BUTT));
            case SWELL -> choices.swellMm().orElse(USUAL_SWELL);
        };
    }
}
