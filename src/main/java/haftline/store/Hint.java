package haftline.store;

import haftline.measure.NearestWord;
import haftline.measure.Quote;
import java.util.Collection;
import java.util.stream.Collectors;

/** The end of a message about a name that is not known: the nearest one, else those there are. */
final class Hint {
    /** A longer list is no help in a message of one line. */
    private static final int MOST_LISTED = 24;

    private Hint() {}

    static String nearest(Collection<String> known, String name) {
        if (known.isEmpty()) {
            return "; there are none";
        }
        String near = near(known, name);
        return near.isEmpty() ? listed(known) : near;
    }

    /** The nearest name, or nothing where none is near. */
    static String near(Collection<String> known, String name) {
        // Hyphens, blanks and underscores are slips of habit, not of spelling.
        return NearestWord.to(known, name.strip().replace('-', '_').replace(' ', '_'))
                .or(() -> NearestWord.to(known, name))
                .map(near -> "; did you mean " + Quote.plain(near) + "?")
                .orElse("");
    }

    private static String listed(Collection<String> known) {
        String names =
                known.stream()
                        .limit(MOST_LISTED)
                        .map(Quote::plain)
                        .collect(Collectors.joining(", "));
        return "; known are " + names + (known.size() > MOST_LISTED ? ", ..." : "");
    }
}
