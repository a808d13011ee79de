package haftline.ui.model;

import haftline.edit.Command;
import java.util.Optional;

/** Something taken hold of by the pointer. */
interface Drag {
    /** A hand that draws a node outwards strays this far along the axis, px. */
    double STRAY_PX = 6;

    /** What the pointer's place asks for, or empty where it has not moved far enough to mean it. */
    Optional<Command> to(View view, double px, double py, Snap snap);
}
