package haftline.cli;

import haftline.figures.Figures;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import java.util.List;
import java.util.Optional;

/**
 * One piece of a set, worked out.
 *
 * @param brief what it follows from
 * @param figures its figures; empty where no handle can be drawn
 * @param guidance what the catalogues say of it
 * @param findings what is wrong with it or worth knowing, gravest first
 */
record ExaminedPiece(
        Brief brief, Optional<Figures> figures, Guidance guidance, List<Told> findings) {
    ExaminedPiece {
        findings = List.copyOf(findings);
    }

    String name() {
        return brief.name();
    }

    /** Whether it cannot be made so. */
    boolean isStopped() {
        return count(Gravity.STOP) > 0;
    }

    int count(Gravity gravity) {
        return (int) findings.stream().filter(told -> told.finding().gravity() == gravity).count();
    }
}
