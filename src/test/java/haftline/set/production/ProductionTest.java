package haftline.set.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import haftline.figures.Blank;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.set.Piece;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProductionTest {
    private static final LoadedSet DEMO = demo();
    private static final List<String> NAMES =
            DEMO.set().pieces().stream().map(Piece::name).toList();

    private static LoadedSet demo() {
        try {
            return SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Rates rates(double margin, double roundUpTo, double spare) {
        return new Rates(
                "",
                30,
                10,
                margin,
                roundUpTo,
                spare,
                Optional.of(new Rates.AdhesivePrice(0, 30)),
                List.of(new Rates.KitPrice("zester", 8.6)),
                List.of(
                        new Rates.WorkStep("turn", 10, 14, false, List.of()),
                        new Rates.WorkStep("join", 0, 5, true, List.of())),
                List.of(new Rates.Consumable("oil", "ml", 2, 0.1)));
    }

    private static StockLengths rack(double kerf, OptionalDouble kept, StockLength... sticks) {
        return new StockLengths(kerf, kept, List.of(sticks));
    }

    private static StockLength acrylic(double across, double length, int count) {
        return new StockLength(
                "acrylic", across, length, count, OptionalDouble.of(7.2), OptionalDouble.empty());
    }

    private static Production of(String quantity, Optional<StockLengths> rack, Rates rates) {
        return Production.of(
                DEMO.set(),
                DEMO.materials(),
                Quantities.parse(List.of(quantity), NAMES),
                new Production.Terms(rack, Optional.ofNullable(rates)),
                false);
    }

    /**
     * By hand, two citrus zesters: blanks of 75 mm from a stick of 300 at 7.20, kerf 1.5, leave 147
     * that is kept, so 153/300 of it, 3.67; kits 17.20; oil 0.40; 10 + 2 x 14 + 2 x 5 = 48 minutes
     * at 30 an hour, 24.00; together 45.27, overhead 4.53, cost 49.80; half of the price is margin,
     * so 49.80 each, up to 50.
     */
    @Test
    void reckonsAsOnPaper() {
        StockLengths rack = rack(1.5, OptionalDouble.of(100), acrylic(26, 300, 1));
        Costing costing =
                of("citrus zester=2", Optional.of(rack), rates(50, 0.25, 0))
                        .costing()
                        .orElseThrow();
        Costing.PieceCost cost = costing.pieces().get(0);
        assertThat(cost.stock()).isEqualByComparingTo("3.67");
        assertThat(cost.kits()).isEqualByComparingTo("17.20");
        assertThat(cost.adhesive()).isEqualByComparingTo("0");
        assertThat(cost.consumables()).isEqualByComparingTo("0.40");
        assertThat(cost.minutes()).isEqualTo(48);
        assertThat(cost.labour()).isEqualByComparingTo("24.00");
        assertThat(cost.overhead()).isEqualByComparingTo("4.53");
        assertThat(cost.cost()).isEqualByComparingTo("49.80");
        assertThat(cost.costEach()).isEqualByComparingTo("24.90");
        assertThat(cost.priceEach()).isEqualByComparingTo("50.00");
        assertThat(cost.marginEach()).isEqualByComparingTo("25.10");
        assertThat(costing.sales()).isEqualByComparingTo("100.00");
        assertThat(costing.markUpPercent()).isEqualTo(100);
        assertThat(costing.unpriced()).isEmpty();
    }

    /** Price = cost / (1 - margin), up to the next multiple; what is a multiple stays. */
    @ParameterizedTest
    @CsvSource({
        "30, 1, 40, 0.5, 50.00",
        "30.01, 1, 40, 0.5, 50.50",
        "10, 3, 25, 0, 4.45",
        "10, 1, 0, 0, 10.00",
        "9.10, 1, 30, 0.1, 13.00",
        "1, 1, 0, 5, 5.00",
        "33.33, 1, 66.67, 1, 100.00",
        "0, 4, 40, 0.5, 0.00"
    })
    void pricesByTheMarginOnThePrice(
            String cost, int quantity, double margin, double step, String price) {
        assertThat(Costing.price(new BigDecimal(cost), quantity, rates(margin, step, 0)))
                .isEqualByComparingTo(price);
    }

    @Test
    void sumsAreSumsOfWhatStandsThere() {
        Rates rates = DEMO.set().workshop().rates().orElseThrow();
        Costing costing =
                of("7", DEMO.set().workshop().stockLengths(), rates).costing().orElseThrow();
        BigDecimal sum = BigDecimal.ZERO;
        for (Costing.PieceCost piece : costing.pieces()) {
            BigDecimal own =
                    piece.stock()
                            .add(piece.kits())
                            .add(piece.adhesive())
                            .add(piece.consumables())
                            .add(piece.labour())
                            .add(piece.overhead());
            assertThat(piece.cost()).isEqualByComparingTo(own);
            assertThat(piece.priceEach().remainder(new BigDecimal("0.5")))
                    .isEqualByComparingTo("0");
            sum = sum.add(own);
        }
        assertThat(costing.cost()).isEqualByComparingTo(sum);
    }

    @Test
    void sawsTheBlanksThatTheFiguresAskFor() {
        Production production = of("6", DEMO.set().workshop().stockLengths(), rates(0, 0, 5));
        for (int i = 0; i < production.orders().size(); i++) {
            Blank blank = Blank.of(production.orders().get(i).figures().handle());
            BlankNeed need = production.blanks().get(i);
            assertThat(need.acrossMm()).isEqualTo(blank.sideMm());
            assertThat(need.lengthMm() - blank.lengthMm()).isBetween(0.0, 1.0);
            assertThat(need.count()).isEqualTo(7);
        }
        for (CutPlan plan : production.cuts()) {
            for (CutPlan.Cut cut : plan.cuts()) {
                double used = 0;
                for (CutPlan.Taken taken : cut.blanks()) {
                    assertThat(cut.stick().acrossMm())
                            .isGreaterThanOrEqualTo(taken.blank().acrossMm());
                    assertThat(cut.stick().stock()).isEqualTo(taken.blank().stock());
                    used += taken.count() * (taken.blank().lengthMm() + 1.5);
                }
                assertThat(used - 1.5).isLessThanOrEqualTo(cut.stick().lengthMm());
                assertThat(cut.offcutMm())
                        .isCloseTo(Math.max(0, cut.stick().lengthMm() - used), within(1e-9));
            }
            assertThat(plan.isProven()).isTrue();
            assertThat(plan.blanksMm() + plan.sawnMm() + plan.offcutsMm())
                    .isCloseTo(plan.begunMm(), within(1e-6));
        }
    }

    @Test
    void usesTheRackBeforeItBuysAndSaysWhatIsMissing() {
        StockLengths rack =
                rack(0, OptionalDouble.empty(), acrylic(26, 300, 1), acrylic(26, 80, 3));
        Production production = of("citrus zester=8", Optional.of(rack), null);
        CutPlan plan = production.cuts().get(0);
        // Four out of the long one, three out of the short ones, the eighth out of one to buy.
        assertThat(plan.toBuy()).containsExactly(java.util.Map.entry(acrylic(26, 80, 3), 1));
        assertThat(plan.begunMm()).isEqualTo(300 + 4 * 80);
        assertThat(production.isCut()).isTrue();
    }

    @Test
    void namesBlanksThatNoStickHolds() {
        StockLengths thin = rack(1.5, OptionalDouble.empty(), acrylic(24, 300, 5));
        Production production = of("2", Optional.of(thin), rates(40, 0, 0));
        assertThat(production.isCut()).isFalse();
        assertThat(production.cuts())
                .allSatisfy(plan -> assertThat(plan.cuts()).isEmpty())
                .flatExtracting(CutPlan::unfit)
                .hasSize(4);
        assertThat(production.costing().orElseThrow().unpriced())
                .contains("stock: no stick for the blanks of shucker")
                .contains("parts: no price for kit fork");
        assertThat(BatchTables.of(production, haftline.measure.Units.MM))
                .flatExtracting(BatchTable::notes)
                .anySatisfy(note -> assertThat(note).contains("at least 31 mm across"));
    }

    @Test
    void countsHolesAsTheBoresHaveThem() {
        Production production = of("5", Optional.empty(), null);
        double depth = 0;
        int holes = 0;
        for (Order order : production.orders()) {
            Handle handle = order.figures().handle();
            List<Bore> bores = new ArrayList<>(List.of(handle.tangBore()));
            handle.capBore().ifPresent(bores::add);
            for (Bore bore : bores) {
                holes += 5 * bore.steps().size();
                depth += 5 * bore.steps().stream().mapToDouble(s -> s.depthMm()).sum();
            }
        }
        assertThat(production.drills().stream().mapToInt(DrillUse::holes).sum()).isEqualTo(holes);
        assertThat(production.drills().stream().mapToDouble(DrillUse::depthMm).sum())
                .isCloseTo(depth, within(1e-9));
        assertThat(production.drills()).allMatch(DrillUse::isOnRack);
        assertThat(production.drills())
                .filteredOn(drill -> drill.name().equals("6.2"))
                .singleElement()
                .extracting(DrillUse::holes)
                .isEqualTo(15);
    }

    @Test
    void mixesNoMoreThanIsUsedInTime() {
        // Slow epoxy is workable for 45 minutes; at 5 a piece a mix serves 9.
        AdhesiveUse adhesive = of("6", Optional.empty(), rates(0, 0, 0)).adhesive().orElseThrow();
        assertThat(adhesive.piecesPerMix()).hasValue(9);
        assertThat(adhesive.mixes()).hasValue(3);
        double joints =
                of("6", Optional.empty(), null).orders().stream()
                        .mapToDouble(o -> 6 * o.figures().adhesive().volumeMm3() / 1000)
                        .sum();
        assertThat(adhesive.jointsMl()).isCloseTo(joints, within(1e-12));
        // The ring of a tenon 0.1 mm under a bore of 11.5 over 9.5 mm is about 0.017 ml.
        assertThat(adhesive.ferrulesMl()).isBetween(0.3, 1.5);
        assertThat(adhesive.mixedMl())
                .isCloseTo(1.3 * (joints + adhesive.ferrulesMl()), within(1e-12));
        assertThat(adhesive.mixedG()).isCloseTo(1.15 * adhesive.mixedMl(), within(1e-12));
        assertThat(of("6", Optional.empty(), null).adhesive().orElseThrow().mixes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20, 5, 1", "21, 5, 2", "6, 0, 0", "1, 100, 1", "100, 7, 7"})
    void cutsWholeSpareBlanks(int quantity, double percent, int spares) {
        Production production = of("shucker=" + quantity, Optional.empty(), rates(0, 0, percent));
        assertThat(production.orders().get(0).spares()).isEqualTo(spares);
    }

    @Test
    void listsBladesFerrulesAndCaps() {
        assertThat(of("3", Optional.empty(), null).kits())
                .containsExactly(
                        new KitUse("shucker", 3, 3),
                        new KitUse("spreader", 3, 3),
                        new KitUse("fork", 3, 0),
                        new KitUse("zester", 3, 3));
    }

    @Test
    void readsQuantitiesInTheOrderOfTheSet() {
        Quantities read = Quantities.parse(List.of("seafood fork=4, shucker = 6"), NAMES);
        assertThat(read.counts().keySet()).containsExactly("shucker", "seafood fork");
        assertThat(read.total()).isEqualTo(10);
        List<String> withComma = List.of("knife, small", "knife");
        assertThat(Quantities.parse(List.of("knife, small=2"), withComma).of("knife, small"))
                .isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1001", "x", "", "2.5", "99999999", "shucker=0", "6,7", "="})
    void refusesWhatIsNoQuantity(String text) {
        assertThatThrownBy(() -> Quantities.parse(List.of(text), NAMES))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching(".*(expected|no piece).*");
    }
}
