package haftline.cli;

import haftline.write.pdf.Paper;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a paper by its name, in capitals or not. */
final class PaperOption implements ITypeConverter<Paper> {
    @Override
    public Paper convert(String value) {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            if (paper.name().toLowerCase(Locale.ROOT).equals(value.toLowerCase(Locale.ROOT))) {
                return paper;
            }
        }
        throw new TypeConversionException(
                "\"" + haftline.cli.Paper.harmless(value) + "\": expected a4 or letter");
    }
}
