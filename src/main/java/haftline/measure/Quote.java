package haftline.measure;

import java.util.Locale;

/** Words of the user's as they are repeated in a message: short, on one line, printable. */
public final class Quote {
    private static final int LONGEST = 40;

    private Quote() {}

    /**
     * With quotation marks.
     *
     * @param text what the user wrote
     * @return its first 40 characters, those that cannot be seen as \\uXXXX
     */
    public static String of(String text) {
        return "\"" + plain(text) + "\"";
    }

    /**
     * Without quotation marks.
     *
     * @param text what the user wrote
     * @return its first 40 characters, those that cannot be seen as \\uXXXX
     */
    public static String plain(String text) {
        StringBuilder quoted = new StringBuilder();
        int[] shown = text.codePoints().limit(LONGEST).toArray();
        for (int c : shown) {
            // Marks that turn the writing's direction would garble the rest of the line.
            boolean hidden = Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
            if (hidden || !isCharacter(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        }
        return text.codePointCount(0, text.length()) > LONGEST
                ? quoted.append("...").toString()
                : quoted.toString();
    }

    /**
     * Whether a code point may stand in every file that is written.
     *
     * @param c a code point
     * @return false for half of a surrogate pair and for those that XML bars
     */
    public static boolean isCharacter(int c) {
        return !(c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)
                && c != 0xFFFE
                && c != 0xFFFF;
    }
}
