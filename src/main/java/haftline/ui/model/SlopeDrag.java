package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import java.util.Optional;
import java.util.OptionalDouble;

/** A node's slope taken hold of by its arm. */
final class SlopeDrag implements Drag {
    /** Half a degree is as fine as a hand points; a tenth where the snap is left out. */
    private static final double STEP_DEG = 0.5;

    private static final double FINE_DEG = 0.1;

    private final SlopeGrip grip;
    private final NodeEdits edits;
    private final double startDeg;
    private boolean hasMoved;

    SlopeDrag(SlopeGrip grip, NodeEdits edits, double px, double py) {
        this.grip = grip;
        this.edits = edits;
        startDeg = grip.degTowards(px, py);
    }

    @Override
    public Optional<Command> to(View view, double px, double py, Snap snap) {
        double turned = grip.degTowards(px, py) - startDeg;
        double step = snap == Snap.FREE ? FINE_DEG : STEP_DEG;
        hasMoved = hasMoved || Math.abs(turned) >= step;
        // Whole tenths: a hair of rounding is not worth the digits in a file.
        double wanted =
                Math.round(Math.round((grip.slope().deg() + turned) / step) * step * 10) / 10.0;
        return hasMoved
                ? Optional.of(
                        edits.slope(
                                grip.slope().node(),
                                OptionalDouble.of(grip.slope().heldAsTold(wanted))))
                : Optional.empty();
    }
}
