package haftline.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a path in the words of a user, not of the library. */
final class PathOption implements ITypeConverter<Path> {
    @Override
    public Path convert(String value) {
        try {
            return Path.of(value);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    "\"" + value + "\" is no path here: " + e.getReason());
        }
    }
}
