package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.Choice;
import haftline.edit.ChoiceEdits;
import haftline.edit.DemoSet;
import haftline.edit.KitSize;
import haftline.edit.KitSizes;
import haftline.edit.PartsEdits;
import haftline.edit.PieceEdits;
import haftline.edit.Scope;
import haftline.measure.Measured;
import haftline.measure.Units;
import haftline.parts.Kit;
import haftline.template.ComparedPiece;
import haftline.ui.model.BatchRows.Line;
import haftline.ui.model.BatchRows.Tone;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BatchModelTest {
    private final Background background = new Background();
    private final EditorModel editor = new EditorModel(DemoSet.open());
    private final BatchModel batches = new BatchModel(editor, background.latest());

    @BeforeEach
    void look() {
        batches.refresh();
        background.work();
    }

    private ComparedPiece piece(String name) {
        return batches.compared().value().orElseThrow().pieces().stream()
                .filter(piece -> piece.change().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private List<Line> lines(String name) {
        ComparedPiece piece = piece(name);
        return BatchRows.of(
                batches.compared().value().orElseThrow().change(),
                piece,
                batches.outliers(piece.change()),
                Units.MM);
    }

    @Test
    void theOtherBatchIsHeldAgainstTheOneInUseAndTakenAsOneStep() {
        assertThat(batches.inUse()).isEqualTo("B2");
        assertThat(batches.candidates().value()).extracting(c -> c.batch().id()).containsOnly("B1");
        batches.use();
        background.work();
        assertThat(editor.draft().value().set().batch()).isEqualTo("B1");
        assertThat(batches.chosen().value().orElseThrow().batch().id()).isEqualTo("B2");
        editor.undo();
        assertThat(editor.draft().value().set().batch()).isEqualTo("B2");
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void anAddedBatchHasTheKitsOfTheOneInUseAndChangesNothingUntilItIsMeasured() {
        assertThat(batches.nextId()).isEqualTo("B3");
        batches.add("B3");
        background.work();
        assertThat(batches.inUse()).isEqualTo("B3");
        assertThat(batches.chosen().value().orElseThrow().batch().id()).isEqualTo("B2");
        assertThat(batches.compared().value().orElseThrow().pieces())
                .hasSize(4)
                .allSatisfy(
                        piece -> {
                            assertThat(piece.change().changedFigures()).isEmpty();
                            assertThat(piece.toCutAgain()).isEmpty();
                        });
        batches.add("B3");
        assertThat(editor.notice().value().orElseThrow()).contains("B3 already");
        editor.undo();
        assertThat(batches.inUse()).isEqualTo("B2");
    }

    /** The three of the acceptance list: a tang, a ferrule bore, and noise. */
    @Test
    void threeBatchesHaveThreeAnswers() {
        batches.add("tang");
        shift("tang diameter over barbs", 0.1);
        assertThat(changes()).anyMatch(what -> what.startsWith("tang drill"));
        editor.undo();
        shift("ferrule bore", -0.3);
        assertThat(changes()).contains("tenon");
        assertThat(piece("shucker").toCutAgain())
                .extracting(gauge -> gauge.kind().words())
                .contains("tenon go / no-go");
        editor.undo();
        shift("ferrule bore", -0.01);
        assertThat(piece("shucker").toCutAgain()).isEmpty();
        assertThat(piece("shucker").change().changedParts()).isEmpty();
    }

    private void shift(String words, double by) {
        Kit kit = editor.draft().value().set().batchInUse().kit("shucker").orElseThrow();
        KitSize size =
                KitSizes.of(kit).stream()
                        .filter(each -> each.words().equals(words))
                        .findFirst()
                        .orElseThrow();
        Measured old = size.read().apply(kit).orElseThrow();
        List<Double> readings =
                old.readings().stream().map(r -> Math.rint((r + by) * 1000) / 1000).toList();
        editor.run(
                PartsEdits.reading(
                        "shucker", size, Optional.of(Measured.of(readings, old.resolution()))));
        batches.refresh();
        background.work();
    }

    private List<String> changes() {
        return piece("shucker").change().changedFigures().stream()
                .map(figure -> figure.words())
                .toList();
    }

    @Test
    void aWiderToleranceLetsNothingMoreBeCutAgain() {
        long narrow = toCutAgain(0.01);
        long wide = toCutAgain(2);
        assertThat(narrow).isGreaterThan(wide);
        assertThat(batches.text().value()).contains("gauges and templates");
    }

    private long toCutAgain(double mm) {
        batches.judge(mm);
        background.work();
        return batches.compared().value().orElseThrow().pieces().stream()
                .mapToLong(piece -> piece.toCutAgain().size())
                .sum();
    }

    @Test
    void whatIsToBeDoneStandsBeforeWhatStays() {
        List<Line> lines = lines("shucker");
        int work = index(lines, "tang drill");
        int same = index(lines, BatchRows.AS_BEFORE);
        assertThat(work).isBetween(0, same - 1);
        assertThat(lines.get(work).tone()).isEqualTo(Tone.CHANGED);
        assertThat(lines).anyMatch(l -> l.tone() == Tone.WARNING && l.what().contains("tenon go"));
    }

    private static int index(List<Line> lines, String what) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).what().equals(what)) {
                return i;
            }
        }
        return -1;
    }

    @Test
    void theDeviationIsDrawnAsLargeAsItIsSaidToBe() {
        OutlinePair pair = OutlinePair.of(piece("shucker").change()).orElseThrow();
        double most = 0;
        for (int i = 0; i < pair.x().length; i++) {
            most = Math.max(most, Math.abs(pair.after()[i] - pair.before()[i]));
        }
        assertThat(most * pair.times()).isBetween(0.5, 3.0);
        assertThat(OutlinePair.times(0)).isEqualTo(1);
        assertThat(OutlinePair.times(0.05)).isEqualTo(50);
        assertThat(OutlinePair.times(4)).isEqualTo(1);
    }

    @Test
    void gaugesThatAreNotThereAreNotSaidToServe() {
        for (String name : List.of("butter spreader", "seafood fork", "citrus zester")) {
            editor.run(PieceEdits.remove(name));
        }
        editor.run(
                new ChoiceEdits("shucker", Scope.THIS_PIECE)
                        .choose(Choice.LENGTH_RATIO, b -> b.lengthRatio(0.2)));
        batches.refresh();
        background.work();
        assertThat(batches.text().value()).isEqualTo("1 piece NOT TO BE MADE with it");
    }
}
