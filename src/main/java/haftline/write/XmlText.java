package haftline.write;

/** Text made safe for XML 1.0, whatever a user typed. */
public final class XmlText {
    private XmlText() {}

    /**
     * Escapes a text for element content and for attributes in either quotes.
     *
     * <p>What XML 1.0 (section 2.2, Char) does not allow at all, not even escaped, is dropped:
     * control characters, lone surrogates, U+FFFE and U+FFFF. Line breaks and tabs become spaces: a
     * label is one line.
     *
     * @param text any text
     * @return the text for XML
     */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(character -> append(out, character));
        return out.toString();
    }

    private static void append(StringBuilder out, int character) {
        switch (character) {
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '&' -> out.append("&amp;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&apos;");
            case '\t', '\n', '\r' -> out.append(' ');
            default -> {
                if (isAllowed(character)) {
                    out.appendCodePoint(character);
                }
            }
        }
    }

    private static boolean isAllowed(int character) {
        // The C1 controls are legal but mean nothing in a label, and some readers choke on them.
        return !Character.isISOControl(character)
                && character != 0xFFFE
                && character != 0xFFFF
                && !(character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE);
    }
}
