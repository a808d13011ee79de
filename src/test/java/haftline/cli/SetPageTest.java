package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.support.Golden;
import haftline.support.InLocale;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page that is read at the lathe. */
class SetPageTest {
    @Test
    void demoSet_inMillimetres() throws IOException {
        Golden.assertMatches("cli/tidewater-mm.txt", Run.of("check", Run.DEMO).out());
    }

    @Test
    void demoSet_inInches() throws IOException {
        Golden.assertMatches(
                "cli/tidewater-in.txt", Run.of("check", Run.DEMO, "--units", "in").out());
    }

    @Test
    void page_isEightyColumnsWide_withoutTrailingBlanksOrEscapes() {
        for (String units : List.of("mm", "in")) {
            String page = Run.of("check", Run.DEMO, "--units", units).out();
            assertThat(page).doesNotContain("\u001b").doesNotContain("\r").endsWith("\n");
            assertThat(page.lines())
                    .allSatisfy(
                            line -> {
                                assertThat(Paper.width(line)).as(line).isLessThan(81);
                                assertThat(line).isEqualTo(line.stripTrailing());
                            });
        }
    }

    /** A blade that was not weighed is reckoned without its tang, which has its own figure. */
    @Test
    void mass_namesTheTangOnce(@TempDir Path folder) throws IOException {
        String set =
                DemoCopy.in(folder)
                        .change(
                                "shared/parts/tidewater.yaml",
                                "mass: 44.6, balance: 16",
                                "balance: 16")
                        .set();
        assertThat(Run.of("check", set).out().replaceAll("\\s+", " "))
                .containsPattern("g blade [0-9.]+ \\(estimated\\), tang [0-9.]+, ferrule 5.4")
                .containsPattern("g blade and tang 27.4, ferrule 3.9");
    }

    /** A blade that was weighed but not balanced weighs what the scale said. */
    @Test
    void mass_saysWhatOfABladeIsEstimated(@TempDir Path folder) throws IOException {
        String set =
                DemoCopy.in(folder)
                        .change(
                                "shared/parts/tidewater.yaml",
                                "mass: 44.6, balance: 16",
                                "mass: 44.6, includes_tang: false")
                        .set();
        assertThat(Run.of("check", set).out().replaceAll("\\s+", " "))
                .containsPattern("g blade 44.6 \\(where it balances estimated\\), tang [0-9.]+,");
    }

    @Test
    void lengths_areNeverFinerThanTheyCanBeWorked() {
        assertThat(figures("mm")).doesNotContainPattern("[0-9]\\.[0-9]{3}");
        assertThat(figures("in"))
                .doesNotContainPattern("[0-9]\\.[0-9]{4}")
                .containsPattern("overall +[0-9]+\\.[0-9]{3} in ≈ [0-9]+ [0-9]+/[0-9]+ ");
    }

    /** The page without its findings, whose sentences are another room's. */
    private static String figures(String units) {
        return Run.of("check", Run.DEMO, "--units", units)
                .out()
                .replaceAll("(?s)Findings .*?\n\n", "");
    }

    @Test
    void emphasis_addsNothingButItself() throws Exception {
        ExaminedSet set =
                Examination.of(
                        haftline.store.SetFile.read(Path.of(Run.DEMO)), haftline.measure.Units.MM);
        String plain = SetPage.of(set, haftline.measure.Units.MM, Ink.PLAIN);
        String inked = SetPage.of(set, haftline.measure.Units.MM, Ink.ANSI);
        assertThat(inked).contains("\u001b[1m");
        assertThat(inked.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    }

    @Test
    void everythingPrinted_isTheSameUnderAnyLocale() {
        List<List<String>> runs =
                List.of(
                        List.of("check", Run.DEMO),
                        List.of("check", Run.DEMO, "--units", "in"),
                        List.of("check", Run.DEMO, "--json"),
                        List.of("make", "--help"),
                        List.of("make", Run.DEMO, "--only", "pdf"),
                        List.of("chek"),
                        List.of("check", "no-such-set.yaml"),
                        List.of());
        for (List<String> words : runs) {
            String[] args = words.toArray(String[]::new);
            Run usual = Run.of(args);
            List<Run> others = new ArrayList<>();
            InLocale.TAGS.forEach(tag -> others.add(InLocale.get(tag, () -> Run.of(args))));
            assertThat(others).as(words.toString()).allSatisfy(o -> assertThat(o).isEqualTo(usual));
        }
    }
}
