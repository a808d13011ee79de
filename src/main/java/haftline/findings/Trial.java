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
     * warning may have come that weighs less.
     */
    boolean mends(Finding finding, List<Finding> before, boolean atACost) {
        for (Finding now : findings) {
            if (now.isAbout(finding)) {
                return false;
            }
            boolean borne = atACost && weighsLess(now, finding);
            if (now.gravity() != Gravity.NOTE && !borne && isNew(now, before)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether a warning weighs less than the finding whose cure brings it: any in place of a stop,
     * the balance in place of all others, another blank in place of a handle that does not fit the
     * hand, and that in place of a turn which the maker does not want.
     */
    static boolean weighsLess(Finding now, Finding finding) {
        if (now.gravity() != Gravity.WARN) {
            return false;
        }
        if (finding.gravity() == Gravity.STOP || now.code() == Code.BALANCE_OFF_TARGET) {
            return true;
        }
        return switch (finding.code()) {
            case TOO_SLENDER, TOO_THICK -> now.code() == Code.BLANK_TOO_SMALL;
            case NOT_MONOTONE -> now.code() == Code.TOO_SLENDER || now.code() == Code.TOO_THICK;
            default -> false;
        };
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
