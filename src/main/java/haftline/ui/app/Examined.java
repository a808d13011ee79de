package haftline.ui.app;

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
 * A piece with all that is known of it.
 *
 * @param brief what it follows from
 * @param figures its figures, or empty where it cannot be drawn
 * @param findings what is found about it, gravest first
 */
public record Examined(Brief brief, Optional<Figures> figures, List<Finding> findings) {
    /**
     * Works a piece out.
     *
     * @param brief what it follows from
     * @return the piece examined
     */
    public static Examined of(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            return new Examined(brief, Optional.of(figures), Findings.of(figures));
        }
        return new Examined(
                brief, Optional.empty(), Findings.of((Resolution.Impossible) resolution));
    }

    /**
     * How many findings are of a gravity.
     *
     * @param gravity the gravity
     * @return the count
     */
    public int count(Gravity gravity) {
        int count = 0;
        for (Finding finding : findings) {
            count += finding.gravity() == gravity ? 1 : 0;
        }
        return count;
    }
}
