package haftline.set;

import haftline.curve.OutlineDeviation;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Measured;
import haftline.parts.Kit;
import haftline.parts.PartSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a new batch changes in one piece.
 *
 * @param before the piece with the parts of the batch before
 * @param after the piece with the parts of the new batch
 * @param parts every measured size, in the order of the kit
 * @param figures every figure that is worked to; none where one of the two cannot be drawn
 * @param outline greatest deviation of the visible wood's radius, shoulder to seat, counted from
 *     the shoulder; empty where one of the two cannot be drawn
 * @param appeared findings that were not there before
 * @param vanished findings that are there no longer
 */
public record PieceChange(
        Side before,
        Side after,
        List<PartChange> parts,
        List<FigureChange> figures,
        Optional<OutlineDeviation> outline,
        List<Finding> appeared,
        List<Finding> vanished) {
    /**
     * The piece with the parts of one batch.
     *
     * @param brief what it follows from
     * @param figures its figures; empty where no handle can be drawn
     * @param findings what is found about it, gravest first
     */
    public record Side(Brief brief, Optional<Figures> figures, List<Finding> findings) {
        /** Copies the list. */
        public Side {
            findings = List.copyOf(findings);
        }

        /**
         * Whether it cannot be made so.
         *
         * @return true where a finding is a stop
         */
        public boolean isStopped() {
            return findings.stream().anyMatch(finding -> finding.gravity() == Gravity.STOP);
        }
    }

    /** Copies the lists. */
    public PieceChange {
        parts = List.copyOf(parts);
        figures = List.copyOf(figures);
        appeared = List.copyOf(appeared);
        vanished = List.copyOf(vanished);
    }

    /** Compares two sides of one piece. */
    static PieceChange of(Side before, Side after) {
        boolean drawn = before.figures.isPresent() && after.figures.isPresent();
        return new PieceChange(
                before,
                after,
                parts(before.brief.kit(), after.brief.kit()),
                drawn ? figures(before.figures.get(), after.figures.get()) : List.of(),
                drawn
                        ? Optional.of(
                                outline(
                                        before.figures.get().handle(),
                                        after.figures.get().handle()))
                        : Optional.empty(),
                without(after.findings, before.findings),
                without(before.findings, after.findings));
    }

    /**
     * Name of the piece.
     *
     * @return the name
     */
    public String name() {
        return after.brief.name();
    }

    /**
     * Sizes of parts that differ by more than their doubt.
     *
     * @return them, in the order of the kit
     */
    public List<PartChange> changedParts() {
        return parts.stream().filter(PartChange::isBeyondDoubt).toList();
    }

    /**
     * Figures that somebody at the lathe would work otherwise to.
     *
     * @return them, in the order of the work
     */
    public List<FigureChange> changedFigures() {
        return figures.stream().filter(FigureChange::isChange).toList();
    }

    /**
     * Whether the tang is pressed where it was bonded, or the other way round.
     *
     * @return true where the fit is another
     */
    public boolean isFitChanged() {
        return before.figures.isPresent()
                && after.figures.isPresent()
                && before.figures.get().handle().fit().fit()
                        != after.figures.get().handle().fit().fit();
    }

    private static List<Finding> without(List<Finding> all, List<Finding> others) {
        return all.stream()
                .filter(
                        finding ->
                                others.stream()
                                        .noneMatch(
                                                other ->
                                                        finding.isAbout(other)
                                                                && finding.gravity()
                                                                        == other.gravity()))
                .toList();
    }

    private static List<PartChange> parts(Kit before, Kit after) {
        Map<String, PartSize> old = byName(before);
        Map<String, PartSize> now = byName(after);
        Map<String, PartSize> all = new LinkedHashMap<>(now);
        old.forEach(all::putIfAbsent);
        List<PartChange> changes = new ArrayList<>();
        all.forEach(
                (name, size) ->
                        changes.add(
                                new PartChange(
                                        size.part(),
                                        name,
                                        measured(old.get(name)),
                                        measured(now.get(name)))));
        return changes;
    }

    private static Map<String, PartSize> byName(Kit kit) {
        Map<String, PartSize> sizes = new LinkedHashMap<>();
        kit.sizes().forEach(size -> sizes.put(size.name(), size));
        return sizes;
    }

    private static Optional<Measured> measured(PartSize size) {
        return Optional.ofNullable(size).map(PartSize::measured);
    }

    private static List<FigureChange> figures(Figures before, Figures after) {
        List<FigureChange> changes = new ArrayList<>();
        Handle old = before.handle();
        Handle now = after.handle();
        bores(
                changes,
                FigureChange.What.TANG_DRILL,
                FigureChange.What.TANG_DEPTH,
                Optional.of(old.tangBore()),
                Optional.of(now.tangBore()));
        bores(
                changes,
                FigureChange.What.CAP_DRILL,
                FigureChange.What.CAP_DEPTH,
                old.capBore(),
                now.capBore());
        for (FigureChange.What what : FigureChange.What.values()) {
            double was = figure(what, before);
            double is = figure(what, after);
            if (!Double.isNaN(was) || !Double.isNaN(is)) {
                changes.add(new FigureChange(what, 1, was, is));
            }
        }
        return changes;
    }

    private static void bores(
            List<FigureChange> changes,
            FigureChange.What drill,
            FigureChange.What depth,
            Optional<Bore> before,
            Optional<Bore> after) {
        List<BoreStep> old = steps(before);
        List<BoreStep> now = steps(after);
        for (int i = 0; i < Math.max(old.size(), now.size()); i++) {
            BoreStep was = i < old.size() ? old.get(i) : null;
            BoreStep is = i < now.size() ? now.get(i) : null;
            changes.add(
                    new FigureChange(
                            drill,
                            i + 1,
                            was == null ? Double.NaN : was.drillMm(),
                            is == null ? Double.NaN : is.drillMm()));
            changes.add(
                    new FigureChange(
                            depth,
                            i + 1,
                            was == null ? Double.NaN : was.depthMm(),
                            is == null ? Double.NaN : is.depthMm()));
        }
    }

    private static List<BoreStep> steps(Optional<Bore> bore) {
        return bore.map(Bore::steps).orElse(List.of()).stream()
                .sorted(Comparator.comparingDouble(BoreStep::depthMm).reversed())
                .toList();
    }

    private static double figure(FigureChange.What what, Figures figures) {
        Handle handle = figures.handle();
        List<PlacedNode> nodes = handle.nodes();
        return switch (what) {
            // Told step by step.
            case TANG_DRILL, TANG_DEPTH, CAP_DRILL, CAP_DEPTH -> Double.NaN;
            case TENON_DIAMETER -> handle.tenon().diameterMm();
            case TENON_LENGTH -> handle.tenon().lengthMm();
            case SHOULDER_DIAMETER -> 2 * nodes.get(0).radiusMm();
            case SEAT_DIAMETER -> 2 * nodes.get(nodes.size() - 1).radiusMm();
            case LENGTH -> handle.lengths().overallMm();
            case VISIBLE_WOOD -> handle.lengths().visibleWoodMm();
            case TENON_WALL -> wall(figures, Zone.TENON);
            case BODY_WALL -> wall(figures, Zone.BODY);
            case CAP_WALL -> wall(figures, Zone.CAP);
            case BALANCE -> figures.balance().fromFerruleFaceMm();
            case MASS -> figures.balance().totalG();
        };
    }

    private static double wall(Figures figures, Zone zone) {
        return figures.wall(zone).map(Wall::worstMm).orElse(Double.NaN);
    }

    /** As far as both have wood before the form of their butts. */
    private static OutlineDeviation outline(Handle before, Handle after) {
        double end = Math.min(seatX(before), seatX(after));
        return OutlineDeviation.between(before.outline(), after.outline(), 0, end);
    }

    private static double seatX(Handle handle) {
        return handle.nodes().get(handle.nodes().size() - 1).x();
    }
}
