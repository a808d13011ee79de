package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.Checks;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

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
        Checks.withinMm("bit diameter", diameterMm, 0.2, 30);
    }

    @Override
    public Card prepare(Card card) {
        Loop outline =
                relieved
                        ? CornerRelief.of(card.outline(), RELIEF_IN_RADII * diameterMm / 2)
                        : card.outline();
        List<Missed> missed = new ArrayList<>(alongEdge(outline));
        for (Loop opening : card.openings()) {
            inside(opening).ifPresent(missed::add);
        }
        List<TemplateFinding> findings = new ArrayList<>();
        summary(card, missed, true).ifPresent(findings::add);
        summary(card, missed, false).ifPresent(findings::add);
        return card.withEdges(outline, card.openings(), findings);
    }

    /**
     * A place that the bit does not reach.
     *
     * @param at where
     * @param residualMm how much card it leaves there, mm
     */
    private record Missed(Spot at, double residualMm) {}

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
    private List<Missed> alongEdge(Loop outline) {
        Loop cut = asCut(outline);
        List<Missed> missed = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            for (double share : new double[] {0, 0.5}) {
                Spot spot = stroke.at(share);
                double residual = cut.distance(spot);
                if (residual > LIMIT_MM) {
                    missed.add(new Missed(spot, residual));
                }
            }
        }
        return missed.stream().map(each -> new Missed(each.at, peak(missed, each.at))).toList();
    }

    /** The worst residual within a bit's width of a place. */
    private double peak(List<Missed> missed, Spot near) {
        return missed.stream()
                .filter(each -> each.at.distance(near) < diameterMm)
                .mapToDouble(Missed::residualMm)
                .max()
                .orElse(0);
    }

    private Optional<Missed> inside(Loop opening) {
        LoopOffset path = opening.offset(-diameterMm / 2);
        Box box = opening.box();
        Spot centre = new Spot((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        // A hole as wide as the bit is drilled with it.
        boolean drilled = Math.abs(box.width() - diameterMm) < LIMIT_MM;
        return path.isVanished() && !drilled
                ? Optional.of(new Missed(centre, diameterMm))
                : Optional.empty();
    }

    /**
     * One finding for all places of a card that are alike. A residual deeper than a right-angled
     * corner could leave is a slot the bit cannot enter.
     */
    private Optional<TemplateFinding> summary(Card card, List<Missed> missed, boolean narrow) {
        List<Missed> alike =
                missed.stream().filter(m -> m.residualMm > diameterMm / 2 == narrow).toList();
        if (alike.isEmpty()) {
            return Optional.empty();
        }
        DoubleSummaryStatistics x = alike.stream().mapToDouble(m -> m.at.x()).summaryStatistics();
        Missed worst =
                alike.stream().max(Comparator.comparingDouble(Missed::residualMm)).orElseThrow();
        return Optional.of(
                new TemplateFinding(
                        narrow
                                ? TemplateFinding.Kind.NARROWER_THAN_TOOL
                                : TemplateFinding.Kind.CORNER_ROUNDED_BY_BIT,
                        narrow ? Gravity.WARN : Gravity.NOTE,
                        card.name(),
                        x.getMin(),
                        x.getMax(),
                        worst.at.x(),
                        worst.residualMm,
                        worst.residualMm,
                        narrow ? diameterMm : LIMIT_MM));
    }

    @Override
    public String note() {
        return "router: bit of "
                + NumberText.upTo(diameterMm, 3)
                + " mm, lines are the true edge"
                + (relieved ? ", square inside corners relieved" : "");
    }
}
