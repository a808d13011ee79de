package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.takeoff.TakeOff;
import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.measure.Units;
import haftline.store.ShapeFile;
import haftline.ui.model.TakeOffModel.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeOffModelTest {
    @TempDir Path folder;

    private final Deque<Runnable> background = new ArrayDeque<>();
    private EditorModel editor;
    private TakeOffModel model;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        model = new TakeOffModel(editor, background::add, Runnable::run);
    }

    private void work() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }

    /** A waist between two thicker ends, every 2 mm, and one reading 1.5 mm off. */
    private Path readings(String heading, double unit) throws Exception {
        StringBuilder text = new StringBuilder(heading + "\n");
        for (int x = 0; x <= 90; x += 2) {
            double d = 20 + 2 * Math.cos(2 * Math.PI * x / 90) + (x == 30 ? 1.5 : 0);
            text.append(String.format(Locale.ROOT, "%.4f,%.4f%n", x / unit, d / unit));
        }
        return Files.writeString(folder.resolve("old handle.csv"), text);
    }

    @Test
    void takesAShapeOffAndNamesTheStray() throws Exception {
        model.open(readings("x (mm),diameter (mm)", 1));
        assertThat(model.state().value().stage()).isEqualTo(Stage.WORKING);
        work();
        assertThat(model.state().value().stage()).isEqualTo(Stage.READY);
        assertThat(model.state().value().drawing()).isPresent();
        var taken = model.state().value().taken().orElseThrow();
        assertThat(2 * taken.outline().r(45)).isCloseTo(18, within(0.1));
        TakeOffWords words = new TakeOffWords(Units.MM);
        // The heading is line 1, so 30 mm stands in line 17.
        assertThat(words.strays(taken))
                .singleElement()
                .asString()
                .startsWith("Line 17, at 30.0 mm")
                .contains("over the line");
        assertThat(words.found(taken)).startsWith("46 readings over 90.0 mm");
        assertThat(words.found(taken)).doesNotContain("corners");
        assertThat(words.found(cutShort(taken))).contains("so many corners");
    }

    @Test
    void becomesThePiecesShapeInOneStep() throws Exception {
        Draft before = editor.draft().value();
        model.open(readings("x (mm),diameter (mm)", 1));
        work();
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(model.accept().isDone()).isTrue();
        assertThat(editor.worked().value().brief().shape().name()).isEqualTo("old handle");
        assertThat(editor.worked().value().figures()).isPresent();
        editor.undo();
        assertThat(editor.draft().value()).isEqualTo(before);
    }

    @Test
    void isSavedAsAShapeDocument() throws Exception {
        model.open(readings("x (mm),diameter (mm)", 1));
        work();
        Path to = folder.resolve("taken.yaml");
        model.save(to);
        assertThat(model.state().value().text()).contains("taken.yaml");
        assertThat(ShapeFile.read(to).nodes())
                .hasSameSizeAs(model.state().value().taken().orElseThrow().shape().nodes());
        model.save(folder.resolve("nowhere").resolve("taken.yaml"));
        assertThat(model.state().value().text()).doesNotStartWith("Saved");
    }

    @Test
    void followsUnitAndToleranceAndSaysWhatIsWrong() throws Exception {
        model.open(readings("x,diameter", 25.4));
        work();
        assertThat(model.state().value().stage()).isEqualTo(Stage.REFUSED);
        assertThat(model.state().value().text()).isNotBlank();
        model.units(Units.INCH);
        work();
        assertThat(model.state().value().taken().orElseThrow().woodMm())
                .isCloseTo(90, within(0.01));
        assertThat(model.tolerance("9")).isPresent();
        assertThat(background).isEmpty();
        assertThat(model.tolerance("0.3 mm")).isEmpty();
        work();
        assertThat(model.settings().value().toleranceMm()).isEqualTo(0.3);
        assertThat(model.scale("x")).isPresent();
        assertThat(model.axis("")).isEmpty();
        assertThat(model.isTraced()).isFalse();
    }

    private static TakeOff cutShort(TakeOff whole) {
        return new TakeOff(
                whole.shape(),
                whole.shoulderMm(),
                whole.seatMm(),
                whole.woodMm(),
                whole.outline(),
                whole.residuals(),
                whole.deviationMm(),
                true);
    }
}
