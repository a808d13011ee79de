package haftline.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNameTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "Butter spreader, butter-spreader",
                "`  A -- B  `, a-b",
                "../../etc/passwd, etc-passwd",
                "C:\\x\\y, c-x-y",
                "con, piece-con",
                "LPT1, piece-lpt1",
                "COM\u00B9, piece-com1",
                "console, console",
                "nul.txt, nul-txt",
                "..., piece",
                "\uD83E\uDDAA, piece",
                "caf\u0065\u0301, caf\u00E9",
                "\uFF21\u2460, a1",
                "\u0130\u015E, i\u0307\u015F",
                "\u05D9\u05D3\u05D9\u05EA, \u05D9\u05D3\u05D9\u05EA",
                "a\u0000b\u202Ec, a-b-c"
            })
    void names_becomeFileNames(String name, String expected) {
        assertThat(FileName.from(name)).isEqualTo(expected);
    }

    @Test
    void emptyName_hasAFileName() {
        assertThat(FileName.from("")).isEqualTo("piece");
    }

    @Test
    void longNames_areCutAtAWholeCharacter() {
        String cut = FileName.from("\uD840\uDC00".repeat(300));
        assertThat(cut.getBytes(StandardCharsets.UTF_8)).hasSize(120);
        assertThat(cut.codePoints()).allMatch(c -> c == 0x20000);
    }

    @Test
    void unique_namesDifferOnEveryFileSystem() {
        assertThat(
                        FileName.unique(
                                List.of(
                                        "Fork",
                                        "fork",
                                        "FORK!",
                                        "fork-2",
                                        "caf\u00E9",
                                        "cafe\u0301")))
                .containsExactly(
                        "fork", "fork-2", "fork-3", "fork-2-2", "caf\u00E9", "caf\u00E9-2");
    }
}
