package haftline.figures;

import haftline.handle.Handle;
import java.util.Optional;

/**
 * Screening figure that ranks woods and walls by how near a pressed tang comes to splitting them.
 *
 * @param index mean hoop tension over tension across the grain, relative to a reference that makers
 *     trust; 1 is that reference
 * @param pressureMPa pressure of the tang on the bore, MPa
 * @param hoopMPa mean hoop tension by equilibrium, MPa
 * @param wallMm wall that carries it, mm
 * @param atX where that wall is, mm from the shoulder
 * @param estimated whether a figure of the stock is an estimate
 */
public record SplitIndex(
        double index,
        double pressureMPa,
        double hoopMPa,
        double wallMm,
        double atX,
        boolean estimated) {
    /**
     * The split index of a pressed tang.
     *
     * @param handle the handle
     * @return the index, or empty for stock that lacks a figure
     */
    public static Optional<SplitIndex> of(Handle handle) {
        return Optional.empty();
    }
}
