package haftline.ui.model;

import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Answer;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Move;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Proposal;
import haftline.adjust.solve.Standing;
import haftline.findings.Gravity;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A proposal in plain words. */
public final class ProposalWords {
    /** A change under this share of the measure of fairness is none. */
    private static final double NO_GAIN = 0.005;

    private final LengthText lengths;

    /**
     * Words with lengths in a unit.
     *
     * @param units the unit
     */
    public ProposalWords(Units units) {
        lengths = new LengthText(units);
    }

    /**
     * A part of what there is to say.
     *
     * @param title its heading
     * @param lines what stands under it
     */
    public record Part(String title, List<Line> lines) {
        /** Copies the list. */
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line.
     *
     * @param isMarked whether a mark stands before it
     * @param gravity what the mark says; empty where all is well
     * @param text what is said
     * @param aside what is said beside it, smaller; may be empty
     */
    public record Line(boolean isMarked, Optional<Gravity> gravity, String text, String aside) {
        private static Line plain(String text, String aside) {
            return new Line(false, Optional.empty(), text, aside);
        }
    }

    /**
     * The gist.
     *
     * @param proposal what is proposed
     * @return one sentence
     */
    public String verdict(Proposal proposal) {
        if (proposal instanceof Adjustment adjustment) {
            int missed = adjustment.missed().size();
            if (adjustment.answers().isEmpty()) {
                return "Nothing asked for concerns this.";
            }
            if (missed > 0) {
                return (missed == 1 ? "One demand is" : missed + " demands are")
                        + " not met; this comes nearest.";
            }
            return proposal.moves().isEmpty()
                    ? "All demands are met as it is."
                    : "All demands would be met.";
        }
        Fairing fairing = (Fairing) proposal;
        boolean isFair =
                fairing.moves().isEmpty()
                        || fairing.variationAfter() > fairing.variationBefore() * (1 - NO_GAIN);
        return isFair
                ? "The line is as fair as this band allows."
                : "The line would vary "
                        + Math.round(
                                100 * (1 - fairing.variationAfter() / fairing.variationBefore()))
                        + " % less in curvature.";
    }

    /**
     * All that there is to say.
     *
     * @param proposal what is proposed
     * @return parts, those with nothing to say left out
     */
    public List<Part> parts(Proposal proposal) {
        List<Part> parts = new ArrayList<>();
        if (proposal instanceof Adjustment adjustment) {
            conflicts(adjustment).ifPresent(parts::add);
        }
        moves(proposal).ifPresent(parts::add);
        if (proposal instanceof Adjustment adjustment) {
            parts.addAll(demands(adjustment));
        } else {
            parts.add(measure((Fairing) proposal));
        }
        return parts;
    }

    private Optional<Part> moves(Proposal proposal) {
        List<Line> lines = new ArrayList<>();
        for (Move move : proposal.moves()) {
            boolean isShown = move.isPlain() && lengths.units() == Units.MM;
            String where =
                    "decided in "
                            + move.document().words()
                            + (isShown ? "" : ", written as " + move.written());
            boolean isAlone = move.sizes().size() == 1;
            for (Move.Size size : move.sizes()) {
                lines.add(
                        Line.plain(
                                (isAlone ? move.what() : move.what() + ", " + size.piece())
                                        + " "
                                        + lengths.difference(size.beforeMm())
                                        + " → "
                                        + lengths.difference(size.afterMm())
                                        + " "
                                        + lengths.unit()
                                        + " ("
                                        + signed(size.afterMm() - size.beforeMm())
                                        + ")",
                                size == move.sizes().get(move.sizes().size() - 1) ? where : ""));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("What would move", lines));
    }

    private List<Part> demands(Adjustment adjustment) {
        List<Part> parts = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        String piece = "";
        for (Answer answer : adjustment.answers()) {
            if (!answer.piece().equals(piece) && !lines.isEmpty()) {
                parts.add(new Part("Demands on " + piece, lines));
                lines = new ArrayList<>();
            }
            piece = answer.piece();
            lines.add(line(answer));
        }
        if (!lines.isEmpty()) {
            parts.add(new Part("Demands on " + piece, lines));
        }
        return parts;
    }

    private Line line(Answer answer) {
        boolean isMet = answer.standing() == Standing.MET;
        Optional<Gravity> gravity =
                isMet
                        ? Optional.empty()
                        : Optional.of(
                                answer.standing() == Standing.IMPOSSIBLE
                                        ? Gravity.STOP
                                        : Gravity.WARN);
        String figure =
                !Double.isFinite(answer.afterMm())
                        ? ""
                        : " " + lengths.difference(answer.afterMm()) + " " + lengths.unit();
        String spare =
                Double.isInfinite(answer.marginAfterMm())
                        ? "nothing to mind"
                        : isMet
                                ? lengths.difference(Math.max(0, answer.marginAfterMm()))
                                        + " to spare"
                                : "short by " + lengths.difference(-answer.marginAfterMm());
        String missed =
                isMet
                        ? ""
                        : "; "
                                + answer.standing().words()
                                + (answer.because().isEmpty() ? "" : ": " + answer.because());
        return new Line(
                true,
                gravity,
                answer.need().words() + figure + ", " + spare + missed,
                wanted(answer) + was(answer));
    }

    private String wanted(Answer answer) {
        if (answer.need() == Need.CHARACTER) {
            return "least step from node to node";
        }
        return Double.isFinite(answer.highMm())
                ? "wanted "
                        + lengths.difference(answer.lowMm())
                        + " to "
                        + lengths.difference(answer.highMm())
                : "wanted " + lengths.difference(answer.lowMm()) + " or more";
    }

    private String was(Answer answer) {
        boolean isSame = Math.abs(answer.afterMm() - answer.beforeMm()) < 0.005;
        return isSame || !Double.isFinite(answer.beforeMm())
                ? ""
                : "; now " + lengths.difference(answer.beforeMm());
    }

    private Optional<Part> conflicts(Adjustment adjustment) {
        List<Line> lines = new ArrayList<>();
        for (List<Answer> conflict : adjustment.conflicts()) {
            List<String> words = new ArrayList<>();
            for (Answer answer : conflict) {
                words.add(answer.need().words() + " of " + answer.piece());
            }
            String what = String.join(", ", words);
            lines.add(
                    new Line(
                            true,
                            Optional.of(Gravity.WARN),
                            conflict.size() == 1
                                    ? "Not met within reach, even alone: " + what
                                    : "Not met together within reach: " + what,
                            conflict.size() == 1
                                    ? ""
                                    : "any one of them dropped, the others can be met"));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part("Conflicts", lines));
    }

    private Part measure(Fairing fairing) {
        return new Part(
                "Variation of curvature",
                List.of(
                        Line.plain(
                                rate(fairing.variationBefore())
                                        + " now, "
                                        + rate(fairing.variationAfter())
                                        + " as proposed",
                                "its rate squared along the line, jumps at the nodes counted,"
                                        + " 1/mm³; within "
                                        + lengths.difference(fairing.bandMm())
                                        + " "
                                        + lengths.unit()
                                        + " either way on the diameter; demands that are met stay"
                                        + " met")));
    }

    /** In the usual form 1.23e-4, whose digits say more than a row of noughts. */
    private static String rate(double value) {
        return value >= 0.01 && value < 1000
                ? NumberText.upTo(value, 4)
                : String.format(Locale.ROOT, "%.3g", value);
    }

    private String signed(double mm) {
        return (mm < 0 ? "−" : "+") + lengths.difference(Math.abs(mm));
    }
}
