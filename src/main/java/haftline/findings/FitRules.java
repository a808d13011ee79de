package haftline.findings;

import haftline.figures.Figures;
import haftline.figures.Seasons;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.shape.Butt;
import haftline.stock.Drill;
import haftline.stock.Plastic;
import haftline.stock.Wood;
import java.util.List;
import java.util.Optional;

/** Fits of tang, ferrule and cap, and the drills that make them. */
final class FitRules {
    /**
     * A pressed bore may miss its wish by this much before the grip changes noticeably, mm; common
     * practice, no source.
     */
    static final double PRESSED_MISS = 0.2;

    /** Depth over diameter above which a drill wanders and packs; common practice, no source. */
    static final double DEEP = 8;

    /**
     * Best range of a bonded tenon's clearance in wood, mm on the diameter; common practice, no
     * source.
     */
    private static final double[] TENON_WOOD = {0.05, 0.15};

    /**
     * Best range of a tenon's clearance in plastics, mm on the diameter; common practice, no
     * source.
     */
    private static final double[] TENON_PLASTIC = {0.15, 0.25};

    /**
     * Best range of a driven tenon's interference, mm on the diameter; common practice, no source.
     */
    private static final double[] TENON_DRIVEN = {0, 0.10};

    /** Sizes typed in mm and in inches are one drill where they differ by less, mm. */
    private static final double SAME_DRILL = 0.005;

    /**
     * No ferrule goes over wood that is wider than its bore by more than this, mm on the diameter;
     * common practice, no source.
     */
    private static final double TENON_TOO_WIDE = 0.3;

    /** Differences under this are rounding, mm. */
    static final double ROUNDING = 1e-9;

    private FitRules() {}

    static void add(Figures figures, List<Finding> found) {
        addKindOfFit(figures, found);
        addDepth(figures.handle(), found);
        addTangBore(figures.handle(), found);
        addDrills(figures.handle(), found);
        addMouth(figures.handle(), found);
        addFerrule(figures, found);
        addCap(figures.handle(), found);
    }

    private static void addKindOfFit(Figures figures, List<Finding> found) {
        Handle handle = figures.handle();
        Brief brief = handle.brief();
        if (handle.fit().fit() == Fit.BONDED) {
            boolean closed =
                    !(brief.kit().tang() instanceof FlatTang
                            || brief.kit().tang() instanceof SquareTang);
            if (closed) {
                found.add(Finding.plain(Code.NO_AIR_PATH, Gravity.NOTE, Place.BORE, ""));
            }
            return;
        }
        if (brief.stock() instanceof Plastic) {
            found.add(
                    Finding.plain(
                            Code.PRESSED_IN_PLASTIC,
                            Gravity.STOP,
                            Place.BORE,
                            brief.stock().name()));
        } else if (!brief.stock().isFibrous()) {
            found.add(
                    Finding.plain(
                            Code.PRESSED_WHERE_BONDED,
                            Gravity.WARN,
                            Place.BORE,
                            "stock as hard or brittle as this"));
        }
        if (brief.kit().tang() instanceof FlatTang flat && Resolve.isThin(flat, brief.rules())) {
            found.add(
                    Finding.plain(
                            Code.PRESSED_WHERE_BONDED,
                            Gravity.WARN,
                            Place.TANG,
                            "a flat tang as thin as this"));
        } else if (brief.kit().tang() instanceof ThreadedTang) {
            found.add(
                    Finding.plain(
                            Code.PRESSED_WHERE_BONDED,
                            Gravity.WARN,
                            Place.TANG,
                            "a threaded shank"));
        }
        if (figures.splitIndex().isPresent()) {
            var split = figures.splitIndex().get();
            double limit = brief.rules().fits().splitWarn();
            if (split.index() > limit) {
                found.add(
                        new Finding(
                                Code.SPLIT_INDEX,
                                Gravity.WARN,
                                Place.BODY,
                                split.atX(),
                                split.index(),
                                limit,
                                Finding.Unit.PLAIN,
                                split.estimated() ? "estimated" : ""));
            }
        } else if (brief.stock() instanceof Wood && handle.fit().engagedMm() > 0) {
            found.add(
                    Finding.plain(
                            Code.FIGURE_MISSING,
                            Gravity.NOTE,
                            Place.STOCK,
                            "strength across the grain"));
        }
    }

    /** The longest tang must go in before its seating face meets the ferrule. */
    private static void addDepth(Handle handle, List<Finding> found) {
        if (handle.fit().engagedMm() <= 0) {
            found.add(
                    Finding.mm(
                            Code.TANG_SHORT_OF_WOOD,
                            Gravity.STOP,
                            Place.TANG,
                            handle.fit().tipX(),
                            handle.fit().engagedMm(),
                            0,
                            ""));
            return;
        }
        Measured length = handle.brief().kit().tang().length();
        double longest = handle.fit().engagedMm() + length.greatest() - length.mean();
        double deep = handle.tangBore().deepest().depthMm();
        if (deep < longest - ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.BORE_TOO_SHALLOW,
                            Gravity.STOP,
                            Place.BORE,
                            handle.tangBore().xAt(deep),
                            deep,
                            longest,
                            ""));
        }
    }

    /** Judged on the reading that hurts: bonded on the largest tang, pressed on both. */
    private static void addTangBore(Handle handle, List<Finding> found) {
        Rules.Fits rules = handle.brief().rules().fits();
        Tang tang = handle.brief().kit().tang();
        double hole = handle.tangBore().deepest().diameterMm();
        double x = handle.fit().tipX();
        boolean straight = !(tang instanceof TaperedTang || tang instanceof ThreadedTang);
        if (handle.fit().fit() == Fit.BONDED) {
            double widest = straight ? tang.envelopeMm(0) : narrowestTangInLastStep(handle);
            double clearance = hole - widest;
            if (clearance < -ROUNDING && !(tang instanceof ThreadedTang)) {
                found.add(
                        Finding.mm(
                                Code.BORE_TIGHT,
                                Gravity.STOP,
                                Place.BORE,
                                x,
                                clearance,
                                0,
                                "tang"));
            } else if (clearance < 2 * rules.lineThinMm() - ROUNDING && straight) {
                found.add(
                        Finding.mm(
                                Code.BORE_TIGHT,
                                Gravity.WARN,
                                Place.BORE,
                                x,
                                clearance,
                                2 * rules.lineThinMm(),
                                "glue line"));
            } else if (straight && clearance > 2 * rules.lineThickMm() + ROUNDING) {
                boolean loose = clearance > rules.looseMm() + ROUNDING;
                boolean sleeve = clearance > rules.sleeveMm() + ROUNDING;
                found.add(
                        Finding.mm(
                                Code.BORE_LOOSE,
                                loose ? Gravity.WARN : Gravity.NOTE,
                                Place.BORE,
                                x,
                                clearance,
                                sleeve
                                        ? rules.sleeveMm()
                                        : loose ? rules.looseMm() : 2 * rules.lineThickMm(),
                                sleeve ? "sleeve" : "glue line"));
            }
        } else if (straight) {
            addPressed(handle, tang, hole, x, found);
        }
        if (tang instanceof TaperedTang) {
            addTapered(handle, found);
        }
    }

    /**
     * A tapered tang wedges where a step fits it; that no step does, or that the deepest is far too
     * narrow, comes of drills that were chosen or of a thin rack.
     */
    private static void addTapered(Handle handle, List<Finding> found) {
        Rules.Fits rules = handle.brief().rules().fits();
        boolean pressed = handle.fit().fit() == Fit.PRESSED;
        double most = pressed ? 0 : rules.looseMm();
        double x = handle.fit().tipX();
        double tightest = tightestOnTaper(handle);
        if (tightest > most + ROUNDING) {
            boolean sleeve = !pressed && tightest > rules.sleeveMm() + ROUNDING;
            found.add(
                    Finding.mm(
                            Code.BORE_LOOSE,
                            Gravity.WARN,
                            Place.BORE,
                            x,
                            tightest,
                            sleeve ? rules.sleeveMm() : most,
                            pressed ? "pressed" : sleeve ? "sleeve" : "glue line"));
        } else if (pressed && handle.fit().missMm(handle.tangBore()) < -PRESSED_MISS) {
            found.add(missed(handle, x));
        }
    }

    /** Clearance of a tapered tang where the step that fits it best begins, mm. */
    private static double tightestOnTaper(Handle handle) {
        Tang tang = handle.brief().kit().tang();
        Bore bore = handle.tangBore();
        double tightest = Double.POSITIVE_INFINITY;
        double from = Math.max(0, bore.faceX() - handle.fit().seatX());
        for (BoreStep step : bore.steps()) {
            if (from < tang.length().mean()) {
                tightest = Math.min(tightest, step.diameterMm() - tang.envelopeMm(from));
            }
            from = Math.max(from, bore.xAt(step.depthMm()) - handle.fit().seatX());
        }
        return tightest;
    }

    private static Finding missed(Handle handle, double x) {
        return Finding.mm(
                Code.DRILL_NOT_ON_RACK,
                Gravity.WARN,
                Place.BORE,
                x,
                handle.tangBore().deepest().diameterMm(),
                handle.fit().wishMm(),
                "near enough");
    }

    /**
     * What the deepest step must let pass: a tapered tang where that step begins, a thread's own
     * bore.
     */
    private static double narrowestTangInLastStep(Handle handle) {
        Tang tang = handle.brief().kit().tang();
        Bore bore = handle.tangBore();
        double from = 0;
        for (BoreStep step : bore.steps()) {
            if (step != bore.deepest()) {
                from = Math.max(from, bore.xAt(step.depthMm()) - handle.fit().seatX());
            }
        }
        return tang.envelopeMm(Math.min(from, tang.length().mean()));
    }

    private static void addPressed(
            Handle handle, Tang tang, double hole, double x, List<Finding> found) {
        double least;
        if (tang instanceof BarbedTang barbed) {
            least = barbed.barbDiameter().least() - hole;
            if (hole < barbed.coreDiameter().greatest() - ROUNDING) {
                found.add(
                        Finding.mm(
                                Code.BORE_TIGHT,
                                Gravity.WARN,
                                Place.BORE,
                                x,
                                hole,
                                barbed.coreDiameter().greatest(),
                                "core"));
            }
        } else {
            least = leastRound(tang) - hole;
        }
        if (least <= 0) {
            found.add(
                    Finding.mm(Code.BORE_LOOSE, Gravity.WARN, Place.BORE, x, -least, 0, "pressed"));
        }
        if (Math.abs(handle.fit().missMm(handle.tangBore())) > PRESSED_MISS) {
            found.add(missed(handle, x));
        }
    }

    /** Smallest readings, as the round of equal area for square and flat, mm. */
    private static double leastRound(Tang tang) {
        if (tang instanceof RoundTang round) {
            return round.diameter().least();
        }
        double area =
                tang instanceof FlatTang flat
                        ? flat.width().least() * flat.thickness().least()
                        : Math.pow(((SquareTang) tang).width().least(), 2);
        return 2 * Math.sqrt(area / Math.PI);
    }

    private static void addDrills(Handle handle, List<Finding> found) {
        BoreStep deepest = handle.tangBore().deepest();
        for (BoreStep step : handle.tangBore().steps()) {
            if (!handle.brief().rack().holds(step.drillMm(), SAME_DRILL)) {
                found.add(
                        Finding.mm(
                                Code.DRILL_NOT_ON_RACK,
                                Gravity.WARN,
                                Place.BORE,
                                Finding.NONE,
                                step.drillMm(),
                                step == deepest ? handle.fit().wishMm() : step.diameterMm(),
                                step == deepest ? "tang" : "mouth"));
            }
        }
        addReach(handle, handle.tangBore(), found);
        if (handle.capBore().isPresent()) {
            Bore cap = handle.capBore().get();
            double drill = cap.deepest().drillMm();
            if (!handle.brief().rack().holds(drill, SAME_DRILL)) {
                found.add(
                        Finding.mm(
                                Code.DRILL_NOT_ON_RACK,
                                Gravity.WARN,
                                Place.CAP,
                                Finding.NONE,
                                drill,
                                drill,
                                "cap"));
            }
            addReach(handle, cap, found);
        }
    }

    private static void addReach(Handle handle, Bore bore, List<Finding> found) {
        BoreStep step = bore.deepest();
        Optional<Drill> drill = handle.brief().rack().nearest(step.drillMm());
        if (drill.isPresent() && drill.get().fluteLengthMm().isPresent()) {
            double flute = drill.get().fluteLengthMm().getAsDouble();
            if (flute < bore.reachMm()
                    && Math.abs(drill.get().diameterMm() - step.drillMm()) < SAME_DRILL) {
                found.add(
                        Finding.mm(
                                Code.DRILL_TOO_SHORT,
                                Gravity.WARN,
                                bore.end() == Bore.End.BUTT ? Place.CAP : Place.BORE,
                                bore.xAt(flute),
                                flute,
                                bore.reachMm(),
                                step.drillName()));
            }
        }
        double ratio = step.depthMm() / step.drillMm();
        if (ratio > DEEP) {
            found.add(
                    new Finding(
                            Code.BORE_DEEP_FOR_DRILL,
                            Gravity.NOTE,
                            bore.end() == Bore.End.BUTT ? Place.CAP : Place.BORE,
                            Finding.NONE,
                            ratio,
                            DEEP,
                            Finding.Unit.PLAIN,
                            ""));
        }
    }

    private static void addMouth(Handle handle, List<Finding> found) {
        Ferrule ferrule = handle.brief().kit().ferrule();
        Tang tang = handle.brief().kit().tang();
        if (ferrule.lipHoleMm().isPresent() && handle.brief().kit().seatMm() < ferrule.lipMm()) {
            double hole = ferrule.lipHoleMm().getAsDouble();
            // A flared root stands in the lip too.
            double wide =
                    Math.max(
                            tang.envelopeMm(0),
                            tang.flare().map(flare -> flare.diameter().greatest()).orElse(0.0));
            if (wide > hole + ROUNDING) {
                found.add(
                        Finding.mm(
                                Code.TANG_WILL_NOT_PASS,
                                Gravity.STOP,
                                Place.FERRULE,
                                handle.ferruleFaceX(),
                                wide,
                                hole,
                                ""));
            }
        }
        if (ferrule.lipMm() > handle.brief().kit().seatMm() && ferrule.lipHoleMm().isEmpty()) {
            found.add(
                    Finding.plain(
                            Code.FIGURE_MISSING,
                            Gravity.NOTE,
                            Place.FERRULE,
                            "the hole in the ferrule's lip, which the tang must pass"));
        }
        if (tang.flare().isPresent()) {
            double into =
                    handle.fit().seatX()
                            + tang.flare().get().length().greatest()
                            - handle.tenonEndX();
            double wide = tang.flare().get().diameter().greatest();
            double bore = handle.tangBore().deepest().diameterMm();
            if (into > 0 && wide > bore) {
                found.add(
                        Finding.mm(
                                Code.FLARE_WANTS_COUNTERSINK,
                                Gravity.NOTE,
                                Place.BORE,
                                handle.tenonEndX(),
                                wide,
                                bore,
                                ""));
            }
        }
    }

    private static void addFerrule(Figures figures, List<Finding> found) {
        Handle handle = figures.handle();
        Ferrule ferrule = handle.brief().kit().ferrule();
        Rules rules = handle.brief().rules();
        double oval = ferrule.outside().mean() - ferrule.outsideLeast().mean();
        if (oval > rules.readings().ovalMm() + ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.FERRULE_OVAL,
                            Gravity.WARN,
                            Place.FERRULE,
                            0,
                            oval,
                            rules.readings().ovalMm(),
                            ""));
        }
        boolean wood = handle.brief().stock() instanceof Wood;
        boolean driven = wood && rules.tenons().driven();
        double clearance = ferrule.bore().least() - handle.tenon().diameterMm();
        double[] range = !wood ? TENON_PLASTIC : driven ? TENON_DRIVEN : TENON_WOOD;
        double judged = driven ? -clearance : clearance;
        if (judged < range[0] - ROUNDING || judged > range[1] + ROUNDING) {
            double limit = judged < range[0] ? range[0] : range[1];
            found.add(
                    Finding.mm(
                            Code.TENON_FIT,
                            clearance < -TENON_TOO_WIDE ? Gravity.STOP : Gravity.WARN,
                            Place.TENON,
                            handle.tenonEndX() / 2,
                            judged,
                            limit,
                            driven ? "driven" : "bonded"));
        }
        double inside = ferrule.length().least() - ferrule.lipMm();
        if (handle.tenon().lengthMm() > inside + ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.SHOULDER_GAP,
                            Gravity.WARN,
                            Place.TENON,
                            0,
                            handle.tenon().lengthMm(),
                            inside,
                            ferrule.lipMm() > 0 ? "tenon" : "open"));
        } else if (ferrule.chamferMm() > rules.readings().ovalMm() + ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.SHOULDER_GAP,
                            Gravity.NOTE,
                            Place.FERRULE,
                            0,
                            ferrule.chamferMm(),
                            rules.readings().ovalMm(),
                            "chamfer"));
        }
        addWinter(figures, driven, found);
    }

    private static void addWinter(Figures figures, boolean driven, List<Finding> found) {
        if (figures.seasons().isEmpty()) {
            if (figures.handle().brief().stock() instanceof Wood) {
                found.add(
                        Finding.plain(Code.FIGURE_MISSING, Gravity.NOTE, Place.STOCK, "shrinkage"));
            }
            return;
        }
        Seasons seasons = figures.seasons().get();
        double limit = figures.handle().brief().rules().tenons().looseGapMm();
        if (driven && seasons.ferruleGapMm() > 0) {
            found.add(
                    Finding.mm(
                            Code.FERRULE_LOOSE_IN_WINTER,
                            Gravity.WARN,
                            Place.TENON,
                            0,
                            seasons.ferruleGapMm(),
                            0,
                            "driven"));
        } else if (!driven && seasons.tenonShrinkMm() > limit) {
            found.add(
                    Finding.mm(
                            Code.FERRULE_LOOSE_IN_WINTER,
                            Gravity.WARN,
                            Place.TENON,
                            0,
                            seasons.tenonShrinkMm(),
                            limit,
                            "bonded"));
        }
    }

    private static void addCap(Handle handle, List<Finding> found) {
        if (handle.capBore().isEmpty()) {
            return;
        }
        EndCap cap = handle.brief().kit().cap().orElseThrow();
        BoreStep step = handle.capBore().get().deepest();
        double clearance = step.diameterMm() - cap.spigotDiameter().greatest();
        if (clearance < -ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.BORE_TIGHT,
                            Gravity.STOP,
                            Place.CAP,
                            handle.buttX(),
                            clearance,
                            0,
                            "spigot"));
        } else if (clearance > handle.brief().rules().fits().looseMm() + ROUNDING) {
            Rules.Fits rules = handle.brief().rules().fits();
            boolean sleeve = clearance > rules.sleeveMm() + ROUNDING;
            found.add(
                    Finding.mm(
                            Code.BORE_LOOSE,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            clearance,
                            sleeve ? rules.sleeveMm() : rules.looseMm(),
                            sleeve ? "sleeve" : "glue line"));
        }
        if (step.depthMm() < cap.spigotLength().greatest() - ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.CAP_PROUD,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            step.depthMm(),
                            cap.spigotLength().greatest(),
                            "spigot"));
        }
        if (!(handle.brief().shape().butt() instanceof Butt.Square)) {
            found.add(
                    Finding.mm(
                            Code.CAP_PROUD,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            handle.brief().shape().butt().lengthMm(),
                            0,
                            "butt"));
        }
    }
}
