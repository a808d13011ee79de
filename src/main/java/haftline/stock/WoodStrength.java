package haftline.stock;

import java.util.Optional;

/**
 * Strength of small clear specimens at 12 % moisture; for ranking, not a design allowable.
 *
 * @param sideHardnessN force to sink an 11.3 mm ball to half its diameter, N
 * @param compressionAcrossMPa stress at the proportional limit across the grain, MPa
 * @param tensionAcrossMPa greatest tension across the grain, MPa
 * @param shearAlongMPa greatest shear along the grain, MPa
 */
public record WoodStrength(
        Optional<Figure> sideHardnessN,
        Optional<Figure> compressionAcrossMPa,
        Optional<Figure> tensionAcrossMPa,
        Optional<Figure> shearAlongMPa) {}
