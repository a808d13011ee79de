package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.OptionalDouble;

/**
 * The metal cap at the butt: a head that seats on the wood and a spigot that stands in it.
 *
 * @param spigotDiameter mm
 * @param spigotLength from the seating face into the wood, mm
 * @param headDiameter diameter of the head at the wood's face, mm
 * @param headThickness from the seating face to the end of the head, mm
 * @param form form of the head
 * @param material key of the metal in the catalogue
 * @param massG g, where weighed
 * @param balanceMm centre of mass beyond the seating face, mm, negative towards the wood; empty to
 *     reckon it from the sizes
 */
public record EndCap(
        Measured spigotDiameter,
        Measured spigotLength,
        Measured headDiameter,
        Measured headThickness,
        Form form,
        String material,
        OptionalDouble massG,
        OptionalDouble balanceMm) {
    /** Form of a cap's head. */
    public enum Form {
        /** A disc. */
        FLAT,
        /** Half of a flattened ball, its pole at the head's thickness. */
        DOMED
    }

    /** Checks the ranges. */
    public EndCap {
        Checks.withinMm("cap spigot diameter", spigotDiameter, 0.5, 60);
        Checks.withinMm("cap spigot length", spigotLength, 0.5, 200);
        Checks.withinMm("cap head diameter", headDiameter, spigotDiameter.greatest(), 80);
        Checks.withinMm("cap head thickness", headThickness, 0.1, 60);
        Checks.named("cap material", material);
        balanceMm.ifPresent(x -> Checks.withinMm("cap balance", x, -200, 60));
    }

    /**
     * The same cap of another mass, its centre of mass where it was.
     *
     * @param newMassG g
     * @return the changed copy
     */
    public EndCap withMassG(double newMassG) {
        return new EndCap(
                spigotDiameter,
                spigotLength,
                headDiameter,
                headThickness,
                form,
                material,
                OptionalDouble.of(newMassG),
                balanceMm);
    }

    /**
     * The same cap with another head; its mass and its centre are reckoned anew.
     *
     * @param newHeadMm diameter of the head, mm, not under the spigot's
     * @return the changed copy
     */
    public EndCap withHeadMm(double newHeadMm) {
        return new EndCap(
                spigotDiameter,
                spigotLength,
                Measured.exactly(newHeadMm),
                headThickness,
                form,
                material,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Volume of metal, spigot and head; a domed head is half of an ellipsoid (2/3 of its cylinder).
     *
     * @return mm³
     */
    public double volumeMm3() {
        return spigotMm3() + headMm3();
    }

    /**
     * Centre of mass beyond the seating face: as measured, else from the sizes (half of an
     * ellipsoid: 3/8 of its height).
     *
     * @return mm, negative towards the wood
     */
    public double centroidMm() {
        if (balanceMm.isPresent()) {
            return balanceMm.getAsDouble();
        }
        double head = headThickness.mean() * (form == Form.FLAT ? 1.0 / 2 : 3.0 / 8);
        return (headMm3() * head - spigotMm3() * spigotLength.mean() / 2) / volumeMm3();
    }

    private double spigotMm3() {
        return Math.PI / 4 * spigotDiameter.mean() * spigotDiameter.mean() * spigotLength.mean();
    }

    private double headMm3() {
        double disc =
                Math.PI / 4 * headDiameter.mean() * headDiameter.mean() * headThickness.mean();
        return form == Form.FLAT ? disc : disc * 2 / 3;
    }
}
