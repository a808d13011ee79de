package haftline.handle;

import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.Tang;
import haftline.parts.ThreadedTang;
import haftline.stock.Drill;
import haftline.stock.Stock;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Resolves a brief: shape, measured parts, stock and rules become one handle. */
public final class Resolve {
    /** Least visible wood that can be held and turned at all, mm. */
    private static final double LEAST_WOOD = 10;

    private final Brief brief;
    private final List<Reason> reasons = new ArrayList<>();

    private Resolve(Brief brief) {
        this.brief = brief;
    }

    /**
     * Resolves a brief.
     *
     * @param brief everything from which the handle follows
     * @return the handle, or why there can be none
     */
    public static Resolution of(Brief brief) {
        return new Resolve(brief).resolve();
    }

    private Resolution resolve() {
        Kit kit = brief.kit();
        Ferrule ferrule = kit.ferrule();
        double ratio = brief.choices().lengthRatio().orElse(brief.rules().lengths().ratio());
        double ferruleMm = ferrule.length().mean();
        double capMm = kit.cap().map(cap -> cap.headThickness().mean()).orElse(0.0);
        Tenon tenon = tenon(ferrule);
        Lengths lengths =
                new Lengths(
                        ratio * kit.blade().length().mean(), ferruleMm, capMm, tenon.lengthMm());
        if (lengths.visibleWoodMm() < LEAST_WOOD) {
            return new Resolution.Impossible(
                    "no-wood-left",
                    lengths.visibleWoodMm(),
                    LEAST_WOOD,
                    "mm",
                    "Ferrule and cap leave too little wood between them; make the handle longer");
        }
        reasons.add(
                new Reason(
                        "length",
                        brief.choices().lengthRatio().isPresent()
                                ? "your ratio to the blade"
                                : "the rule: ratio to the blade"));
        double seatX = -ferruleMm + kit.seatMm();
        double tipX = seatX + kit.tang().length().mean();
        double seatDepth = seatX + tenon.lengthMm();
        Reason how = fitReason();
        Fit fit = brief.choices().fit().orElse(suitedFit());
        reasons.add(how);
        TangBore.Plan plan = TangBore.plan(brief, fit, seatDepth);
        Bore tangBore = new Bore(Bore.End.FERRULE, -tenon.lengthMm(), plan.steps());
        TangFit tangFit =
                new TangFit(
                        fit,
                        how.because(),
                        plan.wishMm(),
                        plan.onRack(),
                        seatX,
                        tipX,
                        tipX + tenon.lengthMm());
        Optional<Bore> capBore = kit.cap().map(cap -> capBore(cap, lengths.visibleWoodMm()));
        Body body = new Body(brief, lengths.visibleWoodMm());
        Optional<Resolution> bad = body.impossible();
        if (bad.isPresent()) {
            return bad.get();
        }
        return new Resolution.Resolved(
                new Handle(
                        brief,
                        lengths,
                        tenon,
                        tangFit,
                        tangBore,
                        capBore,
                        brief.wander(),
                        body.outline(tenon),
                        body.nodes(),
                        reasons));
    }

    private Tenon tenon(Ferrule ferrule) {
        Rules.Tenons rules = brief.rules().tenons();
        double bore = ferrule.bore().least();
        double diameter;
        String because;
        if (brief.choices().tenonDiameterMm().isPresent()) {
            diameter = brief.choices().tenonDiameterMm().getAsDouble();
            because = "your choice";
        } else if (!(brief.stock() instanceof Wood)) {
            diameter = bore - rules.plasticUnderMm();
            because = "smallest ferrule bore less the slip that plastics need";
        } else if (rules.driven()) {
            diameter = bore + rules.drivenOverMm();
            because = "smallest ferrule bore and the pinch of a driven ferrule";
        } else {
            diameter = bore - rules.bondedUnderMm();
            because = "smallest ferrule bore less room for adhesive";
        }
        double inside = ferrule.length().least() - ferrule.lipMm();
        double length =
                brief.choices().tenonLengthMm().orElse(Math.max(0.5, inside - rules.shortMm()));
        reasons.add(new Reason("tenon diameter", because));
        reasons.add(
                new Reason(
                        "tenon length",
                        brief.choices().tenonLengthMm().isPresent()
                                ? "your choice"
                                : "inside of the ferrule less a little, so that the rim closes first"));
        return new Tenon(diameter, length);
    }

    /**
     * Which fit the stock and the tang ask for: pressed where fibres part and grip, else bonded
     * (common practice, no source).
     */
    private Fit suitedFit() {
        Stock stock = brief.stock();
        Tang tang = brief.kit().tang();
        boolean thin = tang instanceof FlatTang flat && isThin(flat, brief.rules());
        return stock.isFibrous() && !thin && !(tang instanceof ThreadedTang)
                ? Fit.PRESSED
                : Fit.BONDED;
    }

    /**
     * Whether a flat tang is too thin to be pressed in a round bore.
     *
     * @param flat the tang
     * @param rules the maker's rules
     * @return true where its thickness is under the stated share of its width
     */
    public static boolean isThin(FlatTang flat, Rules rules) {
        return flat.thickness().mean() < rules.fits().pressedFlatLeast() * flat.width().mean();
    }

    private Reason fitReason() {
        if (brief.choices().fit().isPresent()) {
            return new Reason("fit", "your choice");
        }
        Tang tang = brief.kit().tang();
        String because;
        if (!brief.stock().isFibrous()) {
            because =
                    brief.stock() instanceof Wood
                            ? "too hard or brittle for the fibres to part"
                            : "no fibres to part";
        } else if (tang instanceof FlatTang flat && isThin(flat, brief.rules())) {
            because = "a thin flat tang does not grip in a round bore";
        } else if (tang instanceof ThreadedTang) {
            because = "a thread is bonded in its bore";
        } else {
            because = "fibrous stock: the fibres part and grip";
        }
        return new Reason("fit", because);
    }

    private Bore capBore(EndCap cap, double buttX) {
        Rules.Bores rules = brief.rules().bores();
        double wish = cap.spigotDiameter().greatest() + rules.capOverMm();
        Drill drill =
                brief.choices().capDrillMm().isPresent()
                        ? TangBore.ownedOrNot(brief, brief.choices().capDrillMm().getAsDouble())
                        : TangBore.ownedForHole(brief, wish)
                                .orElseGet(
                                        () ->
                                                TangBore.unowned(
                                                        brief, TangBore.drillMm(brief, wish)));
        double depth =
                brief.choices()
                        .capDepthMm()
                        .orElse(cap.spigotLength().greatest() + rules.capAllowanceMm());
        reasons.add(
                new Reason(
                        "cap drill",
                        brief.choices().capDrillMm().isPresent()
                                ? "your choice"
                                : "next drill over the largest reading of the spigot"));
        return new Bore(Bore.End.BUTT, buttX, List.of(TangBore.step(brief, drill, depth)));
    }
}
