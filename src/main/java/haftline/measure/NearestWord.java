package haftline.measure;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one most likely meant. */
public final class NearestWord {
    /** One slip in three letters is still recognisable; more turn oak into teak. */
    private static final int LETTERS_PER_SLIP = 3;

    /** A part of a word shorter than this is found in too many words to be a hint. */
    private static final int LEAST_PART = 3;

    private NearestWord() {}

    /**
     * The word nearest to a given one, capitals aside: by the fewest slips (a letter too many, too
     * few, wrong, or two neighbours swapped), else the shortest word that holds the given one.
     *
     * @param known the words to choose from
     * @param given the word that was typed
     * @return the nearest, or nothing where none is near
     */
    public static Optional<String> to(Collection<String> known, String given) {
        String typed = given.strip().toLowerCase(Locale.ROOT);
        String nearest = null;
        int fewest = (typed.length() + 1) / LETTERS_PER_SLIP + 1;
        for (String word : known) {
            int slips = slips(typed, word.toLowerCase(Locale.ROOT), fewest);
            if (slips < fewest) {
                fewest = slips;
                nearest = word;
            }
        }
        return nearest != null ? Optional.of(nearest) : shortestHolding(known, typed);
    }

    private static Optional<String> shortestHolding(Collection<String> known, String typed) {
        if (typed.length() < LEAST_PART) {
            return Optional.empty();
        }
        String shortest = null;
        for (String word : known) {
            if (word.toLowerCase(Locale.ROOT).contains(typed)
                    && (shortest == null || word.length() < shortest.length())) {
                shortest = word;
            }
        }
        return Optional.ofNullable(shortest);
    }

    /**
     * Slips between two words: the edit distance with swaps of neighbours (optimal string
     * alignment).
     *
     * @param one a word
     * @param other another
     * @return the number of slips
     */
    public static int slips(String one, String other) {
        return slips(one, other, Integer.MAX_VALUE);
    }

    /** Gives up, returning the limit, once the length alone makes it as far off as that. */
    private static int slips(String one, String other, int limit) {
        if (Math.abs(one.length() - other.length()) >= limit) {
            return limit;
        }
        int[] before = new int[other.length() + 1];
        int[] last = new int[other.length() + 1];
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(last[j - 1] + change, Math.min(last[j], row[j - 1]) + 1);
                boolean swapped =
                        i > 1
                                && j > 1
                                && one.charAt(i - 1) == other.charAt(j - 2)
                                && one.charAt(i - 2) == other.charAt(j - 1);
                if (swapped) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            int[] spare = before;
            before = last;
            last = row;
            row = spare;
        }
        return last[other.length()];
    }
}
