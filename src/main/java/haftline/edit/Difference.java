package haftline.edit;

import java.util.Optional;

/**
 * One thing in which a piece differs from its set, or decides over a rule.
 *
 * @param kind what kind of thing
 * @param choice what is decided; only of kind {@link Kind#CHOICE}
 * @param node the node; only of kinds {@link Kind#DIAMETER} and {@link Kind#PLACE}
 */
public record Difference(Kind kind, Optional<Choice> choice, String node) {
    /** What kind of thing. */
    public enum Kind {
        /** The stock. */
        STOCK,
        /** The whole shape. */
        SHAPE,
        /** A choice over the rules. */
        CHOICE,
        /** A node's diameter. */
        DIAMETER,
        /** A node's place. */
        PLACE
    }

    /** The piece has a stock of its own. */
    public static final Difference STOCK = of(Kind.STOCK);

    /** The piece has a shape of its own. */
    public static final Difference SHAPE = of(Kind.SHAPE);

    private static Difference of(Kind kind) {
        return new Difference(kind, Optional.empty(), "");
    }

    /**
     * A choice.
     *
     * @param choice what is decided
     * @return the difference
     */
    public static Difference of(Choice choice) {
        return new Difference(Kind.CHOICE, Optional.of(choice), "");
    }

    /**
     * A node's diameter.
     *
     * @param node its name
     * @return the difference
     */
    public static Difference diameterOf(String node) {
        return new Difference(Kind.DIAMETER, Optional.empty(), node);
    }

    /**
     * A node's place.
     *
     * @param node its name
     * @return the difference
     */
    public static Difference placeOf(String node) {
        return new Difference(Kind.PLACE, Optional.empty(), node);
    }

    /**
     * What differs, in the trade's words.
     *
     * @return such as {@code diameter of waist}
     */
    public String words() {
        return switch (kind) {
            case STOCK -> "stock";
            case SHAPE -> "shape";
            case CHOICE -> choice.orElseThrow().words();
            case DIAMETER -> "diameter of " + node;
            case PLACE -> "place of " + node;
        };
    }
}
