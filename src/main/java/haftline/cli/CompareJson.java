package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.findings.Finding;
import haftline.findings.Words;
import haftline.handle.Fit;
import haftline.measure.Measured;
import haftline.measure.Units;
import haftline.set.BatchChange;
import haftline.set.FigureChange;
import haftline.set.PartChange;
import haftline.set.PieceChange;
import haftline.stock.Stock;
import haftline.template.ComparedPiece;
import haftline.template.StillServes;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer of {@code compare --json}: every key is always there, {@code null} where it does not
 * apply; lengths in mm, masses in g. docs/formats/compare.md describes it.
 */
final class CompareJson {
    /** Rises when a key changes its meaning or goes away; a new key does not raise it. */
    private static final int VERSION = 1;

    private final JsonGenerator out;
    private final Units units;

    private CompareJson(JsonGenerator out, Units units) {
        this.out = out;
        this.units = units;
    }

    static String of(Comparison comparison, Units units) {
        return JsonPaper.of(out -> new CompareJson(out, units).write(comparison));
    }

    private void write(Comparison comparison) throws IOException {
        out.writeStartObject();
        out.writeNumberField("haftline", VERSION);
        out.writeStringField("set", comparison.set());
        batch("before", comparison.chosen().before());
        batch("after", comparison.chosen().after());
        number("tolerance_mm", comparison.toleranceMm());
        out.writeArrayFieldStart("pieces");
        for (ComparedPiece piece : comparison.pieces()) {
            piece(piece);
        }
        out.writeEndArray();
        out.writeArrayFieldStart("missing");
        for (BatchChange.Missing missing : comparison.change().missing()) {
            out.writeStartObject();
            out.writeStringField("piece", missing.piece());
            out.writeStringField("kit", missing.kit());
            out.writeStringField("batch", missing.batch());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void batch(String key, ChosenBatch chosen) throws IOException {
        out.writeObjectFieldStart(key);
        out.writeStringField("parts", chosen.file().toString());
        out.writeStringField("batch", chosen.batch().id());
        out.writeEndObject();
    }

    private void piece(ComparedPiece piece) throws IOException {
        PieceChange change = piece.change();
        out.writeStartObject();
        out.writeStringField("name", change.name());
        out.writeBooleanField("stopped", change.after().isStopped());
        out.writeObjectFieldStart("fit");
        out.writeStringField("before", fit(change.before()));
        out.writeStringField("after", fit(change.after()));
        out.writeEndObject();
        out.writeArrayFieldStart("parts");
        for (PartChange part : change.parts()) {
            part(part);
        }
        out.writeEndArray();
        out.writeArrayFieldStart("figures");
        for (FigureChange figure : change.figures()) {
            figure(figure);
        }
        out.writeEndArray();
        out.writeFieldName("outline");
        if (change.outline().isPresent()) {
            out.writeStartObject();
            number("radius_difference_mm", change.outline().get().mm());
            number("at_mm", change.outline().get().atX());
            out.writeEndObject();
        } else {
            out.writeNull();
        }
        out.writeArrayFieldStart("gauges");
        for (StillServes gauge : piece.gauges()) {
            gauge(gauge);
        }
        out.writeEndArray();
        findings("findings_new", change.appeared(), change.after().brief().stock());
        findings("findings_gone", change.vanished(), change.before().brief().stock());
        out.writeEndObject();
    }

    private static String fit(PieceChange.Side side) {
        return side.figures()
                .map(figures -> figures.handle().fit().fit() == Fit.PRESSED ? "pressed" : "bonded")
                .orElse(null);
    }

    private void part(PartChange part) throws IOException {
        out.writeStartObject();
        out.writeStringField("size", part.name());
        out.writeStringField("part", part.part().name().toLowerCase(Locale.ROOT));
        number("before_mm", mean(part.before()));
        number("after_mm", mean(part.after()));
        number("difference_mm", part.differenceMm());
        number("doubt_mm", part.doubtMm());
        out.writeBooleanField("beyond_doubt", part.isBeyondDoubt());
        out.writeEndObject();
    }

    private static double mean(Optional<Measured> measured) {
        return measured.map(Measured::mean).orElse(Double.NaN);
    }

    private void figure(FigureChange figure) throws IOException {
        out.writeStartObject();
        out.writeStringField("figure", figure.what().text());
        out.writeNumberField("step", figure.step());
        number("before", figure.before());
        number("after", figure.after());
        number("difference", figure.difference());
        number("worth", figure.what().worth());
        out.writeBooleanField("changes", figure.isChange());
        out.writeEndObject();
    }

    private void gauge(StillServes gauge) throws IOException {
        out.writeStartObject();
        out.writeStringField("gauge", gauge.kind().text());
        out.writeBooleanField("serves", gauge.serves());
        out.writeStringField("cause", gauge.cause().text());
        number("off_mm", gauge.offMm());
        number("at_mm", gauge.atX());
        number("limit_mm", gauge.limitMm());
        out.writeStringField("why", gauge.why(units));
        out.writeEndObject();
    }

    private void findings(String key, List<Finding> findings, Stock stock) throws IOException {
        out.writeArrayFieldStart(key);
        for (Finding finding : findings) {
            out.writeStartObject();
            out.writeStringField("code", finding.code().text());
            out.writeStringField("gravity", Verdict.word(finding.gravity()));
            out.writeStringField("message", Words.message(finding, stock, units));
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        CheckJson.number(out, value);
    }
}
