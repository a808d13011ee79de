package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Rules;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.set.TemplateSettings.Copying;
import haftline.set.TemplateSettings.Gauges;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkCardsTest {
    private static final TemplateSettings USUAL = TemplateSettings.COMMON_PRACTICE;
    private static final Rules.Copying COPYING = Rules.COMMON_PRACTICE.copying();

    private static List<Card> cards(TemplateSettings settings) throws Exception {
        return WorkCards.of(StarterWork.demo().get(0), COPYING, settings, Units.MM);
    }

    private static TemplateSettings with(Gauges.Cards cards, double holeMm) {
        Gauges g = USUAL.gauges();
        return USUAL.withGauges(
                new Gauges(
                        true,
                        true,
                        true,
                        cards,
                        g.register(),
                        g.reliefMm(),
                        g.clearanceMm(),
                        g.slotsOverMm(),
                        g.tenonToleranceMm(),
                        holeMm));
    }

    @ParameterizedTest
    @CsvSource({"EACH_ALONE, 4", "SLOTS_APART, 3", "ALL_ON_ONE, 2"})
    void gaugesShareCardsAsTheMakerLikes(Gauges.Cards cards, int count) throws Exception {
        assertThat(cards(with(cards, 5))).hasSize(count);
    }

    @Test
    void onlyWhatIsWantedIsMade() throws Exception {
        TemplateSettings none =
                USUAL.withGauges(USUAL.gauges().withMade(false, false, false))
                        .withCopying(USUAL.copying().withMade(false));
        assertThat(cards(none)).isEmpty();
        assertThat(cards(none.withGauges(none.gauges().withMade(false, true, false))))
                .singleElement()
                .satisfies(card -> assertThat(card.name()).endsWith("sizing slots"));
    }

    @Test
    void hangingHoleIsAsLargeAsWanted_orNotThere() throws Exception {
        for (Card card : cards(with(Gauges.Cards.EACH_ALONE, 8)).subList(0, 3)) {
            assertThat(card.openings()).hasSize(1);
            Loop hole = card.openings().get(0);
            assertThat(hole.area()).isCloseTo(Math.PI * 16, within(1e-9));
            assertThat(Flattened.areValid(List.of(card.outline(), hole))).isTrue();
        }
        for (Card card : cards(with(Gauges.Cards.EACH_ALONE, 0)).subList(0, 3)) {
            assertThat(card.openings()).isEmpty();
        }
    }

    @Test
    void copyingRunsOnAndOffAsFarAsWanted() throws Exception {
        Copying c = USUAL.copying();
        Copying runs =
                new Copying(
                        true,
                        c.sides(),
                        c.backMm(),
                        15,
                        10,
                        1,
                        OptionalDouble.empty(),
                        7,
                        List.of());
        TemplateSettings settings =
                USUAL.withGauges(USUAL.gauges().withMade(false, false, false)).withCopying(runs);
        Card card = cards(settings).get(0);
        double seat = StarterWork.demo().get(0).seatX();
        assertThat(card.box().minX()).isCloseTo(-15, within(1e-9));
        assertThat(card.box().maxX()).isCloseTo(seat + 10, within(1e-9));
    }

    /** 90 degrees less half the included angle less the clearance, where that is less. */
    @ParameterizedTest
    @CsvSource({"35, 7, 55", "55, 7, 55", "60, 7, 53", "80, 7, 43", "90, 2, 43", "150, 20, 5"})
    void cutterAngleMayLowerTheSteepestSlopeOfTheRules(
            double angle, double clearance, double expected) {
        Copying c = USUAL.copying();
        Copying pointed =
                new Copying(
                        true,
                        c.sides(),
                        c.backMm(),
                        12,
                        12,
                        1,
                        OptionalDouble.of(angle),
                        clearance,
                        List.of());
        assertThat(Copier.of(COPYING, pointed).steepestDeg()).isEqualTo(expected);
    }
}
