package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.Measured;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PartsEditsTest {
    private final OpenDocument document = DemoSet.open();

    private Kit kit(String name) {
        return document.draft().set().batchInUse().kit(name).orElseThrow();
    }

    private KitSize size(String kit, String words) {
        return KitSizes.of(kit(kit)).stream()
                .filter(size -> size.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySizeIsReadBackAsItWasWritten() {
        for (String kind : KitSizes.TANG_KINDS) {
            document.apply(PartsEdits.tangKind("shucker", kind));
            for (KitSize size : KitSizes.of(kit("shucker"))) {
                Optional<Measured> old = size.read().apply(kit("shucker"));
                // The lesser axis of a ferrule is never the greater one.
                double by = size.words().contains("lesser") ? -0.01 : 0.01;
                Optional<Measured> wider = old.map(measured -> measured.plus(by));
                Kit changed = size.write().apply(kit("shucker"), wider);
                assertThat(size.read().apply(changed).map(Measured::mean))
                        .as(kind + ", " + size.words())
                        .isEqualTo(wider.map(Measured::mean));
                assertThat(size.write().apply(changed, old))
                        .as(kind + ", " + size.words() + ": nothing else changes")
                        .isEqualTo(kit("shucker"));
            }
        }
    }

    @Test
    void aRoundFerruleStaysRound() {
        Kit before = kit("shucker");
        assertThat(before.ferrule().outsideLeast()).isEqualTo(before.ferrule().outside());
        document.apply(
                PartsEdits.reading(
                        "shucker",
                        size("shucker", "ferrule outside"),
                        Optional.of(before.ferrule().outside().plus(0.4))));
        Ferrule after = kit("shucker").ferrule();
        assertThat(after.outsideLeast()).isEqualTo(after.outside());
        assertThat(after.outside()).isEqualTo(before.ferrule().outside().plus(0.4));
    }

    @Test
    void anImpossibleReadingIsRefusedInWords() {
        Outcome outcome =
                document.apply(
                        PartsEdits.reading(
                                "shucker",
                                size("shucker", "ferrule bore"),
                                Optional.of(Measured.exactly(40))));
        assertThat(outcome.refusal().orElseThrow()).contains("ferrule outside");
        assertThat(document.isModified()).isFalse();
    }

    @Test
    void aCapIsAddedToBeMeasuredAndTakenAway() {
        assertThat(kit("fork").cap()).isEmpty();
        document.apply(PartsEdits.cap("fork", true));
        assertThat(kit("fork").cap()).isPresent();
        assertThat(document.worked("seafood fork").findings()).isNotEmpty();
        document.apply(PartsEdits.cap("fork", false));
        assertThat(kit("fork").cap()).isEmpty();
    }

    @Test
    void anotherBatchIsUsedWhereItHasTheKits() {
        List<String> ids =
                document.draft().set().parts().batches().stream().map(batch -> batch.id()).toList();
        for (String id : ids) {
            assertThat(document.apply(PartsEdits.useBatch(id)).isDone()).isTrue();
            assertThat(document.draft().set().batch()).isEqualTo(id);
        }
        assertThat(document.apply(PartsEdits.useBatch("none")).isDone()).isFalse();
    }

    @Test
    void aPlaceMayLieOnEitherSideAndMayBeLeftOpen() {
        for (KitPart part : KitPart.values()) {
            for (KitNumber number : KitNumber.of(kit("shucker"), part)) {
                document.apply(PartsEdits.number("shucker", number, OptionalDouble.of(-2.5)));
                assertThat(number.read().apply(kit("shucker"))).as(number.words()).hasValue(-2.5);
                document.apply(PartsEdits.number("shucker", number, OptionalDouble.empty()));
                assertThat(number.read().apply(kit("shucker"))).as(number.words()).isEmpty();
            }
        }
    }

    @Test
    void everyKindOfTangTakesAFlareAndGivesItUp() {
        for (String kind : KitSizes.TANG_KINDS) {
            document.apply(PartsEdits.tangKind("shucker", kind));
            Kit plain = kit("shucker");
            document.apply(PartsEdits.flare("shucker", true));
            assertThat(KitSizes.of(kit("shucker"), KitPart.TANG).stream().map(KitSize::words))
                    .as(kind)
                    .contains("flare diameter", "flare length");
            document.apply(PartsEdits.flare("shucker", false));
            assertThat(kit("shucker")).as(kind).isEqualTo(plain);
        }
    }

    @Test
    void metalAndHeadAreChangedAlone() {
        Kit before = kit("shucker");
        document.apply(PartsEdits.metal("shucker", KitPart.FERRULE, "copper"));
        assertThat(KitMakeUp.metal(kit("shucker"), KitPart.FERRULE)).contains("copper");
        assertThat(kit("shucker").blade()).isEqualTo(before.blade());
        document.apply(PartsEdits.cap("shucker", true));
        document.apply(PartsEdits.head("shucker", haftline.parts.EndCap.Form.DOMED));
        assertThat(kit("shucker").cap().orElseThrow().form())
                .isEqualTo(haftline.parts.EndCap.Form.DOMED);
    }
}
