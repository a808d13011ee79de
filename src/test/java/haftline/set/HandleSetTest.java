package haftline.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import haftline.handle.Choices;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.shape.Butt;
import haftline.shape.Shape;
import haftline.stock.CatalogueReader;
import haftline.stock.Rack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HandleSetTest {
    private static final Shape SHAPE = shape("shared");

    private static Shape shape(String name) {
        return new Shape(
                name,
                "",
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                new Butt.Square(),
                0);
    }

    private static Kit kit(String name, double tang) {
        Measured outside = Measured.exactly(14);
        return new Kit(
                name,
                new Blade(
                        Measured.exactly(90),
                        20,
                        2,
                        OptionalDouble.empty(),
                        "stainless-304",
                        OptionalDouble.empty(),
                        true,
                        OptionalDouble.empty()),
                new RoundTang(
                        Measured.exactly(tang),
                        Measured.exactly(45),
                        OptionalDouble.empty(),
                        Optional.empty()),
                0,
                new Ferrule(
                        Measured.exactly(12),
                        outside,
                        outside,
                        Measured.exactly(12),
                        0,
                        OptionalDouble.empty(),
                        0,
                        "brass",
                        OptionalDouble.empty()),
                Optional.empty());
    }

    private static final PartsList PARTS =
            new PartsList(
                    "kits",
                    "",
                    List.of(
                            new Batch("B1", "", List.of(kit("knife", 6))),
                            new Batch("B2", "", List.of(kit("knife", 6.2)))));

    private static Piece piece(String name, Choices choices) {
        return new Piece(name, "knife", Optional.empty(), Optional.empty(), choices);
    }

    private static HandleSet set(String batch, Choices common, Piece... pieces) {
        return new HandleSet(
                "set",
                "",
                SHAPE,
                PARTS,
                batch,
                Rules.COMMON_PRACTICE,
                Rack.of(List.of()),
                "black-cherry",
                "slow-epoxy",
                common,
                List.of(pieces));
    }

    @Test
    void aPieceHasTheKitOfTheBatchInUse() {
        Piece one = piece("one", Choices.NONE);
        assertThat(set("B1", Choices.NONE, one).kit(one).tang().length().mean()).isEqualTo(45);
        assertThat(set("B1", Choices.NONE, one).kit(one)).isEqualTo(kit("knife", 6));
        HandleSet newer = set("B1", Choices.NONE, one).withBatch(PARTS, "B2");
        assertThat(newer.kit(one)).isEqualTo(kit("knife", 6.2));
    }

    @Test
    void aPiecesOwnChoicesGoBeforeTheCommonOnes() {
        Choices common = Choices.builder().swellMm(22).buttMm(15).build();
        Piece one = piece("one", Choices.builder().swellMm(26).build());
        Choices joined = set("B1", common, one).choices(one);
        assertThat(joined.swellMm()).hasValue(26);
        assertThat(joined.buttMm()).hasValue(15);
    }

    @Test
    void aBriefHasEverythingFromWhichAHandleFollows() throws Exception {
        Materials materials = Materials.of(CatalogueReader.starter());
        Piece own =
                new Piece(
                        "own",
                        "knife",
                        Optional.of("acrylic"),
                        Optional.of(shape("own")),
                        Choices.NONE);
        Piece plain = piece("plain", Choices.NONE);
        HandleSet set = set("B2", Choices.NONE, own, plain);
        assertThat(set.brief(own, materials).stock().key()).isEqualTo("acrylic");
        assertThat(set.brief(own, materials).shape().name()).isEqualTo("own");
        assertThat(set.brief(plain, materials).stock().key()).isEqualTo("black-cherry");
        assertThat(set.brief(plain, materials).shape()).isEqualTo(SHAPE);
        assertThat(set.brief(plain, materials).metals().blade().key()).isEqualTo("stainless-304");
        // Without a cap nothing is made of its metal.
        assertThat(set.brief(plain, materials).metals().cap().key()).isEqualTo("brass");
        assertThat(set.brief(plain, materials).adhesive().key()).isEqualTo("slow-epoxy");
    }

    @Test
    void aBriefOfAnUnknownStockSaysWhichIsNearest() throws Exception {
        Materials materials = Materials.of(CatalogueReader.starter());
        Piece wrong =
                new Piece(
                        "one", "knife", Optional.of("black-chery"), Optional.empty(), Choices.NONE);
        HandleSet set = set("B1", Choices.NONE, wrong);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set.brief(wrong, materials))
                .withMessageContaining("black-cherry");
    }

    @Test
    void isFoundByName() {
        Piece one = piece("one", Choices.NONE);
        assertThat(set("B1", Choices.NONE, one).piece("one")).contains(one);
        assertThat(set("B1", Choices.NONE, one).piece("two")).isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        Piece one = piece("one", Choices.NONE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set("B3", Choices.NONE, one))
                .withMessageContaining("batch B3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set("B1", Choices.NONE))
                .withMessageContaining("no piece");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set("B1", Choices.NONE, one, one))
                .withMessageContaining("two pieces have one name");
        Piece lost = new Piece("one", "fork", Optional.empty(), Optional.empty(), Choices.NONE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set("B1", Choices.NONE, lost))
                .withMessageContaining("kit fork: not in batch B1");
    }
}
