package haftline.sheet;

import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.LengthText;
import haftline.parts.BarbedTang;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What is measured of a tang, and the drills and depths that follow: the rules by which {@link
 * haftline.handle.Resolve} bores, with the maker's own {@link Rules} in their place, in letters.
 */
final class TangRules {
    private static final String NEXT = ", the next drill that is not under it";
    private static final String NEAREST = ", the nearest drill";
    private static final double SAME_MM = 1e-6;

    private final Handle handle;
    private final Brief brief;
    private final Rules rules;
    private final boolean pressed;
    private final Lettered out;
    private final LengthText lengths;
    private final double wobbleMm;

    /** The rule for a bore of one width, and what it gives; a taper has one for each drill. */
    private String how = "";

    private double wishMm;
    private String root = "";
    private String tip = "";
    private String length = "";

    TangRules(Handle handle, Lettered out) {
        this.handle = handle;
        this.brief = handle.brief();
        this.rules = brief.rules();
        this.pressed = handle.fit().fit() == Fit.PRESSED;
        this.out = out;
        this.lengths = out.lengths();
        this.wobbleMm = 2 * rules.bores().eccentricityMm();
    }

    /** The sizes to measure. */
    void measure() {
        Tang tang = brief.kit().tang();
        if (tang instanceof TaperedTang tapered) {
            tapered(tapered);
        } else if (tang instanceof BarbedTang barbed) {
            barbed(barbed);
        } else if (tang instanceof FlatTang flat) {
            flat(flat);
        } else if (tang instanceof SquareTang square) {
            square(square);
        } else if (tang instanceof ThreadedTang threaded) {
            threaded(threaded);
        } else {
            round((RoundTang) tang);
        }
        length =
                out.measure(
                        "tang, from the face it seats on to its tip",
                        tang.length().mean(),
                        Spot.along(handle.fit().seatX(), handle.fit().tipX(), 1));
    }

    private void round(RoundTang tang) {
        double d = pressed ? tang.diameter().mean() : tang.diameter().greatest();
        String a = out.measure(reading("tang, diameter"), d, at(d, 0.5));
        rule(a, d);
    }

    private void square(SquareTang tang) {
        double w = pressed ? tang.width().mean() : tang.width().greatest();
        String a = out.measure(reading("tang, across its flats"), w, at(w, 0.5));
        // Pressed: the round of equal area; bonded: the diagonal.
        rule(
                (pressed ? "1.128 × " : "1.414 × ") + a,
                pressed ? 2 * w / Math.sqrt(Math.PI) : tang.envelopeMm(0));
    }

    private void flat(FlatTang tang) {
        double w = pressed ? tang.width().mean() : tang.width().greatest();
        double t = pressed ? tang.thickness().mean() : tang.thickness().greatest();
        String a = out.measure(reading("tang, width"), w, at(w, 0.5));
        String b = out.unseen(reading("tang, thickness"), t);
        rule(
                pressed ? "1.128 × √(" + a + " × " + b + ")" : "√(" + a + "² + " + b + "²)",
                pressed ? 2 * Math.sqrt(w * t / Math.PI) : Math.hypot(w, t));
    }

    private void rule(String size, double sizeMm) {
        double over = over();
        how = size + out.with(over) + wobble() + (pressed ? NEAREST : NEXT);
        wishMm = sizeMm + over;
    }

    private double over() {
        return pressed ? -rules.fits().pressedUnderMm() : rules.fits().bondedOverMm();
    }

    private String wobble() {
        return wobbleMm == 0 ? "" : out.with(-wobbleMm) + " (the drill wobbles)";
    }

    private void barbed(BarbedTang tang) {
        double core = tang.coreDiameter().mean();
        double barb = pressed ? tang.barbDiameter().mean() : tang.barbDiameter().greatest();
        String a =
                out.measure("tang between its barbs, mean of the readings", core, at(core, 0.15));
        String b = out.measure(reading("tang over its barbs"), barb, at(barb, 0.7));
        if (!pressed) {
            rule(b, barb);
            return;
        }
        double under = rules.fits().pressedBarbUnderMm();
        how = b + out.with(-under) + ", not under " + a + wobble() + NEAREST + " under " + b;
        wishMm = Math.max(core, barb - under);
    }

    private void tapered(TaperedTang tang) {
        root = size("tang at its root, largest reading", tang, 0, 0.2);
        tip = size("tang at its tip, largest reading", tang, tang.length().mean(), 0.97);
    }

    private String size(String what, Tang tang, double fromSeatMm, double drawnShare) {
        double drawn = tang.envelopeMm(drawnShare * tang.length().mean());
        return out.measure(what, tang.envelopeMm(fromSeatMm), at(drawn, drawnShare));
    }

    private void threaded(ThreadedTang tang) {
        double crest = tang.crestDiameter().greatest();
        out.measure("thread over its crests, largest reading", crest, at(crest, 0.5));
        how =
                "the bore that the thread's table names, here "
                        + lengths.difference(tang.threadBoreMm())
                        + wobble()
                        + NEAREST;
        wishMm = tang.threadBoreMm();
    }

    /** Pressed bores go by the mean, bonded ones by the reading that hurts. */
    private String reading(String what) {
        return what + ", " + (pressed ? "mean" : "largest") + " of the readings";
    }

    private Spot at(double diameterMm, double share) {
        double seat = handle.fit().seatX();
        return Spot.across(seat + share * (handle.fit().tipX() - seat), diameterMm / 2);
    }

    /**
     * The drills and their depths.
     *
     * @param ring letter of the ferrule's length
     * @param tenon letter of the tenon's length
     * @param seat letter of what the tang seats behind the ferrule's front; empty where nothing
     */
    void drills(String ring, String tenon, String seat) {
        Tang tang = brief.kit().tang();
        String into = " − " + ring + " + " + tenon + (seat.isEmpty() ? "" : " + " + seat);
        if (tang instanceof TaperedTang tapered) {
            taperedDrills(tapered, into);
        } else {
            out.rule(
                    "drill for the tang",
                    how + Lettered.chosen(isDrillChosen()),
                    OptionalDouble.of(wishMm),
                    lengths.drill(deepest().drillMm()),
                    Optional.of(mid(deepest())));
        }
        if (tang instanceof ThreadedTang threaded && threaded.plainLength().mean() > 0) {
            out.rule(
                    "drill for the plain part of the shank",
                    "not under "
                            + lengths.difference(threaded.clearanceBoreMm())
                            + ", as deep as the plain part"
                            + into,
                    lengths.drill(handle.tangBore().widestMm()),
                    Optional.empty());
        }
        out.rule(
                "bore, depth at full width from the tenon's end",
                length
                        + into
                        + out.with(rules.bores().depthAllowanceMm())
                        + Lettered.chosen(brief.choices().tangDepthMm().isPresent()),
                lengths.contour(deepest().depthMm()),
                Optional.of(
                        Spot.along(
                                handle.tenonEndX(),
                                handle.tangBore().xAt(deepest().depthMm()),
                                deepest().diameterMm() / 2)));
        if (tang.flare().isPresent()) {
            out.rule(
                    "countersink for the flare at the tang's root",
                    "its diameter"
                            + out.with(rules.fits().bondedOverMm())
                            + ", as deep as it is long"
                            + into,
                    lengths.drill(handle.tangBore().widestMm()),
                    Optional.empty());
        }
    }

    private void taperedDrills(TaperedTang tang, String into) {
        double over = over();
        double rootMm = tang.envelopeMm(0) + over;
        double tipMm = tang.envelopeMm(tang.length().mean()) + over;
        int spans =
                Math.max(
                        1,
                        Math.min(rules.bores().mostSteps(), 1 + (int) Math.floor(rootMm - tipMm)));
        for (int i = 0; i < spans; i++) {
            boolean last = i + 1 == spans;
            double need = rootMm + (tipMm - rootMm) * i / spans;
            String share = i == 0 ? "" : " − (" + root + " − " + tip + ") × " + i + "/" + spans;
            Optional<BoreStep> step = stepFor(need);
            out.rule(
                    spans == 1
                            ? "drill for the tang"
                            : "drill "
                                    + (i + 1)
                                    + (i == 0 ? ", the mouth" : last ? ", the tip" : ""),
                    root
                            + share
                            + out.with(over)
                            + wobble()
                            + NEXT
                            + Lettered.chosen(last && isDrillChosen()),
                    OptionalDouble.of(need),
                    step.map(there -> lengths.drill(there.drillMm())).orElse("–"),
                    step.map(this::mid));
        }
        if (spans > 1) {
            out.rule(
                    "depth of each drill but the last; in this batch " + shallow(),
                    length
                            + " × ("
                            + root
                            + out.with(over)
                            + " − next drill) ÷ ("
                            + root
                            + " − "
                            + tip
                            + ")"
                            + into,
                    "",
                    Optional.empty());
        }
    }

    private boolean isDrillChosen() {
        return brief.choices().tangDrillMm().isPresent();
    }

    private BoreStep deepest() {
        return handle.tangBore().deepest();
    }

    private Spot mid(BoreStep step) {
        Bore bore = handle.tangBore();
        return Spot.across(bore.xAt(step.depthMm() * 0.85), step.diameterMm() / 2);
    }

    private Optional<BoreStep> stepFor(double need) {
        return handle.tangBore().steps().stream()
                .filter(step -> step.diameterMm() >= need - SAME_MM)
                .min(Comparator.comparingDouble(BoreStep::diameterMm));
    }

    private String shallow() {
        String depths =
                handle.tangBore().steps().stream()
                        .filter(step -> step != deepest())
                        .map(step -> lengths.contour(step.depthMm()))
                        .collect(Collectors.joining(", "));
        return depths.isEmpty() ? "–" : depths;
    }
}
