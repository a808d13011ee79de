package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Answer;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Move;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer of {@code adjust --json}: every key is always there, {@code null} where it does not
 * apply; lengths in mm. docs/formats/adjust-json.md describes it.
 */
final class AdjustJson {
    /** Rises when a key changes its meaning or goes away; a new key does not raise it. */
    private static final int VERSION = 1;

    private final JsonGenerator out;

    private AdjustJson(JsonGenerator out) {
        this.out = out;
    }

    /** The whole answer, ending in a line feed. */
    static String of(
            String set,
            Adjustment adjustment,
            Optional<Fairing> fairing,
            List<AdjustFiles.Change> changes,
            List<String> written) {
        return JsonPaper.of(
                out -> new AdjustJson(out).answer(set, adjustment, fairing, changes, written));
    }

    private void answer(
            String set,
            Adjustment adjustment,
            Optional<Fairing> fairing,
            List<AdjustFiles.Change> changes,
            List<String> written)
            throws IOException {
        out.writeStartObject();
        out.writeNumberField("haftline", VERSION);
        out.writeStringField("set", set);
        out.writeBooleanField("met", adjustment.isMet());
        number("change_mm", adjustment.changeMm());
        moves("moves", adjustment.moves());
        demands("demands", adjustment.answers());
        out.writeArrayFieldStart("conflicts");
        for (List<Answer> conflict : adjustment.conflicts()) {
            out.writeStartArray();
            for (Answer answer : conflict) {
                out.writeStartObject();
                out.writeStringField("piece", answer.piece());
                out.writeStringField("need", word(answer.need()));
                out.writeEndObject();
            }
            out.writeEndArray();
        }
        out.writeEndArray();
        if (fairing.isPresent()) {
            fairing(fairing.get());
        } else {
            out.writeNullField("fairing");
        }
        out.writeArrayFieldStart("changes");
        for (AdjustFiles.Change change : changes) {
            out.writeStartObject();
            out.writeStringField("file", change.file());
            out.writeStringField("what", change.what());
            out.writeArrayFieldStart("pieces");
            for (String piece : change.pieces()) {
                out.writeString(piece);
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("written");
        for (String file : written) {
            out.writeString(file);
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void moves(String key, List<Move> moves) throws IOException {
        out.writeArrayFieldStart(key);
        for (Move move : moves) {
            out.writeStartObject();
            out.writeStringField("what", move.what());
            out.writeStringField("document", word(move.document()));
            out.writeStringField("piece", move.piece().orElse(null));
            out.writeStringField("unit", move.unit());
            number("before", move.before());
            number("after", move.after());
            out.writeArrayFieldStart("sizes");
            for (Move.Size size : move.sizes()) {
                out.writeStartObject();
                out.writeStringField("piece", size.piece());
                number("before_mm", size.beforeMm());
                number("after_mm", size.afterMm());
                out.writeEndObject();
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void demands(String key, List<Answer> answers) throws IOException {
        out.writeArrayFieldStart(key);
        for (Answer answer : answers) {
            out.writeStartObject();
            out.writeStringField("piece", answer.piece());
            out.writeStringField("need", word(answer.need()));
            number("before_mm", answer.beforeMm());
            number("after_mm", answer.afterMm());
            number("low_mm", answer.lowMm());
            number("high_mm", answer.highMm());
            number("margin_before_mm", answer.marginBeforeMm());
            number("margin_after_mm", answer.marginAfterMm());
            out.writeStringField("standing", word(answer.standing()));
            out.writeStringField("because", answer.because().isEmpty() ? null : answer.because());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void fairing(Fairing fairing) throws IOException {
        out.writeObjectFieldStart("fairing");
        number("band_mm", fairing.bandMm());
        number("variation_before_per_mm3", fairing.variationBefore());
        number("variation_after_per_mm3", fairing.variationAfter());
        moves("moves", fairing.moves());
        out.writeEndObject();
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        CheckJson.number(out, value);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
