package haftline.cli;

import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a length, in mm where it names no unit. */
class LengthOption implements ITypeConverter<Double> {
    private final double lowMm;
    private final double highMm;

    LengthOption() {
        this(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** A length within a range, both ends included. */
    LengthOption(double lowMm, double highMm) {
        this.lowMm = lowMm;
        this.highMm = highMm;
    }

    @Override
    public Double convert(String value) {
        double mm = mm(value);
        if (!(mm >= lowMm && mm <= highMm)) {
            throw new TypeConversionException(
                    "\""
                            + Paper.harmless(value)
                            + "\": expected a length from "
                            + NumberText.shortest(lowMm)
                            + " to "
                            + NumberText.shortest(highMm)
                            + " mm");
        }
        return mm;
    }

    /** The length that a text says. */
    static double mm(String value) {
        return Length.parse(value, Units.MM)
                .orElseThrow(
                        () ->
                                new TypeConversionException(
                                        "\""
                                                + Paper.harmless(value)
                                                + "\": expected a length such as 0.15 or 1/8in"));
    }
}
