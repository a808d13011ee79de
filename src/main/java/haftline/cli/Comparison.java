package haftline.cli;

import haftline.measure.Units;
import haftline.set.BatchChange;
import haftline.set.PieceChange;
import haftline.store.LoadedSet;
import haftline.template.ComparedPiece;
import haftline.template.GaugeRules;
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
        List<ComparedPiece> pieces) {
    Comparison {
        pieces = List.copyOf(pieces);
    }

    static Comparison of(LoadedSet loaded, ChosenBatch.Pair chosen, double toleranceMm) {
        BatchChange change =
                BatchChange.of(
                        loaded.set(),
                        chosen.before().batch(),
                        chosen.after().batch(),
                        loaded.materials());
        GaugeRules rules = GaugeRules.of(loaded.set().workshop().templates(), Units.MM);
        List<ComparedPiece> pieces = new ArrayList<>();
        for (PieceChange piece : change.pieces()) {
            pieces.add(ComparedPiece.of(change, piece, rules, toleranceMm));
        }
        return new Comparison(loaded.set().name(), chosen, toleranceMm, change, pieces);
    }

    boolean isStopped() {
        return change.pieces().stream().anyMatch(piece -> piece.after().isStopped());
    }

    String page(Units units, Ink ink) {
        return ComparePage.of(this, units, ink);
    }
}
