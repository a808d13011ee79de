package haftline.cli;

import haftline.measure.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the unit of an option by its symbol. */
final class UnitsOption implements ITypeConverter<Units> {
    @Override
    public Units convert(String value) {
        for (Units units : Units.values()) {
            if (units.symbol().equals(value)) {
                return units;
            }
        }
        throw new TypeConversionException("\"" + value + "\": expected mm or in");
    }
}
