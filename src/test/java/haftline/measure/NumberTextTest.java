package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
    private static final long SEED = 20260107;

    @ParameterizedTest
    @CsvSource({
        "12.5, 2, 12.50",
        "2.675, 2, 2.68",
        "-2.675, 2, -2.68",
        "0.125, 2, 0.13",
        "-0.001, 2, 0.00",
        "-0.0, 1, 0.0",
        "999.9999, 3, 1000.000",
        "1e20, 0, 100000000000000000000",
        "7, 0, 7"
    })
    void fixed_hasSoManyDecimals(double value, int decimals, String expected) {
        assertThat(NumberText.fixed(value, decimals)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "12.50, 2, 12.5",
        "12.0, 3, 12",
        "1200, 3, 1200",
        "-0.0004, 3, 0",
        "0.00049, 4, 0.0005",
        "0.1, 9, 0.1"
    })
    void upTo_leavesOffTrailingZeros(double value, int decimals, String expected) {
        assertThat(NumberText.upTo(value, decimals)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1",
        "25.4, 25.4",
        "-0.0, 0",
        "100, 100",
        // Java 17's own text has 17 digits here.
        "2.0E23, 2e23",
        "1e300, 1e300",
        "1.25e-9, 1.25e-9",
        "4.9E-324, 5e-324",
        "0.000001, 0.000001",
        "0.30000000000000004, 0.30000000000000004"
    })
    void shortest_isTheShortestThatReadsBack(double value, String expected) {
        assertThat(NumberText.shortest(value)).isEqualTo(expected);
    }

    @Test
    void shortest_readsBackAsTheSameDoubleAndIsNoLongerThanTheOneOfTheJdk() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (i % 2 == 0) {
                value = random.nextDouble(-500, 500);
            }
            if (Double.isFinite(value)) {
                String text = NumberText.shortest(value);
                assertThat(Double.parseDouble(text)).as("seed %d, %s", SEED, text).isEqualTo(value);
                assertThat(digits(text)).isLessThanOrEqualTo(digits(Double.toString(value)));
            }
        }
    }

    private static int digits(String text) {
        String mantissa = text.toLowerCase(Locale.ROOT).split("e")[0].replaceAll("[-.]", "");
        return mantissa.replaceAll("^0+|0+$", "").length();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void everyForm_refusesWhatIsNoNumber(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberText.fixed(value, 2))
                .withMessageContaining("finite");
        assertThatIllegalArgumentException().isThrownBy(() -> NumberText.upTo(value, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> NumberText.shortest(value));
    }

    @Test
    void decimals_outOfRangeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberText.fixed(1, 16))
                .withMessage("decimals 16: expected 0 to 15");
        assertThatIllegalArgumentException().isThrownBy(() -> NumberText.upTo(1, -1));
    }

    @Test
    void said_hasTheMinusSignProper() {
        assertThat(NumberText.said(NumberText.fixed(-3, 1))).isEqualTo("\u22123.0");
        assertThat(NumberText.said(NumberText.fixed(3, 1))).isEqualTo("3.0");
        assertThat(new LengthText(Units.MM).difference(-0.5)).isEqualTo("\u22120.50");
        assertThat(Length.text(-12.7, Units.INCH, 3)).isEqualTo("\u22120.500 in");
    }
}
