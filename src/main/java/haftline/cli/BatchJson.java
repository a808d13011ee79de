package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.measure.Units;
import haftline.set.production.BatchTable;
import haftline.set.production.CutPlan;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * The answer of {@code batch --json}: the tables of the page, each a list of objects under its key,
 * their keys made of column and unit, lengths in mm. docs/formats/batch.md lists them.
 */
final class BatchJson {
    /** Rises when a key changes its meaning or goes away; a new key does not raise it. */
    private static final int VERSION = 1;

    private BatchJson() {}

    static String of(Batch batch) {
        return JsonPaper.of(out -> write(out, batch));
    }

    private static void write(JsonGenerator out, Batch batch) throws IOException {
        out.writeStartObject();
        out.writeNumberField("haftline", VERSION);
        out.writeStringField("set", batch.production().set());
        out.writeStringField("batch", batch.production().batch());
        out.writeNumberField("quantity", batch.production().pieces());
        String currency =
                batch.production()
                        .costing()
                        .map(costing -> costing.rates().currency())
                        .orElse(null);
        out.writeStringField("currency", currency);
        out.writeArrayFieldStart("plans");
        for (CutPlan plan : batch.production().cuts()) {
            out.writeStartObject();
            out.writeStringField("stock", plan.stock());
            out.writeBooleanField("proven", plan.isProven());
            out.writeFieldName("least_share");
            CheckJson.number(out, plan.leastShare());
            out.writeFieldName("begun_mm");
            CheckJson.number(out, plan.begunMm());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeObjectFieldStart("tables");
        for (BatchTable table : batch.tables(Units.MM)) {
            out.writeArrayFieldStart(table.key());
            for (List<Object> row : table.rows()) {
                out.writeStartObject();
                for (int i = 0; i < row.size(); i++) {
                    out.writeFieldName(key(table, i));
                    value(out, row.get(i));
                }
                out.writeEndObject();
            }
            out.writeEndArray();
        }
        out.writeEndObject();
        out.writeEndObject();
    }

    /** Column and unit in lower case; of amounts the currency is said once and not in the key. */
    private static String key(BatchTable table, int column) {
        String name = table.columns().get(column).name();
        String unit = table.columns().get(column).unit();
        boolean isUnit = List.of("mm", "ml", "g", "min").contains(unit);
        return (isUnit ? name + "_" + unit : name).toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    private static void value(JsonGenerator out, Object value) throws IOException {
        if (value instanceof Double number) {
            CheckJson.number(out, number);
        } else {
            out.writeString((String) value);
        }
    }
}
