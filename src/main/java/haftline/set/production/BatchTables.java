package haftline.set.production;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.production.BatchTable.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A batch in tables: what to saw, drill, mix and lay out; {@link CostTables} has the money. */
public final class BatchTables {
    private final Production production;
    private final Units units;
    private final List<BatchTable> tables = new ArrayList<>();

    private BatchTables(Production production, Units units) {
        this.production = production;
        this.units = units;
    }

    /**
     * All tables that have something to say.
     *
     * @param production the batch
     * @param units unit of the lengths
     * @return the tables in the order of the work
     */
    public static List<BatchTable> of(Production production, Units units) {
        BatchTables all = new BatchTables(production, units);
        all.leftOut();
        if (!production.orders().isEmpty()) {
            all.blanks();
            all.cuts();
            all.buy();
            all.drills();
            all.adhesive();
            all.parts();
            all.consumables();
            all.tables.addAll(CostTables.of(production, units));
        }
        return List.copyOf(all.tables);
    }

    private void add(String key, String title, List<Column> columns, List<List<Object>> rows) {
        add(key, title, columns, rows, List.of());
    }

    private void add(
            String key,
            String title,
            List<Column> columns,
            List<List<Object>> rows,
            List<String> notes) {
        if (!rows.isEmpty() || !notes.isEmpty()) {
            tables.add(new BatchTable(key, title, columns, rows, notes));
        }
    }

    static List<Object> row(Object... cells) {
        return Arrays.asList(cells);
    }

    private Column length(String name, int decimalsMm) {
        return new Column(name, units.symbol(), units == Units.MM ? decimalsMm : 3);
    }

    private Object shown(double mm) {
        return mm / units.millimetres();
    }

    static String inWords(double mm, Units units) {
        return NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 1 : 3)
                + " "
                + units.symbol();
    }

    static Object number(int count) {
        return (double) count;
    }

    private void leftOut() {
        add(
                "left_out",
                "NOT TO BE MADE",
                List.of(Column.text("piece"), Column.count("asked for"), Column.text("why")),
                production.leftOut().stream()
                        .map(out -> row(out.piece(), number(out.quantity()), out.why()))
                        .toList());
    }

    private void blanks() {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < production.orders().size(); i++) {
            Order order = production.orders().get(i);
            BlankNeed blank = production.blanks().get(i);
            rows.add(
                    row(
                            mark(i),
                            order.piece() + (order.isStopped() ? " (stopped)" : ""),
                            blank.stockName(),
                            number(order.quantity()),
                            number(order.spares()),
                            shown(blank.acrossMm()),
                            shown(blank.lengthMm())));
        }
        add(
                "blanks",
                "Blanks",
                List.of(
                        Column.text("mark"),
                        Column.text("piece"),
                        Column.text("stock"),
                        Column.count("made"),
                        Column.count("spare"),
                        length("across", 1),
                        length("saw to", 0)),
                rows);
    }

    /**
     * The letter by which the blanks of a piece are told apart on a stick.
     *
     * @param index which piece of the batch, from 0
     * @return A to Z, then AA and so on
     */
    public static String mark(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : mark(index / 26 - 1) + last;
    }

    private void cuts() {
        List<List<Object>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (CutPlan plan : production.cuts()) {
            for (CutPlan.Cut cut : plan.cuts()) {
                rows.add(
                        row(
                                plan.stockName(),
                                shown(cut.stick().acrossMm()),
                                shown(cut.stick().lengthMm()),
                                cut.isBought() ? "to buy" : "rack",
                                number(cut.times()),
                                shown(cut.offcutMm()),
                                takenWords(cut)));
            }
            if (!plan.cuts().isEmpty()) {
                notes.add(planWords(plan));
            }
            for (BlankNeed blank : plan.unfit()) {
                notes.add(unfitWords(blank));
            }
        }
        if (production.rack().isEmpty()) {
            notes.add("The workshop states no stock_lengths, so nothing can be said of sticks.");
        }
        add(
                "cuts",
                "Sticks and cuts",
                List.of(
                        Column.text("stock"),
                        length("across", 1),
                        length("long", 0),
                        Column.text("from"),
                        Column.count("sticks"),
                        length("offcut", 1),
                        Column.text("each cut into")),
                rows,
                notes);
    }

    /**
     * What one stick is cut into.
     *
     * @param cut the stick
     * @return such as {@code 6 shucker, 1 seafood fork}
     */
    public static String takenWords(CutPlan.Cut cut) {
        return cut.blanks().stream()
                .map(taken -> taken.count() + " " + taken.blank().piece())
                .collect(Collectors.joining(", "));
    }

    private String planWords(CutPlan plan) {
        String proof =
                plan.isProven()
                        ? "no other plan buys or begins less"
                        : "not proven to be the least; no plan begins less than "
                                + NumberText.fixed(100 * plan.leastShare(), 1)
                                + " % of it";
        return plan.stockName()
                + ": "
                + inWords(plan.begunMm(), units)
                + " begun, "
                + NumberText.fixed(100 * plan.blanksMm() / plan.begunMm(), 1)
                + " % of it blanks, "
                + inWords(plan.sawnMm(), units)
                + " sawn away, "
                + inWords(plan.offcutsMm(), units)
                + " offcuts; "
                + proof
                + ".";
    }

    private String unfitWords(BlankNeed blank) {
        double kerf = production.rack().orElseThrow().kerfMm();
        return "No stick listed holds the blanks of "
                + blank.piece()
                + ": buy "
                + blank.stockName()
                + " at least "
                + inWords(blank.acrossMm(), units)
                + " across, "
                + inWords(blank.count() * blank.lengthMm() + (blank.count() - 1) * kerf, units)
                + " in all, for "
                + blank.count()
                + " of "
                + inWords(blank.lengthMm(), units)
                + ".";
    }

    private void buy() {
        List<List<Object>> rows = new ArrayList<>();
        for (CutPlan plan : production.cuts()) {
            for (Map.Entry<StockLength, Integer> each : plan.toBuy().entrySet()) {
                rows.add(
                        row(
                                plan.stockName(),
                                shown(each.getKey().acrossMm()),
                                shown(each.getKey().lengthMm()),
                                number(each.getValue())));
            }
        }
        add(
                "buy",
                "To buy",
                List.of(
                        Column.text("stock"),
                        length("across", 1),
                        length("long", 0),
                        Column.count("sticks")),
                rows);
    }

    private void drills() {
        add(
                "drills",
                "Drills",
                List.of(
                        Column.text("drill"),
                        length("diameter", 2),
                        Column.count("holes"),
                        length("deepest", 1),
                        length("in all", 0),
                        Column.text("on the rack"),
                        Column.text("for")),
                production.drills().stream()
                        .map(
                                drill ->
                                        row(
                                                drill.name(),
                                                shown(drill.diameterMm()),
                                                number(drill.holes()),
                                                shown(drill.deepestMm()),
                                                shown(drill.depthMm()),
                                                drill.isOnRack() ? "yes" : "NO",
                                                String.join(", ", drill.pieces())))
                        .toList(),
                List.of("Depths are to full diameter from the faced end; the point goes deeper."));
    }

    private void adhesive() {
        Optional<AdhesiveUse> use = production.adhesive();
        if (use.isEmpty()) {
            return;
        }
        AdhesiveUse adhesive = use.get();
        Optional<Rates> rates = production.costing().map(Costing::rates);
        List<String> notes = new ArrayList<>();
        notes.add(
                "Mixed is "
                        + Rates.AdhesivePrice.inWords(adhesive.allowancePercent())
                        + " than the joints hold, for "
                        + adhesive.pieces()
                        + (adhesive.pieces() == 1 ? " piece." : " pieces."));
        if (adhesive.mixes().isPresent()) {
            notes.add(
                    "Workable for about "
                            + NumberText.upTo(
                                    adhesive.adhesive().workingMinutes().orElseThrow().value(), 1)
                            + " minutes: "
                            + adhesive.piecesPerMix().getAsInt()
                            + (adhesive.piecesPerMix().getAsInt() == 1 ? " piece" : " pieces")
                            + " a mix, "
                            + NumberText.fixed(adhesive.mixedMl() / adhesive.mixes().getAsInt(), 2)
                            + " ml"
                            + " each; less in a warm shop.");
        } else {
            notes.add(
                    "How many mixes is not known: mark the step in the rates that is gluing, with"
                            + " its minutes.");
        }
        if (rates.filter(adhesive::isTooSlow).isPresent()) {
            notes.add(
                    "One piece takes longer than a mix stays workable: choose a slower adhesive.");
        }
        notes.add(adhesive.adhesive().mixing());
        notes.add(adhesive.adhesive().caution().text());
        Object mixes = adhesive.mixes().isPresent() ? number(adhesive.mixes().getAsInt()) : null;
        // A pressed handle takes a drop or two: tenths of a millilitre would make it none.
        add(
                "adhesive",
                "Adhesive",
                List.of(
                        Column.text("adhesive"),
                        new Column("tang and cap", "ml", 2),
                        new Column("ferrule", "ml", 2),
                        new Column("mixed", "ml", 2),
                        new Column("mass", "g", 2),
                        Column.count("mixes")),
                List.of(
                        row(
                                adhesive.adhesive().name(),
                                adhesive.jointsMl(),
                                adhesive.ferrulesMl(),
                                adhesive.mixedMl(),
                                adhesive.mixedG(),
                                mixes)),
                notes);
    }

    private void parts() {
        add(
                "parts",
                "Parts",
                List.of(
                        Column.text("kit"),
                        Column.count("blades"),
                        Column.count("ferrules"),
                        Column.count("caps")),
                production.kits().stream()
                        .map(
                                kit ->
                                        row(
                                                kit.kit(),
                                                number(kit.blades()),
                                                number(kit.blades()),
                                                number(kit.caps())))
                        .toList(),
                List.of("From batch " + production.batch() + "; no spare parts are counted."));
    }

    private void consumables() {
        List<Rates.Consumable> used =
                production.costing().map(c -> c.rates().consumables()).orElse(List.of());
        add(
                "consumables",
                "Used up",
                List.of(Column.text("what"), new Column("amount", "", 2), Column.text("unit")),
                used.stream()
                        .map(
                                each ->
                                        row(
                                                each.name(),
                                                production.pieces() * each.each(),
                                                each.unit()))
                        .toList());
    }

    /**
     * How far a batch is.
     *
     * @param progress the progress
     * @return a column for each step, in it how many are done
     */
    public static BatchTable of(Progress progress) {
        List<Column> columns = new ArrayList<>(List.of(Column.text("piece"), Column.count("made")));
        progress.steps().forEach(step -> columns.add(Column.count(step)));
        List<List<Object>> rows = new ArrayList<>();
        for (Progress.PieceProgress piece : progress.pieces()) {
            List<Object> row = new ArrayList<>(List.of(piece.piece(), number(piece.quantity())));
            piece.done().forEach(count -> row.add(number(count)));
            rows.add(row);
        }
        String note =
                progress.ticks()
                        + " of "
                        + progress.ticksInAll()
                        + " steps done"
                        + (progress.isFinished() ? ": the batch is finished." : ".");
        return new BatchTable("progress", "Done so far", columns, rows, List.of(note));
    }
}
