package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrillsTest {
    private static Drills drills;

    @BeforeAll
    static void read() throws CatalogueException {
        drills = CatalogueReader.starter().drills();
    }

    /** ASME B94.11M sizes in mm. */
    @ParameterizedTest
    @CsvSource({
        "#80, 0.3429",
        "#1, 5.7912",
        "no 7, 5.1054",
        "no. 30, 3.2639",
        "number 52, 1.6129",
        "A, 5.9436",
        "letter F, 6.5278",
        "letter z, 10.4902",
        "1/64, 0.396875",
        "17/64, 6.746875",
        "1/4, 6.35",
        "1/4 in, 6.35",
        "1 1/16, 26.9875",
        "0.281 in, 7.1374",
        ".5 in, 12.7",
        "6.2, 6.2",
        "6.2 mm, 6.2",
        "' 6 ', 6"
    })
    void parse_givesTheDiameter(String text, double millimetres) {
        assertThat(drills.parse(text).diameterMm()).isCloseTo(millimetres, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "abc", "#0", "#81", "AA", "3/7", "64/64", "0/64", "17/0", "-6", "6,2", "0",
                "500", "1e1", "NaN", "6.2 cm", "letter", "1 000"
            })
    void parse_ofNoDrill_saysWhatIsExpected(String text) {
        assertThatThrownBy(() -> drills.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("drill \"" + text + "\": ");
    }

    @Test
    void sixtyFourths_areExact() {
        List<Drill> all = drills.series().find("inch-1-64").orElseThrow().drills();
        assertThat(all).hasSize(64);
        for (int n = 1; n <= 64; n++) {
            BigDecimal exact =
                    BigDecimal.valueOf(n)
                            .multiply(new BigDecimal("25.4"))
                            .divide(BigDecimal.valueOf(64));
            assertThat(all.get(n - 1).diameterMm()).isEqualTo(exact.doubleValue());
        }
    }

    @Test
    void everyStandardName_parsesToItsOwnDiameter() {
        for (DrillSeries series : drills.series().entries()) {
            for (Drill drill : series.drills()) {
                assertThat(drills.parse(drill.name()).diameterMm())
                        .as(series.key() + " " + drill.name())
                        .isCloseTo(drill.diameterMm(), within(1e-12));
            }
        }
    }

    /** ISO 235 as summarised in BS 328: 0.05 steps to 2.95, 0.1 to 13.9, 0.25 to 25. */
    @Test
    void metricSeries_haveTheStandardSteps() {
        Set<Double> standard = new HashSet<>();
        for (int i = 100; i < 300; i += 5) {
            standard.add(i / 100.0);
        }
        for (int i = 30; i < 140; i++) {
            standard.add(i / 10.0);
        }
        for (int i = 56; i <= 100; i++) {
            standard.add(i / 4.0);
        }
        Set<Double> held = new HashSet<>();
        for (String key : List.of("metric-0.05", "metric-0.1", "metric-0.25")) {
            drills.series().find(key).orElseThrow().drills().stream()
                    .map(Drill::diameterMm)
                    .forEach(held::add);
        }
        assertThat(held).isEqualTo(standard);
    }

    @Test
    void numberAndLetterSizes_areAllThereInOrder() {
        List<Drill> numbers = drills.series().find("number").orElseThrow().drills();
        assertThat(numbers).hasSize(80).isSortedAccordingTo(byDiameter());
        assertThat(numbers.get(0).name()).isEqualTo("#80");
        List<Drill> letters = drills.series().find("letter").orElseThrow().drills();
        assertThat(letters).hasSize(26).isSortedAccordingTo(byDiameter());
        assertThat(letters.get(4).name()).isEqualTo("E");
        assertThat(letters.get(4).diameterMm()).isCloseTo(6.35, within(1e-12));
    }

    private static java.util.Comparator<Drill> byDiameter() {
        return java.util.Comparator.comparingDouble(Drill::diameterMm);
    }

    /** Jobber drills of DIN 338 (from memory): diameter, flute. */
    @ParameterizedTest
    @CsvSource({
        "1, 12", "2, 24", "3, 33", "5, 52", "6, 57", "6.5, 63", "8, 75", "10, 87", "12, 101"
    })
    void flutes_goWithTheDiameter(double diameter, double flute) {
        Drill drill = drills.parse(Double.toString(diameter));
        assertThat(drill.fluteLengthMm()).hasValue(flute);
        assertThat(drill.pointAngleDeg()).isEmpty();
    }

    @Test
    void flutes_ofAnUnusualSize_areUnknown() {
        assertThat(drills.parse("#80").fluteLengthMm()).isEmpty();
        assertThat(drills.parse("60").fluteLengthMm()).isEmpty();
    }

    /** The ladder near 1/4 in: 6.0, 15/64, 6.1, 6.2, 6.3, 1/4, 6.5, 17/64, 7.0, 9/32. */
    @Test
    void rack_ofSeriesAndSingleDrills() {
        Rack rack =
                drills.rack(List.of("metric-0.5", "15/64", "6.1", "6.2", "6.3", "1/4", "17/64"));
        assertThat(rack.smallestAtLeast(5.91).orElseThrow().name()).isEqualTo("15/64");
        assertThat(rack.smallestAtLeast(6.31).orElseThrow().name()).isEqualTo("1/4");
        assertThat(rack.largestAtMost(6.9).orElseThrow().name()).isEqualTo("17/64");
        assertThat(rack.nearest(6.14).orElseThrow().name()).isEqualTo("6.1");
        assertThat(rack.smallestAtLeast(6.1).orElseThrow().fluteLengthMm()).hasValue(63);
    }

    @Test
    void rack_ofAMistypedSeries_suggestsIt() {
        assertThatThrownBy(() -> drills.rack(List.of("metric-05")))
                .hasMessageContaining("did you mean the series \"metric-0.5\"?");
        assertThatThrownBy(() -> drills.rack(List.of("spade")))
                .hasMessageContaining("drill \"spade\": expected millimetres");
    }

    @Test
    void drill_thatCannotBe_isRefused() {
        assertThatThrownBy(() -> Drill.of(0, "0")).hasMessageContaining("diameterMm");
        assertThatThrownBy(() -> Drill.of(Double.NaN, "x")).hasMessageContaining("diameterMm NaN");
        assertThatThrownBy(() -> Drill.of(6, " ")).hasMessageContaining("name");
        assertThatThrownBy(() -> Drill.of(6, "6").withPointAngleDeg(200))
                .hasMessageContaining("pointAngleDeg 200:");
    }
}
