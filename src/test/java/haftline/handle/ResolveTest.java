package haftline.handle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.measure.Measured;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResolveTest {
    private static Resolution.Impossible impossible(TestBrief brief) {
        Resolution resolution = Resolve.of(brief.brief());
        assertThat(resolution).isInstanceOf(Resolution.Impossible.class);
        return (Resolution.Impossible) resolution;
    }

    private static Ferrule ferrule(Measured bore, double outside, double length, double lip) {
        return new Ferrule(
                bore,
                P1.exactly(outside),
                P1.exactly(outside),
                P1.exactly(length),
                lip,
                OptionalDouble.empty(),
                0,
                "brass",
                OptionalDouble.empty());
    }

    private static EndCap cap(double spigot, double length) {
        return new EndCap(
                P1.exactly(spigot),
                P1.exactly(length),
                P1.exactly(16),
                P1.exactly(3),
                EndCap.Form.FLAT,
                "brass",
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Ferrule 12, tenon 11.5, tang 45: engaged 44.5; a bore of 47 mm ends at x = 35.5, its point at
     * 37.36.
     */
    @Test
    void tangInTheWood_asReckonedBeforehand() {
        Handle handle =
                new TestBrief().choose(Choices.builder().tangDepthMm(47).tangDrillMm(6.2)).handle();
        assertThat(handle.tenon().lengthMm()).isEqualTo(11.5);
        assertThat(handle.fit().engagedMm()).isEqualTo(44.5);
        assertThat(handle.fit().tipX()).isEqualTo(33);
        Bore bore = handle.tangBore();
        assertThat(bore.xAt(bore.deepest().depthMm())).isEqualTo(35.5);
        assertThat(bore.xAt(bore.reachMm())).isCloseTo(37.36, within(0.005));
    }

    /** Full diameter to engaged + 2 mm. */
    @Test
    void depth_isTwoOverTheEngagedTang() {
        Handle handle = new TestBrief().handle();
        assertThat(handle.tangBore().deepest().depthMm()).isCloseTo(46.5, within(1e-12));
    }

    @Test
    void tangSeatedInsideTheFerrule_engagesMore() {
        Handle handle = new TestBrief().seatMm(1.5).handle();
        assertThat(handle.fit().seatX()).isEqualTo(-10.5);
        assertThat(handle.fit().tipX()).isEqualTo(34.5);
        assertThat(handle.fit().engagedMm()).isEqualTo(46);
    }

    /** W = L - F - cap; L = ratio x blade. */
    @Test
    void lengths_followTheBlade() {
        Handle handle =
                new TestBrief().cap(cap(6, 8)).choose(Choices.builder().lengthRatio(1.1)).handle();
        assertThat(handle.lengths().overallMm()).isCloseTo(132, within(1e-12));
        assertThat(handle.lengths().visibleWoodMm()).isCloseTo(132 - 12 - 3, within(1e-12));
        assertThat(handle.lengths().turnedWoodMm()).isCloseTo(117 + 11.5, within(1e-12));
        assertThat(handle.outline().startX()).isEqualTo(-11.5);
        assertThat(handle.outline().endX()).isCloseTo(117, within(1e-12));
    }

    /** Common practice: bonded in wood 0.10 under, driven 0.05 over, plastics 0.20 under. */
    @Test
    void tenonDiameter_goesByTheSmallestFerruleBore() {
        TestBrief brief =
                new TestBrief()
                        .ferrule(ferrule(Measured.of(List.of(12.1, 11.9, 12.0), 0.05), 14, 12, 0));
        assertThat(brief.handle().tenon().diameterMm()).isCloseTo(11.8, within(1e-12));
        assertThat(brief.stock(SampleStock.acrylic()).handle().tenon().diameterMm())
                .isCloseTo(11.7, within(1e-12));
        Rules.Tenons driven = new Rules.Tenons(0.10, 0.05, 0.20, 0.5, true, 0.20);
        assertThat(brief.stock(SampleStock.cherry()).tenons(driven).handle().tenon().diameterMm())
                .isCloseTo(11.95, within(1e-12));
        assertThat(
                        brief.choose(Choices.builder().tenonDiameterMm(11))
                                .handle()
                                .tenon()
                                .diameterMm())
                .isEqualTo(11);
    }

    /** 0.5 mm short of a closed ferrule's inside. */
    @Test
    void tenonLength_leavesTheRimToClose() {
        Handle handle = new TestBrief().ferrule(ferrule(P1.exactly(12), 14, 12, 1.5)).handle();
        assertThat(handle.tenon().lengthMm()).isCloseTo(12 - 1.5 - 0.5, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"cherry, PRESSED", "acrylic, BONDED", "cocobolo, BONDED"})
    void fit_followsTheStock(String stock, Fit fit) {
        Handle handle =
                new TestBrief()
                        .stock(
                                switch (stock) {
                                    case "cherry" -> SampleStock.cherry();
                                    case "acrylic" -> SampleStock.acrylic();
                                    default -> SampleStock.cocobolo();
                                })
                        .handle();
        assertThat(handle.fit().fit()).isEqualTo(fit);
        assertThat(handle.reasons()).extracting(Reason::subject).contains("fit", "length");
    }

    @Test
    void makersFit_overrulesTheStock() {
        Handle handle = new TestBrief().stock(SampleStock.acrylic()).fit(Fit.PRESSED).handle();
        assertThat(handle.fit().fit()).isEqualTo(Fit.PRESSED);
        assertThat(handle.fit().because()).isEqualTo("your choice");
    }

    /** Spigot 6.0 x 8: 0.1 over, 1 mm deeper. */
    @Test
    void capsBore_isOverItsSpigot() {
        Bore bore = new TestBrief().cap(cap(6, 8)).handle().capBore().orElseThrow();
        assertThat(bore.deepest().drillMm()).isEqualTo(6.1);
        assertThat(bore.deepest().depthMm()).isEqualTo(9);
        assertThat(bore.end()).isEqualTo(Bore.End.BUTT);
        assertThat(bore.faceX()).isEqualTo(105);
        // 3.2 + 0.1 rounds up in binary.
        assertThat(
                        new TestBrief()
                                .cap(cap(3.2, 8))
                                .handle()
                                .capBore()
                                .orElseThrow()
                                .deepest()
                                .drillMm())
                .isEqualTo(3.3);
        assertThat(new TestBrief().handle().capBore()).isEmpty();
    }

    @Test
    void ends_areFixedByTheParts() {
        Handle handle = new TestBrief().cap(cap(6, 8)).shadowLineMm(0.5).smooth(0.5, 22).handle();
        List<PlacedNode> nodes = handle.nodes();
        assertThat(nodes).hasSize(3);
        assertThat(nodes.get(0).radiusMm()).isEqualTo(7.5);
        assertThat(nodes.get(0).isFree()).isFalse();
        assertThat(nodes.get(0).fixedBy()).contains("ferrule");
        assertThat(nodes.get(1).isFree()).isTrue();
        assertThat(nodes.get(1).x()).isEqualTo(52.5);
        assertThat(nodes.get(2).radiusMm()).isEqualTo(8);
        assertThat(nodes.get(2).fixedBy()).contains("cap");
        assertThat(handle.outline().greatest().r()).isCloseTo(11, within(1e-12));
    }

    @Test
    void sizes_followTheirReferences() {
        Shape shape =
                new Shape(
                        "references",
                        "",
                        OptionalDouble.empty(),
                        List.of(
                                times("neck", 0.1, 0.9, Reference.FERRULE),
                                times("swell", 0.6, 1, Reference.SWELL),
                                times("tail", 0.9, 1.2, Reference.SEAT)),
                        OptionalDouble.empty(),
                        List.of(),
                        List.of(),
                        new Butt.Square(),
                        0);
        Brief plain = new TestBrief().choose(Choices.builder().swellMm(25).buttMm(15)).brief();
        Handle handle =
                P1.handle(
                        new Brief(
                                "piece",
                                plain.kit(),
                                plain.metals(),
                                plain.stock(),
                                plain.adhesive(),
                                shape,
                                plain.rules(),
                                plain.rack(),
                                plain.choices()));
        assertThat(handle.nodes())
                .extracting(PlacedNode::radiusMm)
                .containsExactly(7.0, 0.9 * 7, 12.5, 1.2 * 7.5, 7.5);
    }

    private static Node times(String name, double share, double factor, Reference reference) {
        return new Node(
                name,
                new Place.Share(share),
                new Size.Times(factor, reference),
                Join.SMOOTH,
                OptionalDouble.empty(),
                false);
    }

    @Test
    void makersNodes_overruleTheShape() {
        Handle handle =
                new TestBrief()
                        .smooth(0.5, 22)
                        .choose(
                                Choices.builder()
                                        .nodeDiameterMm("node 0", 24)
                                        .nodePlace("node 0", 0.6))
                        .handle();
        assertThat(handle.nodes().get(1).radiusMm()).isEqualTo(12);
        assertThat(handle.nodes().get(1).x()).isCloseTo(0.6 * handle.buttX(), within(1e-12));
    }

    @Test
    void noWoodLeft() {
        Resolution.Impossible problem =
                impossible(new TestBrief().choose(Choices.builder().lengthRatio(0.15)));
        assertThat(problem.code()).isEqualTo("no-wood-left");
        assertThat(problem.figure()).isCloseTo(6, within(1e-12));
    }

    @Test
    void nodesOutOfOrder() {
        Resolution.Impossible problem = impossible(new TestBrief().smooth(0.5, 20).smooth(0.4, 18));
        assertThat(problem.code()).isEqualTo("nodes-out-of-order");
        assertThat(problem.message()).contains("node 1").contains("node 0");
    }

    @Test
    void detailPastTheEnd() {
        Resolution.Impossible problem =
                impossible(
                        new TestBrief().detail(new Detail.Bead(new Place.FromShoulder(1), 4, 1)));
        assertThat(problem.code()).isEqualTo("detail-does-not-fit");
        assertThat(problem.figure()).isCloseTo(1, within(1e-12));
        assertThat(problem.message()).contains("bead");
    }

    @Test
    void grooveThroughTheAxis() {
        Resolution.Impossible problem =
                impossible(new TestBrief().detail(new Detail.Vee(new Place.Share(0.5), 10, 7)));
        assertThat(problem.code()).isEqualTo("detail-does-not-fit");
    }

    @Test
    void buttFormThickerThanTheButt() {
        Resolution.Impossible problem = impossible(new TestBrief().butt(new Butt.Rounded(8)));
        assertThat(problem.code()).isEqualTo("butt-too-small");
    }

    /** Each butt form ends where and how it says, and meets the body. */
    @Test
    void buttForms() {
        Handle chamfered = new TestBrief().butt(new Butt.Chamfered(2)).handle();
        assertThat(chamfered.outline().rBefore(105 + 3)).isEqualTo(5);
        assertThat(chamfered.outline().r(chamfered.buttX() - 2)).isEqualTo(7);
        Handle rounded = new TestBrief().butt(new Butt.Rounded(3)).handle();
        double x = rounded.buttX();
        assertThat(rounded.outline().rBefore(x)).isCloseTo(4, within(1e-12));
        // A quarter circle about (x - 3, 4).
        assertThat(rounded.outline().r(x - 1.5)).isCloseTo(4 + Math.sqrt(9 - 2.25), within(1e-9));
        Handle domed = new TestBrief().butt(new Butt.Domed(6)).handle();
        assertThat(domed.outline().rBefore(domed.buttX())).isCloseTo(0, within(1e-9));
        assertThat(domed.outline().r(domed.buttX() - 3))
                .isCloseTo(7 * Math.sqrt(1 - 0.25), within(1e-9));
    }

    /** Heights and depths of details stand as they are given, on a plain cylinder of radius 7. */
    @Test
    void details_standAsHighAsTheySay() {
        Place place = new Place.FromShoulder(50);
        assertThat(r(new Detail.Bead(place, 6, 1.5))).isCloseTo(8.5, within(1e-9));
        assertThat(r(new Detail.Cove(place, 6, 1.5))).isCloseTo(5.5, within(1e-9));
        assertThat(r(new Detail.Vee(place, 2, 1))).isCloseTo(6, within(1e-9));
        assertThat(r(new Detail.BurntLine(place, 0.5, 0.3))).isCloseTo(6.7, within(1e-9));
        assertThat(r(new Detail.Fillet(place, 3, 0.5))).isCloseTo(7.5, within(1e-9));
        assertThat(r(new Detail.Fillet(place, 3, -0.5))).isCloseTo(6.5, within(1e-9));
        assertThat(r(new Detail.Flat(place, 3))).isCloseTo(7, within(1e-9));
    }

    private static double r(Detail detail) {
        return new TestBrief().detail(detail).handle().outline().r(50);
    }

    @Test
    void sameBrief_sameHandle() {
        Handle one = P1.handle(P1.brief());
        Handle other = P1.handle(P1.brief());
        assertThat(one.outline()).isEqualTo(other.outline());
        assertThat(one.tangBore()).isEqualTo(other.tangBore());
        assertThat(one.nodes()).isEqualTo(other.nodes());
        assertThat(one.reasons()).isEqualTo(other.reasons());
    }
}
