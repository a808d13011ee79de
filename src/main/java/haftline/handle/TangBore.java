package haftline.handle;

import haftline.measure.NumberText;
import haftline.parts.BarbedTang;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.stock.Drill;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which drills, how deep, for a tang: a bonded one has room in its bore, a pressed one parts the
 * fibres. By how much is the maker's {@link Rules.Fits} and {@link Rules.Bores}, whose usual values
 * are common practice, no source.
 */
final class TangBore {
    /**
     * Sizes typed in mm and in inches are one drill where they differ by less, mm; no series is
     * finer.
     */
    private static final double SAME_DRILL = 0.005;

    /** A wish such as 3.2 + 0.1 mm rounds to a little over the drill that meets it, mm. */
    private static final double ROUNDING = 1e-9;

    /** Least drill that is made, mm. */
    private static final double LEAST_DRILL = 0.1;

    private final Brief brief;
    private final Fit fit;

    /**
     * Depth below the tenon's end of a place on the tang, less that place's distance from the
     * seating face, mm.
     */
    private final double seatDepth;

    private final List<BoreStep> steps = new ArrayList<>();
    private boolean onRack = true;

    private TangBore(Brief brief, Fit fit, double seatDepth) {
        this.brief = brief;
        this.fit = fit;
        this.seatDepth = seatDepth;
    }

    /** The planned bore. */
    record Plan(List<BoreStep> steps, double wishMm, boolean onRack) {}

    /**
     * Plans the bore.
     *
     * @param seatDepth depth of the tang's seating face below the tenon's end, mm; negative in
     *     front of it
     */
    static Plan plan(Brief brief, Fit fit, double seatDepth) {
        return new TangBore(brief, fit, seatDepth).plan();
    }

    private Plan plan() {
        Tang tang = brief.kit().tang();
        double tip = seatDepth + tang.length().mean();
        double depth =
                brief.choices()
                        .tangDepthMm()
                        .orElse(Math.max(tip, 0) + brief.rules().bores().depthAllowanceMm());
        double wish;
        if (tang instanceof TaperedTang tapered) {
            wish = taperedSteps(tapered, depth);
        } else if (tang instanceof ThreadedTang threaded) {
            wish = threadedSteps(threaded, depth);
        } else {
            wish = wish(tang);
            OptionalDouble chosen = brief.choices().tangDrillMm();
            add(
                    chosen.isPresent() ? chosenDrill(chosen.getAsDouble()) : drillFor(tang, wish),
                    depth);
        }
        tang.flare().ifPresent(this::countersink);
        return new Plan(List.copyOf(steps), wish, onRack);
    }

    /** The bore that a tang of one width wants, mm. */
    private double wish(Tang tang) {
        Rules.Fits fits = brief.rules().fits();
        if (fit == Fit.BONDED) {
            return tang.envelopeMm(0) + fits.bondedOverMm();
        }
        if (tang instanceof BarbedTang barbed) {
            double core = barbed.coreDiameter().mean();
            return Math.max(core, barbed.barbDiameter().mean() - fits.pressedBarbUnderMm());
        }
        if (tang instanceof SquareTang || tang instanceof FlatTang) {
            // The round bore of equal area: 2 / sqrt(pi) = 1.13 times the width of a square.
            return 2 * Math.sqrt(tang.sectionMm2(0) / Math.PI) - fits.pressedUnderMm();
        }
        // Round: area back to the mean diameter.
        return 2 * Math.sqrt(tang.sectionMm2(0) / Math.PI) - fits.pressedUnderMm();
    }

    private Drill drillFor(Tang tang, double wish) {
        if (fit == Fit.BONDED) {
            return atLeast(wish);
        }
        double drillWish = drillMm(brief, wish);
        Optional<Drill> nearest = brief.rack().nearest(drillWish);
        if (tang instanceof BarbedTang barbed
                && nearest.isPresent()
                && nearest.get().diameterMm() >= drillMm(brief, barbed.barbDiameter().least())) {
            // Over the barbs nothing grips; the next one under them does.
            nearest = brief.rack().largestAtMost(drillWish + ROUNDING);
        }
        return orBought(nearest, drillWish);
    }

    /** The smallest owned drill whose hole is not narrower, else one to be bought. */
    private Drill atLeast(double hole) {
        return orBought(ownedForHole(brief, hole), drillMm(brief, hole));
    }

    private Drill orBought(Optional<Drill> drill, double mm) {
        if (drill.isEmpty()) {
            onRack = false;
        }
        return drill.orElseGet(() -> unowned(brief, mm));
    }

    private Drill chosenDrill(double mm) {
        return orBought(owned(brief, mm), mm);
    }

    /** The drill that makes a hole, wobbling as this maker's do. */
    static double drillMm(Brief brief, double hole) {
        return Math.max(LEAST_DRILL, hole - 2 * brief.rules().bores().eccentricityMm());
    }

    /** The smallest owned drill whose hole is not narrower than this. */
    static Optional<Drill> ownedForHole(Brief brief, double hole) {
        return brief.rack().smallestAtLeast(drillMm(brief, hole) - ROUNDING);
    }

    /** The drill of a size, where the maker owns it. */
    static Optional<Drill> owned(Brief brief, double mm) {
        return brief.rack()
                .nearest(mm)
                .filter(drill -> Math.abs(drill.diameterMm() - mm) < SAME_DRILL);
    }

    /** The drill of a size, whether owned or not. */
    static Drill ownedOrNot(Brief brief, double mm) {
        return owned(brief, mm).orElseGet(() -> unowned(brief, mm));
    }

    /** A drill that would have to be bought or borrowed. */
    static Drill unowned(Brief brief, double mm) {
        return Drill.of(mm, NumberText.fixed(mm, 2) + " mm, not on the rack");
    }

    /**
     * Even spans along the tang, each with a drill that is none narrower than the tang in its span
     * less the fit; then every drill stops where the next one is wide enough.
     */
    private double taperedSteps(TaperedTang tang, double depth) {
        double over =
                fit == Fit.BONDED
                        ? brief.rules().fits().bondedOverMm()
                        : -brief.rules().fits().pressedUnderMm();
        double length = tang.length().mean();
        double root = tang.envelopeMm(0) + over;
        double tip = tang.envelopeMm(length) + over;
        int spans =
                Math.max(
                        1,
                        Math.min(
                                brief.rules().bores().mostSteps(),
                                1 + (int) Math.floor(root - tip)));
        double wobble = 2 * brief.rules().bores().eccentricityMm();
        OptionalDouble chosen = brief.choices().tangDrillMm();
        List<Drill> drills = new ArrayList<>();
        // A drill that the maker chose takes the deepest span; before it only what it does not
        // clear needs a step of its own.
        int byRule = chosen.isPresent() ? Math.max(1, spans - 1) : spans;
        for (int i = 0; i < byRule; i++) {
            double need = root + (tip - root) * i / spans;
            if (chosen.isEmpty() || chosen.getAsDouble() + wobble < need) {
                addNarrower(drills, atLeast(need));
            }
        }
        if (chosen.isPresent()) {
            addNarrower(drills, chosenDrill(chosen.getAsDouble()));
        }
        for (int i = 0; i + 1 < drills.size(); i++) {
            double next = drills.get(i + 1).diameterMm() + wobble;
            double from =
                    length * Math.min(1, Math.max(0, (root - next) / Math.max(root - tip, 1e-12)));
            if (seatDepth + from > 0) {
                add(drills.get(i), seatDepth + from);
            }
        }
        add(drills.get(drills.size() - 1), depth);
        return root + (tip - root) * (spans - 1) / spans;
    }

    private static void addNarrower(List<Drill> drills, Drill drill) {
        if (drills.isEmpty() || drill.diameterMm() < drills.get(drills.size() - 1).diameterMm()) {
            drills.add(drill);
        }
    }

    /** A threaded shank's plain part gets its clearance bore, the thread its own, deeper one. */
    private double threadedSteps(ThreadedTang tang, double depth) {
        double plain = seatDepth + tang.plainLength().mean();
        double wish = tang.threadBoreMm();
        if (plain > 0 && tang.clearanceBoreMm() > wish) {
            add(atLeast(tang.clearanceBoreMm()), plain);
        }
        OptionalDouble chosen = brief.choices().tangDrillMm();
        add(
                chosen.isPresent()
                        ? chosenDrill(chosen.getAsDouble())
                        : orBought(
                                brief.rack().nearest(drillMm(brief, wish)), drillMm(brief, wish)),
                depth);
        return wish;
    }

    /** Room for a flared root where it reaches into the wood. */
    private void countersink(Flare flare) {
        double depth = seatDepth + flare.length().greatest();
        double wish = flare.diameter().greatest() + brief.rules().fits().bondedOverMm();
        if (depth > 0 && wish > steps.get(0).diameterMm()) {
            steps.add(0, step(atLeast(wish), depth));
        }
    }

    private void add(Drill drill, double depth) {
        steps.add(step(drill, depth));
    }

    private BoreStep step(Drill drill, double depth) {
        return step(brief, drill, depth);
    }

    static BoreStep step(Brief brief, Drill drill, double depth) {
        Rules.Bores bores = brief.rules().bores();
        return new BoreStep(
                drill.diameterMm() + 2 * bores.eccentricityMm(),
                drill.diameterMm(),
                drill.name(),
                depth,
                drill.pointAngleDeg().orElse(bores.pointAngleDeg()));
    }
}
