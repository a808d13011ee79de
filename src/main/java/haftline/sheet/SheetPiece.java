package haftline.sheet;

import haftline.figures.Figures;
import haftline.figures.Speeds;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Handle;
import java.util.List;
import java.util.Optional;

/**
 * A piece that can be drawn, with what is known of it.
 *
 * @param set name of the set
 * @param batch the measured batch that its parts come from
 * @param figures its figures
 * @param speeds speeds of the lathe, where a rule is at hand
 * @param mixedMorePercent adhesive that is mixed beyond what the joints hold, %
 * @param remarks its findings, gravest first
 */
public record SheetPiece(
        String set,
        String batch,
        Figures figures,
        Optional<Speeds> speeds,
        double mixedMorePercent,
        List<Remark> remarks) {
    /** Copies the list. */
    public SheetPiece {
        remarks = List.copyOf(remarks);
    }

    /**
     * The handle.
     *
     * @return the handle
     */
    public Handle handle() {
        return figures.handle();
    }

    /**
     * What it follows from.
     *
     * @return the brief
     */
    public Brief brief() {
        return figures.handle().brief();
    }

    /**
     * Name of the piece.
     *
     * @return the name
     */
    public String name() {
        return figures.handle().name();
    }

    /**
     * Why it cannot be made so.
     *
     * @return the findings that stop it, none for a piece that can be made
     */
    public List<Remark> stops() {
        return remarks.stream().filter(remark -> remark.gravity() == Gravity.STOP).toList();
    }
}
