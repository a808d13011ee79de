package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.edit.SaveResult;
import haftline.measure.Units;
import haftline.set.Rates;
import haftline.set.StockLengths;
import haftline.set.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CostSettingsTest {
    @TempDir Path folder;
    private Path file;
    private EditorModel editor;
    private WorkshopModel model;
    private KitPrices kits;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder);
        open(OpenDocument.of(DemoSet.read(file)));
    }

    private void open(OpenDocument document) {
        editor = new EditorModel(document);
        model = WorkshopModel.ofCosts(editor);
        kits = new KitPrices(editor);
    }

    private Row row(String label) {
        return model.setting(label).orElseThrow().row();
    }

    private boolean applies(String label) {
        return model.setting(label).orElseThrow().applies().getAsBoolean();
    }

    private String text(String label) {
        return row(label).state().value().text();
    }

    private Workshop shop() {
        return editor.draft().value().set().workshop();
    }

    private StockLengths rack() {
        return shop().stockLengths().orElseThrow();
    }

    private Rates rates() {
        return shop().rates().orElseThrow();
    }

    @Test
    void aSawsKerfTakesEitherUnitAndIsOneStep() {
        assertThat(text("saw's kerf")).isEqualTo("1.5 mm");
        row("saw's kerf").enter("2,8");
        row("saw's kerf").enter("1/8\"");
        assertThat(rack().kerfMm()).isCloseTo(3.175, within(1e-12));
        assertThat(editor.status().value().undoName()).contains("change saw's kerf");
        editor.undo();
        assertThat(rack().kerfMm()).isEqualTo(2.8);
        editor.units().set(Units.INCH);
        assertThat(text("saw's kerf")).isEqualTo("0.1102 in");
    }

    @Test
    void wrongEntriesAreRefusedInWordsAndLeaveTheLastGoodValue() {
        Workshop before = shop();
        for (String wrong : List.of("wide", "", "-1", "10.1", "1 in")) {
            row("saw's kerf").enter(wrong);
            assertThat(row("saw's kerf").state().value().wrong())
                    .as(wrong)
                    .contains("Expected a length from 0 to 10 mm");
        }
        row("offcut kept from").enter("0.5");
        assertThat(row("offcut kept from").state().value().wrong().orElseThrow())
                .endsWith("or nothing");
        for (String wrong : List.of("96", "-1", "all", "")) {
            row("margin").enter(wrong);
            assertThat(row("margin").state().value().wrong())
                    .as(wrong)
                    .contains("Expected a number from 0 to 95 %");
        }
        row("currency").enter("more than eight");
        assertThat(row("currency").state().value().wrong()).isPresent();
        row("an hour at work").enter("");
        assertThat(row("an hour at work").state().value().wrong()).isPresent();
        assertThat(shop()).isEqualTo(before);
        assertThat(editor.notice().value()).isEmpty();
    }

    @Test
    void anEmptyEntryIsNoLengthKeptAndNoPrice() {
        row("offcut kept from").enter("");
        assertThat(rack().keptMm()).isEmpty();
        assertThat(row("offcut kept from").state().value().because()).contains("charged whole");
        row("a ml of adhesive").enter("");
        assertThat(rates().adhesive()).isEmpty();
        assertThat(applies("adhesive for waste")).isFalse();
        row("a ml of adhesive").enter("0,125");
        assertThat(rates().adhesive()).contains(new Rates.AdhesivePrice(0.125, 30));
        assertThat(text("a ml of adhesive")).isEqualTo("0.125");
    }

    @Test
    void aPriceOfAKitComesAndGoesInItsPlace() {
        assertThat(kits.rows().value())
                .extracting(Row::label)
                .containsExactly("kit shucker", "kit spreader", "kit fork", "kit zester");
        Row spreader = kits.rows().value().get(1);
        spreader.enter("8");
        assertThat(rates().kits().get(1)).isEqualTo(new Rates.KitPrice("spreader", 8));
        spreader.enter("");
        assertThat(rates().kits()).extracting(Rates.KitPrice::kit).doesNotContain("spreader");
        assertThat(spreader.state().value().because()).isEqualTo("has no price");
        editor.undo();
        assertThat(spreader.state().value().text()).isEqualTo("8");
        editor.run(PieceEdits.remove("citrus zester"));
        assertThat(kits.rows().value()).hasSize(3);
    }

    @Test
    void allThatIsChangedIsSavedInTheSharedFileAndItsNotesStay() throws Exception {
        assertThat(model.savedIn()).contains("workshop-tidewater.yaml").contains("other sets");
        row("saw's kerf").enter("3");
        row("offcut kept from").enter("150");
        row("an hour at work").enter("30");
        row("currency").enter("X");
        row("overhead").enter("15 %");
        row("margin").enter("35");
        row("price rounded up to").enter("1");
        row("spare blanks").enter("10");
        row("adhesive for waste").enter("40");
        kits.rows().value().get(0).enter("10");
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(file).set().workshop()).isEqualTo(shop());
        Path shared = file.resolveSibling("../../shared/workshop-tidewater.yaml").normalize();
        assertThat(Files.readString(shared)).contains("kerf: 3 ").contains("a bandsaw takes");
    }

    @Test
    void whoSaysNothingBeginsWithTheSawAndTheHour() {
        editor.run(
                new haftline.edit.Command(
                        "nothing said",
                        draft ->
                                draft.withSet(draft.set().withWorkshop(Workshop.COMMON_PRACTICE))));
        assertThat(text("saw's kerf")).isEmpty();
        assertThat(applies("offcut kept from")).isFalse();
        assertThat(applies("margin")).isFalse();
        assertThat(kits.rows().value()).isEmpty();
        row("saw's kerf").enter("1.5");
        row("an hour at work").enter("20");
        assertThat(rack()).isEqualTo(StockLengths.NONE.withKerf(1.5));
        assertThat(rates()).isEqualTo(Rates.ofHour(20));
        assertThat(applies("margin")).isTrue();
        assertThat(kits.rows().value()).hasSize(4);
    }
}
