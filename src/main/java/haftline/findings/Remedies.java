package haftline.findings;

import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.handle.PlacedNode;
import haftline.handle.Wander;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.stock.Drill;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * Remedies for findings. Each is tried on the handle before it is named: the changed choices are
 * resolved and figured anew, the finding must be gone, and nothing graver may have come.
 */
public final class Remedies {
    /**
     * Drilled so, a bore wanders least (common practice, no source): centre drill first, remounted
     * between cones.
     */
    private static final Wander CENTRE_DRILL_FIRST = new Wander(0.1, 0.005);

    /** A ferrule wider by more than this is another kit, tenths of mm. */
    private static final int WIDER_TENTHS = 40;

    /** A node further from the thin place than this does little for it, mm. */
    private static final double NEAR = 30;

    /**
     * A cap outside of these multiples of the present one's mass is another kit: from brass to
     * aluminium is about a third.
     */
    private static final double LIGHTEST_CAP_TIMES = 0.3;

    private static final double HEAVIEST_CAP_TIMES = 3;

    private final Finding finding;
    private final Figures figures;
    private final RemedySearch search;
    private final Units units;

    private Remedies(Finding finding, Figures figures, Units units, boolean atACost) {
        this.finding = finding;
        this.figures = figures;
        this.search = new RemedySearch(finding, figures, atACost);
        this.units = units;
    }

    /**
     * The least change that mends a finding.
     *
     * @param finding one of the findings on a handle
     * @param figures the figures of that handle
     * @param units unit of the lengths in the remedy's words
     * @return a remedy that was tried, or empty where no single choice mends it; where each costs
     *     the balance its target, or a stop a warning, one that says so
     */
    public static Optional<Remedy> of(Finding finding, Figures figures, Units units) {
        Optional<Remedy> clean = new Remedies(finding, figures, units, false).find();
        if (clean.isPresent() || finding.gravity() == Gravity.NOTE) {
            return clean;
        }
        return new Remedies(finding, figures, units, true).atACost();
    }

    private Optional<Remedy> atACost() {
        return find().filter(remedy -> remedy.choices().isPresent())
                .flatMap(
                        remedy ->
                                Trial.of(brief().withChoices(remedy.choices().get()))
                                        .map(
                                                trial ->
                                                        new Remedy(
                                                                remedy.choices(),
                                                                remedy.change() + cost(trial),
                                                                remedy.outcome())));
    }

    private String cost(Trial trial) {
        return search.warningsOf(trial).stream()
                .map(now -> Words.message(now, brief().stock(), units))
                .map(
                        text ->
                                "; but then "
                                        + Character.toLowerCase(text.charAt(0))
                                        + text.substring(1))
                .collect(Collectors.joining());
    }

    private Optional<Remedy> find() {
        return switch (finding.code()) {
            case WALL_TOO_THIN, BORE_THROUGH_DETAIL ->
                    thickenNode()
                            .or(this::narrowerDrill)
                            .or(this::drillTruer)
                            .or(this::widerFerrule);
            case BORE_BOTTOM_TOO_NEAR -> thickenNode().or(this::shallower).or(this::longer);
            case BORE_TOO_SHALLOW -> deeper();
            case BORES_MEET -> shallower().or(this::longer);
            case TANG_LONGER_THAN_WOOD -> longer();
            case PRESSED_IN_PLASTIC, PRESSED_WHERE_BONDED -> bonded();
            case SPLIT_INDEX -> widerDrill().or(this::bonded);
            case BORE_LOOSE, BORE_TIGHT, DRILL_NOT_ON_RACK -> ruleDrill();
            case TENON_FIT -> ruleTenonDiameter();
            case SHOULDER_GAP -> ruleTenonLength();
            case CAP_PROUD -> deeperCap();
            case TOO_SLENDER, TOO_THICK -> resizeSwell();
            case LENGTH_FOR_THE_HAND -> relength();
            case BALANCE_OFF_TARGET -> rebalance();
            case BLANK_TOO_SMALL -> resizeSwell();
            default -> Optional.empty();
        };
    }

    /** Raises the free node that needs least, of those near the thin place. */
    private Optional<Remedy> thickenNode() {
        if (finding.place() == Place.TENON || finding.knownX().isEmpty()) {
            return Optional.empty();
        }
        List<PlacedNode> near = new ArrayList<>();
        for (PlacedNode node : figures.handle().nodes()) {
            if (node.isFree() && Math.abs(node.x() - finding.atX()) <= NEAR) {
                near.add(node);
            }
        }
        near.sort(Comparator.comparingDouble(node -> Math.abs(node.x() - finding.atX())));
        Optional<Remedy> best = Optional.empty();
        double leastRaise = Double.POSITIVE_INFINITY;
        for (PlacedNode node : near.subList(0, Math.min(2, near.size()))) {
            double from = 2 * node.radiusMm();
            double to = from + Math.max(8, 4 * (finding.limit() - finding.figure()));
            Optional<RemedySearch.Found> found =
                    search.least(
                            from,
                            to,
                            0.1,
                            mm -> choices().toBuilder().nodeDiameterMm(node.name(), mm).build());
            if (found.isPresent() && found.get().value() - from < leastRaise) {
                leastRaise = found.get().value() - from;
                double wall = worst(found.get().trial());
                best =
                        remedy(
                                found.get(),
                                "Make \""
                                        + node.name()
                                        + "\" "
                                        + length(found.get().value(), 1)
                                        + " at "
                                        + length(node.x(), 1)
                                        + ": wall "
                                        + Say.wall(wall, units),
                                wall);
            }
        }
        return best;
    }

    private double worst(Trial trial) {
        Zone zone =
                finding.place() == Place.CAP
                        ? Zone.CAP
                        : finding.place() == Place.TENON ? Zone.TENON : Zone.BODY;
        Wall wall = trial.figures().wall(zone).orElseThrow();
        return finding.code() == Code.BORE_BOTTOM_TOO_NEAR
                ? wall.shortestWorstMm()
                : wall.worstMm();
    }

    /** The next drills down the rack, as long as they suit the tang. */
    private Optional<Remedy> narrowerDrill() {
        boolean cap = finding.place() == Place.CAP;
        Bore bore = cap ? figures.handle().capBore().orElseThrow() : figures.handle().tangBore();
        double drill = bore.deepest().drillMm();
        for (int tries = 0; tries < 3; tries++) {
            Optional<Drill> next = brief().rack().largestAtMost(drill - 0.01);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            drill = next.get().diameterMm();
            Optional<Remedy> found = withDrill(cap, next.get());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> widerDrill() {
        double drill = figures.handle().tangBore().deepest().drillMm();
        for (int tries = 0; tries < 4; tries++) {
            Optional<Drill> next = brief().rack().smallestAtLeast(drill + 0.01);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            drill = next.get().diameterMm();
            Optional<Trial> trial =
                    search.mending(choices().toBuilder().tangDrillMm(drill).build());
            if (trial.isPresent()) {
                double index = trial.get().figures().splitIndex().orElseThrow().index();
                return Optional.of(
                        new Remedy(
                                Optional.of(trial.get().choices()),
                                "Drill "
                                        + next.get().name()
                                        + ": split index "
                                        + NumberText.fixed(index, 1),
                                index));
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> withDrill(boolean cap, Drill drill) {
        Choices changed = drilled(cap, drill);
        return search.mending(changed)
                .map(
                        trial -> {
                            double wall = worst(trial);
                            return new Remedy(
                                    Optional.of(changed),
                                    "Drill " + drill.name() + ": wall " + Say.wall(wall, units),
                                    wall);
                        });
    }

    private Optional<Remedy> drillTruer() {
        Wander now = figures.handle().wander();
        if (now.slope() <= CENTRE_DRILL_FIRST.slope()) {
            return Optional.empty();
        }
        Wander truer =
                new Wander(
                        Math.min(now.startMm(), CENTRE_DRILL_FIRST.startMm()),
                        CENTRE_DRILL_FIRST.slope());
        return search.mending(choices().toBuilder().wander(truer).build())
                .map(
                        trial -> {
                            double wall = worst(trial);
                            return new Remedy(
                                    Optional.of(trial.choices()),
                                    "Drill on the lathe, centre drill first: wall "
                                            + Say.wall(wall, units),
                                    wall);
                        });
    }

    /**
     * Where nothing but the ferrule limits the tenon, the next wider one that would do; its ring
     * keeps its thickness.
     */
    private Optional<Remedy> widerFerrule() {
        if (finding.place() != Place.TENON) {
            return Optional.empty();
        }
        Kit kit = brief().kit();
        Ferrule ferrule = kit.ferrule();
        for (int tenths = 1; tenths <= WIDER_TENTHS; tenths++) {
            Kit wider = kit.withFerrule(ferrule.widened(tenths / 10.0));
            Optional<Trial> trial = search.mending(brief().withKit(wider));
            if (trial.isPresent()) {
                double wall = worst(trial.get());
                return Optional.of(
                        new Remedy(
                                Optional.empty(),
                                "Take a ferrule with a bore of "
                                        + length(wider.ferrule().bore().least(), 1)
                                        + " or more: wall "
                                        + Say.wall(wall, units),
                                wall));
            }
        }
        return Optional.empty();
    }

    /** The shallowest bore that still takes the tang, or the spigot where that one is at fault. */
    private Optional<Remedy> shallower() {
        double engaged = figures.handle().fit().engagedMm();
        double deepest = figures.handle().tangBore().deepest().depthMm();
        double least = engaged + 0.5;
        if (least >= deepest) {
            return Optional.empty();
        }
        Optional<RemedySearch.Found> found =
                search.least(
                        0,
                        deepest - least,
                        0.5,
                        less -> choices().toBuilder().tangDepthMm(deepest - less).build());
        return found.flatMap(
                f ->
                        remedy(
                                f,
                                "Drill the tang's bore only "
                                        + length(deepest - f.value(), 1)
                                        + " deep",
                                deepest - f.value()));
    }

    /** As deep as the rule would have it for the longest tang. */
    private Optional<Remedy> deeper() {
        double mm = finding.limit() + brief().rules().bores().depthAllowanceMm();
        return search.mending(choices().toBuilder().tangDepthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Drill the tang's bore " + length(mm, 1) + " deep",
                                        mm));
    }

    private Optional<Remedy> longer() {
        double ratio = ratio();
        Optional<RemedySearch.Found> found =
                search.least(
                        ratio, ratio * 2, 0.01, r -> choices().toBuilder().lengthRatio(r).build());
        return found.flatMap(
                f ->
                        remedy(
                                f,
                                "Lengthen to "
                                        + NumberText.fixed(f.value(), 2)
                                        + " × blade, "
                                        + length(
                                                f.trial().figures().handle().lengths().overallMm(),
                                                1),
                                f.value()));
    }

    private Optional<Remedy> bonded() {
        return search.mending(choices().toBuilder().fit(Fit.BONDED).build())
                .map(
                        trial -> {
                            Bore bore = trial.figures().handle().tangBore();
                            return new Remedy(
                                    Optional.of(trial.choices()),
                                    "Bond it in a bore of "
                                            + bore.deepest().drillName()
                                            + " with two-part epoxy",
                                    bore.deepest().diameterMm());
                        });
    }

    /** Leaves the choice of drill to the rule, or takes the next that the maker owns. */
    private Optional<Remedy> ruleDrill() {
        boolean cap = finding.place() == Place.CAP;
        Bore bore = cap ? figures.handle().capBore().orElseThrow() : figures.handle().tangBore();
        double wish = bore.deepest().drillMm();
        Choices open =
                cap
                        ? choices().toBuilder().capDrillByRule().build()
                        : choices().toBuilder().tangDrillByRule().build();
        List<Choices> tries = new ArrayList<>();
        tries.add(open);
        brief().rack().smallestAtLeast(wish).ifPresent(d -> tries.add(drilled(cap, d)));
        brief().rack().largestAtMost(wish).ifPresent(d -> tries.add(drilled(cap, d)));
        for (Choices changed : tries) {
            Optional<Trial> trial = search.mending(changed).filter(this::fits);
            if (trial.isPresent()) {
                var handle = trial.get().figures().handle();
                Bore made = cap ? handle.capBore().orElseThrow() : handle.tangBore();
                return Optional.of(
                        new Remedy(
                                Optional.of(changed),
                                "Drill " + made.deepest().drillName(),
                                made.deepest().diameterMm()));
            }
        }
        return Optional.empty();
    }

    /** A drill that the maker owns is no remedy where it leaves the fit as bad as it was. */
    private boolean fits(Trial trial) {
        return trial.findings().stream()
                .noneMatch(
                        now ->
                                now.place() == finding.place()
                                        && (now.code() == Code.BORE_LOOSE
                                                || now.code() == Code.BORE_TIGHT));
    }

    private Choices drilled(boolean cap, Drill drill) {
        return cap
                ? choices().toBuilder().capDrillMm(drill.diameterMm()).build()
                : choices().toBuilder().tangDrillMm(drill.diameterMm()).build();
    }

    private Optional<Remedy> ruleTenonDiameter() {
        double bore = brief().kit().ferrule().bore().least();
        double sign = finding.subject().equals("driven") ? -1 : 1;
        double clearance = finding.limit() * sign;
        double wish = Math.round((bore - clearance) * 20) / 20.0;
        for (double mm : new double[] {wish, wish - 0.05, wish + 0.05}) {
            Optional<Trial> trial =
                    search.mending(choices().toBuilder().tenonDiameterMm(mm).build());
            if (trial.isPresent()) {
                return Optional.of(
                        new Remedy(
                                Optional.of(trial.get().choices()),
                                "Turn the tenon to " + length(mm, 2),
                                mm));
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> ruleTenonLength() {
        double inside = brief().kit().ferrule().length().least() - brief().kit().ferrule().lipMm();
        double mm = Math.max(0.5, inside - brief().rules().tenons().shortMm());
        return search.mending(choices().toBuilder().tenonLengthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Turn the tenon " + length(mm, 1) + " long",
                                        mm));
    }

    private Optional<Remedy> deeperCap() {
        if (!finding.subject().equals("spigot")) {
            return Optional.empty();
        }
        double mm = finding.limit() + brief().rules().bores().capAllowanceMm();
        return search.mending(choices().toBuilder().capDepthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Drill the cap's bore " + length(mm, 1) + " deep",
                                        mm));
    }

    /** The widest free node moves as little as brings the greatest diameter to its limit. */
    private Optional<Remedy> resizeSwell() {
        PlacedNode widest = null;
        for (PlacedNode node : figures.handle().nodes()) {
            if (node.isFree() && (widest == null || node.radiusMm() > widest.radiusMm())) {
                widest = node;
            }
        }
        if (widest == null) {
            return Optional.empty();
        }
        String name = widest.name();
        double from = 2 * widest.radiusMm();
        boolean grow = finding.code() == Code.TOO_SLENDER;
        DoubleFunction<Choices> change =
                step ->
                        choices().toBuilder()
                                .nodeDiameterMm(name, grow ? from + step : from - step)
                                .build();
        return search.least(0, Math.min(15, from / 2), 0.1, change)
                .flatMap(
                        f -> {
                            double mm = f.trial().choices().nodeDiametersMm().get(name);
                            return remedy(f, "Make \"" + name + "\" " + length(mm, 1), mm);
                        });
    }

    /**
     * Longer or shorter, whichever brings balance or length within its target with the lesser
     * change.
     */
    private Optional<Remedy> relength() {
        double ratio = ratio();
        DoubleFunction<Choices> change = r -> choices().toBuilder().lengthRatio(r).build();
        Optional<RemedySearch.Found> up = search.least(ratio, ratio * 1.5, 0.01, change);
        Optional<RemedySearch.Found> down =
                search.least(
                        0,
                        ratio * 0.5,
                        0.01,
                        less -> choices().toBuilder().lengthRatio(ratio - less).build());
        Optional<RemedySearch.Found> found =
                up.isPresent() && (down.isEmpty() || up.get().value() - ratio <= down.get().value())
                        ? up
                        : down;
        return found.flatMap(
                f -> {
                    double value = f.trial().choices().lengthRatio().orElseThrow();
                    Figures after = f.trial().figures();
                    boolean balance = finding.code() == Code.BALANCE_OFF_TARGET;
                    double outcome =
                            balance
                                    ? after.balance().fromFerruleFaceMm()
                                    : after.handle().lengths().overallMm();
                    return remedy(
                            f,
                            (value > ratio ? "Lengthen to " : "Shorten to ")
                                    + NumberText.fixed(value, 2)
                                    + " × blade: "
                                    + (balance
                                            ? "balances " + Say.fromFace(outcome, units)
                                            : "length " + length(outcome, 1)),
                            outcome);
                });
    }

    /** The length, the cap's mass or either, whichever reach the target by themselves. */
    private Optional<Remedy> rebalance() {
        Optional<Remedy> length = relength();
        Optional<Remedy> cap = recap();
        if (length.isEmpty()) {
            return cap.map(r -> new Remedy(r.choices(), "Take " + r.change(), r.outcome()));
        }
        return length.map(
                r ->
                        new Remedy(
                                r.choices(),
                                r.change() + cap.map(c -> "; or take " + c.change()).orElse(""),
                                r.outcome()));
    }

    /**
     * The cap's mass that just meets the target, from the moments about it: linear, so solved and
     * not searched, then rounded to the safe side and tried.
     */
    private Optional<Remedy> recap() {
        Kit kit = brief().kit();
        if (kit.cap().isEmpty()) {
            return Optional.empty();
        }
        Balance balance = figures.balance();
        Share cap =
                balance.shares().stream()
                        .filter(share -> share.part() == Share.Part.CAP)
                        .findFirst()
                        .orElseThrow();
        double target = finding.limit() + figures.handle().ferruleFaceX();
        double wanted =
                cap.massG() + balance.totalG() * (target - balance.x()) / (cap.x() - target);
        boolean heavier = finding.figure() < finding.limit();
        double tenths = heavier ? Math.ceil(10 * wanted) : Math.floor(10 * wanted);
        double massG = tenths / 10;
        if (massG < LIGHTEST_CAP_TIMES * cap.massG() || massG > HEAVIEST_CAP_TIMES * cap.massG()) {
            return Optional.empty();
        }
        Kit changed = kit.withCap(kit.cap().get().withMassG(massG));
        return search.mending(brief().withKit(changed))
                .map(
                        trial -> {
                            double at = trial.figures().balance().fromFerruleFaceMm();
                            return new Remedy(
                                    Optional.empty(),
                                    "a cap of "
                                            + NumberText.fixed(massG, 1)
                                            + " g in place of "
                                            + NumberText.fixed(cap.massG(), 1)
                                            + " g: balances "
                                            + Say.fromFace(at, units),
                                    at);
                        });
    }

    private static Optional<Remedy> remedy(
            RemedySearch.Found found, String change, double outcome) {
        return Optional.of(new Remedy(Optional.of(found.trial().choices()), change, outcome));
    }

    private Brief brief() {
        return figures.handle().brief();
    }

    private Choices choices() {
        return brief().choices();
    }

    private double ratio() {
        return choices().lengthRatio().orElse(brief().rules().lengths().ratio());
    }

    private String length(double mm, int decimals) {
        return Say.length(mm, decimals, units);
    }
}
