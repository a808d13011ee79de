package haftline.write.dxf;

import java.text.Normalizer;
import java.util.Locale;

/** A user's text made safe for a TEXT entity of an ASCII file. */
final class DxfText {
    /** Strings of a TEXT entity hold 255 characters in older readers; escapes count in full. */
    private static final int MOST_CHARACTERS = 250;

    private static final String CUT_SHORT = "...";
    private static final int REPLACEMENT = 0xFFFD;

    private DxfText() {}

    /**
     * Escapes a text.
     *
     * <p>The signs for diameter, degree and plus-minus have codes of their own, other characters
     * beyond ASCII become U+XXXX escapes. Those reach four digits: what lies above (emoji) becomes
     * the replacement character. Line breaks and control characters become spaces or go. A
     * backslash is escaped and a double percent sign taken apart, so that no code can be smuggled
     * in; a caret is followed by a space, as the format wants. Too long a text ends in three dots.
     */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (int character : text.codePoints().toArray()) {
            String escaped = escaped(character, out);
            if (out.length() + escaped.length() > MOST_CHARACTERS) {
                return out.append(CUT_SHORT).toString();
            }
            out.append(escaped);
        }
        return out.toString();
    }

    /**
     * A text for release 12, which has no escapes for characters beyond ASCII: letters lose their
     * accents, what is left of other scripts becomes a question mark.
     */
    static String plain(String text) {
        String signs =
                text.replace('\u2300', '\u00D8')
                        .replace('\u00B5', 'u')
                        .replace('\u2212', '-')
                        .replace('\\', '/');
        StringBuilder kept = new StringBuilder();
        Normalizer.normalize(signs, Normalizer.Form.NFKD)
                .codePoints()
                .filter(character -> Character.getType(character) != Character.NON_SPACING_MARK)
                .map(character -> isPlain(character) ? character : '?')
                .forEach(kept::appendCodePoint);
        return escaped(kept.toString());
    }

    /** ASCII, and the three signs that have codes of their own. */
    private static boolean isPlain(int character) {
        return character < 0x7F || character == 0xD8 || character == 0xB0 || character == 0xB1;
    }

    private static String escaped(int character, StringBuilder before) {
        switch (character) {
            case '\t', '\n', '\r':
                return " ";
            case '\u2300', '\u00D8':
                return "%%c";
            case '\u00B0':
                return "%%d";
            case '\u00B1':
                return "%%p";
            case '\u2212':
                // Not every drawing program's letters have the proper one.
                return "-";
            case '\\':
                return unicode(character);
            case '^':
                return "^ ";
            case '%':
                return before.length() > 0 && before.charAt(before.length() - 1) == '%'
                        ? " %"
                        : "%";
            default:
                if (Character.isISOControl(character)) {
                    return "";
                }
                return character < 0x80 ? Character.toString(character) : unicode(character);
        }
    }

    private static String unicode(int character) {
        boolean isSurrogate =
                character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        boolean reachable = Character.isBmpCodePoint(character) && !isSurrogate;
        return String.format(Locale.ROOT, "\\U+%04X", reachable ? character : REPLACEMENT);
    }
}
