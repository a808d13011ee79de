package haftline.stock;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How a figure is known, from the surest to the least sure. */
public enum Basis {
    /** The maker's own measurement. */
    MEASURED("measured"),
    /** Printed in the publication that is named. */
    PUBLISHED("published"),
    /** Arithmetic on published figures, by the equation that is named. */
    COMPUTED("computed"),
    /** A stand-in from a fitted relation or a neighbour, where nothing is printed. */
    ESTIMATE("estimate"),
    /** Recalled and not seen on a page; to be looked up before it is relied on. */
    MEMORY("from memory"),
    /** What makers do; no source. */
    COMMON_PRACTICE("common practice"),
    /** Made up for a picture or a demonstration; says nothing about the thing. */
    INVENTED("invented");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /**
     * The basis in plain words, as it stands in the {@code kind} column of a sources file.
     *
     * @return such as {@code from memory}
     */
    public String words() {
        return words;
    }

    /**
     * The less sure of two, which is the basis of a figure made from both.
     *
     * @param other the other
     * @return this or the other
     */
    public Basis orLessSure(Basis other) {
        return compareTo(other) >= 0 ? this : other;
    }

    static String allowedWords() {
        return Arrays.stream(values()).map(Basis::words).collect(Collectors.joining(", "));
    }
}
