package haftline.sheet;

import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.stock.Drill;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which drills go into which end of the blank, in what order, how deep and how fast. The blank is
 * bored before it is faced, so every stop lies the facing allowance deeper than the hole is meant.
 */
final class BoringPlan {
    /** What stands under the table. */
    static final String NOTE =
            "Stops from the blank's unfaced end, set with the drill's corners (LIPS) or its tip (POINT)"
                    + " at it.";

    /** What stands beside the speeds. */
    static String speedNote(Units units) {
        return "Speeds: common practice, no source. Clear chips every "
                + (units == Units.MM ? "10 mm." : "3/8 in.");
    }

    /** A narrower hole needs no pilot, mm; common practice, no source. */
    private static final double PILOT_FROM_MM = 5;

    /** A pilot about half as wide as the drill after it; common practice, no source. */
    private static final double PILOT_SHARE = 0.5;

    /** Thinner pilots wander and break, mm; common practice, no source. */
    private static final double PILOT_LEAST_MM = 2;

    private final Brief brief;
    private final LengthText lengths;
    private int number;

    private BoringPlan(Brief brief, LengthText lengths) {
        this.brief = brief;
        this.lengths = lengths;
    }

    static List<DrilledEnd> of(Handle handle, LengthText lengths) {
        BoringPlan plan = new BoringPlan(handle.brief(), lengths);
        List<DrilledEnd> ends = new ArrayList<>();
        ends.add(plan.end("Ferrule end: centre drill, then", handle.tangBore()));
        handle.capBore().ifPresent(bore -> ends.add(plan.end("Butt: centre drill, then", bore)));
        return List.copyOf(ends);
    }

    /** The deepest and narrowest drill first: the wider ones follow its hole. */
    private DrilledEnd end(String title, Bore bore) {
        List<BoreStep> bored = new ArrayList<>(bore.steps());
        bored.sort(Comparator.comparingDouble(BoreStep::depthMm).reversed());
        List<DrillStep> steps = new ArrayList<>();
        pilot(bored.get(0)).ifPresent(steps::add);
        bored.forEach(step -> steps.add(step(step)));
        return new DrilledEnd(title, steps);
    }

    private Optional<Drill> pilotOf(BoreStep first) {
        if (first.drillMm() < PILOT_FROM_MM) {
            return Optional.empty();
        }
        return brief.rack()
                .largestAtMost(Math.max(PILOT_LEAST_MM, PILOT_SHARE * first.drillMm()))
                .filter(drill -> drill.diameterMm() >= PILOT_LEAST_MM);
    }

    /** As deep as the drill after it, or less where its own point would leave a mark below. */
    private Optional<DrillStep> pilot(BoreStep first) {
        return pilotOf(first)
                .map(
                        drill -> {
                            BoreStep full = bored(drill, first.depthMm());
                            double over = Math.max(0, full.pointMm() - first.pointMm());
                            return step(bored(drill, Math.max(0, first.depthMm() - over)), "pilot");
                        });
    }

    private BoreStep bored(Drill drill, double depthMm) {
        return new BoreStep(
                drill.diameterMm(),
                drill.diameterMm(),
                drill.name(),
                depthMm,
                drill.pointAngleDeg().orElse(brief.rules().bores().pointAngleDeg()));
    }

    private DrillStep step(BoreStep step) {
        return step(step, "");
    }

    private DrillStep step(BoreStep step, String word) {
        double facing = brief.rules().blanks().facingMm();
        List<String> name = new ArrayList<>();
        if (!word.isEmpty()) {
            name.add(word);
        }
        boolean named = !step.drillName().equals(NumberText.upTo(step.drillMm(), 2));
        if (named) {
            name.add(step.drillName());
        } else if (lengths.units() == Units.INCH) {
            name.add(step.drillName() + " mm");
        }
        if (step.diameterMm() > step.drillMm()) {
            name.add("hole " + lengths.drill(step.diameterMm()));
        }
        return new DrillStep(
                ++number,
                lengths.drill(step.drillMm()),
                String.join(", ", name),
                lengths.contour(step.depthMm()),
                lengths.contour(step.depthMm() + facing),
                lengths.contour(step.depthMm() + facing + step.pointMm()),
                NumberText.fixed(rpm(step.drillMm()), 0));
    }

    /** Common practice, no source; reports for plastics lie between 200 and 620. */
    private double rpm(double drillMm) {
        if (!(brief.stock() instanceof Wood)) {
            return drillMm <= 6 ? 600 : 400;
        }
        if (drillMm <= 4) {
            return 2000;
        }
        if (drillMm <= 7) {
            return 1500;
        }
        return drillMm <= 11 ? 1000 : 600;
    }
}
