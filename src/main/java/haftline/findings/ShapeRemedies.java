package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import haftline.parts.Kit;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A shape that is too slender, too thick, or wider than its blank. */
final class ShapeRemedies extends RemedyBench {
    /** A handle thickened by more than this is another one, mm on the diameter. */
    private static final double MOST = 15;

    /** Where a shape without a node gets its swell: two thirds back (common practice). */
    private static final double SWELL_AT = 0.64;

    /** A ferrule of a narrower bore than this is none that a handle's tenon goes into, mm. */
    private static final double NARROWEST_BORE = 4;

    ShapeRemedies(Finding finding, Figures figures, RemedySearch search, Units units) {
        super(finding, figures, search, units);
    }

    /** The widest free node; else all of them alike; else the butt, or a swell that is added. */
    Optional<Remedy> thicken() {
        return widestNode(1).or(this::allNodes).or(this::widerButt).or(this::addedSwell);
    }

    /** The widest free node; else all that is thicker than it may be, the metal as well. */
    Optional<Remedy> slim() {
        return widestNode(-1).or(() -> allDownTo(finding.limit(), slimmerMetal()));
    }

    /** The widest free node; else all of the wood that is too wide for the blank. */
    Optional<Remedy> intoTheBlank() {
        if (finding.knownX().isEmpty()) {
            return Optional.empty();
        }
        double tooWide = finding.limit() - finding.figure();
        double widest = 2 * figures.handle().outline().greatest().r();
        return widestNode(-1)
                .or(() -> allDownTo(widest - tooWide, new Metal(brief().kit(), List.of())));
    }

    /** The widest free node moves as little as brings the greatest diameter to its limit. */
    private Optional<Remedy> widestNode(int way) {
        PlacedNode widest = null;
        for (PlacedNode node : free()) {
            if (widest == null || node.radiusMm() > widest.radiusMm()) {
                widest = node;
            }
        }
        if (widest == null) {
            return Optional.empty();
        }
        String name = widest.name();
        double from = 2 * widest.radiusMm();
        return search.least(
                        0,
                        way > 0 ? MOST : Math.min(MOST, from / 2),
                        TENTH,
                        by -> choices().toBuilder().nodeDiameterMm(name, from + way * by).build())
                .flatMap(
                        found -> {
                            double mm = found.trial().choices().nodeDiametersMm().get(name);
                            return remedy(found, "Make \"" + name + "\" " + length(mm, 1), mm);
                        });
    }

    /** All free nodes grow in one proportion, so that the shape keeps its character. */
    private Optional<Remedy> allNodes() {
        if (free().size() < 2) {
            return Optional.empty();
        }
        return search.least(1, 2, 0.01, this::timesAsThick)
                .flatMap(
                        found ->
                                remedy(
                                        found,
                                        "Make " + eachNode(free(), found.trial().choices()),
                                        found.trial().figures().grip().greatestMm()));
    }

    private Choices timesAsThick(double factor) {
        ChoicesBuilder grown = choices().toBuilder();
        for (PlacedNode node : free()) {
            grown.nodeDiameterMm(node.name(), tenths(2 * node.radiusMm() * factor));
        }
        return grown.build();
    }

    /** A plain taper without a cap has its butt to thicken, which is the maker's to choose. */
    private Optional<Remedy> widerButt() {
        if (!free().isEmpty() || brief().kit().cap().isPresent()) {
            return Optional.empty();
        }
        double from = seatMm();
        return search.least(
                        from, from + MOST, TENTH, mm -> choices().toBuilder().buttMm(mm).build())
                .flatMap(
                        found ->
                                remedy(
                                        found,
                                        "Make the butt " + length(found.value(), 1),
                                        found.value()));
    }

    /** A shape without a node to thicken wants one, which the maker adds. */
    private Optional<Remedy> addedSwell() {
        if (!free().isEmpty()) {
            return Optional.empty();
        }
        double mm = tenths(finding.limit() + TENTH / 2);
        Node swell =
                new Node(
                        "swell",
                        new Place.Share(SWELL_AT),
                        new Size.Plain(mm),
                        Join.SMOOTH,
                        OptionalDouble.empty(),
                        true);
        return search.mending(brief().withShape(brief().shape().withNodes(List.of(swell))))
                .map(
                        trial ->
                                new Remedy(
                                        Optional.empty(),
                                        "Give the shape a swell of "
                                                + length(mm, 1)
                                                + ", two thirds back",
                                        mm));
    }

    /** A kit whose metal is no thicker than may be where it meets the wood, and its words. */
    private record Metal(Kit kit, List<String> words) {}

    private Metal slimmerMetal() {
        Kit kit = brief().kit();
        List<String> words = new ArrayList<>();
        double tooThick = 2 * figures.handle().nodes().get(0).radiusMm() - finding.limit();
        if (tooThick > 0 && kit.ferrule().bore().least() - tooThick > NARROWEST_BORE) {
            double outside = kit.ferrule().outside().greatest() - tooThick;
            kit = kit.withFerrule(kit.ferrule().widened(-tooThick));
            words.add(
                    "a ferrule of "
                            + length(Math.floor(10 * outside) / 10, 1)
                            + " or less outside");
        }
        boolean capTooThick = kit.cap().isPresent() && seatMm() > finding.limit();
        if (capTooThick && kit.cap().get().spigotDiameter().greatest() < finding.limit()) {
            kit = kit.withCap(kit.cap().get().withHeadMm(finding.limit()));
            words.add("a cap of " + length(finding.limit(), 1) + " or less");
        }
        return new Metal(kit, words);
    }

    /**
     * Whatever wood is thicker comes down to one diameter. Details may stand over it, so the
     * thickest that will do is looked for.
     */
    private Optional<Remedy> allDownTo(double limitMm, Metal metal) {
        for (long tenths = (long) Math.floor(10 * limitMm + 1e-9); tenths > 5 * limitMm; tenths--) {
            double mm = tenths / 10.0;
            ChoicesBuilder lower = choices().toBuilder();
            List<String> wood = lower(lower, mm);
            if (wood.isEmpty() && metal.words().isEmpty()) {
                return Optional.empty();
            }
            Optional<Trial> trial =
                    search.mending(brief().withKit(metal.kit()).withChoices(lower.build()));
            if (trial.isPresent()) {
                return Optional.of(
                        new Remedy(
                                metal.words().isEmpty()
                                        ? Optional.of(trial.get().choices())
                                        : Optional.empty(),
                                downWords(wood, metal.words(), mm),
                                mm));
            }
        }
        return Optional.empty();
    }

    private List<String> lower(ChoicesBuilder choices, double mm) {
        List<String> wood = new ArrayList<>();
        for (PlacedNode node : free()) {
            if (2 * node.radiusMm() > mm) {
                choices.nodeDiameterMm(node.name(), mm);
                wood.add('"' + node.name() + '"');
            }
        }
        if (brief().kit().cap().isEmpty() && seatMm() > mm) {
            choices.buttMm(mm);
            wood.add("the butt");
        }
        return wood;
    }

    private String downWords(List<String> wood, List<String> metal, double mm) {
        String made = wood.isEmpty() ? "" : "ake " + listed(wood) + " " + length(mm, 1);
        if (metal.isEmpty()) {
            return "M" + made;
        }
        return "Take " + listed(metal) + (wood.isEmpty() ? "" : " and m" + made);
    }

    private double seatMm() {
        List<PlacedNode> nodes = figures.handle().nodes();
        return 2 * nodes.get(nodes.size() - 1).radiusMm();
    }

    private List<PlacedNode> free() {
        return figures.handle().nodes().stream().filter(PlacedNode::isFree).toList();
    }
}
