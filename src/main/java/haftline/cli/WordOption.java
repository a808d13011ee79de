package haftline.cli;

import haftline.measure.NearestWord;
import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads an option that is one of a few words, in any case.
 *
 * @param <E> what the words mean
 */
abstract class WordOption<E extends Enum<E>> implements ITypeConverter<E> {
    private final E[] all;
    private final Function<E, String> written;

    private WordOption(E[] all, Function<E, String> written) {
        this.all = all;
        this.written = written;
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public E convert(String value) {
        // The documents write blanks where a command line has hyphens.
        String word = value.strip().replace(' ', '-');
        for (E each : all) {
            if (written.apply(each).equalsIgnoreCase(word)) {
                return each;
            }
        }
        List<String> words = Arrays.stream(all).map(written).toList();
        throw new TypeConversionException(
                "\""
                        + Paper.harmless(value)
                        + "\": expected "
                        + String.join(", ", words.subList(0, words.size() - 1))
                        + " or "
                        + words.get(words.size() - 1)
                        + NearestWord.to(words, word)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse(""));
    }

    /** What cuts cards. */
    static final class Tool extends WordOption<TemplateSettings.Tool> {
        Tool() {
            super(TemplateSettings.Tool.values(), WordOption::words);
        }
    }

    /** How text is written on cards. */
    static final class Lettering extends WordOption<TemplateSettings.Lettering> {
        Lettering() {
            super(TemplateSettings.Lettering.values(), WordOption::words);
        }
    }

    /** What DXF files are for. */
    static final class Dxf extends WordOption<FileSettings.Dxf> {
        Dxf() {
            super(FileSettings.Dxf.values(), WordOption::words);
        }
    }

    /** What is printed on. */
    static final class PaperSize extends WordOption<FileSettings.Paper> {
        PaperSize() {
            super(FileSettings.Paper.values(), FileSettings.Paper::label);
        }
    }
}
