package haftline.adjust.solve;

import haftline.adjust.solve.Quantity.Kind;
import haftline.adjust.solve.Quantity.Owner;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.parts.EndCap;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.shape.Node;
import haftline.shape.Reference;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds what may be moved in a set, and what each movement counts. */
final class Quantities {
    /**
     * A mm of length counts as this much of diameter: 5 mm of a 100 mm handle show as little as 1
     * mm of a 22 mm swell. Our own measure, no source.
     */
    static final double LENGTH_WEIGHT = 0.2;

    /** A mm of a bore's depth, which nobody sees. Our own measure, no source. */
    static final double DEPTH_WEIGHT = 0.1;

    /** Share by which a handle may become longer or shorter (common practice, no source). */
    static final double LENGTH_REACH = 0.1;

    /** Sizes and multiples that a shape accepts, see {@link Size}; mm and multiples. */
    private static final double LEAST_MM = 1;

    private static final double LEAST_TIMES = 0.1;
    private static final double MOST_TIMES = 10;
    private static final double LEAST_SWELL_MM = 5;
    private static final double MOST_MM = 200;

    private final HandleSet set;
    private final List<Brief> briefs;
    private final Wish wish;
    private final Map<String, Quantity> found = new LinkedHashMap<>();

    private Quantities(HandleSet set, List<Brief> briefs, Wish wish) {
        this.set = set;
        this.briefs = briefs;
        this.wish = wish;
    }

    static List<Brief> briefs(HandleSet set, Materials materials) {
        return set.pieces().stream().map(piece -> set.brief(piece, materials)).toList();
    }

    /** All that may move, in the order of pieces and nodes. */
    static List<Quantity> of(HandleSet set, List<Brief> briefs, Wish wish) {
        Quantities quantities = new Quantities(set, briefs, wish);
        for (int i = 0; i < briefs.size(); i++) {
            quantities.nodes(i);
        }
        for (int i = 0; i < briefs.size(); i++) {
            quantities.freedoms(i);
        }
        return List.copyOf(quantities.found.values());
    }

    private void nodes(int index) {
        Piece piece = set.pieces().get(index);
        Brief brief = briefs.get(index);
        for (Node node : brief.shape().nodes()) {
            String name = node.name();
            Double own = piece.choices().nodeDiametersMm().get(name);
            Double common = set.common().nodeDiametersMm().get(name);
            if (wish.eachAlone() || own != null) {
                plain(index, name, Owner.PIECE_CHOICE, diameter(brief, node));
            } else if (common != null) {
                plain(index, name, Owner.SET_CHOICE, common);
            } else {
                Owner owner = piece.shape().isPresent() ? Owner.PIECE_SHAPE : Owner.SET_SHAPE;
                if (node.size() instanceof Size.Times times) {
                    multiple(index, name, owner, times);
                } else {
                    plain(index, name, owner, ((Size.Plain) node.size()).diameterMm());
                }
            }
        }
    }

    /** Diameter of a node on one piece, mm. */
    static double diameter(Brief brief, Node node) {
        Double chosen = brief.choices().nodeDiametersMm().get(node.name());
        if (chosen != null) {
            return chosen;
        }
        return node.size() instanceof Size.Times times
                ? times.factor() * brief.referenceMm(times.reference())
                : ((Size.Plain) node.size()).diameterMm();
    }

    private void plain(int index, String node, Owner owner, double mm) {
        merge(
                new Quantity(
                        Kind.NODE,
                        node,
                        owner,
                        pieceName(owner, index),
                        Optional.empty(),
                        List.of(index),
                        mm,
                        Math.max(LEAST_MM, mm - wish.reachMm()),
                        Math.min(MOST_MM, mm + wish.reachMm()),
                        1));
    }

    private void multiple(int index, String node, Owner owner, Size.Times times) {
        double reference = briefs.get(index).referenceMm(times.reference());
        double reach = wish.reachMm() / reference;
        merge(
                new Quantity(
                        Kind.NODE,
                        node,
                        owner,
                        pieceName(owner, index),
                        Optional.of(times.reference()),
                        List.of(index),
                        times.factor(),
                        Math.max(LEAST_TIMES, times.factor() - reach),
                        Math.min(MOST_TIMES, times.factor() + reach),
                        reference));
    }

    private Optional<String> pieceName(Owner owner, int index) {
        return owner == Owner.PIECE_CHOICE || owner == Owner.PIECE_SHAPE
                ? Optional.of(set.pieces().get(index).name())
                : Optional.empty();
    }

    /** What several pieces share is one quantity: its weight is that of all that it moves. */
    private void merge(Quantity one) {
        found.merge(
                one.kind() + "/" + one.owner() + "/" + one.piece().orElse("") + "/" + one.node(),
                one,
                (a, b) -> {
                    List<Integer> pieces = new ArrayList<>(a.pieces());
                    pieces.addAll(b.pieces());
                    return new Quantity(
                            a.kind(),
                            a.node(),
                            a.owner(),
                            a.piece(),
                            a.times(),
                            pieces,
                            a.value(),
                            Math.max(a.low(), b.low()),
                            Math.min(a.high(), b.high()),
                            Math.hypot(a.weight(), b.weight()));
                });
    }

    private void freedoms(int index) {
        Resolution resolution = Resolve.of(briefs.get(index));
        if (!(resolution instanceof Resolution.Resolved resolved)) {
            return;
        }
        if (wish.allowed().contains(Freedom.SWELL)) {
            swell(index);
        }
        if (wish.allowed().contains(Freedom.LENGTH)) {
            length(index, resolved.handle());
        }
        if (wish.allowed().contains(Freedom.DEPTH)) {
            depths(index, resolved.handle());
        }
    }

    /** The swell counts as the nodes that hang on it; where none does, it moves nothing. */
    private void swell(int index) {
        Brief brief = briefs.get(index);
        double sum = 0;
        for (Node node : brief.shape().nodes()) {
            boolean follows =
                    node.size() instanceof Size.Times times
                            && times.reference() == Reference.SWELL
                            && !brief.choices().nodeDiametersMm().containsKey(node.name())
                            && !wish.eachAlone();
            sum += follows ? Math.pow(((Size.Times) node.size()).factor(), 2) : 0;
        }
        if (sum > 0) {
            boolean own = set.pieces().get(index).choices().swellMm().isPresent();
            Owner owner = own ? Owner.PIECE_CHOICE : Owner.SET_CHOICE;
            double mm = brief.referenceMm(Reference.SWELL);
            merge(
                    new Quantity(
                            Kind.SWELL,
                            "",
                            owner,
                            pieceName(owner, index),
                            Optional.empty(),
                            List.of(index),
                            mm,
                            Math.max(LEAST_SWELL_MM, mm - wish.reachMm()),
                            Math.min(MOST_MM, mm + wish.reachMm()),
                            Math.sqrt(sum)));
        }
    }

    private void length(int index, Handle handle) {
        double blade = handle.brief().kit().blade().length().mean();
        double ratio = handle.lengths().overallMm() / blade;
        own(
                index,
                Kind.LENGTH,
                ratio,
                ratio * (1 - LENGTH_REACH),
                ratio * (1 + LENGTH_REACH),
                blade * LENGTH_WEIGHT);
    }

    /** Bores only become shallower, and not shallower than their longest part. */
    private void depths(int index, Handle handle) {
        var tang = handle.brief().kit().tang().length();
        double tip = handle.fit().engagedMm() + tang.greatest() - tang.mean();
        double depth = handle.tangBore().deepest().depthMm();
        // A depth of 1 mm is the least that choices accept.
        double least = Math.max(tip, 1);
        if (depth > least) {
            own(index, Kind.TANG_DEPTH, depth, least, depth, DEPTH_WEIGHT);
        }
        if (handle.capBore().isPresent()) {
            EndCap cap = handle.brief().kit().cap().orElseThrow();
            double spigot = Math.max(cap.spigotLength().greatest(), 0.5);
            double capDepth = handle.capBore().get().deepest().depthMm();
            if (capDepth > spigot) {
                own(index, Kind.CAP_DEPTH, capDepth, spigot, capDepth, DEPTH_WEIGHT);
            }
        }
    }

    private void own(int index, Kind kind, double value, double low, double high, double weight) {
        merge(
                new Quantity(
                        kind,
                        "",
                        Owner.PIECE_CHOICE,
                        pieceName(Owner.PIECE_CHOICE, index),
                        Optional.empty(),
                        List.of(index),
                        value,
                        low,
                        high,
                        weight));
    }
}
