package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.adjust.doubt.Band;
import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.EndDoubt;
import haftline.adjust.doubt.Proportion;
import haftline.adjust.doubt.Spread;
import haftline.adjust.doubt.TwoWays;
import haftline.adjust.doubt.Weight;
import haftline.adjust.doubt.ZoneDoubt;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** The {@code doubt} key of a piece in the answer of {@code check --json}. */
final class DoubtJson {
    static final String KEY = "doubt";

    private final JsonGenerator out;

    DoubtJson(JsonGenerator out) {
        this.out = out;
    }

    void write(Optional<TwoWays> doubt) throws IOException {
        if (doubt.isEmpty()) {
            out.writeNullField(KEY);
            return;
        }
        Doubt stated = doubt.get().stated();
        out.writeObjectFieldStart(KEY);
        out.writeNumberField("handles", stated.handles());
        out.writeNumberField("seed", stated.seed());
        share("under_limit", stated.under());
        share("under_least_made", stated.stopped());
        out.writeArrayFieldStart("zones");
        for (ZoneDoubt zone : stated.zones()) {
            out.writeStartObject();
            out.writeStringField("zone", word(zone.zone()));
            number("limit_mm", zone.limitMm());
            share("under_limit", zone.under());
            out.writeEndObject();
        }
        out.writeEndArray();
        end(stated.end());
        spread("wall_over_limit_mm", stated.leastWall());
        spread("balance_mm", stated.balance());
        spread("mass_g", stated.mass());
        out.writeArrayFieldStart("matters");
        for (Weight weight : stated.weights()) {
            out.writeStartObject();
            out.writeStringField("input", word(weight.input()));
            number("of_wall", weight.ofWall());
            number("of_balance", weight.ofBalance());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("wall_bands");
        for (Band band : stated.bands()) {
            out.writeStartObject();
            number("x_mm", band.x());
            number("p5_mm", band.lowMm());
            number("p50_mm", band.middleMm());
            number("p95_mm", band.highMm());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeObjectFieldStart("drilled_otherwise");
        out.writeStringField("way", doubt.get().otherWay());
        share("under_limit", doubt.get().other().under());
        out.writeEndObject();
        out.writeEndObject();
    }

    private void end(EndDoubt end) throws IOException {
        out.writeObjectFieldStart("bore_end");
        out.writeStringField("to", end.isWeb() ? "bore" : "butt");
        number("limit_mm", end.limitMm());
        share("under_limit", end.under());
        share("under_least_made", end.stopped());
        spread("left_mm", end.left());
        out.writeEndObject();
    }

    private void share(String key, Proportion share) throws IOException {
        out.writeObjectFieldStart(key);
        out.writeNumberField("count", share.count());
        number("share", share.value());
        number("low", share.low());
        number("high", share.high());
        out.writeEndObject();
    }

    private void spread(String key, Spread spread) throws IOException {
        out.writeObjectFieldStart(key);
        number("mean", spread.mean());
        number("deviation", spread.deviation());
        number("p5", spread.low());
        number("p50", spread.middle());
        number("p95", spread.high());
        out.writeEndObject();
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        CheckJson.number(out, value);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
