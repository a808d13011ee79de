package haftline.set.production;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.findings.Words;
import haftline.handle.Brief;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.Units;
import haftline.parts.Kit;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.set.Rates;
import haftline.set.StockLengths;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A batch of a set: how many of each piece, and all that is needed for them.
 *
 * @param set name of the set
 * @param batch the measured batch that its parts come from
 * @param orders the pieces that are made, in the set's order; may be none
 * @param leftOut the pieces that are not to be made
 * @param blanks the blanks as they are sawn
 * @param rack the sticks on the maker's rack, where the workshop states them
 * @param cuts how the blanks are cut from them, stock by stock; empty where there is no rack
 * @param drills the drills and their work
 * @param adhesive the adhesive, or empty where no joint takes any
 * @param kits the metal parts
 * @param labour the time; without steps where the maker states no rates
 * @param costing cost and price, where the maker states rates
 */
public record Production(
        String set,
        String batch,
        List<Order> orders,
        List<LeftOut> leftOut,
        List<BlankNeed> blanks,
        Optional<StockLengths> rack,
        List<CutPlan> cuts,
        List<DrillUse> drills,
        Optional<AdhesiveUse> adhesive,
        List<KitUse> kits,
        Labour labour,
        Optional<Costing> costing) {
    /** Copies the lists. */
    public Production {
        orders = List.copyOf(orders);
        leftOut = List.copyOf(leftOut);
        blanks = List.copyOf(blanks);
        cuts = List.copyOf(cuts);
        drills = List.copyOf(drills);
        kits = List.copyOf(kits);
    }

    /**
     * What the maker's workshop states of it.
     *
     * @param rack the sticks on the rack, or empty
     * @param rates the rates, or empty
     */
    public record Terms(Optional<StockLengths> rack, Optional<Rates> rates) {}

    /**
     * Works a batch out.
     *
     * @param set the set
     * @param materials where its keys are looked up
     * @param quantities how many of each piece
     * @param terms what the workshop states
     * @param withStopped whether pieces that a finding stops are made all the same
     * @return the batch
     * @throws IllegalArgumentException where a piece is not in the set
     */
    public static Production of(
            HandleSet set,
            Materials materials,
            Quantities quantities,
            Terms terms,
            boolean withStopped) {
        List<String> names = set.pieces().stream().map(Piece::name).toList();
        quantities.counts().keySet().forEach(piece -> Quantities.known(piece, names));
        double spare = terms.rates().map(Rates::sparePercent).orElse(0.0);
        List<Order> orders = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (Piece piece : set.pieces()) {
            int quantity = quantities.of(piece.name());
            if (quantity > 0) {
                take(set.brief(piece, materials), piece, quantity, spare, withStopped)
                        .apply(orders, leftOut);
            }
        }
        List<BlankNeed> blanks = orders.stream().map(BlankNeed::of).toList();
        List<CutPlan> cuts = terms.rack().map(r -> CutPlan.of(blanks, r)).orElse(List.of());
        Labour labour = Labour.of(orders, terms.rates().map(Rates::steps).orElse(List.of()));
        Optional<Costing> costing =
                terms.rates().map(r -> Costing.of(orders, cuts, terms.rack(), labour, r));
        return new Production(
                set.name(),
                set.batch(),
                orders,
                leftOut,
                blanks,
                terms.rack(),
                cuts,
                DrillUse.of(orders, set.rack()),
                AdhesiveUse.of(orders, terms.rates()),
                kits(orders),
                labour,
                costing);
    }

    /** An order, or why there is none. */
    private record Taken(Optional<Order> order, Optional<LeftOut> leftOut) {
        void apply(List<Order> orders, List<LeftOut> out) {
            order.ifPresent(orders::add);
            leftOut.ifPresent(out::add);
        }
    }

    private static Taken take(
            Brief brief, Piece piece, int quantity, double sparePercent, boolean withStopped) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Impossible impossible) {
            return new Taken(
                    Optional.empty(),
                    Optional.of(new LeftOut(piece.name(), quantity, impossible.message())));
        }
        Figures figures = Figures.of(((Resolution.Resolved) resolution).handle());
        List<Finding> stops =
                Findings.of(figures).stream().filter(f -> f.gravity() == Gravity.STOP).toList();
        if (!stops.isEmpty() && !withStopped) {
            String why = Words.message(stops.get(0), brief.stock(), Units.MM);
            return new Taken(
                    Optional.empty(), Optional.of(new LeftOut(piece.name(), quantity, why)));
        }
        // Rounded first, so that 5 % of 20 is one and not a hair over it.
        int spares = (int) Math.ceil(Math.rint(quantity * sparePercent * 1000) / 100_000);
        return new Taken(
                Optional.of(new Order(figures, piece.kit(), quantity, spares, !stops.isEmpty())),
                Optional.empty());
    }

    private static List<KitUse> kits(List<Order> orders) {
        Map<String, KitUse> uses = new LinkedHashMap<>();
        for (Order order : orders) {
            Kit kit = order.figures().handle().brief().kit();
            int caps = kit.cap().isPresent() ? order.quantity() : 0;
            uses.merge(
                    order.kit(),
                    new KitUse(order.kit(), order.quantity(), caps),
                    (a, b) -> new KitUse(a.kit(), a.blades() + b.blades(), a.caps() + b.caps()));
        }
        return List.copyOf(uses.values());
    }

    /**
     * How many pieces are made.
     *
     * @return the count, spare blanks not among them
     */
    public int pieces() {
        return orders.stream().mapToInt(Order::quantity).sum();
    }

    /**
     * Whether a piece is not to be made, or is made although a finding stops it.
     *
     * @return true where there is one
     */
    public boolean isStopped() {
        return !leftOut.isEmpty() || orders.stream().anyMatch(Order::isStopped);
    }

    /**
     * Whether every blank has its stick, on the rack or to buy.
     *
     * @return false where a blank fits no stick that is listed
     */
    public boolean isCut() {
        return cuts.stream().allMatch(plan -> plan.unfit().isEmpty());
    }
}
