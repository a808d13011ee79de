package haftline.sheet;

import haftline.figures.AdhesiveNeed;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.set.Rates;
import haftline.stock.Adhesive;
import haftline.stock.Plastic;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How tang, ferrule and cap are held, and how the surface is finished; common practice. */
final class Joints {
    /** mm³ in a millilitre. */
    private static final double ML = 1000;

    private static final double ROUNDING = 1e-9;

    private static final String AIR =
            "Air: file a fine flat along the tang. Adhesive to the bottom of the bore first; push"
                    + " slowly, turning, wait, wipe.";

    private Joints() {}

    /** Facts of the fit: holes against metal, adhesive. */
    static List<Fact> facts(SheetPiece piece, LengthText lengths) {
        Handle handle = piece.handle();
        List<Fact> facts = new ArrayList<>();
        String unit = " " + lengths.unit();
        boolean pressed = handle.fit().fit() == Fit.PRESSED;
        facts.add(
                new Fact(
                        pressed ? "tang, pressed" : "tang, bonded",
                        lengths.contour(handle.fit().engagedMm()) + unit,
                        "of it in wood; " + handle.fit().because()));
        AdhesiveNeed need = piece.figures().adhesive();
        if (need.volumeMm3() > 0) {
            facts.add(
                    new Fact(
                            "adhesive",
                            millilitres(need.volumeMm3()) + " ml",
                            handle.brief().adhesive().name()
                                    + "; "
                                    + shares(need)
                                    + "; mix "
                                    + Rates.AdhesivePrice.inWords(piece.mixedMorePercent())));
        }
        return facts;
    }

    private static String shares(AdhesiveNeed need) {
        List<String> shares = new ArrayList<>();
        if (need.tangMm3() > 0) {
            shares.add("tang " + millilitres(need.tangMm3()));
        }
        if (need.capMm3() > 0) {
            shares.add("cap " + millilitres(need.capMm3()));
        }
        return String.join(", ", shares);
    }

    /** Rounded up: a drop too much is wiped off, a drop too little is a hollow. */
    static String millilitres(double mm3) {
        return NumberText.fixed(Math.ceil(mm3 / ML * 100 - ROUNDING) / 100, 2);
    }

    /** Sentences on pressing or bonding and on the air. */
    static List<String> notes(Handle handle) {
        Brief brief = handle.brief();
        List<String> notes = new ArrayList<>();
        if (handle.fit().fit() == Fit.PRESSED) {
            notes.add(
                    "Press straight and slowly, in a padded vice or with the tailstock, lathe off, so"
                            + " that air gets out; ease off where the wood creaks.");
        } else {
            notes.add(AIR);
        }
        boolean bonds =
                handle.fit().fit() == Fit.BONDED
                        || handle.capBore().isPresent()
                        || !brief.rules().tenons().driven();
        if (bonds) {
            curing(brief.adhesive()).ifPresent(notes::add);
        }
        return List.copyOf(notes);
    }

    private static Optional<String> curing(Adhesive adhesive) {
        List<String> times = new ArrayList<>();
        adhesive.workingMinutes()
                .ifPresent(f -> times.add("works " + NumberText.upTo(f.value(), 1) + " min"));
        adhesive.handlingHours()
                .ifPresent(f -> times.add("handle after " + NumberText.upTo(f.value(), 1) + " h"));
        adhesive.fullCureHours()
                .ifPresent(f -> times.add("cured after " + NumberText.upTo(f.value(), 1) + " h"));
        return times.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Adhesive: " + String.join(", ", times) + "; its data sheet goes first.");
    }

    /** How the surface is finished. */
    static List<String> finish(Brief brief) {
        List<String> notes = new ArrayList<>();
        if (brief.stock() instanceof Plastic) {
            notes.add(
                    "Wet-sand 320 to 2000, then polish; stop while it is cool, heat crazes it later.");
            return notes;
        }
        notes.add("Sand 120 to 320, last along the grain, lathe off.");
        boolean open = brief.stock() instanceof Wood timber && timber.pores() == Wood.Pores.OPEN;
        notes.add(
                "Oil or varnish, fully cured; seal tenon's end, bores' mouths and butt"
                        + (open ? ": open pores drink." : "."));
        notes.add("Oily rags catch fire by themselves: dry them flat outdoors.");
        return notes;
    }
}
