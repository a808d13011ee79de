package haftline.write.png;

import haftline.drawing.BladeForm;
import haftline.handle.Handle;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.stock.Colours;
import haftline.stock.Stock;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished piece as it is seen from the side: its turned parts and its blade.
 *
 * @param handle the handle
 * @param parts in rising x, abutting
 * @param blade the blade, in front of them
 * @param steel how the blade looks
 */
record PieceModel(Handle handle, List<TurnedPart> parts, BladeForm blade, MetalFinish steel) {
    private static final double RIM_MM = 0.5;

    /** Spreads the pieces over the log, so that no two show the same figure. */
    private static final double SEED_STEP_MM = 37.3;

    private static final int SEEDS = 97;

    static PieceModel of(Handle handle) {
        Ferrule ferrule = handle.brief().kit().ferrule();
        double radius = ferrule.outside().mean() / 2;
        List<TurnedPart> parts = new ArrayList<>();
        double rim = Math.max(ferrule.chamferMm(), RIM_MM);
        parts.add(
                TurnedPart.ring(
                        handle.ferruleFaceX(),
                        0,
                        radius,
                        rim,
                        new MetalFinish(handle.brief().metals().ferrule().colour())));
        parts.add(TurnedPart.wood(handle.outline(), 0, handle.buttX(), finish(handle)));
        handle.brief().kit().cap().ifPresent(cap -> parts.add(cap(handle, cap)));
        return new PieceModel(
                handle,
                List.copyOf(parts),
                BladeForm.of(handle),
                new MetalFinish(handle.brief().metals().blade().colour()));
    }

    private static TurnedPart cap(Handle handle, EndCap cap) {
        MetalFinish metal = new MetalFinish(handle.brief().metals().cap().colour());
        double head = cap.headDiameter().mean() / 2;
        double thickness = cap.headThickness().mean();
        double from = handle.buttX();
        return cap.form() == EndCap.Form.DOMED
                ? TurnedPart.dome(from, thickness, head, metal)
                : TurnedPart.ring(from, from + thickness, head, RIM_MM, metal);
    }

    private static Finish finish(Handle handle) {
        Stock stock = handle.brief().stock();
        Colours colours = stock.colours();
        double seed = SEED_STEP_MM * Math.floorMod(handle.name().hashCode(), SEEDS);
        return stock instanceof Wood wood
                ? new WoodFinish(colours, wood.grain(), seed)
                : new PlasticFinish(colours, seed);
    }

    double leftX() {
        return Math.min(blade.tipX(), parts.get(0).startX());
    }

    double rightX() {
        return parts.get(parts.size() - 1).endX();
    }

    /** Greatest distance from the axis, up. */
    double aboveMm() {
        return Math.max(turnedMm(), blade.backMm());
    }

    /** Greatest distance from the axis, down. */
    double belowMm() {
        return Math.max(turnedMm(), blade.edgeMm());
    }

    private double turnedMm() {
        double most = handle.outline().greatest().r();
        for (TurnedPart part : parts) {
            most = Math.max(most, part.radius().applyAsDouble((part.startX() + part.endX()) / 2));
        }
        return Math.max(most, parts.get(parts.size() - 1).radius().applyAsDouble(handle.buttX()));
    }

    /** The turned part at x, or null in front of them and behind. */
    TurnedPart partAt(double x) {
        for (TurnedPart part : parts) {
            if (x >= part.startX() && x < part.endX()) {
                return part;
            }
        }
        return null;
    }

    /** Radius at x, 0 where nothing is turned. */
    double radiusAt(double x) {
        TurnedPart part = partAt(x);
        return part == null ? 0 : part.radius().applyAsDouble(x);
    }
}
