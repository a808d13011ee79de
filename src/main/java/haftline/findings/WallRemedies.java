package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Wander;
import haftline.measure.Units;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** More wood over a bore, or a bore that keeps to its axis. */
final class WallRemedies extends RemedyBench {
    /**
     * Drilled so, a bore wanders least (common practice, no source): centre drill first, remounted
     * between cones.
     */
    private static final Wander CENTRE_DRILL_FIRST = new Wander(0.1, 0.005);

    /** A ferrule wider by more than this is another kit, tenths of mm. */
    private static final int WIDER_TENTHS = 40;

    /** A node further from the thin place than this does little for it, mm. */
    private static final double NEAR = 30;

    WallRemedies(Finding finding, Figures figures, RemedySearch search, Units units) {
        super(finding, figures, search, units);
    }

    /** Raises the free node that needs least, of those near the thin place. */
    Optional<Remedy> thickenNode() {
        if (finding.place() == Place.TENON || finding.knownX().isEmpty()) {
            return Optional.empty();
        }
        List<PlacedNode> near = new ArrayList<>();
        for (PlacedNode node : figures.handle().nodes()) {
            if (node.isFree() && Math.abs(node.x() - finding.atX()) <= NEAR) {
                near.add(node);
            }
        }
        near.sort(Comparator.comparingDouble(node -> Math.abs(node.x() - finding.atX())));
        Optional<Remedy> best = Optional.empty();
        double leastRaise = Double.POSITIVE_INFINITY;
        for (PlacedNode node : near.subList(0, Math.min(2, near.size()))) {
            double from = 2 * node.radiusMm();
            double to = from + Math.max(8, 4 * (finding.limit() - finding.figure()));
            Optional<RemedySearch.Found> found =
                    search.least(
                            from,
                            to,
                            0.1,
                            mm -> choices().toBuilder().nodeDiameterMm(node.name(), mm).build());
            if (found.isPresent() && found.get().value() - from < leastRaise) {
                leastRaise = found.get().value() - from;
                Trial trial = found.get().trial();
                double wall = worst(trial);
                // A node that slides stands elsewhere once it is thicker.
                double x = place(trial.figures().handle(), node);
                best =
                        remedy(
                                found.get(),
                                "Make \""
                                        + node.name()
                                        + "\" "
                                        + length(found.get().value(), 1)
                                        + " at "
                                        + length(x, 1)
                                        + ": wall "
                                        + Say.wall(wall, units),
                                wall);
            }
        }
        return best;
    }

    private static double place(Handle handle, PlacedNode node) {
        return handle.nodes().stream()
                .filter(placed -> placed.name().equals(node.name()))
                .findFirst()
                .orElse(node)
                .x();
    }

    Optional<Remedy> drillTruer() {
        Wander now = figures.handle().wander();
        if (now.slope() <= CENTRE_DRILL_FIRST.slope()) {
            return Optional.empty();
        }
        Wander truer =
                new Wander(
                        Math.min(now.startMm(), CENTRE_DRILL_FIRST.startMm()),
                        CENTRE_DRILL_FIRST.slope());
        return search.mending(choices().toBuilder().wander(truer).build())
                .map(
                        trial -> {
                            double wall = worst(trial);
                            return new Remedy(
                                    Optional.of(trial.choices()),
                                    "Drill on the lathe, centre drill first: wall "
                                            + Say.wall(wall, units),
                                    wall);
                        });
    }

    /**
     * Where nothing but the ferrule limits the tenon, the next wider one that would do; its ring
     * keeps its thickness.
     */
    Optional<Remedy> widerFerrule() {
        if (finding.place() != Place.TENON) {
            return Optional.empty();
        }
        Kit kit = brief().kit();
        Ferrule ferrule = kit.ferrule();
        for (int tenths = 1; tenths <= WIDER_TENTHS; tenths++) {
            Kit wider = kit.withFerrule(ferrule.widened(tenths / 10.0));
            Optional<Trial> trial = search.mending(brief().withKit(wider));
            if (trial.isPresent()) {
                double wall = worst(trial.get());
                return Optional.of(
                        new Remedy(
                                Optional.empty(),
                                "Take a ferrule with a bore of "
                                        + length(wider.ferrule().bore().least(), 1)
                                        + " or more: wall "
                                        + Say.wall(wall, units),
                                wall));
            }
        }
        return Optional.empty();
    }
}
