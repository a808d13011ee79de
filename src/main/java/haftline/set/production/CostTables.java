package haftline.set.production;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.production.BatchTable.Column;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a batch takes of time and money, and what is to be asked for it, in tables. */
final class CostTables {
    private final Production production;
    private final Units units;
    private final List<BatchTable> tables = new ArrayList<>();

    private CostTables(Production production, Units units) {
        this.production = production;
        this.units = units;
    }

    /** Time, cost and price; where there are no rates, that nothing can be said. */
    static List<BatchTable> of(Production production, Units units) {
        CostTables all = new CostTables(production, units);
        all.time();
        all.cost();
        all.price();
        return List.copyOf(all.tables);
    }

    private void time() {
        Labour labour = production.labour();
        List<List<Object>> rows = new ArrayList<>();
        labour.steps()
                .forEach(
                        step ->
                                rows.add(
                                        BatchTables.row(
                                                step.name(),
                                                step.setupMinutes(),
                                                step.workMinutes(),
                                                step.minutes())));
        List<String> notes = new ArrayList<>();
        if (!rows.isEmpty()) {
            rows.add(
                    BatchTables.row(
                            "in all",
                            labour.steps().stream()
                                    .mapToDouble(Labour.StepTime::setupMinutes)
                                    .sum(),
                            labour.steps().stream().mapToDouble(Labour.StepTime::workMinutes).sum(),
                            labour.minutes()));
            notes.add(
                    NumberText.fixed(labour.minutes() / 60, 1)
                            + " hours, "
                            + NumberText.fixed(labour.minutes() / production.pieces(), 1)
                            + " minutes a piece; curing is not counted.");
        }
        tables.add(
                new BatchTable(
                        "time",
                        "Time",
                        List.of(
                                Column.text("step"),
                                new Column("setting up", "min", 0),
                                new Column("work", "min", 0),
                                new Column("in all", "min", 0)),
                        rows,
                        notes));
    }

    private void cost() {
        Optional<Costing> costing = production.costing();
        if (costing.isEmpty()) {
            tables.add(
                    new BatchTable(
                            "cost",
                            "Cost",
                            List.of(Column.text("piece")),
                            List.of(),
                            List.of(
                                    "The workshop states no rates, so nothing can be said of time, cost and"
                                            + " price.")));
            return;
        }
        Costing all = costing.get();
        List<List<Object>> rows = new ArrayList<>();
        for (Costing.PieceCost piece : all.pieces()) {
            rows.add(
                    costRow(
                            piece.piece(),
                            piece.stock(),
                            piece.kits(),
                            piece.adhesive(),
                            piece.consumables(),
                            piece.labour(),
                            piece.overhead(),
                            piece.cost()));
        }
        rows.add(
                costRow(
                        "in all",
                        all.sum(Costing.PieceCost::stock),
                        all.sum(Costing.PieceCost::kits),
                        all.sum(Costing.PieceCost::adhesive),
                        all.sum(Costing.PieceCost::consumables),
                        all.sum(Costing.PieceCost::labour),
                        all.sum(Costing.PieceCost::overhead),
                        all.cost()));
        List<String> notes = new ArrayList<>();
        all.unpriced().forEach(what -> notes.add("Not in the cost: " + what + "."));
        notes.add(stockWords());
        String unit = all.rates().currency();
        tables.add(
                new BatchTable(
                        "cost",
                        "Cost of the batch",
                        List.of(
                                Column.text("piece"),
                                new Column("stock", unit, 2),
                                new Column("kits", unit, 2),
                                new Column("glue", unit, 2),
                                new Column("used up", unit, 2),
                                new Column("time", unit, 2),
                                new Column("overhead", unit, 2),
                                new Column("cost", unit, 2)),
                        rows,
                        notes));
    }

    private String stockWords() {
        String charged =
                production
                        .rack()
                        .filter(rack -> rack.keptMm().isPresent())
                        .map(
                                rack ->
                                        "offcuts from "
                                                + BatchTables.inWords(
                                                        rack.keptMm().getAsDouble(), units)
                                                + " on go back on the rack uncharged")
                        .orElse("sticks are charged whole");
        return "Stock is shared by the length of the blanks, spares included; "
                + charged
                + ". Time is at "
                + money(production.costing().orElseThrow().rates().hour())
                + " an hour, overhead "
                + NumberText.upTo(production.costing().orElseThrow().rates().overheadPercent(), 2)
                + " % on all before it.";
    }

    private String money(double amount) {
        String currency = production.costing().orElseThrow().rates().currency();
        String number = NumberText.fixed(amount, 2);
        return currency.isEmpty() ? number : currency + " " + number;
    }

    private static List<Object> costRow(String piece, BigDecimal... amounts) {
        List<Object> row = new ArrayList<>(List.of(piece));
        Arrays.stream(amounts).forEach(each -> row.add(amount(each)));
        return row;
    }

    private void price() {
        Optional<Costing> costing = production.costing();
        if (costing.isEmpty()) {
            return;
        }
        Costing all = costing.get();
        String unit = all.rates().currency();
        List<List<Object>> rows = new ArrayList<>();
        for (Costing.PieceCost piece : all.pieces()) {
            rows.add(
                    BatchTables.row(
                            piece.piece(),
                            BatchTables.number(piece.quantity()),
                            piece.minutes() / piece.quantity(),
                            amount(piece.costEach()),
                            amount(piece.marginEach()),
                            amount(piece.priceEach())));
        }
        List<String> notes = new ArrayList<>();
        notes.add(
                "The margin is "
                        + NumberText.upTo(all.rates().marginPercent(), 2)
                        + " % of the selling price, which is a mark-up of "
                        + NumberText.fixed(all.markUpPercent(), 1)
                        + " % on the cost"
                        + (all.rates().roundUpTo() > 0
                                ? "; prices are rounded up to the next "
                                        + NumberText.upTo(all.rates().roundUpTo(), 4)
                                : "")
                        + ".");
        notes.add(
                "All sold at these prices: "
                        + money(all.sales().doubleValue())
                        + ", cost "
                        + money(all.cost().doubleValue())
                        + ", left "
                        + money(all.sales().subtract(all.cost()).doubleValue())
                        + ". Taxes, fees and carriage are not in it.");
        if (!all.unpriced().isEmpty()) {
            notes.add("Something has no price (see the cost): ask more than this.");
        }
        tables.add(
                new BatchTable(
                        "price",
                        "Price of one",
                        List.of(
                                Column.text("piece"),
                                Column.count("made"),
                                new Column("time", "min", 1),
                                new Column("cost", unit, 2),
                                new Column("margin", unit, 2),
                                new Column("price", unit, 2)),
                        rows,
                        notes));
    }

    private static Object amount(BigDecimal amount) {
        return amount.doubleValue();
    }
}
