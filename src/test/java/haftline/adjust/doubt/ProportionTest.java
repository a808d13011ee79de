package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|20000|none of 20,000",
                "600|20000|about 3 in 100",
                "40|20000|about 2 in 1,000",
                "1|20000|about 1 in 10,000",
                "17400|20000|about 87 in 100",
                "19960|20000|all but about 2 in 1,000",
                "20000|20000|all of 20,000"
            })
    void isToldNoFinerThanItsSizeAllows(int count, int of, String words) {
        assertThat(new Proportion(count, of).inWords()).isEqualTo(words);
    }
}
