package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.Units;
import haftline.ui.model.Preferences.Bounds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreferencesTest {
    @TempDir Path folder;

    private Preferences read() {
        return new Preferences(folder.resolve("deep").resolve("preferences"));
    }

    @Test
    void remembersFromRunToRun() throws IOException {
        Preferences first = read();
        assertThat(first.units()).isEqualTo(Units.MM);
        assertThat(first.isDark()).isFalse();
        assertThat(first.isGuideDismissed()).isFalse();
        assertThat(first.window()).isEmpty();
        Path set = Files.createFile(folder.resolve("größe.yaml"));
        first.units(Units.INCH);
        first.dark(true);
        first.guideDismissed(true);
        first.window(new Bounds(-20, 30.5, 1366, 768));
        first.opened(set);
        first.exportFolder(folder);
        assertThat(first.save()).isTrue();
        Preferences next = read();
        assertThat(next.units()).isEqualTo(Units.INCH);
        assertThat(next.isDark()).isTrue();
        assertThat(next.isGuideDismissed()).isTrue();
        assertThat(next.window()).contains(new Bounds(-20, 30.5, 1366, 768));
        assertThat(next.recent()).containsExactly(set);
        assertThat(next.exportFolder()).contains(folder);
    }

    @Test
    void recentFilesAreFewUniqueAndThere() throws IOException {
        Preferences kept = read();
        for (int i = 0; i < 12; i++) {
            kept.opened(Files.createFile(folder.resolve(i + ".yaml")));
        }
        kept.opened(folder.resolve("9.yaml"));
        assertThat(kept.recent())
                .hasSize(Preferences.MOST_RECENT)
                .startsWith(folder.resolve("9.yaml"), folder.resolve("11.yaml"));
        Files.delete(folder.resolve("11.yaml"));
        assertThat(kept.recent()).doesNotContain(folder.resolve("11.yaml"));
    }

    @Test
    void aSpoiltFileIsDoneWithout() throws IOException {
        Path file = folder.resolve("deep").resolve("preferences");
        Files.createDirectories(file.getParent());
        Files.write(file, new byte[] {'w', '=', '\\', 'u', 'x', (byte) 0xff, 0});
        assertThat(read().units()).isEqualTo(Units.MM);
        Files.writeString(file, "window=1 2 x 4\nrecent.0=\0\nexport-folder=\0\nunits=furlong\n");
        assertThat(read().window()).isEmpty();
        assertThat(read().recent()).isEmpty();
        assertThat(read().exportFolder()).isEmpty();
        assertThat(read().units()).isEqualTo(Units.MM);
    }

    @Test
    void anExportFolderThatIsGoneIsForgotten() {
        Preferences kept = read();
        kept.exportFolder(folder.resolve("gone"));
        assertThat(kept.exportFolder()).isEmpty();
    }

    @Test
    void aWindowIsRestoredOnlyWhereAScreenStillIs() {
        List<Bounds> screens =
                List.of(new Bounds(0, 0, 1366, 768), new Bounds(1366, 0, 1920, 1080));
        assertThat(new Bounds(1400, 100, 800, 600).isOn(screens)).isTrue();
        assertThat(new Bounds(1400, 100, 800, 600).isOn(screens.subList(0, 1))).isFalse();
        assertThat(new Bounds(1300, 100, 800, 600).isOn(screens.subList(0, 1))).isFalse();
        assertThat(new Bounds(100, -300, 800, 600).isOn(screens)).isFalse();
    }
}
