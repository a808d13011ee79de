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
                        + word
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

    /** A band in mm: {@code 0:15}. */
    static final class BandMm implements ITypeConverter<Band> {
        @Override
        public Band convert(String value) {
            String[] ends = value.split(":", -1);
            if (ends.length != 2) {
                throw new TypeConversionException(
                        "\"" + value + "\": expected two numbers in mm, such as 0:15");
            }
            try {
                return new Band(number(ends[0]), number(ends[1]));
            } catch (IllegalArgumentException outOfRange) {
                throw new TypeConversionException(outOfRange.getMessage());
            }
        }
    }

    /** A number in mm within a range. */
    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("\"" + text + "\": expected a number in mm");
        }
    }

    /** How far nodes may move. */
    static final class ReachMm implements ITypeConverter<Double> {
        @Override
        public Double convert(String value) {
            return within(number(value), 0.01, 50);
        }
    }

    /** How far fairing may move them. */
    static final class FairMm implements ITypeConverter<Double> {
        @Override
        public Double convert(String value) {
            return within(number(value), 0.01, 5);
        }
    }

    private static double within(double mm, double low, double high) {
        if (!(mm >= low && mm <= high)) {
            throw new TypeConversionException(
                    mm + ": expected a number of mm from " + low + " to " + high);
        }
        return mm;
    }
}
