package haftline.findings;

import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.handle.Choices;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.parts.Kit;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Length, tenon and cap. */
final class PieceRemedies extends RemedyBench {
    /**
     * A cap outside of these multiples of the present one's mass is another kit: from brass to
     * aluminium is about a third.
     */
    private static final double LIGHTEST_CAP_TIMES = 0.3;

    private static final double HEAVIEST_CAP_TIMES = 3;

    PieceRemedies(Finding finding, Figures figures, RemedySearch search, Units units) {
        super(finding, figures, search, units);
    }

    Optional<Remedy> longer() {
        double ratio = ratio();
        Optional<RemedySearch.Found> found =
                search.least(
                        ratio, ratio * 2, 0.01, r -> choices().toBuilder().lengthRatio(r).build());
        return found.flatMap(
                f ->
                        remedy(
                                f,
                                "Lengthen to "
                                        + NumberText.fixed(f.value(), 2)
                                        + " × blade, "
                                        + length(
                                                f.trial().figures().handle().lengths().overallMm(),
                                                1),
                                f.value()));
    }

    Optional<Remedy> ruleTenonDiameter() {
        double bore = brief().kit().ferrule().bore().least();
        double sign = finding.subject().equals("driven") ? -1 : 1;
        double clearance = finding.limit() * sign;
        double wish = Math.round((bore - clearance) * 20) / 20.0;
        for (double mm : new double[] {wish, wish - 0.05, wish + 0.05}) {
            Optional<Trial> trial =
                    search.mending(choices().toBuilder().tenonDiameterMm(mm).build());
            if (trial.isPresent()) {
                return Optional.of(
                        new Remedy(
                                Optional.of(trial.get().choices()),
                                "Turn the tenon to " + length(mm, 2),
                                mm));
            }
        }
        return Optional.empty();
    }

    Optional<Remedy> ruleTenonLength() {
        double inside = brief().kit().ferrule().length().least() - brief().kit().ferrule().lipMm();
        double mm = Math.max(0.5, inside - brief().rules().tenons().shortMm());
        return search.mending(choices().toBuilder().tenonLengthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Turn the tenon " + length(mm, 1) + " long",
                                        mm));
    }

    /**
     * Longer or shorter, whichever brings balance or length within its target with the lesser
     * change.
     */
    Optional<Remedy> relength() {
        double ratio = ratio();
        DoubleFunction<Choices> change = r -> choices().toBuilder().lengthRatio(r).build();
        Optional<RemedySearch.Found> up = search.least(ratio, ratio * 1.5, 0.01, change);
        Optional<RemedySearch.Found> down =
                search.least(
                        0,
                        ratio * 0.5,
                        0.01,
                        less -> choices().toBuilder().lengthRatio(ratio - less).build());
        Optional<RemedySearch.Found> found =
                up.isPresent() && (down.isEmpty() || up.get().value() - ratio <= down.get().value())
                        ? up
                        : down;
        return found.flatMap(
                f -> {
                    double value = f.trial().choices().lengthRatio().orElseThrow();
                    Figures after = f.trial().figures();
                    boolean balance = finding.code() == Code.BALANCE_OFF_TARGET;
                    double outcome =
                            balance
                                    ? after.balance().fromFerruleFaceMm()
                                    : after.handle().lengths().overallMm();
                    return remedy(
                            f,
                            (value > ratio ? "Lengthen to " : "Shorten to ")
                                    + NumberText.fixed(value, 2)
                                    + " × blade: "
                                    + (balance
                                            ? "balances " + Say.fromFace(outcome, units)
                                            : "length " + length(outcome, 1)),
                            outcome);
                });
    }

    /** The length, the cap's mass or either, whichever reach the target by themselves. */
    Optional<Remedy> rebalance() {
        Optional<Remedy> length = relength();
        Optional<Remedy> cap = recap();
        if (length.isEmpty()) {
            return cap.map(r -> new Remedy(r.choices(), "Take " + r.change(), r.outcome()));
        }
        return length.map(r -> cap.map(c -> r.with("or take " + c.change())).orElse(r));
    }

    /**
     * The cap's mass that just meets the target, from the moments about it: linear, so solved and
     * not searched, then rounded to the safe side and tried.
     */
    private Optional<Remedy> recap() {
        Kit kit = brief().kit();
        if (kit.cap().isEmpty()) {
            return Optional.empty();
        }
        Balance balance = figures.balance();
        Share cap =
                balance.shares().stream()
                        .filter(share -> share.part() == Share.Part.CAP)
                        .findFirst()
                        .orElseThrow();
        double target = finding.limit() + figures.handle().ferruleFaceX();
        double wanted =
                cap.massG() + balance.totalG() * (target - balance.x()) / (cap.x() - target);
        boolean heavier = finding.figure() < finding.limit();
        double tenths = heavier ? Math.ceil(10 * wanted) : Math.floor(10 * wanted);
        double massG = tenths / 10;
        if (massG < LIGHTEST_CAP_TIMES * cap.massG() || massG > HEAVIEST_CAP_TIMES * cap.massG()) {
            return Optional.empty();
        }
        Kit changed = kit.withCap(kit.cap().get().withMassG(massG));
        return search.mending(brief().withKit(changed))
                .map(
                        trial -> {
                            double at = trial.figures().balance().fromFerruleFaceMm();
                            return new Remedy(
                                    Optional.empty(),
                                    "a cap of "
                                            + NumberText.fixed(massG, 1)
                                            + " g in place of "
                                            + NumberText.fixed(cap.massG(), 1)
                                            + " g: balances "
                                            + Say.fromFace(at, units),
                                    at);
                        });
    }
}
