package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LatestTest {
    private final Background background = new Background();
    private final Latest latest = background.latest();
    private final List<String> told = new ArrayList<>();

    @Test
    void whatIsOvertakenIsNeitherDoneNorTold() {
        latest.call(() -> told.add("first was worked out"), done -> told.add("first"), told::add);
        latest.call(() -> 2, done -> told.add("second"), told::add);
        background.work();
        assertThat(told).containsExactly("second");
    }

    @Test
    void whatFailsIsToldInItsOwnWords() {
        latest.call(
                () -> {
                    throw new java.io.IOException("the disk is full");
                },
                done -> told.add("done"),
                told::add);
        background.work();
        assertThat(told).containsExactly("the disk is full");
    }
}
