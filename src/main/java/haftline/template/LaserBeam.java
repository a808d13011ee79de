package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.Checks;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * A laser, whose beam burns away half its kerf on either side of the line: edges are moved outward
 * by half the kerf, openings inward, so that the card kept has its true size.
 *
 * @param kerfMm width of the cut, mm, 0 to 2; 0.15 mm in 3 mm hardboard, 0.20 in 6 mm (one shop's
 *     table, between 0.1 and 0.3 elsewhere): cut a test piece and measure
 */
public record LaserBeam(double kerfMm) implements CuttingTool {
    /** How far an offset may miss its distance, mm: a hundredth of what a beam wanders. */
    private static final double CHECK_MM = 1e-4;

    /** Checks the range. */
    public LaserBeam {
        Checks.withinMm("kerf", kerfMm, 0, 2);
    }

    @Override
    public Card prepare(Card card) {
        double half = kerfMm / 2;
        List<TemplateFinding> findings = new ArrayList<>();
        LoopOffset around = card.outline().offset(half);
        Loop outline =
                checked(card, around, findings) ? edge(card, around, findings) : card.outline();
        List<Loop> openings = new ArrayList<>();
        for (Loop opening : card.openings()) {
            LoopOffset moved = opening.offset(-half);
            if (moved.isVanished()) {
                findings.add(tooNarrow(card, opening));
            } else if (checked(card, moved, findings)) {
                moved.loops().forEach(loop -> openings.add(ShortStrokes.joined(loop)));
            }
        }
        return card.withEdges(outline, openings, findings);
    }

    /** Holds an offset against its definition; a line that fails is never handed to a machine. */
    private static boolean checked(Card card, LoopOffset moved, List<TemplateFinding> findings) {
        OffsetCheck check = moved.check(CHECK_MM);
        boolean holds = check.holds() && !moved.isVanished();
        if (!holds) {
            findings.add(TemplateFinding.offsetOff(card.name(), check));
        }
        return holds;
    }

    /** The edge round the card; what closed off inside it was narrower than the kerf. */
    private Loop edge(Card card, LoopOffset moved, List<TemplateFinding> findings) {
        Loop largest = moved.largest();
        for (Loop loop : moved.loops()) {
            if (loop != largest) {
                findings.add(tooNarrow(card, loop));
            }
        }
        // At a slight bend the beam would turn about the corner in a thousandth of a turn.
        return ShortStrokes.joined(largest);
    }

    private TemplateFinding tooNarrow(Card card, Loop where) {
        Box box = where.box();
        double x = (box.minX() + box.maxX()) / 2;
        return new TemplateFinding(
                TemplateFinding.Kind.NARROWER_THAN_TOOL,
                Gravity.WARN,
                card.name(),
                box.minX(),
                box.maxX(),
                x,
                0,
                0,
                kerfMm);
    }

    @Override
    public String note() {
        return "laser: kerf of " + NumberText.upTo(kerfMm, 3) + " mm allowed for";
    }
}
