package haftline.cli;

import haftline.measure.NearestWord;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A kind of file that {@code make} writes. */
enum Format {
    /** Drawings for the eye, for printing and for laser cutters. */
    SVG,
    /** Drawings for drawing and cutting programs. */
    DXF,
    /** Drawings to print at full size. */
    PDF,
    /** The finished wood as a solid, for whoever works with one. */
    STL,
    /** The calliper table. */
    CSV,
    /** Pictures of the finished pieces and of the set. */
    PNG,
    /** Lathe sheets, to print and to read on a screen. */
    SHEET,
    /** Instruction sheets for who buys the kit. */
    INSTRUCTIONS,
    /** Care cards for who buys the finished piece. */
    CARE;

    /** As it is typed after {@code --only} and as its files end. */
    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static List<String> ids() {
        return Arrays.stream(values()).map(Format::id).toList();
    }

    /** Reads a format by its name. */
    static final class Option implements ITypeConverter<Format> {
        @Override
        public Format convert(String value) {
            for (Format format : values()) {
                if (format.id().equals(value.strip())) {
                    return format;
                }
            }
            String near =
                    NearestWord.to(ids(), value).map(id -> "; did you mean " + id + "?").orElse("");
            throw new TypeConversionException(
                    "there is no format \""
                            + Paper.harmless(value)
                            + "\"; there are "
                            + ids().stream().collect(Collectors.joining(", "))
                            + near);
        }
    }
}
