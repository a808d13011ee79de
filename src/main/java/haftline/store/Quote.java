package haftline.store;

/** Pieces of a document as they are repeated in a message: short, on one line, printable. */
final class Quote {
    private static final int LONGEST = 40;

    private Quote() {}

    /** With quotation marks. */
    static String of(String text) {
        return "\"" + plain(text) + "\"";
    }

    /** Without quotation marks. */
    static String plain(String text) {
        StringBuilder quoted = new StringBuilder();
        int[] shown = text.codePoints().limit(LONGEST).toArray();
        for (int c : shown) {
            // Marks that turn the writing's direction would garble the rest of the line.
            boolean hidden = Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
            if (hidden || !Texts.isCharacter(c)) {
                quoted.append(String.format(java.util.Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        }
        return text.codePointCount(0, text.length()) > LONGEST
                ? quoted.append("...").toString()
                : quoted.toString();
    }
}
