package haftline.store;

import haftline.measure.Quote;
import java.util.Optional;

/**
 * Which texts may stand in a document: what every file format written later can hold, so that a
 * name does not break a drawing.
 */
final class Texts {
    /** A line of text; more is not a name. */
    static final int LONGEST_LINE = 1000;

    /** A note. */
    static final int LONGEST_NOTE = 20_000;

    private Texts() {}

    /** What is wrong with a text, or empty. */
    static Optional<String> fault(String text, boolean lines) {
        int longest = lines ? LONGEST_NOTE : LONGEST_LINE;
        int length = text.codePointCount(0, text.length());
        if (length > longest) {
            return Optional.of(
                    "found a text of " + length + " characters, expected at most " + longest);
        }
        if (text.isBlank() && !lines) {
            return Optional.of("found an empty text, expected a name");
        }
        return text.codePoints()
                .filter(c -> !allowed(c, lines))
                .mapToObj(
                        c ->
                                String.format(
                                        java.util.Locale.ROOT,
                                        "found the character U+%04X, which no name or note may"
                                                + " hold",
                                        c))
                .findFirst();
    }

    private static boolean allowed(int c, boolean lines) {
        if (c == '\n' || c == '\t') {
            return lines;
        }
        return !Character.isISOControl(c) && Quote.isCharacter(c);
    }
}
