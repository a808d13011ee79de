package haftline.sheet;

import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.stock.Wood;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is measured of a kit and the rules in force that turn it into drills, depths and a tenon,
 * lettered in the order of reading.
 */
final class KitRules {
    private final Handle handle;
    private final Brief brief;
    private final LengthText lengths;
    private final Rules rules;
    private final Lettered out;

    private KitRules(Handle handle, LengthText lengths) {
        this.handle = handle;
        this.brief = handle.brief();
        this.lengths = lengths;
        this.rules = brief.rules();
        this.out = new Lettered(lengths);
        kit();
    }

    static KitRules of(Handle handle, LengthText lengths) {
        return new KitRules(handle, lengths);
    }

    List<Measure> measures() {
        return List.copyOf(out.measures());
    }

    List<Rule> rules() {
        return List.copyOf(out.rules());
    }

    private void kit() {
        Ferrule ferrule = brief.kit().ferrule();
        double front = handle.ferruleFaceX();
        double half = ferrule.outside().greatest() / 2;
        TangRules tang = new TangRules(handle, out);
        tang.measure();
        String bore =
                out.measure(
                        "ferrule bore, smallest of all readings",
                        ferrule.bore().least(),
                        Spot.across(front * 0.85, ferrule.bore().least() / 2));
        String outside =
                out.measure(
                        "ferrule outside at the wood, largest reading",
                        ferrule.outside().greatest(),
                        Spot.across(front * 0.3, half));
        String ring =
                out.measure("ferrule length", ferrule.length().mean(), Spot.along(front, 0, half));
        double lipMm = ferrule.lipMm();
        String lip =
                lipMm > 0
                        ? out.measure(
                                "ferrule, how thick its closed front is",
                                lipMm,
                                Spot.along(front, front + lipMm, half))
                        : "";
        String seat =
                brief.kit().seatMm() > 0
                        ? out.unseen(
                                "how far the tang seats behind the ferrule's front",
                                brief.kit().seatMm())
                        : "";
        String blade =
                out.unseen("blade, from its seat to its tip", brief.kit().blade().length().mean());
        Optional<CapLetters> cap = brief.kit().cap().map(this::cap);
        String tenon = tenon(bore, ring, lip);
        tang.drills(ring, tenon, seat);
        double shoulder = handle.outline().rAfter(0);
        out.rule(
                "shoulder, diameter",
                outside + ", flush with the ferrule",
                lengths.contour(2 * shoulder),
                Optional.of(Spot.across(0, shoulder)));
        length(blade, ring, cap);
        cap.ifPresent(this::capBore);
    }

    private String tenon(String bore, String ring, String lip) {
        Rules.Tenons tenons = rules.tenons();
        boolean wood = brief.stock() instanceof Wood;
        boolean driven = wood && tenons.driven();
        double under = wood ? tenons.bondedUnderMm() : tenons.plasticUnderMm();
        double over = driven ? tenons.drivenOverMm() : -under;
        boolean chosen = brief.choices().tenonDiameterMm().isPresent();
        double radius = handle.tenon().diameterMm() / 2;
        out.rule(
                "tenon, diameter",
                bore
                        + out.with(over)
                        + (driven ? ", to be driven on" : ", room for adhesive")
                        + Lettered.chosen(chosen),
                chosen
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(brief.kit().ferrule().bore().least() + over),
                lengths.metal(handle.tenon().diameterMm()),
                Optional.of(Spot.across(0.55 * handle.tenonEndX(), radius)));
        return out.rule(
                "tenon, length",
                ring
                        + (lip.isEmpty() ? "" : " − " + lip)
                        + out.with(-tenons.shortMm())
                        + ", so that the rim closes first"
                        + Lettered.chosen(brief.choices().tenonLengthMm().isPresent()),
                lengths.contour(handle.tenon().lengthMm()),
                Optional.of(Spot.along(handle.tenonEndX(), 0, radius)));
    }

    private void length(String blade, String ring, Optional<CapLetters> cap) {
        double ratio = brief.choices().lengthRatio().orElse(rules.lengths().ratio());
        double front = handle.ferruleFaceX();
        String whole =
                out.rule(
                        "handle, ferrule" + (cap.isPresent() ? " and cap" : "") + " included",
                        NumberText.upTo(ratio, 3) + " × " + blade,
                        lengths.contour(handle.lengths().overallMm()),
                        Optional.of(Spot.along(front, front + handle.lengths().overallMm(), 0)));
        out.rule(
                "wood that shows",
                whole + " − " + ring + cap.map(there -> " − " + there.thickness()).orElse(""),
                lengths.contour(handle.lengths().visibleWoodMm()),
                Optional.of(
                        Spot.along(0, handle.buttX(), handle.outline().rBefore(handle.buttX()))));
    }

    private record CapLetters(
            EndCap part, String head, String thickness, String spigot, String length) {}

    private CapLetters cap(EndCap cap) {
        double butt = handle.buttX();
        double thick = cap.headThickness().mean();
        double spigot = cap.spigotDiameter().greatest();
        double length = cap.spigotLength().greatest();
        return new CapLetters(
                cap,
                out.measure(
                        "cap, diameter where it meets the wood",
                        cap.headDiameter().mean(),
                        Spot.across(butt, cap.headDiameter().mean() / 2)),
                out.measure("cap, thickness of its head", thick, Spot.along(butt, butt + thick, 0)),
                out.measure(
                        "cap's spigot, diameter, largest reading",
                        spigot,
                        Spot.across(butt - 0.4 * length, spigot / 2)),
                out.measure(
                        "cap's spigot, length, largest reading",
                        length,
                        Spot.along(butt - length, butt, spigot / 2)));
    }

    private void capBore(CapLetters cap) {
        BoreStep step = handle.capBore().orElseThrow().deepest();
        double over = rules.bores().capOverMm();
        double wobble = 2 * rules.bores().eccentricityMm();
        double butt = handle.buttX();
        out.rule(
                "drill for the cap",
                cap.spigot()
                        + out.with(over)
                        + (wobble == 0 ? "" : out.with(-wobble) + " (the drill wobbles)")
                        + ", the next drill that is not under it"
                        + Lettered.chosen(brief.choices().capDrillMm().isPresent()),
                OptionalDouble.of(cap.part().spigotDiameter().greatest() + over),
                lengths.drill(step.drillMm()),
                Optional.of(Spot.across(butt - 0.8 * step.depthMm(), step.diameterMm() / 2)));
        out.rule(
                "cap's bore, depth from the butt",
                cap.length()
                        + out.with(rules.bores().capAllowanceMm())
                        + Lettered.chosen(brief.choices().capDepthMm().isPresent()),
                lengths.contour(step.depthMm()),
                Optional.of(Spot.along(butt - step.depthMm(), butt, step.diameterMm() / 2)));
        out.rule(
                "butt, diameter",
                cap.head() + ", flush with the cap",
                lengths.contour(2 * handle.outline().rBefore(butt)),
                Optional.empty());
    }
}
