package haftline.adjust.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MoveTest {
    /** Other programs read the unit, people what is written. */
    @Test
    void aMultipleIsWrittenWithItsSign() {
        Move move =
                new Move(
                        "waist",
                        Move.Document.SHARED_SHAPE,
                        Optional.empty(),
                        "x swell",
                        0.6,
                        0.6187,
                        List.of());
        assertThat(move.written()).isEqualTo("0.6187 \u00d7 swell");
        assertThat(move.unit()).isEqualTo("x swell");
    }
}
