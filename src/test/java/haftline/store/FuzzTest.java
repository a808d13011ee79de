package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However a document is mangled, it is read or refused with a place; nothing else may happen. */
class FuzzTest {
    private static final int ROUNDS = 400;
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z0-9_./-]+");

    /** The domain's own words: the reader should have told it better, at the field. */
    private static final Pattern DOMAIN = Pattern.compile("^[a-z][a-z ,-]* -?[0-9.E]+: expected.*");

    private static final List<String> NASTY =
            List.of(
                    "-1",
                    "0",
                    "1e300",
                    "-1e-300",
                    ".nan",
                    "-.inf",
                    "99999",
                    "0.5",
                    "200",
                    "~",
                    "true",
                    "[]",
                    "{}",
                    "[1, 2]",
                    "{a: b}",
                    "\"\"",
                    "'x'",
                    "31/64 in",
                    "1/0 in",
                    "12,5",
                    "*a",
                    "&a 3",
                    "!!int 3",
                    "# ",
                    "- ",
                    "? ",
                    ": ",
                    "|",
                    ">",
                    "%",
                    "\t",
                    "\u0000",
                    "\ud800",
                    "\ufeff",
                    "}",
                    "]",
                    "\n",
                    "\n\n  ",
                    "<<",
                    "round",
                    "crisp",
                    "ferrule",
                    "..",
                    "/",
                    "brass",
                    "waist");

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"shape.yaml", "parts.yaml", "rules.yaml", "set.yaml"})
    void mangledDocuments(String name) throws Exception {
        Documents.write(folder);
        Path file = folder.resolve(name);
        String sound = Files.readString(file);
        int refused = 0;
        for (long seed = 0; seed < ROUNDS; seed++) {
            String mangled = mangle(sound, new Random(seed));
            Files.write(file, mangled.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            try {
                Documents.read(file);
            } catch (DocumentException e) {
                refused++;
                for (Problem problem : e.problems()) {
                    assertThat(problem.message())
                            .as("seed %d:%n%s", seed, mangled)
                            .isNotBlank()
                            .doesNotContain("\n")
                            .doesNotMatch(DOMAIN);
                }
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed + ":\n" + mangled, e);
            }
        }
        assertThat(refused).isGreaterThan(ROUNDS / 2);
    }

    private static String mangle(String text, Random random) {
        String mangled = text;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            List<MatchResult> tokens = TOKEN.matcher(mangled).results().toList();
            MatchResult token = tokens.get(random.nextInt(tokens.size()));
            String nasty = NASTY.get(random.nextInt(NASTY.size()));
            mangled =
                    mangled.substring(0, token.start())
                            + nasty
                            + mangled.substring(
                                    random.nextInt(4) == 0 ? token.start() : token.end());
        }
        return mangled;
    }
}
