package haftline.ui.model;

import haftline.edit.Command;
import java.util.Optional;

/** A detail taken hold of, to be moved along. */
final class DetailDrag implements Drag {
    private final HeldDetail held;
    private final double fromPx;
    private final double offX;
    private boolean isAlong;

    DetailDrag(HeldDetail held, View view, double px) {
        this.held = held;
        fromPx = px;
        offX = held.x() - view.mm(px);
    }

    @Override
    public Optional<Command> to(View view, double px, double py, Snap snap) {
        isAlong = isAlong || Math.abs(px - fromPx) >= STRAY_PX;
        return isAlong
                ? Optional.of(held.move(snap.nearest(view.mm(px) + offX)))
                : Optional.empty();
    }
}
