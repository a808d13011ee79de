package haftline.cli;

import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Reads plain numbers, and says in plain words what is none. */
final class NumberOption {
    private NumberOption() {}

    /** Has every number of a command line and its verbs read here. */
    static CommandLine readBy(CommandLine line) {
        return line.registerConverter(double.class, NumberOption::number)
                .registerConverter(Double.class, NumberOption::number)
                .registerConverter(int.class, NumberOption::count)
                .registerConverter(long.class, NumberOption::whole);
    }

    private static double number(String value) {
        return finite(value).orElseThrow(() -> refused(value, "a number such as 0.2"));
    }

    private static Optional<Double> finite(String value) {
        try {
            return Optional.of(Double.valueOf(value)).filter(Double::isFinite);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static int count(String value) {
        try {
            return Integer.parseInt(value);
        } catch (NumberFormatException e) {
            throw refused(value, "a whole number");
        }
    }

    private static long whole(String value) {
        try {
            return Long.parseLong(value);
        } catch (NumberFormatException e) {
            throw refused(value, "a whole number");
        }
    }

    private static TypeConversionException refused(String value, String expected) {
        return new TypeConversionException(
                "\"" + Paper.harmless(value) + "\": expected " + expected);
    }
}
