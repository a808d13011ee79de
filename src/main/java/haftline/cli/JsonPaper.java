package haftline.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** An answer in JSON: objects on lines of their own, arrays in one, line feeds everywhere. */
final class JsonPaper {
    private JsonPaper() {}

    /** What writes an answer. */
    interface Answer {
        void writeTo(JsonGenerator out) throws IOException;
    }

    /** The whole answer, ending in a line feed. */
    static String of(Answer answer) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.setPrettyPrinter(printer());
            answer.writeTo(out);
        } catch (IOException e) {
            throw new UncheckedIOException("a StringWriter does not fail", e);
        }
        return text.append('\n').toString();
    }

    private static DefaultPrettyPrinter printer() {
        return new DefaultPrettyPrinter()
                .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                .withSeparators(
                        Separators.createDefaultInstance()
                                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    }
}
