package haftline.figures;

import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.parts.EndCap;
import haftline.parts.Tang;

/**
 * Adhesive that fills what tang and spigot leave of their bores.
 *
 * @param tangMm3 round the tang, its sump and the drill's point; 0 where it is pressed
 * @param capMm3 round the cap's spigot; the cap is always bonded
 * @param centroidX centroid of all of it, mm from the shoulder
 * @param bondAreaMm2 surface of the bore along the engaged tang, mm²
 */
public record AdhesiveNeed(double tangMm3, double capMm3, double centroidX, double bondAreaMm2) {
    /** Space that is a smaller share of its bore than this is none but for rounding. */
    private static final double NO_SPACE = 1e-9;

    /**
     * Tang and cap together.
     *
     * @return mm³
     */
    public double volumeMm3() {
        return tangMm3 + capMm3;
    }

    /**
     * The adhesive that a handle wants, without waste.
     *
     * @param handle the handle
     * @return the amounts
     */
    public static AdhesiveNeed of(Handle handle) {
        double tangVolume = 0;
        double moment = 0;
        double area = 0;
        if (handle.fit().fit() == Fit.BONDED) {
            Bore bore = handle.tangBore();
            BoreProfile edge = BoreProfile.of(bore);
            Tang tang = handle.brief().kit().tang();
            double length = tang.length().mean();
            // The stretch of tang between the seating face and the tenon's end stands in the
            // ferrule, not in the wood.
            double dry = Math.min(length, Math.max(0, bore.faceX() - handle.fit().seatX()));
            double metal = tang.volumeMm3(length) - tang.volumeMm3(dry);
            double metalMoment =
                    tang.momentMm4(length) - tang.momentMm4(dry) + handle.fit().seatX() * metal;
            double hole = edge.volumeMm3();
            if (hole - metal > NO_SPACE * hole) {
                tangVolume = hole - metal;
                moment = hole * bore.faceX() + edge.momentMm4() - metalMoment;
            }
            area = Math.PI * bore.deepest().diameterMm() * Math.max(0, handle.fit().engagedMm());
        }
        double capVolume = 0;
        if (handle.capBore().isPresent()) {
            Bore bore = handle.capBore().get();
            BoreProfile edge = BoreProfile.of(bore);
            EndCap cap = handle.brief().kit().cap().orElseThrow();
            double d = cap.spigotDiameter().mean();
            double length = cap.spigotLength().mean();
            double metal = Math.PI / 4 * d * d * length;
            double hole = edge.volumeMm3();
            if (hole - metal > NO_SPACE * hole) {
                capVolume = hole - metal;
                moment +=
                        hole * bore.faceX()
                                - edge.momentMm4()
                                - metal * (bore.faceX() - length / 2);
            }
        }
        double all = tangVolume + capVolume;
        return new AdhesiveNeed(tangVolume, capVolume, all > 0 ? moment / all : 0, area);
    }
}
