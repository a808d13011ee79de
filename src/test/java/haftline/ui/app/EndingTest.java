package haftline.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndingTest {
    @ParameterizedTest
    @CsvSource({
        "mine.yaml, mine.yaml",
        "mine.yml, mine.yml",
        "Mine.YAML, Mine.YAML",
        "mine.yaml.yaml, mine.yaml",
        "mine.yml.yaml, mine.yml",
        "mine, mine.yaml",
        "mine.2, mine.2.yaml",
        ".yaml, .yaml.yaml",
    })
    void aFileHasItsEndingOnce(String typed, String meant) {
        Path folder = Path.of("sets");
        assertThat(Ending.meant(folder.resolve(typed), List.of(".yaml", ".yml")))
                .isEqualTo(folder.resolve(meant));
    }
}
