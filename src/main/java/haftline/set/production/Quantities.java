package haftline.set.production;

import haftline.measure.NearestWord;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How many of each piece are to be made, in the order of the set.
 *
 * @param counts 1 or more by the piece's name; at least one piece
 */
public record Quantities(Map<String, Integer> counts) {
    /** A workshop makes no more of one piece in one batch. */
    public static final int MOST = 1000;

    /** Checks the ranges and copies the map, its order too. */
    public Quantities {
        if (counts.isEmpty()) {
            throw new IllegalArgumentException("quantity: expected at least one piece");
        }
        counts.forEach(
                (piece, count) -> {
                    if (count < 1 || count > MOST) {
                        throw new IllegalArgumentException(
                                "quantity of " + piece + " " + count + ": " + expected());
                    }
                });
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }

    private static String expected() {
        return "expected a whole number from 1 to " + MOST;
    }

    /**
     * Reads quantities as they are typed: one number for every piece ({@code 6}), or the pieces by
     * name ({@code shucker=6, seafood fork=4}); pieces that are not named are not made.
     *
     * @param texts one or more texts
     * @param pieces names of the pieces of the set
     * @return the quantities
     * @throws IllegalArgumentException where a number is none or out of range or a name is not
     *     known; the message says what is expected, with the nearest name
     */
    public static Quantities parse(List<String> texts, Collection<String> pieces) {
        Map<String, Integer> given = new LinkedHashMap<>();
        for (String text : texts) {
            int sign = text.lastIndexOf('=');
            if (sign < 0) {
                int count = number(text);
                pieces.forEach(piece -> put(given, piece, count));
            } else if (pieces.contains(text.substring(0, sign).strip())) {
                // A name may hold a comma, so the whole is tried before it is divided.
                put(given, text.substring(0, sign).strip(), number(text.substring(sign + 1)));
            } else {
                for (String part : text.split(",", -1)) {
                    one(given, part, pieces);
                }
            }
        }
        Map<String, Integer> inOrder = new LinkedHashMap<>();
        for (String piece : pieces) {
            if (given.containsKey(piece)) {
                inOrder.put(piece, given.get(piece));
            }
        }
        return new Quantities(inOrder);
    }

    private static void one(Map<String, Integer> given, String part, Collection<String> pieces) {
        int sign = part.lastIndexOf('=');
        if (sign < 0) {
            throw new IllegalArgumentException(
                    "quantity \""
                            + part.strip()
                            + "\": expected a number for all pieces, or a piece and its number, such"
                            + " as "
                            + pieces.iterator().next()
                            + "=6");
        }
        put(
                given,
                known(part.substring(0, sign).strip(), pieces),
                number(part.substring(sign + 1)));
    }

    private static void put(Map<String, Integer> given, String piece, int count) {
        if (given.put(piece, count) != null) {
            throw new IllegalArgumentException("quantity of " + piece + ": given twice");
        }
    }

    /**
     * A piece's name, or a message with the nearest one.
     *
     * @param name the name that was given
     * @param pieces the names there are
     * @return the name
     * @throws IllegalArgumentException where there is no such piece
     */
    static String known(String name, Collection<String> pieces) {
        if (!pieces.contains(name)) {
            String near =
                    NearestWord.to(pieces, name)
                            .map(word -> "; did you mean \"" + word + "\"?")
                            .orElse("; there are " + String.join(", ", pieces));
            throw new IllegalArgumentException("no piece \"" + name + "\" in the set" + near);
        }
        return name;
    }

    private static int number(String text) {
        String digits = text.strip();
        if (!digits.matches("[0-9]{1,6}") || Integer.parseInt(digits) < 1) {
            throw new IllegalArgumentException("quantity \"" + digits + "\": " + expected());
        }
        int count = Integer.parseInt(digits);
        if (count > MOST) {
            throw new IllegalArgumentException("quantity " + count + ": " + expected());
        }
        return count;
    }

    /**
     * How many of a piece.
     *
     * @param piece the piece's name
     * @return the count, 0 where it is not made
     */
    public int of(String piece) {
        return counts.getOrDefault(piece, 0);
    }

    /**
     * All pieces together.
     *
     * @return the count
     */
    public int total() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
}
