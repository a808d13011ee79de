package haftline.write;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * File names, without ending, made from what a user called a piece: good on every common file
 * system.
 *
 * <p>Letters, digits and combining marks of any script stay, in lower case and in composed form
 * (NFKC), for two names that differ only in case or composition are one file on some systems;
 * everything else becomes a hyphen. The device names that Windows keeps for itself, and a name of
 * which nothing is left, are given a word in front.
 */
public final class FileName {
    /**
     * File systems allow 255 bytes; half of that leaves room for endings, counters and a passing
     * name.
     */
    private static final int MOST_BYTES = 120;

    private static final String WORD = "piece";

    /** Device names of Windows; superscript digits, reserved too, become plain ones under NFKC. */
    private static final Pattern RESERVED =
            Pattern.compile("con|prn|aux|nul|conin|conout|(com|lpt)[0-9]");

    private FileName() {}

    /**
     * The file name for a name.
     *
     * @param name any text
     * @return letters, digits and single hyphens, never empty
     */
    public static String from(String name) {
        StringBuilder kept = new StringBuilder();
        // Lower case can come apart again: the Turkish dotted capital I becomes an i and a dot.
        composed(composed(name).toLowerCase(Locale.ROOT))
                .codePoints()
                .forEach(character -> append(kept, character));
        String cut = cut(kept);
        if (cut.isEmpty()) {
            return WORD;
        }
        return RESERVED.matcher(cut).matches() ? WORD + "-" + cut : cut;
    }

    /**
     * File names for several names, no two the same: a later double gets a number.
     *
     * @param names any texts
     * @return a file name for each, in the same order
     */
    public static List<String> unique(Collection<String> names) {
        Set<String> taken = new HashSet<>();
        List<String> unique = new ArrayList<>(names.size());
        for (String name : names) {
            String base = from(name);
            String candidate = base;
            for (int number = 2; !taken.add(candidate); number++) {
                candidate = base + "-" + number;
            }
            unique.add(candidate);
        }
        return List.copyOf(unique);
    }

    private static String composed(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC);
    }

    private static void append(StringBuilder kept, int character) {
        if (Character.isLetterOrDigit(character) || isMark(character)) {
            kept.appendCodePoint(character);
        } else if (kept.length() > 0 && kept.charAt(kept.length() - 1) != '-') {
            kept.append('-');
        }
    }

    /** Vowel signs and accents that have no composed form belong to their letter. */
    private static boolean isMark(int character) {
        int type = Character.getType(character);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }

    private static String cut(StringBuilder kept) {
        int length = 0;
        int bytes = 0;
        while (length < kept.length()) {
            String character = Character.toString(kept.codePointAt(length));
            bytes += character.getBytes(StandardCharsets.UTF_8).length;
            if (bytes > MOST_BYTES) {
                break;
            }
            length += character.length();
        }
        while (length > 0 && kept.charAt(length - 1) == '-') {
            length--;
        }
        return kept.substring(0, length);
    }
}
