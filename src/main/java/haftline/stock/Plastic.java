package haftline.stock;

import haftline.measure.Checks;
import java.util.List;
import java.util.Optional;

/**
 * A plastic, or another stock without parting fibres: cast resin, stabilised wood, laminate, horn.
 * Its tang is bonded, never pressed.
 *
 * @param key catalogue key
 * @param name common name
 * @param statedDensity kg/m3
 * @param modulusMPa modulus in tension, MPa; the lower of a published range
 * @param tensileStrengthMPa MPa; the lower of a published range
 * @param poisson Poisson's ratio
 * @param expansionPerK linear thermal expansion, 1/K
 * @param cautions what to mind in working it
 * @param colours colours for pictures
 */
public record Plastic(
        String key,
        String name,
        Figure statedDensity,
        Optional<Figure> modulusMPa,
        Optional<Figure> tensileStrengthMPa,
        Optional<Figure> poisson,
        Optional<Figure> expansionPerK,
        List<Caution> cautions,
        Colours colours)
        implements Stock {
    public Plastic {
        Checks.named("key", key);
        Checks.named("name", name);
        cautions = List.copyOf(cautions);
    }

    @Override
    public double densityKgM3(double moisturePercent) {
        return statedDensity.value();
    }

    @Override
    public boolean isFibrous() {
        return false;
    }

    @Override
    public boolean isCautioned() {
        return !cautions().isEmpty();
    }
}
