package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.handle.Wander;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoWaysTest {
    private static Doubt under(int count) {
        Proportion share = new Proportion(count, 20_000);
        Spread spread = Spread.of(new double[] {1, 2, 3});
        return new Doubt(
                20_000,
                1,
                Wander.NONE,
                share,
                share,
                List.of(),
                new EndDoubt(false, 3, share, share, spread),
                spread,
                spread,
                spread,
                List.of(),
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "600, 200, drilling on the lathe with a centre drill first makes it 1 in 100",
        "19998, 19960, drilling on the lathe with a centre drill first makes it all but 2 in 1'000",
        "19998, 19998, drilling on the lathe with a centre drill first would not change it",
        // Both are about 3 in 100.
        "600, 601, drilling on the lathe with a centre drill first would not change it",
        "0, 0, drilling on the lathe with a centre drill first would not change it",
    })
    void tellsWhatTheOtherWayMakesOfIt(int stated, int other, String words) {
        TwoWays ways = new TwoWays(under(stated), TwoWays.CENTRED, under(other));
        assertThat(ways.otherInWords()).isEqualTo(words.replace('\'', ','));
    }

    @ParameterizedTest
    @CsvSource({"200, 600, makes it 3 in 100", "200, 200, would not change it"})
    void namesTheWayWithoutACentreDrill(int stated, int other, String words) {
        TwoWays ways = new TwoWays(under(stated), TwoWays.UNCENTRED, under(other));
        assertThat(ways.otherInWords())
                .isEqualTo("drilling on the lathe without a centre drill " + words);
    }
}
