package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.CircularArc;
import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.curve.StraightLine;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class GaugeCardTest {
    private static final GaugeRules RULES = GaugeRules.COMMON_PRACTICE;

    @Test
    void edgeIsTheDesignFromReliefToButt_starterShapes() throws Exception {
        for (Workpiece work : StarterWork.everyShape()) {
            Card card = card(work, GaugeCard.Gauge.PROFILE);
            int held = 0;
            for (Stroke stroke : card.outline().strokes()) {
                for (double share : new double[] {0.1, 0.5, 0.9}) {
                    Spot spot = stroke.at(share);
                    boolean profile =
                            spot.x() > 1.001
                                    && spot.x() < work.buttX() - 1e-6
                                    // Inside the waste at the butt nothing is gauged.
                                    && (spot.x() < work.seatX()
                                            || spot.y() > NegativeEdge.WASTE_MM + 1e-6)
                                    && spot.y() <= work.body().greatest().r() + 1e-3;
                    if (profile) {
                        double off =
                                NearestDistance.ofPoint(work.body(), spot.x(), spot.y(), true)
                                        .distance();
                        assertThat(off).as("%s at %s", work.name(), spot).isLessThan(0.0101);
                        held++;
                    }
                }
            }
            assertThat(held).as(work.name()).isGreaterThan(5);
            assertThat(Flattened.areValid(List.of(card.outline()))).as(work.name()).isTrue();
            assertThat(card.findings()).isEmpty();
        }
    }

    @Test
    void bearsOnTheFerrulesFrontFaceAndStandsClearOfItsRim() throws Exception {
        Workpiece work = StarterWork.demo().get(0);
        Card card = card(work, GaugeCard.Gauge.PROFILE);
        double face = -work.ferruleLengthMm();
        double r = work.ferruleDiameterMm() / 2;
        // The face itself, below the ferrule's outside.
        assertThat(card.outline().distance(new Spot(face, r - 1))).isLessThan(1e-9);
        // Half a millimetre over the ferrule, two of relief where two faces meet.
        assertThat(card.outline().distance(new Spot(-4, r))).isCloseTo(0.5, within(1e-9));
        assertThat(covers(card, new Spot(face + 1, r + 1.4))).isFalse();
        assertThat(covers(card, new Spot(0, r + 1.2))).isFalse();
        assertThat(covers(card, new Spot(face + 3, r + 0.6))).isTrue();
    }

    @Test
    void bearsOnTheBareShoulderWhereAsked() throws Exception {
        Workpiece work = StarterWork.demo().get(0);
        Card card =
                GaugeCard.of(
                        work,
                        List.of(GaugeCard.Gauge.PROFILE),
                        RULES.withRegister(GaugeRules.Register.SHOULDER));
        double between = (work.body().rAfter(0) + work.tenonDiameterMm() / 2) / 2;
        assertThat(card.outline().distance(new Spot(0, between + 0.2))).isLessThan(1e-9);
        Workpiece low =
                new Workpiece(
                        "low",
                        "",
                        Outline.of(StraightLine.level(0, 60, 6)),
                        60,
                        10,
                        13,
                        11.5,
                        9,
                        List.of(),
                        false);
        Card poor =
                GaugeCard.of(
                        low,
                        List.of(GaugeCard.Gauge.PROFILE),
                        RULES.withRegister(GaugeRules.Register.SHOULDER));
        assertThat(poor.findings())
                .extracting(TemplateFinding::kind)
                .containsExactly(TemplateFinding.Kind.SHOULDER_TOO_LOW);
    }

    @Test
    void slotsAreAsWideAsTheDiametersAndTheTenonsLimits() throws Exception {
        for (Workpiece work : StarterWork.demo()) {
            Card card = card(work, GaugeCard.Gauge.SLOTS);
            List<Double> widths = new ArrayList<>();
            for (Stroke stroke : card.outline().strokes()) {
                // Half circles are the bottoms of slots.
                if (Math.abs(stroke.bulge()) == 1) {
                    widths.add(stroke.start().distance(stroke.end()));
                }
            }
            widths.sort(null);
            List<Double> expected = new ArrayList<>();
            for (GaugeStation station : work.stations()) {
                double d = station.diameterMm();
                if (station.isKey() && expected.stream().noneMatch(e -> Math.abs(e - d) < 0.15)) {
                    expected.add(d);
                }
            }
            assertThat(widths).as(work.name()).hasSizeBetween(4, 10);
            assertThat(widths.get(0)).isCloseTo(work.tenonDiameterMm() - 0.05, within(1e-9));
            assertThat(widths)
                    .anySatisfy(
                            w ->
                                    assertThat(w)
                                            .isCloseTo(
                                                    work.tenonDiameterMm() + 0.05, within(1e-9)));
            assertThat(widths.get(widths.size() - 1))
                    .isCloseTo(work.greatestDiameterMm(), within(1e-6));
        }
    }

    @Test
    void rodsNotchesStandAtTheStationsFromItsSquareEnd() throws Exception {
        Workpiece work = StarterWork.demo().get(1);
        Card card = card(work, GaugeCard.Gauge.STORY_ROD);
        assertThat(card.box().minX()).isZero();
        List<Double> bottoms = new ArrayList<>();
        double top = card.box().maxY();
        for (Stroke stroke : card.outline().strokes()) {
            if (Math.abs(stroke.start().y() - (top - 2)) < 1e-9) {
                bottoms.add(stroke.start().x());
            }
        }
        bottoms.sort(null);
        List<Double> stations =
                work.stations().stream().map(GaugeStation::x).filter(x -> x > 0).toList();
        assertThat(bottoms).isEqualTo(stations);
        assertThat(texts(card))
                .anySatisfy(t -> assertThat(t).contains("STORY ROD").contains("this end"));
    }

    @Test
    void saysNegativeOnAGaugeAndPositiveOnATemplateAndNeverADate() throws Exception {
        Workpiece work = StarterWork.demo().get(2);
        Card gauge = GaugeCard.of(work, List.of(GaugeCard.Gauge.values()), RULES);
        assertThat(texts(gauge)).anySatisfy(t -> assertThat(t).contains("NEGATIVE"));
        Card template =
                CopyingCard.COMMON_PRACTICE.card(
                        CopyingTemplate.of(work, new Copier(1.5, 1.5, 55, 1), 12, 12, 0.01));
        assertThat(texts(template)).anySatisfy(t -> assertThat(t).contains("POSITIVE"));
        for (Card card : List.of(gauge, template)) {
            assertThat(texts(card)).anySatisfy(t -> assertThat(t).contains("batch B2"));
            assertThat(texts(card))
                    .noneSatisfy(
                            t -> assertThat(t).containsPattern("20[0-9][0-9]-|[0-9]:[0-9][0-9]"));
        }
        assertThat(GaugeCard.of(work, List.of(GaugeCard.Gauge.values()), RULES)).isEqualTo(gauge);
    }

    @Test
    void everyMarkLiesOnTheCard_starterShapes() throws Exception {
        for (Workpiece work : StarterWork.everyShape()) {
            List<Card> cards = new ArrayList<>();
            for (GaugeCard.Gauge gauge : GaugeCard.Gauge.values()) {
                cards.add(card(work, gauge));
            }
            cards.add(GaugeCard.of(work, List.of(GaugeCard.Gauge.values()), RULES));
            CopyingTemplate template =
                    CopyingTemplate.of(work, new Copier(1.5, 3, 55, 1), 12, 12, 0.01);
            cards.add(CopyingCard.COMMON_PRACTICE.card(template));
            cards.add(new CopyingCard(true, 28, List.of(), 6, Units.MM).card(template));
            for (Card card : cards) {
                Geometry marks = marks(card);
                // A hair more, for ticks end on the very edge.
                Geometry outside =
                        marks.difference(Flattened.polygon(card.outline(), 1e-3).buffer(0.01));
                assertThat(outside.isEmpty()).as("%s: %s", card.name(), outside).isTrue();
            }
        }
    }

    @Test
    void standsOffByTheClearanceAskedFor() {
        Outline body = Outline.of(new CircularArc(0, 8, 80, 7, -0.15));
        Workpiece work = new Workpiece("w", "", body, 80, 12, 16, 13, 11, List.of(), false);
        GaugeRules roughing =
                new GaugeRules(
                        GaugeRules.Register.FERRULE_FACE, 2, 0.3, 0, 0.05, 0.01, 3, 5, Units.MM);
        Card card = GaugeCard.of(work, List.of(GaugeCard.Gauge.PROFILE), roughing);
        for (double x = 3; x < 78; x += 2.5) {
            assertThat(card.outline().distance(new Spot(x, body.r(x))))
                    .isCloseTo(0.3, within(1e-9));
        }
    }

    /** Every score line and every pen stroke of a card, as chords. */
    private static Geometry marks(Card card) {
        List<Stroke> strokes = new ArrayList<>();
        for (Mark mark : card.marks()) {
            if (mark instanceof Lettering lettering) {
                lettering.strokes().forEach(strokes::addAll);
            } else {
                strokes.addAll(((ScoreLine) mark).strokes());
            }
        }
        GeometryFactory factory = new GeometryFactory();
        return factory.createMultiLineString(
                strokes.stream()
                        .map(
                                stroke ->
                                        factory.createLineString(
                                                new Coordinate[] {
                                                    new Coordinate(
                                                            stroke.start().x(), stroke.start().y()),
                                                    new Coordinate(
                                                            stroke.end().x(), stroke.end().y())
                                                }))
                        .toArray(LineString[]::new));
    }

    private static boolean covers(Card card, Spot spot) {
        return Flattened.covers(card.outline(), spot);
    }

    private static List<String> texts(Card card) {
        return card.marks().stream()
                .filter(Lettering.class::isInstance)
                .map(mark -> ((Lettering) mark).text())
                .toList();
    }

    private static Card card(Workpiece work, GaugeCard.Gauge gauge) {
        return GaugeCard.of(work, List.of(gauge), RULES);
    }
}
