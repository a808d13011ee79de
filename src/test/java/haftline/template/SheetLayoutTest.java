package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class SheetLayoutTest {
    private static final long SEED = 4_09_04;
    private static final SheetSize SHEET = new SheetSize(600, 400, 6, 3);

    /** Half of the strips that the packing tries; what a plain order is set down with. */
    private static final double PLAIN_WEIGHT = 0.5;

    @Test
    void laysTheDemoSetOutTightlyWithoutOverlap() throws Exception {
        List<Card> cards = demo();
        SheetLayout layout = SheetLayout.of(cards, SHEET);
        assertKeepsItsDistances(layout, cards.size());
        assertThat(layout.utilisation() / layout.areaBound()).isGreaterThan(0.85);
        assertThat(layout.utilisation()).isGreaterThan(0.97 * bestOfRandom(cards, SHEET));
    }

    @Test
    void laysFortyCardsOutTightlyWithoutOverlap() throws Exception {
        List<Card> cards = new ArrayList<>();
        for (Workpiece work : StarterWork.everyShape()) {
            cards.addAll(cards(work));
        }
        cards.addAll(demo());
        cards = cards.subList(0, 40);
        long start = System.nanoTime();
        SheetLayout layout = SheetLayout.of(cards, SHEET);
        double seconds = (System.nanoTime() - start) / 1e9;
        assertKeepsItsDistances(layout, 40);
        assertThat(layout.utilisation()).isGreaterThan(0.97 * bestOfRandom(cards, SHEET));
        // A few seconds on a quiet machine; this leaves room for a busy one.
        assertThat(seconds).isLessThan(20);
    }

    @Test
    void liesTheSameWayEachTime() throws Exception {
        List<Card> cards = demo();
        assertThat(SheetLayout.of(cards, SHEET)).isEqualTo(SheetLayout.of(cards, SHEET));
    }

    @Test
    void turnsAProfileIntoTheHollowOfAnother() {
        Card wedge = card("wedge", LoopOffsetTest.loop(0, 0, 100, 0, 100, 10, 0, 40));
        SheetLayout layout = SheetLayout.of(List.of(wedge, wedge), new SheetSize(110, 200, 2, 2));
        assertKeepsItsDistances(layout, 2);
        // Two wedges back to back are a slab of 50, and the gap.
        assertThat(layout.sheets().get(0).used().height()).isBetween(51.9, 53.5);
    }

    @Test
    void takesAnotherSheetWhereOneIsFull() {
        Card block = card("block", LoopOffsetTest.rectangle(0, 0, 90, 60));
        SheetLayout layout =
                SheetLayout.of(List.of(block, block, block), new SheetSize(100, 140, 2, 2));
        assertThat(layout.sheets()).hasSize(2);
        assertKeepsItsDistances(layout, 3);
    }

    @Test
    void fillsASheetToItsMarginsExactly() {
        Card block = card("block", LoopOffsetTest.rectangle(0, 0, 96.25, 46.4));
        SheetLayout layout =
                SheetLayout.of(List.of(block, block), new SheetSize(100.25, 98.84, 2, 2));
        assertThat(layout.findings()).isEmpty();
        assertThat(layout.sheets()).hasSize(1);
        assertKeepsItsDistances(layout, 2);
    }

    @Test
    void saysWhichCardIsLargerThanTheSheet() {
        Card large = card("large", LoopOffsetTest.rectangle(0, 0, 300, 20));
        SheetLayout layout = SheetLayout.of(List.of(large), new SheetSize(200, 100, 5, 3));
        assertThat(layout.sheets()).isEmpty();
        assertThat(layout.utilisation()).isZero();
        assertThat(layout.findings())
                .extracting(TemplateFinding::kind)
                .containsExactly(TemplateFinding.Kind.LARGER_THAN_SHEET);
        assertThat(layout.findings().get(0).residualMm()).isCloseTo(110, within(1e-9));
    }

    private static Card card(String name, Loop loop) {
        return new Card(name, loop, List.of(), List.of(), List.of(), false);
    }

    static List<Card> demo() throws Exception {
        List<Card> cards = new ArrayList<>();
        for (Workpiece work : StarterWork.demo()) {
            cards.addAll(cards(work));
        }
        return cards;
    }

    static List<Card> cards(Workpiece work) {
        GaugeRules rules = GaugeRules.COMMON_PRACTICE;
        Copier copier = new Copier(1.5, 3, 55, 1);
        return List.of(
                GaugeCard.of(
                        work, List.of(GaugeCard.Gauge.PROFILE, GaugeCard.Gauge.STORY_ROD), rules),
                GaugeCard.of(work, List.of(GaugeCard.Gauge.SLOTS), rules),
                CopyingCard.COMMON_PRACTICE.card(CopyingTemplate.of(work, copier, 12, 12, 0.01)));
    }

    /** Every card once, inside the margins, no two nearer than the gap. */
    private static void assertKeepsItsDistances(SheetLayout layout, int count) {
        SheetSize size = layout.size();
        int found = 0;
        for (SheetLayout.Sheet sheet : layout.sheets()) {
            List<Polygon> shapes = new ArrayList<>();
            for (Card card : sheet.cards()) {
                Box box = card.box();
                double margin = size.marginMm() - 1e-9;
                assertThat(box.minX()).as(card.name()).isGreaterThanOrEqualTo(margin);
                assertThat(box.minY()).as(card.name()).isGreaterThanOrEqualTo(margin);
                assertThat(box.maxX()).as(card.name()).isLessThanOrEqualTo(size.widthMm() - margin);
                assertThat(box.maxY())
                        .as(card.name())
                        .isLessThanOrEqualTo(size.heightMm() - margin);
                shapes.add(Flattened.polygon(card.outline(), 1e-3));
                found++;
            }
            for (int i = 0; i < shapes.size(); i++) {
                for (int k = 0; k < i; k++) {
                    assertThat(shapes.get(i).distance(shapes.get(k)))
                            .isGreaterThan(size.gapMm() - 2e-3);
                }
            }
        }
        assertThat(found).isEqualTo(count);
    }

    /** Best utilisation of a thousand shuffled orders, set down the plain way. */
    static double bestOfRandom(List<Card> cards, SheetSize size) {
        List<Silhouette> ups =
                cards.stream().map(card -> Silhouette.of(card, size.gapMm())).toList();
        List<Silhouette> downs = ups.stream().map(up -> up.otherWayUp(size.gapMm())).toList();
        SplittableRandom random = new SplittableRandom(SEED);
        double best = 0;
        for (int i = 0; i < 1_000; i++) {
            List<Integer> order = new ArrayList<>();
            for (int k = 0; k < cards.size(); k++) {
                order.add(random.nextInt(order.size() + 1), k);
            }
            Packing packing = new Packing(size, Packing.widthMm(size), PLAIN_WEIGHT);
            order.forEach(k -> packing.add(ups.get(k), downs.get(k)));
            best = Math.max(best, new SheetLayout(size, packing.sheets(), List.of()).utilisation());
        }
        return best;
    }
}
