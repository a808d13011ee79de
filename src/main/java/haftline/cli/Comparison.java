package haftline.cli;

import haftline.figures.Figures;
import haftline.measure.Units;
import haftline.set.BatchChange;
import haftline.set.PieceChange;
import haftline.store.LoadedSet;
import haftline.template.GaugeRules;
import haftline.template.StillServes;
import haftline.template.Workpiece;
import java.util.ArrayList;
import java.util.List;

/**
 * Two batches compared, with what becomes of gauges and templates.
 *
 * @param set name of the set
 * @param chosen the two batches
 * @param toleranceMm the most that an outline or a diameter may be off its gauge, mm
 * @param change what changes
 * @param pieces the pieces of the change with their gauges
 */
record Comparison(
        String set,
        ChosenBatch.Pair chosen,
        double toleranceMm,
        BatchChange change,
        List<Compared> pieces) {
    Comparison {
        pieces = List.copyOf(pieces);
    }

    /**
     * One piece compared.
     *
     * @param change what changes
     * @param gauges whether each gauge and template still serves; none where one of the two cannot
     *     be drawn
     */
    record Compared(PieceChange change, List<StillServes> gauges) {
        Compared {
            gauges = List.copyOf(gauges);
        }

        List<StillServes> toCutAgain() {
            return gauges.stream().filter(gauge -> !gauge.serves()).toList();
        }
    }

    static Comparison of(LoadedSet loaded, ChosenBatch.Pair chosen, double toleranceMm) {
        BatchChange change =
                BatchChange.of(
                        loaded.set(),
                        chosen.before().batch(),
                        chosen.after().batch(),
                        loaded.materials());
        GaugeRules rules = GaugeRules.of(loaded.set().workshop().templates(), Units.MM);
        List<Compared> pieces = new ArrayList<>();
        for (PieceChange piece : change.pieces()) {
            pieces.add(new Compared(piece, gauges(change, piece, rules, toleranceMm)));
        }
        return new Comparison(loaded.set().name(), chosen, toleranceMm, change, pieces);
    }

    private static List<StillServes> gauges(
            BatchChange change, PieceChange piece, GaugeRules rules, double toleranceMm) {
        if (piece.before().figures().isEmpty() || piece.after().figures().isEmpty()) {
            return List.of();
        }
        return StillServes.of(
                workpiece(piece.before(), change.before().id()),
                workpiece(piece.after(), change.after().id()),
                rules,
                toleranceMm);
    }

    private static Workpiece workpiece(PieceChange.Side side, String batch) {
        Figures figures = side.figures().orElseThrow();
        return Workpiece.of(figures.handle(), batch, side.isStopped());
    }

    boolean isStopped() {
        return change.pieces().stream().anyMatch(piece -> piece.after().isStopped());
    }

    String page(Units units, Ink ink) {
        return ComparePage.of(this, units, ink);
    }
}
