package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import haftline.support.InLocale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a new batch changes, reckoned by hand for a knife in acrylic: bonded, so that the drill is
 * the next tenth over the largest tang and 0.1; the tenon the smallest ferrule bore less 0.2.
 */
class CompareCommandTest {
    private static final String TANG = "[6.0, 6.05, 6.0, 6.0, 6.0]";
    private static final String BORE = "[12.0, 11.95, 12.0, 12.0, 12.0]";

    @TempDir Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(
                folder.resolve("shape.yaml"),
                """
                haftline: 1
                kind: shape
                name: plain
                nodes:
                  - {name: swell, at: 0.6, diameter: 22}
                """);
        Files.writeString(
                folder.resolve("set.yaml"),
                """
                haftline: 1
                kind: set
                name: One knife
                shape: shape.yaml
                parts: parts.yaml
                batch: A
                rack: [metric-0.1]
                stock: acrylic
                butt: 15
                pieces:
                  - {name: knife, kit: knife}
                """);
        Files.writeString(
                folder.resolve("parts.yaml"),
                """
                haftline: 1
                kind: parts
                name: knives
                batches:
                """
                        + batch("A", TANG, BORE)
                        + batch("tang grew", "[6.1, 6.15, 6.1, 6.1, 6.1]", BORE)
                        + batch("bore shrank", TANG, "[11.7, 11.65, 11.7, 11.7, 11.7]")
                        + batch(
                                "noise",
                                "[6.05, 6.0, 6.0, 6.05, 6.0]",
                                "[12.0, 12.0, 11.95, 11.95, 12.0]"));
    }

    private static String batch(String id, String tang, String bore) {
        return """
                 - batch: %s
                   resolution: 0.05
                   kits:
                     knife:
                       blade: {length: 90, width: 20, thickness: 2, material: stainless-304, mass: 40}
                       tang: {kind: round, diameter: %s, length: 45}
                       ferrule: {bore: %s, outside: 14, length: 12, material: brass}
               """
                .formatted(id, tang, bore);
    }

    private Run compare(String... more) {
        String[] words = new String[4 + more.length];
        words[0] = "compare";
        words[1] = folder.resolve("parts.yaml").toString();
        words[2] = "--set";
        words[3] = folder.resolve("set.yaml").toString();
        System.arraycopy(more, 0, words, 4, more.length);
        return Run.of(words);
    }

    private static String oneLine(String page) {
        return page.replaceAll("\\s+", " ");
    }

    /** 6.15 + 0.1 = 6.25: the 6.3 in place of the 6.2; nothing that was cut is touched by it. */
    @Test
    void aTangThatGrewByATenth_wantsTheNextDrill() {
        Run run = compare("--batch-b", "tang grew");
        assertThat(run.code()).isZero();
        assertThat(oneLine(run.out()))
                .contains("tang diameter: 6.01 mm before, now 6.11 mm, 0.10 mm more, doubt 0.05 mm")
                .contains("5 other sizes, the same within their doubt")
                .contains("Change tang drill: 6.20 mm before, now 6.30 mm, 0.10 mm more")
                .contains("tenon 11.75 mm, length of the tenon 11.50 mm")
                .contains("depth of the tang's bore 46.50 mm")
                .contains("Outline the same from shoulder to seat")
                .contains("Do knife: change tang drill; every gauge and template still serves")
                .doesNotContain("Cut again");
    }

    /** 11.65 - 0.2 = 11.45 in place of 11.75. */
    @Test
    void aBoreThatShrankByThreeTenths_wantsAnotherTenonAndItsSlots() {
        Run run = compare("--batch-b", "bore shrank");
        assertThat(run.code()).isZero();
        assertThat(oneLine(run.out()))
                .contains("ferrule bore: 11.99 mm before, now 11.69 mm, 0.30 mm less")
                .contains("Change tenon: 11.75 mm before, now 11.45 mm, 0.30 mm less")
                .contains("tang drill 6.20 mm, depth of the tang's bore 46.50 mm")
                .contains(
                        "Cut again tenon go / no-go: the tenon differs by 0.30 mm, go and no-go"
                                + " allow 0.05 mm")
                .contains("Serves profile gauge: as cut")
                .contains("Do knife: change tenon; cut again tenon go / no-go");
    }

    @Test
    void aBatchWithinNoise_changesNothing() {
        Run run = compare("--batch-b", "noise");
        assertThat(run.code()).isZero();
        assertThat(oneLine(run.out()))
                .contains("6 sizes, the same within their doubt")
                .contains("Do knife: nothing; the parts are the same within their doubt")
                .doesNotContain("Change")
                .doesNotContain("Cut again");
    }

    @Test
    void json_tellsTheSameFigures() throws IOException {
        JsonNode answer =
                new ObjectMapper().readTree(compare("--batch-b", "bore shrank", "--json").out());
        assertThat(answer.at("/haftline").asInt()).isEqualTo(1);
        assertThat(answer.at("/before/batch").asText()).isEqualTo("A");
        assertThat(answer.at("/after/batch").asText()).isEqualTo("bore shrank");
        JsonNode piece = answer.at("/pieces/0");
        for (JsonNode figure : piece.at("/figures")) {
            String name = figure.at("/figure").asText();
            if (name.equals("tenon_diameter_mm")) {
                assertThat(figure.at("/before").asDouble()).isCloseTo(11.75, within(1e-9));
                assertThat(figure.at("/after").asDouble()).isCloseTo(11.45, within(1e-9));
                assertThat(figure.at("/changes").asBoolean()).isTrue();
            }
            if (name.equals("tang_drill_mm")) {
                assertThat(figure.at("/before").asDouble()).isEqualTo(6.2);
                assertThat(figure.at("/changes").asBoolean()).isFalse();
            }
        }
        assertThat(piece.at("/gauges").findValuesAsText("gauge"))
                .containsExactly(
                        "profile-gauge",
                        "sizing-slots",
                        "tenon-slots",
                        "story-rod",
                        "copying-template");
        assertThat(piece.at("/gauges").findValuesAsText("serves"))
                .containsExactly("true", "true", "false", "true", "true");
        assertThat(piece.at("/outline/radius_difference_mm").asDouble()).isZero();
    }

    /** Not named, the new one is the last of the document and the one before that in use. */
    @Test
    void unnamedBatches_areThatInUseAndTheLast() {
        assertThat(compare().out()).contains("A → noise");
        assertThat(compare("--batch-a", "tang grew").out()).contains("tang grew → noise");
    }

    @Test
    void twoDocuments_areCompared() throws IOException {
        Path other = folder.resolve("new.yaml");
        Files.writeString(
                other,
                """
                haftline: 1
                kind: parts
                name: new parcel
                batches:
                """
                        + batch("N1", "[6.1, 6.15, 6.1, 6.1, 6.1]", BORE));
        Run run =
                Run.of(
                        "compare",
                        folder.resolve("parts.yaml").toString(),
                        other.toString(),
                        "--set",
                        folder.resolve("set.yaml").toString());
        assertThat(run.code()).isZero();
        assertThat(oneLine(run.out()))
                .contains("A → N1")
                .contains("now 6.30 mm")
                .contains("batch N1 of");
    }

    @Test
    void aStricterTolerance_isSaid() {
        assertThat(oneLine(compare("--tolerance", "0.1").out()))
                .contains("gauges and templates within 0.10 mm, the tenon's slots");
    }

    @Test
    void mistakes_areToldWithWhereTheyAre() throws IOException {
        Run unknown = compare("--batch-b", "nois");
        assertThat(unknown.code()).isEqualTo(ExitCode.USAGE);
        assertThat(unknown.err())
                .contains("there is no batch \"nois\" in")
                .contains("did you mean noise?");
        assertThat(compare("--tolerance", "wide").code()).isEqualTo(ExitCode.USAGE);

        Path bad = folder.resolve("bad.yaml");
        Files.writeString(
                bad,
                "haftline: 1\nkind: parts\nname: bad\nbatches:\n" + batch("N1", "[6.1, -6]", BORE));
        Run refused =
                Run.of(
                        "compare",
                        folder.resolve("parts.yaml").toString(),
                        bad.toString(),
                        "--set",
                        folder.resolve("set.yaml").toString());
        assertThat(refused.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(refused.err()).contains("bad.yaml:10:").contains("tang.diameter");
        assertThat(refused.out()).isEmpty();
    }

    @Test
    void aKitThatTheNewBatchLacks_isMissing() throws IOException {
        Path other = folder.resolve("other.yaml");
        Files.writeString(
                other,
                "haftline: 1\nkind: parts\nname: other\nbatches:\n"
                        + batch("N1", TANG, BORE).replace("knife:", "spoon:"));
        Run run =
                Run.of(
                        "compare",
                        folder.resolve("parts.yaml").toString(),
                        other.toString(),
                        "--set",
                        folder.resolve("set.yaml").toString());
        assertThat(run.out()).contains("knife: no kit \"knife\" in batch N1");
    }

    /** A batch whose tang is longer than the wood: not to be made, and the exit code says so. */
    @Test
    void aBatchThatStopsAPiece_endsWithOne() throws IOException {
        Path other = folder.resolve("long.yaml");
        Files.writeString(
                other,
                "haftline: 1\nkind: parts\nname: long\nbatches:\n"
                        + batch("N1", TANG, BORE).replace("length: 45", "length: 120"));
        Run run =
                Run.of(
                        "compare",
                        folder.resolve("parts.yaml").toString(),
                        other.toString(),
                        "--set",
                        folder.resolve("set.yaml").toString());
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED);
        assertThat(oneLine(run.out())).contains("knife: NOT TO BE MADE with this batch");
    }

    @Test
    void page_isTheSameUnderAnyLocale_andEightyColumnsWide() {
        for (List<String> units : List.of(List.of("mm"), List.of("in"))) {
            String[] more = {"--batch-b", "bore shrank", "--units", units.get(0)};
            String usual = compare(more).out();
            assertThat(usual.lines())
                    .allSatisfy(line -> assertThat(Paper.width(line)).isLessThan(81));
            for (String tag : InLocale.TAGS) {
                assertThat(InLocale.get(tag, () -> compare(more).out())).isEqualTo(usual);
            }
        }
    }
}
