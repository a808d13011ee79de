package haftline.edit;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.util.List;
import java.util.Optional;

/**
 * One piece, worked out: what it follows from and all that follows.
 *
 * @param brief what it follows from
 * @param figures its figures, the handle among them; empty where no handle can be drawn
 * @param findings gravest first
 */
public record Worked(Brief brief, Optional<Figures> figures, List<Finding> findings) {
    /** Copies the list. */
    public Worked {
        findings = List.copyOf(findings);
    }

    /**
     * Works a brief out; about ten microseconds.
     *
     * @param brief what the piece follows from
     * @return the piece, worked out
     */
    public static Worked of(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            return new Worked(brief, Optional.of(figures), Findings.of(figures));
        }
        return new Worked(brief, Optional.empty(), Findings.of((Resolution.Impossible) resolution));
    }

    /**
     * Why no handle can be drawn.
     *
     * @return a sentence without a full stop, or empty where one can
     */
    public Optional<String> impossible() {
        return figures.isPresent() ? Optional.empty() : Optional.of(findings.get(0).subject());
    }

    /**
     * The gravest that was found.
     *
     * @return its gravity, or empty where nothing was found
     */
    public Optional<Gravity> gravest() {
        return findings.stream().findFirst().map(Finding::gravity);
    }
}
