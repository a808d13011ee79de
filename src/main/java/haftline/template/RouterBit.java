package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.Checks;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * A router, whose bit cannot reach into an inside corner tighter than its radius. The lines stay
 * the true edge (the machine's own software keeps the bit beside them); what the bit leaves is
 * reported, and where relief is allowed the straight-sided corners are opened by a round through
 * the corner that the bit can follow.
 *
 * @param diameterMm diameter of the bit, mm, 0.2 to 30
 * @param relieved whether inside corners between two straight sides may be opened
 */
public record RouterBit(double diameterMm, boolean relieved) implements CuttingTool {
    /** Residuals under this are not worth a word, mm. */
    private static final double LIMIT_MM = 0.02;

    /** A round a little larger than the bit, so that it can follow it rather than stand in it. */
    private static final double RELIEF_IN_RADII = 1.05;

    /** Checks the range. */
    public RouterBit {
        Checks.within("bit diameter", diameterMm, 0.2, 30);
    }

    @Override
    public Card prepare(Card card) {
        List<TemplateFinding> findings = new ArrayList<>();
        Loop outline =
                relieved
                        ? CornerRelief.of(card.outline(), RELIEF_IN_RADII * diameterMm / 2)
                        : card.outline();
        reportOutline(card, outline, findings);
        for (Loop opening : card.openings()) {
            reportOpening(card, opening, findings);
        }
        return card.withEdges(outline, card.openings(), findings);
    }

    /**
     * What really comes out: the edge grown by the bit's radius and shrunk again, so that every
     * hollow of the card is as wide as the bit.
     *
     * @param outline an edge, in its true size
     * @return the edge as cut; closed-off pockets are left out
     */
    public Loop asCut(Loop outline) {
        LoopOffset path = outline.offset(diameterMm / 2);
        if (path.isVanished()) {
            return outline;
        }
        LoopOffset cut = path.largest().offset(-diameterMm / 2);
        return cut.isVanished() ? outline : cut.largest();
    }

    /** Every corner and hollow that the bit does not reach, and every slot that it cannot enter. */
    private void reportOutline(Card card, Loop outline, List<TemplateFinding> findings) {
        Loop cut = asCut(outline);
        double last = Double.NaN;
        for (Stroke stroke : outline.strokes()) {
            for (double share : new double[] {0, 0.5}) {
                Spot spot = stroke.at(share);
                double residual = cut.distance(spot);
                if (residual > LIMIT_MM && !(Math.abs(spot.x() - last) < diameterMm)) {
                    findings.add(finding(card, spot, peak(outline, cut, spot)));
                    last = spot.x();
                }
            }
        }
    }

    /** The worst residual within a bit's width of a place. */
    private double peak(Loop outline, Loop cut, Spot near) {
        double most = 0;
        for (Stroke stroke : outline.strokes()) {
            for (double share : new double[] {0, 0.5}) {
                Spot spot = stroke.at(share);
                if (spot.distance(near) < diameterMm) {
                    most = Math.max(most, cut.distance(spot));
                }
            }
        }
        return most;
    }

    /** A residual deeper than a right-angled corner could leave is a slot the bit cannot enter. */
    private TemplateFinding finding(Card card, Spot at, double residual) {
        boolean narrow = residual > diameterMm / 2;
        return new TemplateFinding(
                narrow
                        ? TemplateFinding.Kind.NARROWER_THAN_TOOL
                        : TemplateFinding.Kind.CORNER_ROUNDED_BY_BIT,
                narrow ? Gravity.WARN : Gravity.NOTE,
                card.name(),
                at.x(),
                at.x(),
                at.x(),
                residual,
                residual,
                narrow ? diameterMm : LIMIT_MM);
    }

    private void reportOpening(Card card, Loop opening, List<TemplateFinding> findings) {
        LoopOffset path = opening.offset(-diameterMm / 2);
        Box box = opening.box();
        Spot centre = new Spot((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        // A hole as wide as the bit is drilled with it.
        boolean drilled = Math.abs(box.width() - diameterMm) < LIMIT_MM;
        if (path.isVanished() && !drilled) {
            findings.add(finding(card, centre, diameterMm));
        }
    }

    @Override
    public String note() {
        return "router: bit of "
                + NumberText.upTo(diameterMm, 3)
                + " mm, lines are the true edge"
                + (relieved ? ", square inside corners relieved" : "");
    }
}
