package haftline.handle;

import haftline.measure.Checks;
import java.util.List;

/**
 * A hole drilled along the axis from one end of the turned wood: the union of its steps, each a
 * cylinder from the face with the drill's point beyond.
 *
 * @param end the end where the drills go in
 * @param faceX x of that end's face, mm
 * @param steps the steps in the order drilled, widest last or alone; at least one
 */
public record Bore(End end, double faceX, List<BoreStep> steps) {
    /** An end of the turned wood. */
    public enum End {
        /** The tenon's end, where the tang goes in. */
        FERRULE,
        /** The butt, where the cap's spigot goes in. */
        BUTT
    }

    /** Checks the ranges and copies the list. */
    public Bore {
        Checks.within("bore face", faceX, -1000, 2000);
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("bore: no step");
        }
    }

    /**
     * Depth of a place below this bore's face.
     *
     * @param x from the shoulder, mm
     * @return mm, negative outside of the wood
     */
    public double depthAt(double x) {
        return end == End.FERRULE ? x - faceX : faceX - x;
    }

    /**
     * The place at a depth below this bore's face.
     *
     * @param depthMm mm
     * @return x from the shoulder, mm
     */
    public double xAt(double depthMm) {
        return end == End.FERRULE ? faceX + depthMm : faceX - depthMm;
    }

    /**
     * Radius of the hole at a place.
     *
     * @param x from the shoulder, mm
     * @return mm, 0 where there is no hole
     */
    public double radiusAt(double x) {
        double z = depthAt(x);
        double radius = 0;
        for (BoreStep step : steps) {
            radius = Math.max(radius, step.radiusAt(z));
        }
        return radius;
    }

    /**
     * The step that is deepest at its full diameter, which holds the tang's or spigot's end.
     *
     * @return the step
     */
    public BoreStep deepest() {
        BoreStep deepest = steps.get(0);
        for (BoreStep step : steps) {
            if (step.depthMm() > deepest.depthMm()) {
                deepest = step;
            }
        }
        return deepest;
    }

    /**
     * Depth of the deepest point, which a wide step's long cone may reach before the deepest
     * step's.
     *
     * @return mm from the face
     */
    public double reachMm() {
        double reach = 0;
        for (BoreStep step : steps) {
            reach = Math.max(reach, step.depthMm() + step.pointMm());
        }
        return reach;
    }

    /**
     * Greatest diameter of all steps.
     *
     * @return mm
     */
    public double widestMm() {
        double widest = 0;
        for (BoreStep step : steps) {
            widest = Math.max(widest, step.diameterMm());
        }
        return widest;
    }
}
