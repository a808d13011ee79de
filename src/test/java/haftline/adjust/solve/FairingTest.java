package haftline.adjust.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.Watch;
import haftline.adjust.fair.CurvatureVariation;
import haftline.edit.DemoSet;
import haftline.measure.NumberText;
import haftline.set.HandleSet;
import haftline.store.LoadedSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FairingTest {
    private static final Wish NOTHING_ASKED = Wish.USUAL.withNeeds(Set.of());

    private static HandleSet alone(LoadedSet demo, String piece) {
        return demo.set().withPieces(java.util.List.of(demo.set().piece(piece).orElseThrow()));
    }

    private static double variation(HandleSet set, String piece) {
        return CurvatureVariation.of(EngineCheck.figures(set, piece).handle()).total();
    }

    @Test
    void variesLessWithinItsBand() {
        LoadedSet demo = DemoSet.load();
        Fairing fairing = Fairing.of(demo.set(), demo.materials(), NOTHING_ASKED, 0.2);
        assertThat(fairing.variationAfter()).isLessThan(fairing.variationBefore());
        for (Move move : fairing.moves()) {
            for (Move.Size size : move.sizes()) {
                assertThat(Math.abs(size.afterMm() - size.beforeMm()))
                        .isLessThanOrEqualTo(0.2 + 1e-9);
            }
        }
        HandleSet after = fairing.in(demo.set());
        double sum = 0;
        for (var piece : after.pieces()) {
            sum += variation(after, piece.name());
        }
        assertThat(sum).isCloseTo(fairing.variationAfter(), within(1e-12));
    }

    @Test
    void findsWhatAGridFinds_twoNodes() {
        LoadedSet demo = DemoSet.load();
        String name = "seafood fork";
        HandleSet set = alone(demo, name);
        Fairing fairing = Fairing.of(set, demo.materials(), NOTHING_ASKED, 0.3);
        var adjust = new Adjust(set, demo.materials(), NOTHING_ASKED, Watch.NOBODY);
        int n = adjust.model().size();
        assertThat(n).as("nodes of the demo's fork").isEqualTo(2);
        double least = Double.POSITIVE_INFINITY;
        for (int i = -20; i <= 20; i++) {
            for (int j = -20; j <= 20; j++) {
                double[] point = {0.015 * i, 0.015 * j};
                var handle = adjust.model().handle(0, point);
                least = Math.min(least, CurvatureVariation.of(handle).total());
            }
        }
        // What is written in hundredths may be a hair less fair than the fairest of all.
        assertThat(fairing.variationAfter()).isLessThanOrEqualTo(least * (1 + 1e-3));
    }

    @Test
    void movesToSizesThatCanBeReadAndTurned() {
        LoadedSet demo = DemoSet.load();
        Fairing fairing =
                Fairing.of(demo.set(), demo.materials(), NOTHING_ASKED.withEachAlone(true), 0.3);
        assertThat(fairing.moves()).isNotEmpty();
        for (Move move : fairing.moves()) {
            assertThat(move.unit()).isEqualTo("mm");
            assertThat(NumberText.upTo(move.after(), 2))
                    .as(move.toString())
                    .isEqualTo(NumberText.shortest(move.after()));
        }
    }

    @Test
    void endsSoonOnceNobodyWaits() {
        LoadedSet demo = DemoSet.load();
        CountingWatch watch = new CountingWatch(500);
        assertThat(Fairing.of(demo.set(), demo.materials(), NOTHING_ASKED, 0.2, watch)).isEmpty();
        assertThat(watch.asked()).as("asked once more, and not again").isEqualTo(501);
    }

    @Test
    void breaksNoNeedThatIsMet() {
        LoadedSet demo = DemoSet.load();
        Wish wish = Wish.USUAL.withNeeds(Need.of(Set.of(Need.Group.WALLS)));
        Adjustment adjusted = Adjust.of(demo.set(), demo.materials(), wish);
        HandleSet set = adjusted.in(demo.set());
        Fairing fairing = Fairing.of(set, demo.materials(), wish, 0.5);
        Adjustment after = Adjust.of(fairing.in(set), demo.materials(), wish);
        assertThat(after.isMet()).isTrue();
        assertThat(after.moves()).isEmpty();
    }

    @Test
    void refusesABandThatIsNone() {
        LoadedSet demo = DemoSet.load();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Fairing.of(demo.set(), demo.materials(), NOTHING_ASKED, 0))
                .withMessageContaining(
                        "band of the fairing 0 mm: expected a length from 0.01 to 5");
    }
}
