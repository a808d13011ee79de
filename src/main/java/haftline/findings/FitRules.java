package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.stock.Plastic;
import haftline.stock.Wood;
import java.util.List;

/** The tang in its bore: the kind of fit, its depth, its clearance or pinch. */
final class FitRules {
    /**
     * A pressed bore may miss its wish by this much before the grip changes noticeably, mm; common
     * practice, no source.
     */
    static final double PRESSED_MISS = 0.2;

    /** Differences under this are rounding, mm. */
    static final double ROUNDING = 1e-9;

    private FitRules() {}

    static void add(Figures figures, List<Finding> found) {
        addKindOfFit(figures, found);
        addDepth(figures.handle(), found);
        addTangBore(figures.handle(), found);
        DrillRules.add(figures.handle(), found);
        FerruleRules.add(figures, found);
        CapRules.add(figures.handle(), found);
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
     * A tapered tang wedges where a step fits it; that no step does, that one is a well about the
     * root, or that the deepest is far too narrow, comes of drills that were chosen or of a thin
     * rack.
     */
    private static void addTapered(Handle handle, List<Finding> found) {
        Rules.Fits rules = handle.brief().rules().fits();
        boolean pressed = handle.fit().fit() == Fit.PRESSED;
        double most = pressed ? 0 : rules.looseMm();
        double x = handle.fit().tipX();
        Taper taper = taper(handle);
        double tightest = taper.tightestMm();
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
        } else if (taper.loosestMm() > rules.sleeveMm() + ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.BORE_LOOSE,
                            Gravity.WARN,
                            Place.BORE,
                            taper.loosestX(),
                            taper.loosestMm(),
                            rules.sleeveMm(),
                            "sleeve"));
        } else if (pressed && handle.fit().missMm(handle.tangBore()) < -PRESSED_MISS) {
            found.add(missed(handle, x));
        }
    }

    /**
     * Clearance of a tapered tang, on the diameter, where the step that fits it best begins and
     * where the one that fits it worst does, mm, and that one's place.
     */
    private record Taper(double tightestMm, double loosestMm, double loosestX) {}

    private static Taper taper(Handle handle) {
        Tang tang = handle.brief().kit().tang();
        Bore bore = handle.tangBore();
        double seatX = handle.fit().seatX();
        double flared = tang.flare().map(flare -> flare.length().greatest()).orElse(0.0);
        double tightest = Double.POSITIVE_INFINITY;
        double loosest = Double.NEGATIVE_INFINITY;
        double loosestX = bore.faceX();
        double from = Math.max(0, bore.faceX() - seatX);
        for (BoreStep step : bore.steps()) {
            double to = bore.xAt(step.depthMm()) - seatX;
            if (from < tang.length().mean()) {
                double clearance = step.diameterMm() - tang.envelopeMm(from);
                tightest = Math.min(tightest, clearance);
                // Room for a flared root is wide on purpose.
                if (clearance > loosest && to > flared + ROUNDING) {
                    loosest = clearance;
                    loosestX = seatX + from;
                }
            }
            from = Math.max(from, to);
        }
        return new Taper(tightest, loosest, loosestX);
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
}
