package haftline.figures;

import haftline.curve.Moments;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import java.util.List;

/**
 * Volume of the turned wood.
 *
 * @param solidMm3 tenon included, no bores
 * @param removedMm3 the union of the bores inside the solid
 * @param centroidX centroid of the finished wood, mm from the shoulder
 */
public record WoodVolume(double solidMm3, double removedMm3, double centroidX) {
    /**
     * What is left: solid less removed.
     *
     * @return mm³
     */
    public double finishedMm3() {
        return solidMm3 - removedMm3;
    }

    /**
     * The volume of a handle's wood: outline by exact moments, bores by frusta.
     *
     * @param handle the handle
     * @param walls its walls, which tell whether a bore breaks out
     * @return the volume
     */
    public static WoodVolume of(Handle handle, List<Wall> walls) {
        return of(handle, walls.stream().allMatch(wall -> wall.nominalMm() >= 0));
    }

    /**
     * The same, where nobody else asks for the walls.
     *
     * @param handle the handle
     * @return the volume
     */
    public static WoodVolume of(Handle handle) {
        return of(handle, Walls.stand(handle));
    }

    private static WoodVolume of(Handle handle, boolean boresStayInside) {
        Moments solid = handle.outline().moments();
        double removed = 0;
        double moment = 0;
        if (boresStayInside && areApart(handle)) {
            for (int i = 0; i < 2; i++) {
                Bore bore = i == 0 ? handle.tangBore() : handle.capBore().orElse(null);
                if (bore != null) {
                    BoreProfile edge = BoreProfile.of(bore);
                    double volume = edge.volumeMm3();
                    double sign = bore.end() == Bore.End.FERRULE ? 1 : -1;
                    removed += volume;
                    moment += volume * bore.faceX() + sign * edge.momentMm4();
                }
            }
        } else {
            double[] cut = ClippedBores.volumeAndMoment(handle);
            removed = cut[0];
            moment = cut[1];
        }
        return new WoodVolume(
                solid.volume(), removed, (solid.firstX() - moment) / (solid.volume() - removed));
    }

    /** Whether each bore ends in the wood and clear of the other, so that volumes simply add. */
    private static boolean areApart(Handle handle) {
        Bore tang = handle.tangBore();
        double tip = tang.xAt(tang.reachMm());
        double end = handle.capBore().map(cap -> cap.xAt(cap.reachMm())).orElse(handle.buttX());
        // No wall is reckoned for a cap's bore under the tenon.
        return tip <= end && end >= 0;
    }
}
