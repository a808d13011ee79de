package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
    /** Millimetres by 25.4 mm an inch, exactly; drill sizes as ASME B94.11M has them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12.5       | 12.5",
                "12,5       | 12.5",
                "12.5 mm    | 12.5",
                "12,5MM     | 12.5",
                " 7.1       | 7.1",
                ".5         | 0.5",
                "12.        | 12",
                "-3         | -3",
                "+3         | 3",
                "\u22123    | -3",
                "1/2\"      | 12.7",
                "31/64 in   | 12.303125",
                "1 3/8 in   | 34.925",
                "1-3/8 in   | 34.925",
                "1 3/8      | 34.925",
                "17/64      | 6.746875",
                "9/32 inch  | 7.14375",
                "2 inches   | 50.8",
                "0.25 in    | 6.35",
                ".281 in    | 7.1374",
                "1\u2033    | 25.4",
                "1''        | 25.4",
                "-1/2 in    | -12.7",
            })
    void isRead(String text, double mm) {
        assertThat(Length.parse(text, Units.MM)).isPresent();
        assertThat(Length.parse(text, Units.MM).getAsDouble()).isEqualTo(mm);
    }

    @Test
    void inchesAreTheNearestDoubleToTheirMillimetres() {
        for (int n = 0; n <= 20_000; n++) {
            BigDecimal thousandths = BigDecimal.valueOf(n, 3);
            assertThat(Length.parse(thousandths + " in", Units.MM).getAsDouble())
                    .isEqualTo(thousandths.multiply(new BigDecimal("25.4")).doubleValue());
            assertThat(Length.parse(n + "/64", Units.MM).getAsDouble())
                    .isEqualTo(
                            new BigDecimal("25.4")
                                    .multiply(BigDecimal.valueOf(n))
                                    .divide(BigDecimal.valueOf(64))
                                    .doubleValue());
        }
    }

    @Test
    void aBareNumberIsOfTheUnitInUse() {
        assertThat(Length.parse(".281", Units.INCH).getAsDouble()).isEqualTo(7.1374, within(1e-12));
        assertThat(Length.parse("7.1 mm", Units.INCH)).hasValue(7.1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "mm",
                "abc",
                "1,234.5",
                "1.234,5",
                "1 234",
                "1/0 in",
                "1/2 mm",
                "1 cm",
                "12 mm mm",
                "1/2/3",
                "1e3",
                "NaN",
                "Infinity",
                "--1",
                "٣",
                "1 3/8 5",
                "1111111111111111111111111111111111111111111111111"
            })
    void isNoLength(String text) {
        assertThat(Length.parse(text, Units.MM)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void theLocaleChangesNothing(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Length.parse("1 INCH", Units.MM)).hasValue(25.4);
            assertThat(Length.text(12.5, Units.MM, 2)).isEqualTo("12.50 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void isWrittenWithItsUnit() {
        assertThat(Length.text(12.5, Units.MM, 1)).isEqualTo("12.5 mm");
        assertThat(Length.text(12.7, Units.INCH, 3)).isEqualTo("0.500 in");
        assertThat(Length.text(-0.01, Units.MM, 1)).isEqualTo("0.0 mm");
        // Half away from zero, as on paper.
        assertThat(Length.text(0.15, Units.MM, 1)).isEqualTo("0.2 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "6.35, 1/4 in, 0",
        "12.303125, 31/64 in, 0",
        "34.925, 1 3/8 in, 0",
        "50.8, 2 in, 0",
        "0, 0 in, 0",
        "6.2, 1/4 in, 0.15",
        "7.0, 9/32 in, 0.14375"
    })
    void theNearest64thSaysHowFarOffItIs(double mm, String text, double errorMm) {
        Length.Fraction fraction = Length.nearest64th(mm);
        assertThat(fraction.text()).isEqualTo(text);
        assertThat(fraction.errorMm()).isEqualTo(errorMm, within(1e-12));
    }

    @Test
    void every64thIsReadBackAsItself() {
        for (int parts = 1; parts <= 640; parts++) {
            double mm = parts * 254 / 640.0;
            String text = Length.nearest64th(mm).text();
            assertThat(Length.parse(text, Units.MM)).as(text).hasValue(mm);
        }
    }

    @Test
    void noFractionOfWhatIsNoLength() {
        assertThatIllegalArgumentException().isThrownBy(() -> Length.nearest64th(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Length.nearest64th(-1));
    }
}
