package haftline.ui.model;

import haftline.findings.Finding;
import haftline.findings.Words;
import haftline.handle.Fit;
import haftline.measure.LengthText;
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
import java.util.Optional;

/** What a batch changes in one piece, line by line: for a table that is read from the top. */
public final class BatchRows {
    /** A deviation smaller than this is none, mm. */
    static final double NONE_MM = 0.005;

    /** Heading of what nobody works to otherwise. */
    static final String AS_BEFORE = "As before, as near as it is worked to";

    /** How a line is meant. */
    public enum Tone {
        /** A heading. */
        HEADING,
        /** Another figure than before. */
        CHANGED,
        /** As before. */
        SAME,
        /** Something is to be done or minded. */
        WARNING,
        /** It stops the work. */
        STOP,
        /** All is well. */
        GOOD
    }

    /**
     * A line.
     *
     * @param tone how it is meant
     * @param what what it is about
     * @param before with the batch in use; empty where the line is a sentence
     * @param after with the other batch
     * @param difference by how much it differs, or the sentence
     */
    public record Line(Tone tone, String what, String before, String after, String difference) {
        static Line heading(String what) {
            return new Line(Tone.HEADING, what, "", "", "");
        }

        static Line heading(String what, BatchChange batches) {
            return new Line(Tone.HEADING, what, batches.before().id(), batches.after().id(), "");
        }

        static Line sentence(Tone tone, String what, String words) {
            return new Line(tone, what, "", "", words);
        }

        /**
         * Whether it is a sentence rather than figures.
         *
         * @return true where it has no figures
         */
        public boolean isSentence() {
            return before.isEmpty() && after.isEmpty();
        }
    }

    private final BatchChange batches;
    private final Units units;
    private final LengthText lengths;
    private final List<Line> lines = new ArrayList<>();

    private BatchRows(BatchChange batches, Units units) {
        this.batches = batches;
        this.units = units;
        this.lengths = new LengthText(units);
    }

    /**
     * The lines of a piece.
     *
     * @param batches what the batch changes
     * @param piece the piece, compared
     * @param outliers readings that stand apart, in sentences
     * @param units unit of the lengths
     * @return the lines, what is to be done before what stays
     */
    public static List<Line> of(
            BatchChange batches, ComparedPiece piece, List<String> outliers, Units units) {
        BatchRows rows = new BatchRows(batches, units);
        PieceChange change = piece.change();
        rows.findings(change);
        rows.work(change);
        rows.gauges(piece);
        rows.parts(change, outliers);
        rows.same(change);
        return List.copyOf(rows.lines);
    }

    private void findings(PieceChange change) {
        if (change.appeared().isEmpty() && change.vanished().isEmpty()) {
            return;
        }
        lines.add(Line.heading("Findings"));
        for (Finding finding : change.appeared()) {
            Tone tone =
                    switch (finding.gravity()) {
                        case STOP -> Tone.STOP;
                        case WARN -> Tone.WARNING;
                        case NOTE -> Tone.CHANGED;
                    };
            lines.add(Line.sentence(tone, "new", words(finding, change.after().brief().stock())));
        }
        for (Finding finding : change.vanished()) {
            lines.add(
                    Line.sentence(
                            Tone.GOOD, "gone", words(finding, change.before().brief().stock())));
        }
    }

    private String words(Finding finding, Stock stock) {
        return Words.message(finding, stock, units);
    }

    private void work(PieceChange change) {
        lines.add(Line.heading("Work", batches));
        int before = lines.size();
        if (change.before().figures().isEmpty() || change.after().figures().isEmpty()) {
            lines.add(
                    Line.sentence(
                            Tone.STOP,
                            "drawing",
                            change.after().figures().isEmpty()
                                    ? "it cannot be drawn with the other batch"
                                    : "it cannot be drawn with the batch in use"));
            return;
        }
        if (change.isFitChanged()) {
            lines.add(new Line(Tone.CHANGED, "fit", fit(change.before()), fit(change.after()), ""));
        }
        for (FigureChange figure : change.changedFigures()) {
            lines.add(figure(Tone.CHANGED, figure));
        }
        change.outline()
                .filter(off -> Math.abs(off.mm()) >= NONE_MM)
                .flatMap(off -> deviation(change, units))
                .ifPresent(off -> lines.add(Line.sentence(Tone.CHANGED, "outline", off)));
        if (lines.size() == before) {
            lines.add(Line.sentence(Tone.GOOD, "drill to balance", "as before"));
        }
    }

    private static String fit(PieceChange.Side side) {
        return side.figures().orElseThrow().handle().fit().fit() == Fit.PRESSED
                ? "pressed"
                : "bonded";
    }

    private Line figure(Tone tone, FigureChange figure) {
        return new Line(
                tone,
                figure.words(),
                standing(figure, figure.before()),
                standing(figure, figure.after()),
                Double.isNaN(figure.difference()) || Math.abs(figure.difference()) < NONE_MM
                        ? ""
                        : sign(figure.difference())
                                + amount(figure, Math.abs(figure.difference())));
    }

    private static String sign(double value) {
        return value < 0 ? "−" : "+";
    }

    private String standing(FigureChange figure, double value) {
        return amount(figure, figure.told(value, lengths.fineStepMm()));
    }

    private String amount(FigureChange figure, double value) {
        if (Double.isNaN(value)) {
            return "none";
        }
        return figure.what() == FigureChange.What.MASS
                ? NumberText.fixed(value, 1) + " g"
                : lengths.fine(value);
    }

    private void gauges(ComparedPiece piece) {
        if (piece.gauges().isEmpty()) {
            return;
        }
        lines.add(Line.heading("Gauges and templates that are cut"));
        for (StillServes gauge : piece.toCutAgain()) {
            lines.add(
                    Line.sentence(
                            Tone.WARNING,
                            gauge.kind().words(),
                            "cut it again: " + gauge.why(units)));
        }
        for (StillServes gauge : piece.gauges()) {
            if (gauge.serves()) {
                lines.add(
                        Line.sentence(
                                Tone.GOOD,
                                gauge.kind().words(),
                                gauge.offMm() < NONE_MM
                                        ? "serves as it is"
                                        : "serves: " + gauge.why(units)));
            }
        }
    }

    private void parts(PieceChange change, List<String> outliers) {
        lines.add(Line.heading("Parts", batches));
        for (String outlier : outliers) {
            lines.add(Line.sentence(Tone.WARNING, "readings", outlier));
        }
        for (PartChange part : change.changedParts()) {
            lines.add(
                    new Line(
                            Tone.CHANGED,
                            part.name(),
                            part.before().map(m -> lengths.fine(m.mean())).orElse("none"),
                            part.after().map(m -> lengths.fine(m.mean())).orElse("none"),
                            Double.isNaN(part.differenceMm())
                                    ? ""
                                    : sign(part.differenceMm())
                                            + lengths.fine(Math.abs(part.differenceMm()))
                                            + ", doubt "
                                            + lengths.fine(part.doubtMm())));
        }
        List<String> same =
                change.parts().stream()
                        .filter(part -> !part.isBeyondDoubt())
                        .map(PartChange::name)
                        .toList();
        if (!same.isEmpty()) {
            lines.add(Line.sentence(Tone.SAME, "within their doubt", String.join(", ", same)));
        }
    }

    private void same(PieceChange change) {
        List<FigureChange> same =
                change.figures().stream().filter(figure -> !figure.isChange()).toList();
        if (!same.isEmpty()) {
            lines.add(Line.heading(AS_BEFORE, batches));
            same.forEach(figure -> lines.add(figure(Tone.SAME, figure)));
        }
    }

    /**
     * The largest deviation of an outline in words.
     *
     * @param change the piece's change
     * @param units unit of the lengths
     * @return the words; empty where one of the two cannot be drawn
     */
    public static Optional<String> deviation(PieceChange change, Units units) {
        return change.outline()
                .map(
                        off ->
                                Math.abs(off.mm()) < NONE_MM
                                        ? "the same from shoulder to seat"
                                        : "at most "
                                                + new LengthText(units).fine(Math.abs(off.mm()))
                                                + (off.mm() > 0 ? " more" : " less")
                                                + " on the radius, "
                                                + place(off.atX(), units));
    }

    private static String place(double x, Units units) {
        return Math.abs(x) < NONE_MM
                ? "at the shoulder"
                : new LengthText(units).withUnit(x) + " from the shoulder";
    }
}
