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
    /** Tries a brief; empty where no handle can be drawn. */
    static Optional<Trial> of(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            return Optional.of(new Trial(brief.choices(), figures, Findings.of(figures)));
        }
        return Optional.empty();
    }

    /**
     * Whether a finding is gone and no stop or warning came that was not there before; at a cost, a
     * warning of the balance may have come, and any warning in place of a stop.
     */
    boolean mends(Finding finding, List<Finding> before, boolean atACost) {
        for (Finding now : findings) {
            if (now.isAbout(finding)) {
                return false;
            }
            boolean weighsLess =
                    atACost
                            && now.gravity() == Gravity.WARN
                            && (finding.gravity() == Gravity.STOP
                                    || now.code() == Code.BALANCE_OFF_TARGET);
            if (now.gravity() != Gravity.NOTE && !weighsLess && isNew(now, before)) {
                return false;
            }
        }
        return true;
    }

    /** Warnings that were not there before. */
    List<Finding> newWarnings(List<Finding> before) {
        return findings.stream()
                .filter(now -> now.gravity() == Gravity.WARN && isNew(now, before))
                .toList();
    }

    private static boolean isNew(Finding now, List<Finding> before) {
        for (Finding then : before) {
            if (now.isAbout(then) && now.gravity().compareTo(then.gravity()) >= 0) {
                return false;
            }
        }
        return true;
    }
}
