package haftline.set;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.findings.Remedy;
import haftline.findings.Words;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.PlacedNode;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.LengthText;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The search for the least change that brings a piece back into its family: one figure is moved
 * towards the family step by step, and every step is resolved, figured and searched for findings.
 */
final class FamilyRemedy {
    private static final double STEP_MM = 0.1;
    private static final double STEP_SHARE = 0.01;
    private static final double STEP_RATIO = 0.01;

    /** Steps after which no change is small any more: 20 mm. */
    private static final int MOST_STEPS = 200;

    private final Family family;
    private final Family.Stray stray;
    private final Units units;
    private final Figures figures;
    private final Brief brief;
    private final List<Finding> before;

    /** How a figure is changed: from where, in which steps, what is then said. */
    private record Change(
            double from, double step, DoubleFunction<Brief> apply, DoubleFunction<String> words) {}

    FamilyRemedy(Family family, Family.Stray stray, Units units) {
        this.family = family;
        this.stray = stray;
        this.units = units;
        this.figures = family.member(stray.piece()).figures();
        this.brief = figures.handle().brief();
        this.before = Findings.of(figures);
    }

    Optional<Remedy> find() {
        return change().flatMap(this::search);
    }

    /** The first step that is within the family and costs nothing; else the first within it. */
    private Optional<Remedy> search(Change change) {
        double way = stray.finding().figure() > stray.finding().limit() ? -1 : 1;
        Optional<Remedy> atACost = Optional.empty();
        for (int i = 1; i <= MOST_STEPS; i++) {
            double value = round(change.from + way * i * change.step, change.step);
            Optional<Figures> tried = tried(change, value);
            if (tried.isEmpty()) {
                return atACost;
            }
            Optional<Family.Entry> there =
                    family.entryWith(stray.piece(), tried.get(), stray.trait());
            if (there.isEmpty()) {
                // It lost the trait altogether, as a waist goes where the shoulder is narrower.
                return atACost;
            }
            Family.Entry entry = there.get();
            boolean passed = way < 0 ? entry.value() < entry.low() : entry.value() > entry.high();
            if (entry.likeness() != Family.Likeness.APART) {
                Optional<Finding> cost = cost(tried.get());
                if (cost.isEmpty()) {
                    return Optional.of(remedy(change, value, ""));
                }
                if (atACost.isEmpty()) {
                    String then = Words.message(cost.get(), brief.stock(), units);
                    atACost =
                            Optional.of(
                                    remedy(
                                            change,
                                            value,
                                            "but then "
                                                    + Character.toLowerCase(then.charAt(0))
                                                    + then.substring(1)));
                }
            }
            if (passed) {
                return atACost;
            }
        }
        return atACost;
    }

    /** Where it is not a choice that changes, a part must. */
    private Remedy remedy(Change change, double value, String aside) {
        Choices choices = change.apply.apply(value).choices();
        return new Remedy(
                choices.equals(brief.choices()) ? Optional.empty() : Optional.of(choices),
                change.words.apply(value),
                aside,
                value);
    }

    /** To the nearest whole step where the start is none: the number named is the number tried. */
    private static double round(double value, double step) {
        return Math.round(Math.round(value / step) * step * 1e6) / 1e6;
    }

    private Optional<Figures> tried(Change change, double value) {
        try {
            Resolution resolution = Resolve.of(change.apply.apply(value));
            return resolution instanceof Resolution.Resolved resolved
                    ? Optional.of(Figures.of(resolved.handle()))
                    : Optional.empty();
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }

    /** The gravest warning or stop that was not there before. */
    private Optional<Finding> cost(Figures tried) {
        return Findings.of(tried).stream()
                .filter(finding -> finding.gravity() != Gravity.NOTE)
                .filter(
                        finding ->
                                before.stream()
                                        .noneMatch(
                                                was ->
                                                        finding.isAbout(was)
                                                                && finding.gravity()
                                                                                .compareTo(
                                                                                        was
                                                                                                .gravity())
                                                                        >= 0))
                .findFirst();
    }

    private Optional<Change> change() {
        return switch (stray.trait()) {
            case SWELL_DIAMETER -> swell();
            case WAIST_DIAMETER -> node(Trait.WAIST_PLACE.of(figures)).map(this::diameter);
            case SWELL_PLACE -> node(figures.grip().greatestX()).map(this::place);
            case WAIST_PLACE -> node(Trait.WAIST_PLACE.of(figures)).map(this::place);
            case BUTT_DIAMETER -> butt();
            case LENGTH -> length();
            // The ferrule is as it is, and slopes follow from everything else.
            case SHOULDER_DIAMETER, SHOULDER_SLOPE, BUTT_SLOPE -> Optional.empty();
        };
    }

    private Brief with(Choices choices) {
        return brief.withChoices(choices);
    }

    private Optional<Change> swell() {
        if (!brief.choices().nodeDiametersMm().isEmpty() || brief.choices().swellMm().isEmpty()) {
            return node(figures.grip().greatestX()).map(this::diameter);
        }
        return Optional.of(
                new Change(
                        brief.choices().swellMm().getAsDouble(),
                        STEP_MM,
                        mm -> with(brief.choices().toBuilder().swellMm(mm).build()),
                        mm -> "Choose a swell of " + mm(mm)));
    }

    /** The free node that stands at a place, which no rule fixes. */
    private Optional<PlacedNode> node(double x) {
        return figures.handle().nodes().stream()
                .filter(node -> node.isFree() && Math.abs(node.x() - x) < STEP_MM)
                .findFirst();
    }

    private Change diameter(PlacedNode node) {
        return new Change(
                2 * node.radiusMm(),
                STEP_MM,
                mm -> with(brief.choices().toBuilder().nodeDiameterMm(node.name(), mm).build()),
                mm -> "Make \"" + node.name() + "\" " + mm(mm));
    }

    private Change place(PlacedNode node) {
        return new Change(
                node.x() / figures.handle().buttX(),
                STEP_SHARE,
                share -> with(brief.choices().toBuilder().nodePlace(node.name(), share).build()),
                share ->
                        "Put \""
                                + node.name()
                                + "\" at "
                                + NumberText.fixed(share, 2)
                                + " of the visible wood");
    }

    private Optional<Change> butt() {
        Kit kit = brief.kit();
        if (kit.cap().isEmpty()) {
            return Optional.of(
                    new Change(
                            Trait.BUTT_DIAMETER.of(figures),
                            STEP_MM,
                            mm -> with(brief.choices().toBuilder().buttMm(mm).build()),
                            mm -> "Choose a butt of " + mm(mm)));
        }
        EndCap cap = kit.cap().get();
        double head = cap.headDiameter().mean();
        return Optional.of(
                new Change(
                        head,
                        STEP_MM,
                        mm -> brief.withKit(kit.withCap(withHead(cap, mm))),
                        mm -> "Take a cap with a head of " + mm(mm) + " in place of " + mm(head)));
    }

    private static EndCap withHead(EndCap cap, double mm) {
        return new EndCap(
                cap.spigotDiameter(),
                cap.spigotLength(),
                Measured.exactly(mm),
                cap.headThickness(),
                cap.form(),
                cap.material(),
                cap.massG(),
                cap.balanceMm());
    }

    private Optional<Change> length() {
        double ratio = brief.choices().lengthRatio().orElse(brief.rules().lengths().ratio());
        return Optional.of(
                new Change(
                        ratio,
                        STEP_RATIO,
                        r -> with(brief.choices().toBuilder().lengthRatio(r).build()),
                        r ->
                                "Make it "
                                        + NumberText.fixed(r, 2)
                                        + " × blade, "
                                        + mm(r * brief.kit().blade().length().mean())));
    }

    private String mm(double mm) {
        return new LengthText(units).withUnit(mm);
    }
}
