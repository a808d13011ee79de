package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The search for the least change that mends one finding. */
final class RemedySearch {
    /** Bisections of a search; 2^-12 of its range is finer than a turner's hundredth. */
    private static final int HALVINGS = 12;

    private final Finding finding;
    private final Figures figures;
    private final List<Finding> before;

    /** Whether a remedy may bring a warning that weighs less. */
    private final boolean atACost;

    RemedySearch(Finding finding, Figures figures, boolean atACost) {
        this.atACost = atACost;
        this.finding = finding;
        this.figures = figures;
        this.before = Findings.of(figures);
    }

    /** A value that mends, and the trial that showed it. */
    record Found(double value, Trial trial) {}

    /**
     * The least value over {@code from} that mends, by bisection between what does not and what
     * does, then rounded up to a whole step and tried again, so that the number named is the number
     * tried.
     */
    Optional<Found> least(double from, double to, double step, DoubleFunction<Choices> change) {
        double good = firstGood(from, to, change);
        if (Double.isNaN(good)) {
            return Optional.empty();
        }
        double bad = from;
        for (int i = 0; i < HALVINGS && good - bad > step / 4; i++) {
            double middle = (good + bad) / 2;
            if (mending(change, middle).isPresent()) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        double rounded = Math.ceil(good / step - 1e-9) * step;
        // One decimal more than the step, so that the sum of steps reads as it was typed.
        double named = Math.round(rounded * 1000) / 1000.0;
        for (int i = 0; i < 2; i++) {
            Optional<Trial> trial = mending(change, named + i * step);
            if (trial.isPresent()) {
                return Optional.of(new Found(named + i * step, trial.get()));
            }
        }
        return Optional.empty();
    }

    /**
     * What mends may stop mending further on, as another limit is met: look outwards in growing
     * steps.
     */
    private double firstGood(double from, double to, DoubleFunction<Choices> change) {
        for (double share : new double[] {0.06, 0.15, 0.3, 0.55, 1}) {
            double value = from + share * (to - from);
            if (mending(change, value).isPresent()) {
                return value;
            }
        }
        return Double.NaN;
    }

    private Optional<Trial> mending(DoubleFunction<Choices> change, double value) {
        Choices changed;
        try {
            changed = change.apply(value);
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
        return mending(changed);
    }

    Optional<Trial> mending(Choices changed) {
        return Trial.of(figures.handle().brief().withChoices(changed))
                .filter(trial -> trial.mends(finding, before, atACost));
    }

    /** Tries a brief with other parts. */
    Optional<Trial> mending(Brief changed) {
        return Trial.of(changed).filter(trial -> trial.mends(finding, before, atACost));
    }

    /** Warnings of a trial that were not there before. */
    List<Finding> warningsOf(Trial trial) {
        return trial.newWarnings(before);
    }
}
