package haftline.store;

import haftline.measure.NumberText;
import java.util.List;
import java.util.Optional;

/**
 * One key of a map in a document. Reader, writer and schema go by it, so that they cannot differ.
 *
 * @param name the key as it is written
 * @param form what may stand there
 * @param range the numbers that are allowed; meaningless where no number stands
 * @param required whether it must be there
 * @param says what it means, in words for the schema; of {@link Form#SEVERAL} what is expected
 * @param words the words of {@link Form#WORD}
 * @param child the keys of maps below
 */
record Key(
        String name,
        Form form,
        Range range,
        boolean required,
        String says,
        List<String> words,
        Optional<Keys> child) {

    /**
     * A range of numbers.
     *
     * @param low least
     * @param high greatest
     * @param isOpen whether the two ends themselves are left out
     * @param unit what follows the numbers in a message, may be empty
     */
    record Range(double low, double high, boolean isOpen, String unit) {
        static final Range NONE = closed(0, 0, "");

        static Range closed(double low, double high, String unit) {
            return new Range(low, high, false, unit);
        }

        static Range open(double low, double high, String unit) {
            return new Range(low, high, true, unit);
        }

        boolean holds(double value) {
            return isOpen ? value > low && value < high : value >= low && value <= high;
        }

        /** A number that is allowed, to go on with where another was found. */
        double standIn() {
            return isOpen ? (low + high) / 2 : low;
        }

        String text() {
            String least = NumberText.shortest(low);
            if (low == high) {
                return least;
            }
            String greatest = NumberText.shortest(high);
            String numbers =
                    isOpen
                            ? "between " + least + " and " + greatest
                            : "from " + least + " to " + greatest;
            return unit.isEmpty() ? numbers : numbers + " " + unit;
        }
    }

    private static Key plain(String name, Form form, Range range, String says) {
        return new Key(name, form, range, false, says, List.of(), Optional.empty());
    }

    static Key text(String name, String says) {
        return plain(name, Form.TEXT, Range.NONE, says);
    }

    static Key note(String name, String says) {
        return plain(name, Form.NOTE, Range.NONE, says);
    }

    static Key texts(String name, String says) {
        return plain(name, Form.TEXTS, Range.NONE, says);
    }

    static Key word(String name, List<String> words, String says) {
        return new Key(name, Form.WORD, Range.NONE, false, says, words, Optional.empty());
    }

    static Key yesNo(String name, String says) {
        return plain(name, Form.YES_NO, Range.NONE, says);
    }

    static Key number(String name, double low, double high, String unit, String says) {
        return plain(name, Form.NUMBER, Range.closed(low, high, unit), says);
    }

    /** A share of something, neither nothing nor all of it. */
    static Key share(String name, String says) {
        return plain(name, Form.NUMBER, Range.open(0, 1, ""), says);
    }

    static Key whole(String name, int low, int high, String says) {
        return plain(name, Form.WHOLE, Range.closed(low, high, ""), says);
    }

    static Key length(String name, double low, double high, String says) {
        return plain(name, Form.LENGTH, Range.closed(low, high, "mm"), says);
    }

    /** A distance from an end that does not reach it. */
    static Key distance(String name, double high, String says) {
        return plain(name, Form.LENGTH, Range.open(0, high, "mm"), says);
    }

    static Key measured(String name, double low, double high, String says) {
        return plain(name, Form.MEASURED, Range.closed(low, high, "mm"), says);
    }

    static Key several(String name, String expected) {
        return plain(name, Form.SEVERAL, Range.NONE, expected);
    }

    static Key map(String name, Keys child, String says) {
        return new Key(name, Form.MAP, Range.NONE, false, says, List.of(), Optional.of(child));
    }

    static Key maps(String name, Keys child, String says) {
        return new Key(name, Form.MAPS, Range.NONE, false, says, List.of(), Optional.of(child));
    }

    static Key namedMaps(String name, Keys child, String says) {
        return new Key(
                name, Form.NAMED_MAPS, Range.NONE, false, says, List.of(), Optional.of(child));
    }

    /** The same key, which must be there. */
    Key must() {
        return new Key(name, form, range, true, says, words, child);
    }

    /** What is expected behind the key, for a message. */
    String expected() {
        return switch (form) {
            case TEXT -> "a text";
            case NOTE -> "a text of one or more lines";
            case WORD -> words.size() == 1 ? words.get(0) : "one of: " + String.join(", ", words);
            case YES_NO -> "true or false";
            case NUMBER -> "a number " + range.text();
            case WHOLE ->
                    range.low() == range.high() ? range.text() : "a whole number " + range.text();
            case LENGTH -> "a length " + range.text();
            case MEASURED -> "a length " + range.text() + " or a list of readings";
            case MAP -> "a map with " + child.orElseThrow().listed();
            case MAPS -> "a list of maps with " + child.orElseThrow().listed();
            case NAMED_MAPS -> "a map from names to maps with " + child.orElseThrow().listed();
            case TEXTS -> "a list of texts";
            case SEVERAL -> says;
        };
    }
}
