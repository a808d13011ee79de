package haftline.stock;

import haftline.measure.Checks;
import java.util.Optional;

/**
 * A metal of blades, ferrules and caps.
 *
 * @param key catalogue key
 * @param name common name
 * @param densityKgM3 kg/m3
 * @param modulusMPa modulus of elasticity, MPa
 * @param poisson Poisson's ratio
 * @param colour for pictures, sRGB {@code 0xRRGGBB}, invented
 */
public record Metal(
        String key,
        String name,
        Figure densityKgM3,
        Optional<Figure> modulusMPa,
        Optional<Figure> poisson,
        int colour)
        implements Keyed {
    public Metal {
        Checks.named("key", key);
        Checks.named("name", name);
    }
}
