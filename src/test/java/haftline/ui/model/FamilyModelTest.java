package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.set.Family;
import haftline.set.Trait;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FamilyModelTest {
    private final Background background = new Background();
    private final EditorModel editor = new EditorModel(DemoSet.open());
    private final FamilyModel family = new FamilyModel(editor, background, Runnable::run);

    @BeforeEach
    void look() {
        family.refresh();
        background.work();
    }

    private Family.Stray stray(String piece, Trait trait) {
        return family.matched().value().strays().stream()
                .filter(stray -> stray.piece().equals(piece) && stray.trait() == trait)
                .findFirst()
                .orElseThrow();
    }

    private boolean isOut(String piece, Trait trait) {
        return family.matched().value().strays().stream()
                .anyMatch(stray -> stray.piece().equals(piece) && stray.trait() == trait);
    }

    @Test
    void aRemedyBringsThePieceBackAsOneStep() {
        Family.Stray stray = stray("shucker", Trait.SWELL_DIAMETER);
        assertThat(family.remedies().value()).isEmpty();
        family.ask(stray);
        background.work();
        assertThat(family.remedies().value().get(stray)).isPresent();
        assertThat(family.apply(stray).refusal()).isEmpty();
        family.refresh();
        background.work();
        assertThat(isOut("shucker", Trait.SWELL_DIAMETER)).isFalse();
        editor.undo();
        family.refresh();
        background.work();
        assertThat(isOut("shucker", Trait.SWELL_DIAMETER)).isTrue();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void whatAPartForcesIsNotMendedByAChoice() {
        Family.Stray stray = stray("shucker", Trait.SHOULDER_DIAMETER);
        family.ask(stray);
        background.work();
        assertThat(family.remedies().value().get(stray)).isEmpty();
        assertThat(family.apply(stray).refusal()).isPresent();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void theLinesRunThroughEverySwellAndButt() {
        var places = family.matched().value().lineUp().places();
        assertThat(places).hasSize(4);
        places.forEach(
                place -> {
                    var handle =
                            editor.document()
                                    .worked(place.piece())
                                    .figures()
                                    .orElseThrow()
                                    .handle();
                    assertThat(2 * handle.outline().r(place.swellX()))
                            .isCloseTo(place.swellMm(), within(1e-6));
                    assertThat(place.buttX()).isEqualTo(handle.buttX());
                });
    }

    @Test
    void theTableTellsSignsUnitsAndShares() {
        var row = family.matched().value().family().row(Trait.SWELL_DIAMETER).orElseThrow();
        var entry = row.entry("shucker").orElseThrow();
        assertThat(family.difference(row.trait(), entry)).isEqualTo("+6.0 mm");
        assertThat(family.number(row.trait(), entry)).isEqualTo("+6.0");
        assertThat(family.percent(entry)).isEqualTo("+27 %");
        assertThat(family.words("shucker")).contains("swell +6.0 mm");
    }
}
