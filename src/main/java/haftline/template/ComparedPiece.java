package haftline.template;

import haftline.figures.Figures;
import haftline.set.BatchChange;
import haftline.set.PieceChange;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One piece with the parts of two batches, and what becomes of its gauges and templates.
 *
 * @param change what changes
 * @param gauges whether each gauge and template still serves; none where one of the two cannot be
 *     drawn
 */
public record ComparedPiece(PieceChange change, List<StillServes> gauges) {
    /** Copies the list. */
    public ComparedPiece {
        gauges = List.copyOf(gauges);
    }

    /**
     * Holds the gauges of one batch against the other.
     *
     * @param batches the change that the piece's is of
     * @param piece the piece's change
     * @param rules how gauges are made
     * @param toleranceMm the most that an outline or a diameter may be off its gauge, mm
     * @return the piece, compared
     */
    public static ComparedPiece of(
            BatchChange batches, PieceChange piece, GaugeRules rules, double toleranceMm) {
        if (piece.before().figures().isEmpty() || piece.after().figures().isEmpty()) {
            return new ComparedPiece(piece, List.of());
        }
        return new ComparedPiece(
                piece,
                StillServes.of(
                        workpiece(piece.before(), batches.before().id()),
                        workpiece(piece.after(), batches.after().id()),
                        rules,
                        toleranceMm));
    }

    private static Workpiece workpiece(PieceChange.Side side, String batch) {
        Figures figures = side.figures().orElseThrow();
        return Workpiece.of(figures.handle(), batch, side.isStopped());
    }

    /**
     * What no longer serves.
     *
     * @return the gauges and templates that must be cut again
     */
    public List<StillServes> toCutAgain() {
        return gauges.stream().filter(gauge -> !gauge.serves()).toList();
    }

    /**
     * What to do about the piece.
     *
     * @return one sentence without a full stop
     */
    public String todo() {
        if (change.after().isStopped()) {
            return "NOT TO BE MADE with this batch; see its findings";
        }
        List<String> todo = new ArrayList<>();
        Set<String> changed = new LinkedHashSet<>();
        if (change.isFitChanged()) {
            changed.add("fit");
        }
        change.changedFigures().stream()
                .filter(figure -> figure.what().isWork())
                .forEach(figure -> changed.add(figure.what().words()));
        if (!changed.isEmpty()) {
            todo.add("change " + String.join(", ", changed));
        }
        if (!toCutAgain().isEmpty()) {
            todo.add(
                    "cut again "
                            + toCutAgain().stream()
                                    .map(gauge -> gauge.kind().words())
                                    .collect(Collectors.joining(", ")));
        }
        if (todo.isEmpty()) {
            return change.changedParts().isEmpty()
                    ? "nothing; the parts are the same within their doubt"
                    : "nothing; the parts differ, and neither the work nor a gauge does";
        }
        if (toCutAgain().isEmpty() && !gauges.isEmpty()) {
            todo.add("every gauge and template still serves");
        }
        return String.join("; ", todo);
    }
}
