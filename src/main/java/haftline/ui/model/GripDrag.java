package haftline.ui.model;

import haftline.edit.Command;
import haftline.shape.Detail;
import java.util.Optional;

/** An edge, the crown or the bottom of a detail taken hold of, to change its size. */
final class GripDrag implements Drag {
    private final HeldDetail held;
    private final Grip.Kind kind;
    private final double fromX;
    private final double fromRadius;

    GripDrag(HeldDetail held, Grip.Kind kind, View view, double px, double py) {
        this.held = held;
        this.kind = kind;
        fromX = view.mm(px);
        fromRadius = view.radius(py);
    }

    @Override
    public Optional<Command> to(View view, double px, double py, Snap snap) {
        Detail was = held.detail();
        double along = view.mm(px) - fromX;
        Snap steps = snap.forDetails();
        Detail changed =
                switch (kind) {
                    case FRONT -> held.widenedInFront(steps.nearest(was.widthMm() - along));
                    case BACK -> held.widenedBehind(steps.nearest(was.widthMm() + along));
                    case PROUD ->
                            held.proud(steps.nearest(was.proudMm() + view.radius(py) - fromRadius));
                };
        return changed.equals(was) ? Optional.empty() : Optional.of(held.replace(changed));
    }
}
