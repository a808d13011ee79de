package haftline.cli;

import haftline.curve.OutlineDeviation;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.findings.Words;
import haftline.handle.Fit;
import haftline.measure.LengthText;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.BatchChange;
import haftline.set.FigureChange;
import haftline.set.PartChange;
import haftline.set.PieceChange;
import haftline.stock.Stock;
import haftline.template.ComparedPiece;
import haftline.template.StillServes;
import java.util.ArrayList;
import java.util.List;

/** What a new batch changes, on a page: piece by piece, then what to do. */
final class ComparePage {
    /** A deviation smaller than this is not told with its place, mm: it is none. */
    private static final double NONE_MM = 0.005;

    private final Comparison comparison;
    private final Units units;
    private final LengthText lengths;
    private final Paper paper;

    private ComparePage(Comparison comparison, Units units, Ink ink) {
        this.comparison = comparison;
        this.units = units;
        this.lengths = new LengthText(units);
        this.paper = new Paper(ink, 0, 0);
    }

    static String of(Comparison comparison, Units units, Ink ink) {
        ComparePage page = new ComparePage(comparison, units, ink);
        comparison.pieces().forEach(page::piece);
        page.summary();
        return page.paper.text();
    }

    private void piece(ComparedPiece piece) {
        PieceChange change = piece.change();
        String batches =
                comparison.chosen().before().batch().id()
                        + " → "
                        + comparison.chosen().after().batch().id();
        paper.heading(change.name(), batches, batches);
        parts(change);
        work(change);
        outline(change);
        gauges(piece);
        findings("New", change.appeared(), change.after().brief().stock());
        findings("Gone", change.vanished(), change.before().brief().stock());
    }

    private void parts(PieceChange change) {
        List<PartChange> changed = change.changedParts();
        for (PartChange part : changed) {
            paper.words("Parts", part.name() + ": " + part(part));
        }
        int same = change.parts().size() - changed.size();
        if (same > 0) {
            String others = changed.isEmpty() ? "" : "other ";
            paper.words(
                    "Parts",
                    same == 1
                            ? "one " + others + "size, the same within its doubt"
                            : same + " " + others + "sizes, the same within their doubt");
        }
    }

    private String part(PartChange part) {
        if (part.before().isEmpty()) {
            return "not there before, now " + lengths.fine(part.after().orElseThrow().mean());
        }
        if (part.after().isEmpty()) {
            return lengths.fine(part.before().get().mean()) + " before, not there now";
        }
        return moved(part.before().get().mean(), part.after().get().mean())
                + ", doubt "
                + lengths.fine(part.doubtMm())
                + readings(part.before().get(), part.after().get());
    }

    private static String readings(Measured before, Measured after) {
        return " (" + before.count() + " and " + after.count() + " readings)";
    }

    /** Such as {@code 6.00 mm before, now 6.10 mm, 0.10 mm more}. */
    private String moved(double before, double after) {
        return lengths.fine(before)
                + " before, now "
                + lengths.fine(after)
                + ", "
                + lengths.fine(Math.abs(after - before))
                + (after > before ? " more" : " less");
    }

    private void work(PieceChange change) {
        if (change.before().figures().isEmpty() || change.after().figures().isEmpty()) {
            paper.words(
                    "Work",
                    change.after().figures().isEmpty()
                            ? "it cannot be drawn now"
                            : "it could not be drawn before, and can be now");
            return;
        }
        if (change.isFitChanged()) {
            paper.words(
                    "Change",
                    "fit: " + fit(change.before()) + " before, now " + fit(change.after()));
        }
        for (FigureChange figure : change.changedFigures()) {
            paper.words(
                    figure.what().isWork() ? "Change" : "Follows",
                    figure.words() + ": " + figure(figure));
        }
        List<String> same = new ArrayList<>();
        for (FigureChange figure : change.figures()) {
            if (!figure.isChange()) {
                same.add(figure.words() + " " + standing(figure, figure.after()));
            }
        }
        if (!same.isEmpty()) {
            paper.words("As before", String.join(", ", same));
        }
    }

    private static String fit(PieceChange.Side side) {
        return side.figures().orElseThrow().handle().fit().fit() == Fit.PRESSED
                ? "pressed"
                : "bonded";
    }

    private String figure(FigureChange figure) {
        if (Double.isNaN(figure.before())) {
            return "new, " + standing(figure, figure.after());
        }
        if (Double.isNaN(figure.after())) {
            return "no longer, " + standing(figure, figure.before()) + " before";
        }
        return standing(figure, figure.before())
                + " before, now "
                + standing(figure, figure.after())
                + ", "
                + amount(figure, Math.abs(figure.difference()))
                + (figure.difference() > 0 ? " more" : " less");
    }

    private String standing(FigureChange figure, double value) {
        return amount(figure, figure.told(value, lengths.fineStepMm()));
    }

    private String amount(FigureChange figure, double value) {
        if (figure.what() == FigureChange.What.MASS) {
            return NumberText.fixed(value, 1) + " g";
        }
        return lengths.fine(value);
    }

    private void outline(PieceChange change) {
        if (change.outline().isEmpty()) {
            return;
        }
        OutlineDeviation off = change.outline().get();
        paper.words(
                "Outline",
                Math.abs(off.mm()) < NONE_MM
                        ? "the same from shoulder to seat"
                        : "at most "
                                + lengths.fine(Math.abs(off.mm()))
                                + (off.mm() > 0 ? " more" : " less")
                                + " on the radius, "
                                + (Math.abs(off.atX()) < NONE_MM
                                        ? "at the shoulder"
                                        : lengths.withUnit(off.atX()) + " from the shoulder"));
    }

    private void gauges(ComparedPiece piece) {
        for (StillServes gauge : piece.toCutAgain()) {
            paper.words("Cut again", gauge.kind().words() + ": " + gauge.why(units));
        }
        for (StillServes gauge : piece.gauges()) {
            if (gauge.serves()) {
                paper.words(
                        "Serves",
                        gauge.kind().words()
                                + (gauge.offMm() < NONE_MM ? ": as cut" : ": " + gauge.why(units)));
            }
        }
    }

    private void findings(String margin, List<Finding> findings, Stock stock) {
        for (Finding finding : findings) {
            Gravity gravity = finding.gravity();
            paper.words(
                    margin,
                    Verdict.mark(gravity)
                            + " "
                            + Verdict.word(gravity)
                            + "  "
                            + Words.message(finding, stock, units));
        }
    }

    private void summary() {
        ChosenBatch before = comparison.chosen().before();
        ChosenBatch after = comparison.chosen().after();
        String right = before.batch().id() + " → " + after.batch().id();
        paper.heading(comparison.set() + ": what the new batch changes", right, right);
        paper.words("Before", "batch " + before.batch().id() + " of " + before.file());
        paper.words("New", "batch " + after.batch().id() + " of " + after.file());
        for (ComparedPiece piece : comparison.pieces()) {
            paper.words("Do", piece.change().name() + ": " + piece.todo());
        }
        for (BatchChange.Missing missing : comparison.change().missing()) {
            paper.words(
                    "Missing",
                    missing.piece()
                            + ": no kit \""
                            + missing.kit()
                            + "\" in batch "
                            + missing.batch());
        }
        paper.words(
                "Judged",
                "gauges and templates within "
                        + lengths.fine(comparison.toleranceMm())
                        + (comparison.toleranceMm() == StillServes.USUAL_TOLERANCE_MM
                                ? " (common practice)"
                                : "")
                        + ", the tenon's slots by their own go and no-go"
                        + "; a fit follows the reading that hurts, not the mean");
    }
}
