package haftline.store;

import java.util.Locale;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.ScalarResolver;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** Texts as YAML scalars: bare where that is safe, else in double quotation marks. */
final class Scalars {
    /**
     * Narrower than YAML allows: no bare text needs a second look. No colon and no hash, so that
     * none can be taken for a key or a comment.
     */
    private static final Pattern BARE = Pattern.compile(bare(","));

    /** Without the comma, which divides a flow collection. */
    private static final Pattern BARE_WITHIN = Pattern.compile(bare(""));

    private static final ScalarResolver RESOLVER = new CoreSchema().getScalarResolver();

    private Scalars() {}

    private static String bare(String more) {
        return "[\\p{L}\\p{N}_./(](?:[\\p{L}\\p{N} _./()'\"+%°&;*"
                + more
                + "-]*[\\p{L}\\p{N}_./)\"])?";
    }

    /**
     * A text as a scalar that is read back as the same text.
     *
     * @param text the text
     * @param within whether it stands in a flow collection
     */
    static String of(String text, boolean within) {
        boolean bare =
                (within ? BARE_WITHIN : BARE).matcher(text).matches()
                        && !text.contains("---")
                        && !text.contains("...")
                        && RESOLVER.resolve(text, true).equals(Tag.STR);
        return bare ? text : quoted(text);
    }

    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> append(out, c));
        return out.append('"').toString();
    }

    private static void append(StringBuilder out, int c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (isPrintable(c)) {
                    out.appendCodePoint(c);
                } else {
                    String escape = c > 0xFFFF ? "\\U%08X" : "\\u%04X";
                    out.append(String.format(Locale.ROOT, escape, c));
                }
            }
        }
    }

    /** Marks that turn the writing's direction, and other unseen ones, are written as escapes. */
    static boolean isPrintable(int c) {
        int type = Character.getType(c);
        return !Character.isISOControl(c)
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.UNASSIGNED
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR
                && type != Character.PRIVATE_USE;
    }
}
