package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {
    private static final List<String> WOODS =
            List.of("black-cherry", "teak", "pin-oak", "northern-red-oak", "sugar-maple", "pear");

    /** Edit distances that textbooks print, and swaps of neighbours counted once. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "flaw, lawn, 2",
        "tang, tang, 0",
        "tang, tagn, 1",
        "ferrule, ferule, 1",
        "'', bore, 4"
    })
    void slips_countsEditsAndSwaps(String one, String other, int slips) {
        assertThat(NearestWord.slips(one, other)).isEqualTo(slips);
        assertThat(NearestWord.slips(other, one)).isEqualTo(slips);
    }

    @ParameterizedTest
    @CsvSource({
        "blakc-cherry, black-cherry",
        "black-chery, black-cherry",
        "Sugar-Maple, sugar-maple",
        "suger-mapel, sugar-maple",
        "tek, teak",
        "cherry, black-cherry",
        "oak, pin-oak"
    })
    void to_findsTheWordMeant(String typed, String meant) {
        assertThat(NearestWord.to(WOODS, typed)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"brass", "'x'", "''", "'ar'"})
    void to_findsNothingForAStranger(String typed) {
        assertThat(NearestWord.to(WOODS, typed)).isEmpty();
    }

    @Test
    void to_findsNothingAmongNoWords() {
        assertThat(NearestWord.to(List.of(), "pear")).isEmpty();
    }
}
