package haftline.findings;

import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.parts.EndCap;
import haftline.shape.Butt;
import java.util.List;

/** The end cap on its butt. */
final class CapRules {
    private CapRules() {}

    static void add(Handle handle, List<Finding> found) {
        if (handle.capBore().isEmpty()) {
            return;
        }
        EndCap cap = handle.brief().kit().cap().orElseThrow();
        BoreStep step = handle.capBore().get().deepest();
        double clearance = step.diameterMm() - cap.spigotDiameter().greatest();
        if (clearance < -FitRules.ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.BORE_TIGHT,
                            Gravity.STOP,
                            Place.CAP,
                            handle.buttX(),
                            clearance,
                            0,
                            "spigot"));
        } else if (clearance > handle.brief().rules().fits().looseMm() + FitRules.ROUNDING) {
            Rules.Fits rules = handle.brief().rules().fits();
            boolean sleeve = clearance > rules.sleeveMm() + FitRules.ROUNDING;
            found.add(
                    Finding.mm(
                            Code.BORE_LOOSE,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            clearance,
                            sleeve ? rules.sleeveMm() : rules.looseMm(),
                            sleeve ? "sleeve" : "glue line"));
        }
        if (step.depthMm() < cap.spigotLength().greatest() - FitRules.ROUNDING) {
            found.add(
                    Finding.mm(
                            Code.CAP_PROUD,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            step.depthMm(),
                            cap.spigotLength().greatest(),
                            "spigot"));
        }
        if (!(handle.brief().shape().butt() instanceof Butt.Square)) {
            found.add(
                    Finding.mm(
                            Code.CAP_PROUD,
                            Gravity.WARN,
                            Place.CAP,
                            handle.buttX(),
                            handle.brief().shape().butt().lengthMm(),
                            0,
                            "butt"));
        }
    }
}
