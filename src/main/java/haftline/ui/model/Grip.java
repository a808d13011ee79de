package haftline.ui.model;

import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.List;

/**
 * A place at which a chosen detail is taken hold of to change its size.
 *
 * @param kind what is changed there
 * @param px from the left
 * @param py from the top
 */
public record Grip(Kind kind, double px, double py) {
    /** A fine groove's grips stand at least this far apart, px. */
    private static final double APART_PX = 15;

    /** Height and depth are taken hold of over the wood: on it, the detail is moved, px. */
    public static final double OVER_PX = 20;

    /** What a grip changes. */
    public enum Kind {
        /** The edge towards the ferrule. */
        FRONT,
        /** The edge towards the butt. */
        BACK,
        /** The height of what stands proud, the depth of what is cut in. */
        PROUD
    }

    /**
     * The grips of a detail, above the axis.
     *
     * @param handle the handle
     * @param index the detail's place in the shape's list
     * @param view where the handle stands
     * @return front, back and, but for a flat, height or depth
     */
    public static List<Grip> of(Handle handle, int index, View view) {
        Detail detail = handle.brief().shape().details().get(index);
        double x = detail.place().x(handle.lengths().visibleWoodMm());
        double half = detail.widthMm() / 2;
        Outline outline = handle.outline();
        double apart = Math.max(APART_PX, half * view.scale());
        List<Grip> grips = new ArrayList<>();
        grips.add(new Grip(Kind.FRONT, view.px(x) - apart, view.py(outline.rBefore(x - half))));
        grips.add(new Grip(Kind.BACK, view.px(x) + apart, view.py(outline.rAfter(x + half))));
        if (!(detail instanceof Detail.Flat)) {
            grips.add(new Grip(Kind.PROUD, view.px(x), view.py(outline.r(x)) - OVER_PX));
        }
        return grips;
    }
}
