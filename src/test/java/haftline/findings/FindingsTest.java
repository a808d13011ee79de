package haftline.findings;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.handle.Use;
import haftline.measure.Measured;
import haftline.measure.Units;
import haftline.parts.BarbedTang;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.stock.CatalogueException;
import haftline.stock.CatalogueReader;
import haftline.stock.Drill;
import haftline.stock.Rack;
import haftline.stock.Stock;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each finding is found on a handle that has it, at its gravity, and not on a sound one. */
class FindingsTest {
    /**
     * A sound piece: the parts of the worked handle, bonded in cherry, balanced by a light blade;
     * only notes are found.
     */
    private static TestBrief sound() {
        return new TestBrief()
                .blade(blade(24, 30))
                .smooth(0.17, 14.2)
                .smooth(0.62, 23)
                .fit(Fit.BONDED)
                .wander(0.1, 0.005)
                .choose(Choices.builder().lengthRatio(0.95));
    }

    private static Blade blade(double massG, double balance) {
        return new Blade(
                P1.exactly(95),
                24,
                2,
                OptionalDouble.empty(),
                "stainless",
                OptionalDouble.of(massG),
                true,
                OptionalDouble.of(balance));
    }

    private record Case(Code code, Gravity gravity, UnaryOperator<TestBrief> with) {
        @Override
        public String toString() {
            return code + " " + gravity;
        }
    }

    private static Case found(Code code, Gravity gravity, UnaryOperator<TestBrief> with) {
        return new Case(code, gravity, with);
    }

    static Stream<Case> cases() {
        return Stream.of(
                found(
                        Code.WALL_TOO_THIN,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().nodeDiameterMm("node 0", 11.5))),
                found(
                        Code.WALL_TOO_THIN,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().nodeDiameterMm("node 0", 8.5))),
                found(Code.WALL_TOO_THIN, Gravity.WARN, b -> b.ferrule(11.2, 14, 12)),
                found(
                        Code.BORE_THROUGH_DETAIL,
                        Gravity.WARN,
                        b -> b.detail(new Detail.Vee(new Place.FromShoulder(14), 2, 1.5))),
                found(
                        Code.BORE_BOTTOM_TOO_NEAR,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tangDepthMm(85.5))),
                found(
                        Code.BORE_BOTTOM_TOO_NEAR,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().tangDepthMm(87.5))),
                found(
                        Code.BORE_TOO_SHALLOW,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().tangDepthMm(44))),
                found(
                        Code.BORES_MEET,
                        Gravity.WARN,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().tangDepthMm(69))),
                found(
                        Code.BORES_MEET,
                        Gravity.STOP,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().tangDepthMm(82))),
                found(Code.TANG_LONGER_THAN_WOOD, Gravity.STOP, b -> b.tang(P1.round(6, 96))),
                found(Code.TANG_SHORT_OF_WOOD, Gravity.STOP, b -> b.tang(P1.round(6, 0.4))),
                found(
                        Code.SHOULDER_GAP,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tenonLengthMm(12.5))),
                found(Code.SHOULDER_GAP, Gravity.NOTE, b -> b.ferrule(chamfered())),
                found(
                        Code.FERRULE_LOOSE_IN_WINTER,
                        Gravity.WARN,
                        b -> b.tenons(new Rules.Tenons(0.1, 0.05, 0.2, 0.5, true, 0.2))),
                found(Code.FERRULE_OVAL, Gravity.WARN, b -> b.ferrule(oval(0.3))),
                found(
                        Code.TENON_FIT,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tenonDiameterMm(11.98))),
                found(
                        Code.TENON_FIT,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tenonDiameterMm(11.6))),
                found(
                        Code.TENON_FIT,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().tenonDiameterMm(13))),
                found(
                        Code.PRESSED_IN_PLASTIC,
                        Gravity.STOP,
                        b -> b.stock(SampleStock.acrylic()).fit(Fit.PRESSED)),
                found(
                        Code.PRESSED_WHERE_BONDED,
                        Gravity.WARN,
                        b -> b.stock(SampleStock.cocobolo()).fit(Fit.PRESSED)),
                found(
                        Code.PRESSED_WHERE_BONDED,
                        Gravity.WARN,
                        b -> b.tang(flat(7, 2)).fit(Fit.PRESSED)),
                found(
                        Code.SPLIT_INDEX,
                        Gravity.WARN,
                        b ->
                                b.fit(Fit.PRESSED)
                                        .choose(Choices.builder().nodeDiameterMm("node 0", 9.5))),
                found(
                        Code.DRILL_NOT_ON_RACK,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tangDrillMm(6.17))),
                found(
                        Code.DRILL_NOT_ON_RACK,
                        Gravity.WARN,
                        b -> b.fit(Fit.PRESSED).rack(SampleStock.only(4, 5, 7))),
                found(
                        Code.DRILL_NOT_ON_RACK,
                        Gravity.WARN,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().capDrillMm(6.17))),
                found(Code.DRILL_TOO_SHORT, Gravity.WARN, b -> b.rack(shortDrills())),
                found(Code.BORE_DEEP_FOR_DRILL, Gravity.NOTE, b -> b.tang(P1.round(4, 45))),
                found(Code.BORE_LOOSE, Gravity.WARN, b -> b.rack(SampleStock.only(5, 6.7, 8))),
                found(Code.BORE_LOOSE, Gravity.WARN, b -> b.rack(SampleStock.only(5, 7.3, 8))),
                found(
                        Code.BORE_LOOSE,
                        Gravity.WARN,
                        b -> b.fit(Fit.PRESSED).choose(Choices.builder().tangDrillMm(6))),
                found(
                        Code.BORE_LOOSE,
                        Gravity.WARN,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().capDrillMm(7.5))),
                found(
                        Code.BORE_LOOSE,
                        Gravity.WARN,
                        b -> b.tang(tapered()).choose(Choices.builder().tangDrillMm(7.5))),
                found(
                        Code.BORE_LOOSE,
                        Gravity.WARN,
                        b ->
                                b.tang(tapered())
                                        .fit(Fit.PRESSED)
                                        .choose(Choices.builder().tangDrillMm(7.5))),
                found(
                        Code.BORE_LOOSE,
                        Gravity.WARN,
                        b -> b.tang(tapered()).rack(SampleStock.only(6, 9))),
                found(
                        Code.DRILL_NOT_ON_RACK,
                        Gravity.WARN,
                        b ->
                                b.tang(tapered())
                                        .fit(Fit.PRESSED)
                                        .choose(Choices.builder().tangDrillMm(2))),
                found(
                        Code.BORE_TIGHT,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().tangDrillMm(5.9))),
                found(
                        Code.BORE_TIGHT,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().tangDrillMm(6))),
                found(
                        Code.BORE_TIGHT,
                        Gravity.STOP,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().capDrillMm(5.9))),
                found(
                        Code.BORE_TIGHT,
                        Gravity.WARN,
                        b ->
                                b.tang(barbed())
                                        .fit(Fit.PRESSED)
                                        .choose(Choices.builder().tangDrillMm(5.2))),
                found(Code.TANG_WILL_NOT_PASS, Gravity.STOP, b -> b.ferrule(lipped(5.9))),
                found(Code.TANG_WILL_NOT_PASS, Gravity.STOP, b -> b.ferrule(5.9, 8, 12)),
                found(
                        Code.TANG_WILL_NOT_PASS,
                        Gravity.STOP,
                        b -> b.ferrule(lipped(6.5)).tang(flared())),
                found(Code.FLARE_WANTS_COUNTERSINK, Gravity.NOTE, b -> b.tang(flared())),
                found(
                        Code.CAP_PROUD,
                        Gravity.WARN,
                        b -> b.cap(cap(6, 9)).choose(Choices.builder().capDepthMm(8))),
                found(
                        Code.CAP_PROUD,
                        Gravity.WARN,
                        b -> b.cap(cap(6, 9)).butt(new Butt.Rounded(2))),
                found(Code.NO_AIR_PATH, Gravity.NOTE, b -> b),
                found(Code.FLAT_SPOT, Gravity.NOTE, b -> b.smooth(0.64, 14.5)),
                found(
                        Code.TOO_STEEP_TO_COPY,
                        Gravity.NOTE,
                        b -> b.detail(new Detail.Vee(new Place.Share(0.8), 1, 1.2))),
                found(
                        Code.HOLLOW_TIGHTER_THAN_CUTTER,
                        Gravity.NOTE,
                        b -> b.detail(new Detail.Cove(new Place.Share(0.62), 2, 0.9))),
                found(
                        Code.TOO_SLENDER,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().use(Use.POWER))),
                found(
                        Code.TOO_THICK,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().nodeDiameterMm("node 1", 29))),
                found(
                        Code.LENGTH_FOR_THE_HAND,
                        Gravity.NOTE,
                        b -> b.choose(Choices.builder().lengthRatio(1.2))),
                found(Code.BALANCE_OFF_TARGET, Gravity.WARN, b -> b.blade(blade(80, 40))),
                found(
                        Code.BLANK_TOO_SMALL,
                        Gravity.WARN,
                        b -> b.choose(Choices.builder().blankSideMm(25))),
                found(
                        Code.BLANK_TOO_SMALL,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().blankSideMm(20))),
                found(
                        Code.BLANK_TOO_SMALL,
                        Gravity.STOP,
                        b -> b.choose(Choices.builder().blankLengthMm(80))),
                found(Code.READINGS_DISAGREE, Gravity.WARN, b -> b.tang(disagreeing())),
                found(
                        Code.READINGS_DISAGREE,
                        Gravity.WARN,
                        b -> b.tang(lengthRead(0.05, 44.5, 45, 45))),
                found(
                        Code.READING_STANDS_APART,
                        Gravity.WARN,
                        b -> b.tang(lengthRead(0.05, 45, 45.6, 45, 45.05))),
                found(
                        Code.READING_STANDS_APART,
                        Gravity.NOTE,
                        b -> b.tang(lengthRead(0.02, 45, 45.12, 45, 45.01))),
                found(Code.STOCK_IRRITATES, Gravity.NOTE, b -> b.stock(fromCatalogue("acrylic"))),
                found(Code.STOCK_IRRITATES, Gravity.NOTE, b -> b.stock(fromCatalogue("cocobolo"))),
                found(Code.NO_FOOD_CLAIM, Gravity.NOTE, b -> b),
                found(
                        Code.WILL_ROLL,
                        Gravity.NOTE,
                        b -> b.blade(shallowBlade()).ferrule(23, 26, 12)),
                found(Code.FIGURE_MISSING, Gravity.NOTE, b -> b.blade(unweighed())));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void finds(Case one) {
        List<Finding> findings = of(one.with.apply(sound()).brief());

        assertThat(findings)
                .anyMatch(
                        finding -> finding.code() == one.code && finding.gravity() == one.gravity);
    }

    @Test
    void findsNothingButNotesOnASoundPiece() {
        List<Finding> findings = of(sound().brief());

        assertThat(findings).allMatch(finding -> finding.gravity() == Gravity.NOTE);
        assertThat(findings.stream().map(Finding::code))
                .contains(Code.NO_AIR_PATH, Code.NO_FOOD_CLAIM);
    }

    @Test
    void asksForTheLipsHoleWhereItWasNotMeasured() {
        Ferrule known = lipped(7);
        Ferrule unknown =
                new Ferrule(
                        known.bore(),
                        known.outside(),
                        known.outsideLeast(),
                        known.length(),
                        known.lipMm(),
                        OptionalDouble.empty(),
                        known.chamferMm(),
                        known.material(),
                        known.massG());

        assertThat(of(sound().ferrule(unknown).brief()))
                .anyMatch(
                        finding ->
                                finding.code() == Code.FIGURE_MISSING
                                        && finding.subject().contains("lip"));
        assertThat(of(sound().ferrule(known).brief()))
                .noneMatch(finding -> finding.subject().contains("lip"));
    }

    @Test
    void hasACaseForEveryCode() {
        Set<Code> tried =
                cases().map(Case::code)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Code.class)));
        // These have tests of their own; the family is another room's.
        tried.add(Code.NOT_MONOTONE);
        tried.add(Code.OUT_OF_FAMILY);
        tried.add(Code.CANNOT_BE_DRAWN);

        assertThat(tried).containsExactlyInAnyOrder(Code.values());
    }

    /**
     * A wall that the maker's own limit allows is stopped all the same where the stop is higher.
     */
    @Test
    void stopsAWallUnderTheStopWhateverItsOwnLimit() {
        Brief brief =
                sound().walls(new Rules.Walls(0.5, 0.5, 0.5, 0.5, 0.5, 1.5))
                        .choose(Choices.builder().nodeDiameterMm("node 0", 8.5))
                        .brief();

        assertThat(of(brief))
                .anyMatch(
                        finding ->
                                finding.code() == Code.WALL_TOO_THIN
                                        && finding.gravity() == Gravity.STOP
                                        && finding.limit() == 1.5);
    }

    /** A flat bottom 0.3 mm before a deep sunk band, and a waist that alone would only warn. */
    @Test
    void tellsABottomThatStopsBesideAWallThatWarns() {
        Drill flat = Drill.of(6.1, "6.1 flat").withPointAngleDeg(180);
        Brief brief =
                sound().rack(Rack.of(List.of(flat)))
                        .detail(new Detail.Fillet(new Place.FromShoulder(38.5), 2, -6))
                        .choose(
                                Choices.builder()
                                        .nodeDiameterMm("node 0", 11.5)
                                        .tangDepthMm(11.5 + 37.2))
                        .brief();

        assertThat(of(brief))
                .anyMatch(
                        finding ->
                                finding.code() == Code.WALL_TOO_THIN
                                        && finding.gravity() == Gravity.WARN)
                .anyMatch(
                        finding ->
                                finding.code() == Code.BORE_BOTTOM_TOO_NEAR
                                        && finding.gravity() == Gravity.STOP
                                        && Math.abs(finding.atX() - 37.5) < 1e-9);
    }

    @Test
    void theButtOfAPieceWithoutCapIsBody() {
        Brief brief = sound().choose(Choices.builder().tangDepthMm(87.5)).brief();

        assertThat(of(brief))
                .filteredOn(finding -> finding.code() == Code.BORE_BOTTOM_TOO_NEAR)
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.place()).isEqualTo(haftline.findings.Place.BODY);
                            assertThat(finding.subject()).isEqualTo("butt");
                        });
    }

    @Test
    void namesTheDrillThatIsMissingAndNotTheOneThatIsThere() {
        // 6.1 mm is there for the tang; what the flare of 8 mm wants is not.
        Brief brief = sound().tang(flared()).rack(SampleStock.only(6.1)).brief();

        assertThat(of(brief))
                .filteredOn(finding -> finding.code() == Code.DRILL_NOT_ON_RACK)
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.figure()).isGreaterThan(7);
                            assertThat(Words.message(finding, brief.stock(), Units.MM))
                                    .contains("to open the mouth");
                        });
    }

    @Test
    void saysInWordsWhatANegativeWallOrTenonMeans() {
        assertThat(told(Code.WALL_TOO_THIN, haftline.findings.Place.CAP, 79.36, -3.65, 1.5, ""))
                .isEqualTo(
                        "The cap's bore breaks out of the wood at 79.4 mm by 3.7 mm at the worst"
                                + " wander, limit 1.5 mm of wall");
        assertThat(told(Code.WALL_TOO_THIN, haftline.findings.Place.TENON, -0.5, 2.36, 2.5, ""))
                .isEqualTo(
                        "Wall 2.3 mm on the tenon 0.5 mm in front of the shoulder at the worst"
                                + " wander, limit 2.5 mm");
        assertThat(told(Code.TENON_FIT, haftline.findings.Place.TENON, 0, -1.1, 0.05, "bonded"))
                .startsWith("The tenon is 1.10 mm wider than the ferrule's smallest bore");
        assertThat(
                        told(
                                Code.BORE_BOTTOM_TOO_NEAR,
                                haftline.findings.Place.CAP,
                                105,
                                -31.36,
                                1.5,
                                "butt"))
                .isEqualTo("The bore comes out of the butt by 31.4 mm");
    }

    /** A figure that misses its limit by less than its last decimal is told more finely. */
    @Test
    void tellsAFigureFromItsLimit() {
        assertThat(told(Code.BALANCE_OFF_TARGET, haftline.findings.Place.PIECE, 3, 15.02, 15, ""))
                .isEqualTo(
                        "It balances 15.02 mm behind the ferrule's front face; the target ends at"
                                + " 15.00 mm");
        assertThat(
                        told(
                                Code.LENGTH_FOR_THE_HAND,
                                haftline.findings.Place.PIECE,
                                Double.NaN,
                                99.6,
                                100,
                                "common practice"))
                .contains("99.6 mm to hold")
                .contains("at least 100.0 mm");
    }

    private static String told(
            Code code,
            haftline.findings.Place place,
            double x,
            double figure,
            double limit,
            String subject) {
        return Words.message(
                Finding.mm(code, Gravity.WARN, place, x, figure, limit, subject),
                SampleStock.cherry(),
                Units.MM);
    }

    @Test
    void readingsThatDifferByJustTheLimitAgree() {
        Measured apart = Measured.of(List.of(5.0, 5.15), 0.05);
        Brief brief =
                sound().tang(
                                new RoundTang(
                                        apart,
                                        P1.exactly(45),
                                        OptionalDouble.empty(),
                                        Optional.empty()))
                        .brief();

        assertThat(apart.spread()).isGreaterThan(0.15);
        assertThat(of(brief)).noneMatch(finding -> finding.code() == Code.READINGS_DISAGREE);
    }

    @Test
    void findsATurnWhereARunWithoutOneWasAsked() {
        Brief sound = sound().brief();
        List<Node> nodes =
                List.of(node("waist", 0.2, 14), node("rise", 0.4, 13.5), node("swell", 0.62, 23));
        Shape shape =
                new Shape(
                        "run",
                        "",
                        OptionalDouble.empty(),
                        nodes,
                        OptionalDouble.empty(),
                        List.of(),
                        List.of(new Shape.Run("waist", "swell")),
                        new Butt.Square(),
                        0);
        Brief turned =
                new Brief(
                        sound.name(),
                        sound.kit(),
                        sound.metals(),
                        sound.stock(),
                        sound.adhesive(),
                        shape,
                        sound.rules(),
                        sound.rack(),
                        sound.choices());

        assertThat(of(turned))
                .anyMatch(
                        finding ->
                                finding.code() == Code.NOT_MONOTONE
                                        && finding.subject().equals("rise"));
        Choices straight = turned.choices().toBuilder().nodeDiameterMm("rise", 17).build();
        assertThat(of(turned.withChoices(straight)))
                .noneMatch(finding -> finding.code() == Code.NOT_MONOTONE);
    }

    @Test
    void saysWhyNothingCanBeDrawn() {
        Brief brief = sound().choose(Choices.builder().lengthRatio(0.2)).brief();
        Resolution resolution = Resolve.of(brief);

        assertThat(resolution).isInstanceOf(Resolution.Impossible.class);
        List<Finding> findings = Findings.of((Resolution.Impossible) resolution);
        assertThat(findings)
                .singleElement()
                .satisfies(finding -> assertThat(finding.gravity()).isEqualTo(Gravity.STOP));
        assertThat(Words.message(findings.get(0), brief.stock(), Units.MM))
                .contains("make the handle longer: 7.0 mm, at least 10.0 mm");
    }

    @Test
    void ordersByGravity() {
        RandomHandles random = RandomHandles.reckless(20261125);
        for (int i = 0; i < 200; i++) {
            List<Gravity> gravities =
                    Findings.of(Figures.of(random.next())).stream().map(Finding::gravity).toList();
            assertThat(gravities).isSorted();
        }
    }

    @Test
    void saysEveryFindingInWordsWithUnits() {
        RandomHandles random = RandomHandles.reckless(7);
        for (int i = 0; i < 300; i++) {
            Handle handle = random.next();
            for (Finding finding : Findings.of(Figures.of(handle))) {
                for (Units units : Units.values()) {
                    String text = Words.message(finding, handle.brief().stock(), units);
                    assertThat(text)
                            .doesNotContain("NaN")
                            .doesNotContain("Infinity")
                            .doesNotEndWith(".")
                            .hasSizeGreaterThan(15);
                    if (units == Units.INCH) {
                        assertThat(text).doesNotContain(" mm,").doesNotEndWith(" mm");
                    }
                }
                assertThat(WhoseRule.of(finding, handle.brief().stock())).isNotBlank();
            }
        }
    }

    @Test
    void neverCallsAWallThickerThanItIs() {
        Finding wall =
                Finding.mm(
                        Code.WALL_TOO_THIN,
                        Gravity.WARN,
                        haftline.findings.Place.BODY,
                        20,
                        2.99,
                        3.0,
                        "");

        assertThat(Words.message(wall, SampleStock.cherry(), Units.MM))
                .contains("Wall 2.9 mm")
                .contains("limit 3.0 mm");
    }

    private static List<Finding> of(Brief brief) {
        return Findings.of(Figures.of(P1.handle(brief)));
    }

    private static Node node(String name, double share, double diameter) {
        return new Node(
                name,
                new haftline.shape.Place.Share(share),
                new Size.Plain(diameter),
                Join.SMOOTH,
                OptionalDouble.empty(),
                false);
    }

    private static EndCap cap(double spigot, double length) {
        return new EndCap(
                P1.exactly(spigot),
                P1.exactly(length),
                P1.exactly(14),
                P1.exactly(3),
                EndCap.Form.FLAT,
                "brass",
                OptionalDouble.of(4),
                OptionalDouble.empty());
    }

    private static Stock fromCatalogue(String key) {
        try {
            return CatalogueReader.starter().stock().find(key).orElseThrow();
        } catch (CatalogueException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Tang flat(double width, double thickness) {
        return new FlatTang(
                P1.exactly(width),
                P1.exactly(thickness),
                P1.exactly(45),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Tang barbed() {
        return new BarbedTang(
                P1.exactly(5.5),
                P1.exactly(6.2),
                P1.exactly(45),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Tang tapered() {
        return new TaperedTang(
                P1.exactly(6.5),
                P1.exactly(5),
                P1.exactly(45),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Tang flared() {
        return new RoundTang(
                P1.exactly(6),
                P1.exactly(45),
                OptionalDouble.empty(),
                Optional.of(new Flare(P1.exactly(8), P1.exactly(3))));
    }

    private static Tang disagreeing() {
        return new RoundTang(
                Measured.of(List.of(5.8, 6.0, 6.05), 0.05),
                P1.exactly(45),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Tang lengthRead(double resolution, double... readings) {
        return new RoundTang(
                P1.exactly(6),
                Measured.of(DoubleStream.of(readings).boxed().toList(), resolution),
                OptionalDouble.empty(),
                Optional.empty());
    }

    @Test
    void namesTheReadingThatStandsApart() {
        Brief brief = sound().tang(lengthRead(0.05, 45.0, 45.6, 45.0, 45.05)).brief();
        Finding finding =
                of(brief).stream()
                        .filter(each -> each.code() == Code.READING_STANDS_APART)
                        .findFirst()
                        .orElseThrow();

        assertThat(Words.message(finding, brief.stock(), Units.MM))
                .isEqualTo(
                        "Reading 2 of 4 of the tang length, 45.60 mm, stands apart from the others,"
                                + " which are 45.02 mm on the mean: take it again, or measure every"
                                + " part");
        assertThat(Words.message(finding, brief.stock(), Units.INCH)).contains(", 1.7953 in,");
        assertThat(WhoseRule.of(finding, brief.stock())).contains("Grubbs", "1.3.5.17.1");
    }

    /** A rule read to 0.2 mm may well differ by 0.4. */
    @Test
    void stepsOfACoarseTool_areNoDisagreement() {
        assertThat(of(sound().tang(lengthRead(0.2, 45.0, 45.4, 45.2)).brief()))
                .noneMatch(each -> each.code() == Code.READINGS_DISAGREE);
        assertThat(of(sound().tang(lengthRead(0.2, 45.0, 45.6, 45.2)).brief()))
                .anyMatch(each -> each.code() == Code.READINGS_DISAGREE);
    }

    private static Ferrule lipped(double hole) {
        return new Ferrule(
                P1.exactly(12),
                P1.exactly(14),
                P1.exactly(14),
                P1.exactly(12),
                1,
                OptionalDouble.of(hole),
                0,
                "brass",
                OptionalDouble.empty());
    }

    private static Ferrule chamfered() {
        return new Ferrule(
                P1.exactly(12),
                P1.exactly(14),
                P1.exactly(14),
                P1.exactly(12),
                0,
                OptionalDouble.empty(),
                0.4,
                "brass",
                OptionalDouble.empty());
    }

    private static Ferrule oval(double by) {
        return new Ferrule(
                P1.exactly(12),
                P1.exactly(14),
                P1.exactly(14 - by),
                P1.exactly(12),
                0,
                OptionalDouble.empty(),
                0,
                "brass",
                OptionalDouble.empty());
    }

    private static Blade shallowBlade() {
        return new Blade(
                P1.exactly(95),
                6,
                6,
                OptionalDouble.of(2),
                "stainless",
                OptionalDouble.of(10),
                true,
                OptionalDouble.of(5));
    }

    private static Blade unweighed() {
        return new Blade(
                P1.exactly(95),
                24,
                2,
                OptionalDouble.empty(),
                "stainless",
                OptionalDouble.empty(),
                true,
                OptionalDouble.empty());
    }

    private static Rack shortDrills() {
        return Rack.of(
                Arrays.stream(new double[] {5.5, 6.1, 6.2})
                        .mapToObj(d -> Drill.of(d, d + " stub").withFluteLengthMm(28))
                        .toList());
    }
}
