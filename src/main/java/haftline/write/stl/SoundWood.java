package haftline.write.stl;

import haftline.curve.Edge;
import haftline.curve.Gap;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import haftline.handle.Wander;
import haftline.measure.NumberText;
import java.util.Optional;

/** Whether a handle's bores leave wood on every side, on the axis and with no wander. */
final class SoundWood {
    private SoundWood() {}

    /**
     * Why the wood is no closed solid.
     *
     * @param handle the handle
     * @param leastMm wood that must be left everywhere, mm: under the tolerance of the chords these
     *     might cross
     * @return a sentence, or empty where all is well
     */
    static Optional<String> fault(Handle handle, double leastMm) {
        Bore tang = handle.tangBore();
        double tip = tang.xAt(tang.reachMm());
        double end = handle.capBore().map(cap -> cap.xAt(cap.reachMm())).orElse(handle.buttX());
        if (end - tip < leastMm) {
            return Optional.of(
                    handle.capBore().isPresent()
                            ? "the bores meet: the tang's bore reaches to x "
                                    + mm(tip)
                                    + ", the cap's to x "
                                    + mm(end)
                            : "the tang's bore goes through: it reaches to x "
                                    + mm(tip)
                                    + ", the butt is at x "
                                    + mm(end));
        }
        Optional<String> broken = broken(handle, tang, "tang", leastMm);
        return broken.isPresent()
                ? broken
                : handle.capBore().flatMap(cap -> broken(handle, cap, "cap", leastMm));
    }

    /** Where a bore's edge, a chain of straight pieces, comes too near the outline. */
    private static Optional<String> broken(Handle handle, Bore bore, String whose, double leastMm) {
        for (Edge edge : BoreProfile.edges(bore, Wander.NONE)) {
            if (edge.x0() == edge.x1()) {
                continue;
            }
            double slope = (edge.r1() - edge.r0()) / (edge.x1() - edge.x0());
            double atZero = edge.r1() - slope * edge.x1();
            Gap wall = handle.outline().leastAbove(atZero, slope, edge.lowX(), edge.highX());
            if (wall.height() < leastMm) {
                return Optional.of(
                        "the "
                                + whose
                                + "'s bore breaks out of the wood: "
                                + mm(wall.height())
                                + " is left at x "
                                + mm(wall.x()));
            }
        }
        return Optional.empty();
    }

    private static String mm(double value) {
        return NumberText.upTo(value, 2) + " mm";
    }
}
