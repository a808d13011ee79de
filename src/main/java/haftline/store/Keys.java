package haftline.store;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The keys that a map may have, in the order in which they are written.
 *
 * @param what what the map describes, one or two words
 * @param keys the keys
 */
record Keys(String what, List<Key> keys) {
    static Keys of(String what, Key... keys) {
        return new Keys(what, List.of(keys));
    }

    Optional<Key> find(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    String listed() {
        return keys.stream().map(Key::name).collect(Collectors.joining(", "));
    }

    /** What to say about a name that is not among them. */
    String unknown(String name) {
        return "unknown key in a " + what + Hint.nearest(names(), name);
    }
}
