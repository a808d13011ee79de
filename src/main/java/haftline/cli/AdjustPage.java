package haftline.cli;

import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Answer;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Move;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Standing;
import haftline.findings.Finding;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an adjustment comes to, on a page: what moves, what is asked, what cannot be met. */
final class AdjustPage {
    private static final int FIGURE = 9;

    /** Diameters move in hundredths of a mm: three decimals of an inch would not show it. */
    private static final int MM_DECIMALS = 2;

    private static final int INCH_DECIMALS = 4;

    /** A wall that is a whole number of steps but for rounding is that number. */
    private static final double ROUNDING = 1e-6;

    private final Paper paper;
    private final LengthText lengths;

    AdjustPage(Units units, Ink ink) {
        lengths = new LengthText(units);
        paper =
                units == Units.MM
                        ? new Paper(ink, FIGURE, MM_DECIMALS)
                        : new Paper(ink, FIGURE + 2, INCH_DECIMALS);
    }

    String of(
            String set,
            Adjustment adjustment,
            Optional<Fairing> fairing,
            ExaminedSet before,
            ExaminedSet after,
            List<AdjustFiles.Change> changes,
            boolean isWriting) {
        String verdict = adjustment.isMet() ? "all demands met" : "not all demands met";
        paper.heading(set + ", adjusted", verdict, verdict);
        moves("Moves", adjustment.moves());
        if (adjustment.moves().isEmpty()) {
            paper.words("Moves", "nothing");
        } else {
            paper.row(
                    "Moves",
                    "in all",
                    size(adjustment.changeMm()),
                    lengths.unit(),
                    "root of the sum of squares, in diameter");
        }
        String piece = "";
        for (Answer answer : adjustment.answers()) {
            if (!answer.piece().equals(piece)) {
                piece = answer.piece();
                paper.blank()
                        .line(paper.ink().strong(Paper.cut(Paper.harmless(piece), Paper.WIDTH)));
            }
            answer(answer);
        }
        paper.blank();
        adjustment.conflicts().forEach(this::conflict);
        fairing.ifPresent(this::fairing);
        findings(before, after);
        String would = (adjustment.isMet() ? "" : "with --nearest ") + "would change ";
        for (AdjustFiles.Change change : changes) {
            paper.words(
                    isWriting ? "Changes" : "--write",
                    (isWriting ? "" : would) + Paper.harmless(change.inWords()));
        }
        return paper.text();
    }

    /** What was saved. */
    static String written(List<String> files, Ink ink) {
        Paper paper = new Paper(ink, FIGURE, 2);
        for (String file : files) {
            paper.words("Written", Paper.harmless(file));
        }
        return paper.text();
    }

    private void moves(String margin, List<Move> moves) {
        for (Move move : moves) {
            boolean isFirst = true;
            for (Move.Size size : move.sizes()) {
                paper.row(
                        margin,
                        isFirst ? move.what().replace(" bore's depth", " bore deep") : "",
                        size(size.afterMm()),
                        lengths.unit(),
                        signed(size.afterMm() - size.beforeMm())
                                + " on "
                                + size.piece()
                                + (isFirst ? ": " + where(move) : ""));
                isFirst = false;
            }
        }
    }

    /** What is written, figure by figure, where the size beside it is not that very figure. */
    private String where(Move move) {
        boolean isShown = move.isPlain() && lengths.units() == Units.MM;
        return (isShown ? "" : move.written() + " ") + "in " + move.document().words();
    }

    private void answer(Answer answer) {
        String spare =
                Double.isInfinite(answer.marginAfterMm())
                        ? "nothing to mind"
                        : answer.standing() == Standing.MET
                                ? size(Math.max(0, answer.marginAfterMm())) + " to spare"
                                : (answer.afterMm() > answer.highMm() ? "over by " : "short by ")
                                        + up(-answer.marginAfterMm());
        String missed =
                answer.standing() == Standing.MET
                        ? ""
                        : "; "
                                + answer.standing().words()
                                + (answer.because().isEmpty() ? "" : ": " + answer.because());
        paper.row(
                answer.standing() == Standing.MET ? "" : "  missed",
                answer.need().words(),
                figure(answer, answer.afterMm()),
                Double.isFinite(answer.afterMm()) ? lengths.unit() : "",
                wanted(answer) + was(answer) + spare + missed);
    }

    private String figure(Answer answer, double mm) {
        if (!Double.isFinite(mm)) {
            return "none";
        }
        return answer.need().group() == Need.Group.WALLS ? down(mm) : size(mm);
    }

    private String was(Answer answer) {
        return answer.afterMm() == answer.beforeMm()
                ? ""
                : "was " + figure(answer, answer.beforeMm()) + ", ";
    }

    private String wanted(Answer answer) {
        if (answer.need() == Need.CHARACTER) {
            return "least step from node to node, ";
        }
        return Double.isFinite(answer.highMm())
                ? size(answer.lowMm()) + " to " + size(answer.highMm()) + ", "
                : size(answer.lowMm()) + " or more, ";
    }

    private void conflict(List<Answer> conflict) {
        List<String> words = new ArrayList<>();
        for (Answer answer : conflict) {
            words.add(answer.need().words() + " of " + answer.piece());
        }
        String what = String.join(", ", words);
        paper.words(
                "Conflict",
                conflict.size() == 1
                        ? "not met within reach, even alone: " + what
                        : "not met together within reach: " + what);
    }

    private void fairing(Fairing fairing) {
        moves("Faired", fairing.moves());
        paper.words(
                "Faired",
                "variation of curvature "
                        + rate(fairing.variationBefore())
                        + " before, "
                        + rate(fairing.variationAfter())
                        + " after (integral of its rate squared along the line, and its jumps at"
                        + " the nodes, 1/mm³)");
    }

    /** In the usual form 1.23e-4, whose digits say more than a row of noughts. */
    private static String rate(double value) {
        return String.format(java.util.Locale.ROOT, "%.3g", value);
    }

    private void findings(ExaminedSet before, ExaminedSet after) {
        for (int i = 0; i < before.pieces().size(); i++) {
            List<String> was = codes(before.pieces().get(i));
            List<String> is = codes(after.pieces().get(i));
            List<String> gone = new ArrayList<>(was);
            is.forEach(gone::remove);
            List<String> come = new ArrayList<>(is);
            was.forEach(come::remove);
            if (!gone.isEmpty() || !come.isEmpty()) {
                paper.words(
                        "Findings",
                        before.pieces().get(i).name()
                                + ": "
                                + (gone.isEmpty() ? "" : "gone " + String.join(", ", gone))
                                + (gone.isEmpty() || come.isEmpty() ? "" : "; ")
                                + (come.isEmpty() ? "" : "new " + String.join(", ", come)));
            }
        }
    }

    private static List<String> codes(ExaminedPiece piece) {
        List<String> codes = new ArrayList<>();
        for (Told told : piece.findings()) {
            Finding finding = told.finding();
            codes.add(finding.code().text() + " (" + Verdict.word(finding.gravity()) + ")");
        }
        return codes;
    }

    private String size(double mm) {
        return NumberText.said(NumberText.fixed(mm / lengths.units().millimetres(), decimals()));
    }

    /** A wall, which is never shown thicker than it is. */
    private String down(double mm) {
        return size(Math.floor(mm / step() + ROUNDING) * step());
    }

    /** What is lacking, which is never shown as nothing. */
    private String up(double mm) {
        return size(Math.ceil(mm / step() - ROUNDING) * step());
    }

    private double step() {
        return lengths.units().millimetres() * Math.pow(10, -decimals());
    }

    private int decimals() {
        return lengths.units() == Units.MM ? MM_DECIMALS : INCH_DECIMALS;
    }

    private String signed(double mm) {
        return (mm < 0 ? "−" : "+") + size(Math.abs(mm));
    }
}
