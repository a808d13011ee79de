package haftline.stock;

import haftline.measure.NearestWord;
import haftline.measure.Quote;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Entries by key, in the order of the files. Immutable.
 *
 * @param <E> kind of entry
 */
public final class Catalogue<E extends Keyed> {
    /** A longer list is no help in a message of one line. */
    private static final int MOST_LISTED = 8;

    private final String kind;
    private final Map<String, E> entries;
    private final List<String> notes;

    private Catalogue(String kind, Map<String, E> entries, List<String> notes) {
        this.kind = kind;
        this.entries = entries;
        this.notes = notes;
    }

    /**
     * A catalogue.
     *
     * @param kind what an entry is called, for messages, such as {@code wood}
     * @param entries the entries; a later one takes the place of an earlier one of the same key
     * @param notes what was replaced, in words
     * @param <E> kind of entry
     * @return the catalogue
     */
    public static <E extends Keyed> Catalogue<E> of(
            String kind, Collection<? extends E> entries, List<String> notes) {
        Map<String, E> byKey = new LinkedHashMap<>();
        for (E entry : entries) {
            byKey.put(entry.key(), entry);
        }
        return new Catalogue<>(kind, Collections.unmodifiableMap(byKey), List.copyOf(notes));
    }

    /**
     * The entries in order.
     *
     * @return an unmodifiable list
     */
    public List<E> entries() {
        return List.copyOf(entries.values());
    }

    /**
     * The keys in order.
     *
     * @return an unmodifiable collection
     */
    public Collection<String> keys() {
        return entries.keySet();
    }

    /**
     * How many entries there are.
     *
     * @return 0 or more
     */
    public int size() {
        return entries.size();
    }

    /**
     * The entry under a key.
     *
     * @param key the key
     * @return the entry, or nothing; then {@link #missing} says what to tell the user
     */
    public Optional<E> find(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    /**
     * The key that a mistyped one most likely meant.
     *
     * @param key the key that was not found
     * @return the nearest key, or nothing where none is near
     */
    public Optional<String> nearestKey(String key) {
        return NearestWord.to(entries.keySet(), key.strip().replace(' ', '-'));
    }

    /**
     * What to tell the user about a key that is not here.
     *
     * @param key the key that was not found
     * @return one sentence, with the keys of which it is a part, else with the nearest key where
     *     there is one
     */
    public String missing(String key) {
        List<String> kinds = withPart(key.strip().toLowerCase(Locale.ROOT));
        String hint =
                kinds.size() > 1
                        ? "; there are " + String.join(", ", kinds)
                        : nearestKey(key)
                                .map(near -> "; did you mean \"" + near + "\"?")
                                .orElse("; " + entries.size() + " are known");
        return "no " + kind + " " + Quote.of(key) + " in the catalogue" + hint;
    }

    /** Keys of which a word is one part: sugar-maple and red-maple of maple. */
    private List<String> withPart(String word) {
        List<String> keys =
                entries.keySet().stream()
                        .filter(key -> Arrays.asList(key.split("-")).contains(word))
                        .sorted()
                        .toList();
        if (keys.size() <= MOST_LISTED) {
            return keys;
        }
        List<String> some = new ArrayList<>(keys.subList(0, MOST_LISTED));
        some.add("...");
        return some;
    }

    /**
     * What a further file replaced, in words, for the user to see.
     *
     * @return one line for each replaced entry
     */
    public List<String> notes() {
        return notes;
    }

    /** This catalogue followed by another of a kind with it; keys must differ. */
    static <E extends Keyed> Catalogue<E> joined(
            String kind, Catalogue<? extends E> first, Catalogue<? extends E> second) {
        List<E> all = new ArrayList<>(first.entries());
        all.addAll(second.entries());
        List<String> notes = new ArrayList<>(first.notes());
        notes.addAll(second.notes());
        return of(kind, all, notes);
    }
}
