package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.adjust.doubt.TwoWays;
import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.figures.SplitIndex;
import haftline.figures.Wall;
import haftline.figures.WoodVolume;
import haftline.findings.Finding;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.handle.Lengths;
import haftline.handle.Rules;
import haftline.measure.NumberText;
import haftline.set.Family;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * The answer of {@code check --json}, a stable interface: every key is always there, {@code null}
 * where it does not apply; lengths in mm, masses in g, angles in degrees, numbers in the shortest
 * form that is read back as the very same double. shared/schema/check.schema.json describes it.
 */
final class CheckJson {
    /** Rises when a key changes its meaning or goes away; a new key does not raise it. */
    private static final int VERSION = 1;

    private final JsonGenerator out;
    private final OutlineJson outline;

    private CheckJson(JsonGenerator out) {
        this.out = out;
        this.outline = new OutlineJson(out);
    }

    /** The whole answer, ending in a line feed. */
    static String of(ExaminedSet set) {
        return of(set, piece -> Optional.empty());
    }

    /** The same with what chance makes of each piece, where it was asked for. */
    static String of(ExaminedSet set, Function<ExaminedPiece, Optional<TwoWays>> doubts) {
        return JsonPaper.of(out -> new CheckJson(out).set(set, doubts));
    }

    private void set(ExaminedSet set, Function<ExaminedPiece, Optional<TwoWays>> doubts)
            throws IOException {
        out.writeStartObject();
        out.writeNumberField("haftline", VERSION);
        out.writeStringField("set", set.name());
        out.writeArrayFieldStart("pieces");
        for (ExaminedPiece piece : set.pieces()) {
            out.writeStartObject();
            out.writeStringField("name", piece.name());
            if (piece.figures().isPresent()) {
                figures(piece.figures().get());
            } else {
                noFigures();
            }
            findings(piece);
            new DoubtJson(out).write(doubts.apply(piece));
            out.writeEndObject();
        }
        out.writeEndArray();
        family(set);
        out.writeEndObject();
    }

    private void family(ExaminedSet set) throws IOException {
        out.writeFieldName("family");
        if (set.family().isEmpty() || set.family().get().family().rows().isEmpty()) {
            out.writeNull();
            return;
        }
        ExaminedFamily examined = set.family().get();
        out.writeStartObject();
        out.writeArrayFieldStart("traits");
        for (Family.Row row : examined.family().rows()) {
            out.writeStartObject();
            out.writeStringField("trait", row.trait().text());
            out.writeStringField("unit", word(row.trait().unit()));
            number("common", row.common());
            number("alike", row.trait().alike());
            number("apart", row.trait().apart());
            out.writeArrayFieldStart("pieces");
            for (Family.Entry entry : row.entries()) {
                entry(entry);
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("findings");
        for (ExaminedFamily.Stray stray : examined.strays()) {
            out.writeStartObject();
            out.writeStringField("piece", stray.stray().piece());
            out.writeStringField("trait", stray.stray().trait().text());
            finding(stray.told());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void entry(Family.Entry entry) throws IOException {
        out.writeStartObject();
        out.writeStringField("piece", entry.piece());
        number("value", entry.value());
        number("difference", entry.difference());
        number("percent", entry.percent());
        number("low", entry.low());
        number("high", entry.high());
        out.writeStringField("likeness", word(entry.likeness()));
        out.writeStringField("decided_by", word(entry.cause()));
        out.writeEndObject();
    }

    private void figures(Figures figures) throws IOException {
        Handle handle = figures.handle();
        length(handle.lengths());
        outline.write(handle.outline());
        out.writeObjectFieldStart("tenon");
        number("diameter_mm", handle.tenon().diameterMm());
        number("length_mm", handle.tenon().lengthMm());
        out.writeEndObject();
        number("ferrule_length_mm", handle.lengths().ferruleMm());
        out.writeStringField("fit", word(handle.fit().fit()));
        number("tang_engaged_mm", handle.fit().engagedMm());
        out.writeObjectFieldStart("wander");
        number("e0_mm", handle.wander().startMm());
        number("k", handle.wander().slope());
        out.writeEndObject();
        out.writeArrayFieldStart("bores");
        bore(handle.tangBore());
        if (handle.capBore().isPresent()) {
            bore(handle.capBore().get());
        }
        out.writeEndArray();
        volume(figures.wood());
        mass(figures.balance());
        balance(figures.balance(), handle.brief().rules().balance());
        walls(figures);
        Optional<SplitIndex> split = figures.splitIndex();
        number("split_index", split.isPresent() ? split.get().index() : Double.NaN);
        number("adhesive_mm3", figures.adhesive().volumeMm3());
    }

    /** A piece that cannot be drawn has a name and findings, nothing else. */
    private void noFigures() throws IOException {
        for (String key :
                new String[] {
                    "length",
                    OutlineJson.KEY,
                    "tenon",
                    "ferrule_length_mm",
                    "fit",
                    "tang_engaged_mm",
                    "wander",
                    "bores",
                    "volume",
                    "centroid_mm",
                    "mass",
                    "balance",
                    "walls",
                    "split_index",
                    "adhesive_mm3"
                }) {
            out.writeNullField(key);
        }
    }

    private void length(Lengths lengths) throws IOException {
        out.writeObjectFieldStart("length");
        number("overall_mm", lengths.overallMm());
        number("visible_wood_mm", lengths.visibleWoodMm());
        number("turned_wood_mm", lengths.turnedWoodMm());
        out.writeEndObject();
    }

    private void bore(Bore bore) throws IOException {
        out.writeStartObject();
        out.writeStringField("end", word(bore.end()));
        out.writeArrayFieldStart("steps");
        for (BoreStep step : bore.steps()) {
            out.writeStartObject();
            number("diameter_mm", step.diameterMm());
            number("drill_mm", step.drillMm());
            number("depth_mm", step.depthMm());
            number("point_angle_deg", step.pointAngleDeg());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void volume(WoodVolume wood) throws IOException {
        out.writeObjectFieldStart("volume");
        number("solid_mm3", wood.solidMm3());
        number("removed_mm3", wood.removedMm3());
        number("finished_mm3", wood.finishedMm3());
        number("centroid_mm", wood.centroidX());
        out.writeEndObject();
        // The contract can be read either way, so it stands in both places.
        number("centroid_mm", wood.centroidX());
    }

    private void mass(Balance balance) throws IOException {
        out.writeObjectFieldStart("mass");
        for (Share.Part part : Share.Part.values()) {
            double sum = 0;
            boolean there = false;
            for (Share share : balance.shares()) {
                if (share.part() == part) {
                    sum += share.massG();
                    there = true;
                }
            }
            number(word(part) + "_g", there ? sum : Double.NaN);
        }
        number("total_g", balance.totalG());
        out.writeEndObject();
    }

    private void balance(Balance balance, Rules.Balance target) throws IOException {
        out.writeObjectFieldStart("balance");
        number("from_ferrule_face_mm", balance.fromFerruleFaceMm());
        out.writeArrayFieldStart("target_mm");
        out.writeNumber(NumberText.shortest(target.lowMm()));
        out.writeNumber(NumberText.shortest(target.highMm()));
        out.writeEndArray();
        out.writeEndObject();
    }

    private void walls(Figures figures) throws IOException {
        out.writeArrayFieldStart("walls");
        for (Wall wall : figures.walls()) {
            out.writeStartObject();
            out.writeStringField("zone", word(wall.zone()));
            number("nominal_mm", wall.nominalMm());
            number("worst_mm", wall.worstMm());
            number("at_mm", wall.atX());
            number("shortest_worst_mm", wall.shortestWorstMm());
            number("limit_mm", wall.limitMm());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void findings(ExaminedPiece piece) throws IOException {
        out.writeArrayFieldStart("findings");
        for (Told told : piece.findings()) {
            out.writeStartObject();
            finding(told);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void finding(Told told) throws IOException {
        Finding finding = told.finding();
        out.writeStringField("code", finding.code().text());
        out.writeStringField("gravity", word(finding.gravity()));
        out.writeStringField("zone", word(finding.place()));
        number("at_mm", finding.atX());
        number("figure", finding.figure());
        number("limit", finding.limit());
        text("unit", finding.unit() == Finding.Unit.PLAIN ? null : finding.unit().text());
        out.writeStringField("rule", told.rule());
        out.writeStringField("message", told.message());
        text("remedy", told.remedy().orElse(null));
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        number(out, value);
    }

    /** JSON has no word for what is not a number; such a figure does not apply. */
    static void number(JsonGenerator out, double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumber(NumberText.shortest(value));
        } else {
            out.writeNull();
        }
    }

    private void text(String key, String value) throws IOException {
        out.writeFieldName(key);
        out.writeString(value);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
