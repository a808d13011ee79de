package haftline.stock;

import java.util.Optional;

/**
 * Shrinking and swelling.
 *
 * @param radialShrinkagePercent from green to oven-dry, percent of the green size
 * @param tangentialShrinkagePercent from green to oven-dry, percent of the green size
 * @param radialCoefficient change of size per percent of moisture, as a fraction, 6 to 14 %
 * @param tangentialCoefficient change of size per percent of moisture, as a fraction, 6 to 14 %
 */
public record WoodMovement(
        Optional<Figure> radialShrinkagePercent,
        Optional<Figure> tangentialShrinkagePercent,
        Optional<Figure> radialCoefficient,
        Optional<Figure> tangentialCoefficient) {}
