package haftline.cli;

import haftline.measure.Length;
import haftline.measure.Units;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Two lengths with an x between them, mm.
 *
 * @param firstMm what stands before the x
 * @param secondMm what stands behind it
 */
record PairOption(double firstMm, double secondMm) {
    /** Reads it. */
    static final class Reader implements ITypeConverter<PairOption> {
        @Override
        public PairOption convert(String value) {
            String[] sides = value.split("x", -1);
            OptionalDouble first = Length.parse(sides[0], Units.MM);
            OptionalDouble second =
                    sides.length == 2 ? Length.parse(sides[1], Units.MM) : OptionalDouble.empty();
            if (first.isEmpty() || second.isEmpty()) {
                throw new TypeConversionException(
                        "\""
                                + Paper.harmless(value)
                                + "\": expected two lengths with an x between them, such as"
                                + " 600x400");
            }
            return new PairOption(first.getAsDouble(), second.getAsDouble());
        }
    }
}
