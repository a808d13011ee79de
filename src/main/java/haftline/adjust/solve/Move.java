package haftline.adjust.solve;

import haftline.measure.NumberText;
import java.util.List;
import java.util.Optional;

/**
 * Something that an adjustment moves.
 *
 * @param what its name: a node's, {@code swell}, {@code length}, {@code tang bore's depth}, {@code
 *     cap bore's depth}
 * @param document what is changed for it
 * @param piece the piece that it belongs to; empty where pieces share it
 * @param unit unit of the two values: {@code mm}, {@code x ferrule}, {@code x seat}, {@code x
 *     swell} or {@code x blade}
 * @param before its value before, as the document says it
 * @param after its value after
 * @param sizes what that is on every piece that it moves
 */
public record Move(
        String what,
        Document document,
        Optional<String> piece,
        String unit,
        double before,
        double after,
        List<Size> sizes) {
    /** Copies the list. */
    public Move {
        sizes = List.copyOf(sizes);
    }

    /**
     * The very figure that is written, with its unit, for people to read.
     *
     * @return such as {@code 0.6187 × swell} or {@code 13.61 mm}
     */
    public String written() {
        return NumberText.shortest(after) + " " + unit.replace("x ", "× ");
    }

    /**
     * Whether the figure is one that people read: mm in hundredths.
     *
     * @return true where a size told in mm says all that is written
     */
    public boolean isPlain() {
        return unit.equals("mm") && NumberText.upTo(after, 2).equals(NumberText.shortest(after));
    }

    /** What an adjustment changes. */
    public enum Document {
        /** The shape that the set shares, with all that share it. */
        SHARED_SHAPE("the shared shape"),
        /** The shape of the one piece. */
        OWN_SHAPE("the piece's own shape"),
        /** What the set holds common. */
        SET("the set"),
        /** What the piece decides for itself, in the set's file. */
        PIECE("the piece, in the set");

        private final String words;

        Document(String words) {
            this.words = words;
        }

        /**
         * What it is called.
         *
         * @return in plain words
         */
        public String words() {
            return words;
        }
    }

    /**
     * A size on one piece.
     *
     * @param piece the piece's name
     * @param beforeMm before, mm
     * @param afterMm after, mm
     */
    public record Size(String piece, double beforeMm, double afterMm) {}
}
