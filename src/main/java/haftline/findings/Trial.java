package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.util.List;
import java.util.Optional;

/**
 * A change tried on a handle: resolved, figured and searched for findings like any other.
 *
 * @param choices the choices that were tried
 * @param figures the figures they give
 * @param findings the findings they give
 */
record Trial(Choices choices, Figures figures, List<Finding> findings) {
    /** Tries choices; empty where no handle can be drawn. */
    static Optional<Trial> of(Brief brief, Choices choices) {
        Resolution resolution = Resolve.of(brief.withChoices(choices));
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            return Optional.of(new Trial(choices, figures, Findings.of(figures)));
        }
        return Optional.empty();
    }

    /**
     * Whether a finding is gone from its place, and nothing came that is graver than what was there
     * before.
     */
    boolean mends(Finding finding, List<Finding> before) {
        for (Finding now : findings) {
            if (now.code() == finding.code()
                    && now.place() == finding.place()
                    && now.subject().equals(finding.subject())) {
                return false;
            }
        }
        return count(findings, Gravity.STOP)
                        <= count(before, Gravity.STOP) - (finding.gravity() == Gravity.STOP ? 1 : 0)
                && count(findings, Gravity.WARN) <= count(before, Gravity.WARN);
    }

    private static long count(List<Finding> findings, Gravity gravity) {
        long count = 0;
        for (Finding finding : findings) {
            count += finding.gravity() == gravity ? 1 : 0;
        }
        return count;
    }
}
