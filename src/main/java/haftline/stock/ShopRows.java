package haftline.stock;

import java.util.Map;
import java.util.TreeMap;

/** How the rows of hands, grips, speeds, climates and dust limits become entries. */
final class ShopRows {
    private final Catalogue<Source> sources;

    ShopRows(Catalogue<Source> sources) {
        this.sources = sources;
    }

    HandSize hand(Row row) {
        Map<Integer, Double> percentiles = new TreeMap<>();
        for (int percent : new int[] {1, 5, 10, 25, 50, 75, 90, 95, 99}) {
            String column = "p" + percent + "_mm";
            if (row.has(column)) {
                percentiles.put(percent, row.number(column, 10, 1000));
            }
        }
        return new HandSize(
                row.key("key"),
                row.text("people"),
                row.text("measure"),
                (int) row.number("count", 1, 1e9),
                row.number("mean_mm", 10, 1000),
                row.number("deviation_mm", 0, 500),
                percentiles,
                row.source("source", sources));
    }

    GripRule grip(Row row) {
        return new GripRule(
                row.key("key"),
                row.text("statement"),
                row.word("quantity", GripRule.Quantity.class),
                row.number("least", 0, 1000),
                row.number("greatest", 0, 1000),
                row.source("source", sources));
    }

    SpeedRule speed(Row row) {
        return new SpeedRule(
                row.key("key"),
                row.text("name"),
                row.number("least_in_rpm", 1, 1e6),
                row.number("greatest_in_rpm", 1, 1e6),
                row.source("source", sources));
    }

    Climate climate(Row row) {
        return new Climate(
                row.key("key"),
                row.text("name"),
                row.number("temperature_c", -1, 60),
                row.number("humidity_percent", 1, 99),
                row.source("source", sources));
    }

    DustLimit dust(Row row) {
        return new DustLimit(
                row.key("key"),
                row.text("authority"),
                row.text("what"),
                row.maybe("limit_mg_m3", "source", 0.01, 1000, sources),
                row.text("note"));
    }
}
