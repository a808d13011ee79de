package haftline.cli;

import haftline.adjust.solve.Band;
import haftline.adjust.solve.Freedom;
import haftline.adjust.solve.Need;
import haftline.measure.NearestWord;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the words of {@code adjust}. */
final class AdjustOptions {
    /** Asks for nothing, so that a fairing stands alone. */
    static final String NONE = "none";

    private AdjustOptions() {}

    /** A word of a list, else an error that names the list and the nearest of it. */
    private static <T> T one(
            String word, List<T> all, java.util.function.Function<T, String> name, String also) {
        for (T each : all) {
            if (name.apply(each).equals(word)) {
                return each;
            }
        }
        List<String> words = all.stream().map(name).toList();
        throw new TypeConversionException(
                "\""
                        + Paper.harmless(word)
                        + "\": expected "
                        + String.join(", ", words)
                        + also
                        + NearestWord.to(words, word)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse(""));
    }

    /** A group of needs, or empty for none. */
    static final class Demands implements ITypeConverter<Optional<Need.Group>> {
        @Override
        public Optional<Need.Group> convert(String value) {
            return value.equals(NONE)
                    ? Optional.empty()
                    : Optional.of(
                            one(
                                    value,
                                    Arrays.asList(Need.Group.values()),
                                    Need.Group::word,
                                    " or none"));
        }
    }

    /** Something that may move beside the nodes. */
    static final class Allowed implements ITypeConverter<Freedom> {
        @Override
        public Freedom convert(String value) {
            return one(value, Arrays.asList(Freedom.values()), Freedom::word, "");
        }
    }

    /** A band of lengths: {@code 0:15}. */
    static final class BandMm implements ITypeConverter<Band> {
        @Override
        public Band convert(String value) {
            String[] ends = value.split(":", -1);
            if (ends.length != 2) {
                throw refused(value, "expected two lengths with a colon between, such as 0:15");
            }
            double from = LengthOption.mm(ends[0]);
            double to = LengthOption.mm(ends[1]);
            if (to < from) {
                throw refused(value, "expected the lesser length first");
            }
            try {
                return new Band(from, to);
            } catch (IllegalArgumentException outOfRange) {
                throw new TypeConversionException(outOfRange.getMessage());
            }
        }

        private static TypeConversionException refused(String value, String expected) {
            return new TypeConversionException("\"" + Paper.harmless(value) + "\": " + expected);
        }
    }

    /** How far nodes may move. */
    static final class ReachMm extends LengthOption {
        ReachMm() {
            super(0.01, 50);
        }
    }

    /** How far fairing may move them. */
    static final class FairMm extends LengthOption {
        FairMm() {
            super(0.01, 5);
        }
    }
}
