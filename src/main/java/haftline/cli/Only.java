package haftline.cli;

import haftline.measure.NearestWord;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A word after {@code --only}: a kind of file, or one or more parts of the work.
 *
 * @param format the kind of file, where it names one
 * @param parts the parts that it names, else none
 */
record Only(Optional<Format> format, Set<Part> parts) {
    private static final Map<String, Only> WORDS = words();

    private static Map<String, Only> words() {
        Map<String, Only> words = new LinkedHashMap<>();
        for (Format format : Format.values()) {
            words.put(format.id(), new Only(Optional.of(format), Set.of()));
        }
        for (Part part : Part.values()) {
            words.put(part.id(), new Only(Optional.empty(), Set.of(part)));
        }
        words.put("gauges", new Only(Optional.empty(), Part.GAUGES));
        words.put("templates", new Only(Optional.empty(), Part.TEMPLATES));
        return words;
    }

    /** Reads it by its name. */
    static final class Option implements ITypeConverter<Only> {
        @Override
        public Only convert(String value) {
            Only only = WORDS.get(value.strip());
            if (only == null) {
                throw new TypeConversionException(
                        "there is nothing called \""
                                + Paper.harmless(value)
                                + "\" to make; there are "
                                + String.join(", ", WORDS.keySet())
                                + NearestWord.to(WORDS.keySet(), value)
                                        .map(word -> "; did you mean " + word + "?")
                                        .orElse(""));
            }
            return only;
        }
    }
}
