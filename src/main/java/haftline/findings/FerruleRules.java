package haftline.findings;

import haftline.figures.Figures;
import haftline.figures.Seasons;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.parts.Ferrule;
import haftline.parts.Tang;
import haftline.stock.Wood;
import java.util.List;

/** The ferrule: what passes it, the tenon in it, its fit in winter. */
final class FerruleRules {
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

    /**
     * No ferrule goes over wood that is wider than its bore by more than this, mm on the diameter;
     * common practice, no source.
     */
    private static final double TENON_TOO_WIDE = 0.3;

    /** What a tang does not pass, where it is not the lip. */
    static final String BORE = "bore";

    private FerruleRules() {}

    static void add(Figures figures, List<Finding> found) {
        addMouth(figures.handle(), found);
        addFerrule(figures, found);
    }

    private static void addMouth(Handle handle, List<Finding> found) {
        Ferrule ferrule = handle.brief().kit().ferrule();
        Tang tang = handle.brief().kit().tang();
        // A flared root stands in the ferrule too.
        double wide =
                Math.max(
                        tang.envelopeMm(0),
                        tang.flare().map(flare -> flare.diameter().greatest()).orElse(0.0));
        boolean isInLip = handle.brief().kit().seatMm() < ferrule.lipMm();
        double hole = isInLip ? ferrule.lipHoleMm().orElse(wide) : wide;
        if (wide > ferrule.bore().least() + FitRules.ROUNDING) {
            found.add(tooWide(handle, wide, ferrule.bore().least(), BORE));
        } else if (wide > hole + FitRules.ROUNDING) {
            found.add(tooWide(handle, wide, hole, ""));
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
            double flare = tang.flare().get().diameter().greatest();
            double bore = handle.tangBore().deepest().diameterMm();
            if (into > 0 && flare > bore) {
                found.add(
                        Finding.mm(
                                Code.FLARE_WANTS_COUNTERSINK,
                                Gravity.NOTE,
                                Place.BORE,
                                handle.tenonEndX(),
                                flare,
                                bore,
                                ""));
            }
        }
    }

    private static Finding tooWide(Handle handle, double wide, double hole, String subject) {
        return Finding.mm(
                Code.TANG_WILL_NOT_PASS,
                Gravity.STOP,
                Place.FERRULE,
                handle.ferruleFaceX(),
                wide,
                hole,
                subject);
    }

    private static void addFerrule(Figures figures, List<Finding> found) {
        Handle handle = figures.handle();
        Ferrule ferrule = handle.brief().kit().ferrule();
        Rules rules = handle.brief().rules();
        double oval = ferrule.outside().mean() - ferrule.outsideLeast().mean();
        if (oval > rules.readings().ovalMm() + FitRules.ROUNDING) {
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
        if (judged < range[0] - FitRules.ROUNDING || judged > range[1] + FitRules.ROUNDING) {
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
        if (handle.tenon().lengthMm() > inside + FitRules.ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.SHOULDER_GAP,
                            Gravity.WARN,
                            Place.TENON,
                            0,
                            handle.tenon().lengthMm(),
                            inside,
                            ferrule.lipMm() > 0 ? "tenon" : "open"));
        } else if (ferrule.chamferMm() > rules.readings().ovalMm() + FitRules.ROUNDING) {
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
}
