package haftline.cli;

import haftline.measure.Length;
import haftline.measure.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a length, in mm where it names no unit. */
final class LengthOption implements ITypeConverter<Double> {
    @Override
    public Double convert(String value) {
        return Length.parse(value, Units.MM)
                .orElseThrow(
                        () ->
                                new TypeConversionException(
                                        "\""
                                                + Paper.harmless(value)
                                                + "\": expected a length such as 0.15 or 1/8in"));
    }
}
