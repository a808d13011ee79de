package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.Measured;
import haftline.parts.Kit;
import haftline.set.Rates;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KitEditsTest {
    private final OpenDocument document = DemoSet.open();

    private Kit kit(String name) {
        return document.draft().set().batchInUse().kit(name).orElseThrow();
    }

    private Rates rates() {
        return document.draft().set().workshop().rates().orElseThrow();
    }

    @Test
    void anotherKitIsMeasuredByItself() {
        assertThat(document.apply(KitEdits.another("seafood fork")).isDone()).isTrue();
        assertThat(document.draft().piece("seafood fork").kit()).isEqualTo("fork 2");
        KitSize length =
                KitSizes.of(kit("fork 2")).stream()
                        .filter(size -> size.words().equals("blade length"))
                        .findFirst()
                        .orElseThrow();
        document.apply(PartsEdits.reading("fork 2", length, Optional.of(Measured.exactly(99))));
        assertThat(kit("fork 2").blade().length().mean()).isEqualTo(99);
        assertThat(kit("fork").blade().length().mean()).isNotEqualTo(99);
        document.apply(KitEdits.another("seafood fork"));
        assertThat(document.draft().piece("seafood fork").kit()).isEqualTo("fork 3");
        document.undo();
        document.undo();
        document.undo();
        assertThat(document.isModified()).isFalse();
    }

    @Test
    void anotherBatchThatLacksTheKitIsRefusedByName() {
        String before = document.draft().set().batch();
        document.apply(KitEdits.another("seafood fork"));
        String other =
                document.draft().set().parts().batches().stream()
                        .map(batch -> batch.id())
                        .filter(id -> !id.equals(before))
                        .findFirst()
                        .orElseThrow();
        assertThat(document.apply(PartsEdits.useBatch(other)).refusal().orElseThrow())
                .contains("fork 2");
        assertThat(document.draft().set().batch()).isEqualTo(before);
    }

    @Test
    void aRenamedKitKeepsItsPiecesAndItsPrice() {
        double price =
                rates().kits().stream()
                        .filter(each -> each.kit().equals("fork"))
                        .findFirst()
                        .orElseThrow()
                        .each();
        assertThat(document.apply(KitEdits.rename("fork", " oyster fork ")).isDone()).isTrue();
        assertThat(document.draft().piece("seafood fork").kit()).isEqualTo("oyster fork");
        assertThat(rates().kits()).contains(new Rates.KitPrice("oyster fork", price));
        // Other sets may reckon with the same rates.
        assertThat(rates().kits()).contains(new Rates.KitPrice("fork", price));
        assertThat(document.draft().set().parts().batches())
                .allMatch(batch -> batch.kit("fork").isEmpty());
    }

    @Test
    void aNameThatAnotherKitHasOrNoneIsRefused() {
        assertThat(document.apply(KitEdits.rename("fork", "shucker")).refusal().orElseThrow())
                .isEqualTo("another kit is called \"shucker\"");
        assertThat(document.apply(KitEdits.rename("fork", "  ")).isDone()).isFalse();
        assertThat(document.isModified()).isFalse();
    }

    @Test
    void aRenamedPieceKeepsTheTimeThatItTakes() {
        Rates.WorkStep turn =
                rates().steps().stream()
                        .filter(step -> step.name().equals("turn"))
                        .findFirst()
                        .orElseThrow();
        double own = turn.minutes("shucker");
        assertThat(own).isNotEqualTo(turn.eachMinutes());
        document.apply(PieceEdits.rename("shucker", "oyster knife"));
        assertThat(rates().steps())
                .filteredOn(step -> step.name().equals("turn"))
                .allMatch(step -> step.minutes("oyster knife") == own)
                .allMatch(step -> step.minutes("shucker") == own);
        document.apply(PieceEdits.rename("oyster knife", "shucker"));
        assertThat(rates().steps())
                .filteredOn(step -> step.name().equals("turn"))
                .allMatch(step -> step.pieces().size() == turn.pieces().size() + 1);
    }
}
