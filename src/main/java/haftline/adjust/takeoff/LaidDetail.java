package haftline.adjust.takeoff;

import haftline.shape.Detail;
import haftline.shape.Place;
import java.util.Optional;

/**
 * A detail that was seen in the readings.
 *
 * @param kind which
 * @param from left edge, mm from the shoulder
 * @param to right edge, mm
 * @param heightMm how far it stands above its chord or, of a cove and vee, lies below; of a fillet
 *     above the body, negative for a sunk one
 * @param left how the outline passes the left edge
 * @param right how it passes the right edge
 */
record LaidDetail(Kind kind, double from, double to, double heightMm, Cut left, Cut right) {
    /** A groove no wider than this was burnt with a wire, mm (common practice, no source). */
    private static final double BURNT_MM = 1;

    private static final double CLEAN = 1e9;

    /** The details that readings can show. */
    enum Kind {
        BEAD,
        COVE,
        VEE,
        FILLET,
        FLAT
    }

    LaidDetail with(double newFrom, double newTo, double newHeight) {
        return new LaidDetail(kind, newFrom, newTo, newHeight, left, right);
    }

    /** The same with an edge where a reading marks it. */
    LaidDetail markedAt(boolean leftEdge, double x) {
        Cut mark = new Cut(Cut.Kind.MARKED, x);
        return leftEdge
                ? new LaidDetail(kind, x, to, heightMm, mark, right)
                : new LaidDetail(kind, from, x, heightMm, left, mark);
    }

    /** Whether its edges lie on the body, so that a step beside it is another's. */
    boolean isOnChord() {
        return kind != Kind.FILLET;
    }

    /**
     * How far the left edge may still be moved towards the ferrule, as a share of the spacing. At a
     * step the place is known; a round or groove may begin behind it.
     */
    double leftOut() {
        return left.kind() == Cut.Kind.CORNER ? 1 : 0;
    }

    double leftIn() {
        return isOnChord() && left.kind() != Cut.Kind.MARKED ? 1 : 0;
    }

    double rightOut() {
        return right.kind() == Cut.Kind.CORNER ? 1 : 0;
    }

    double rightIn() {
        return isOnChord() && right.kind() != Cut.Kind.MARKED ? 1 : 0;
    }

    /** Without the rounding of binary fractions, which would be written out in full. */
    private static double clean(double mm) {
        return Math.rint(mm * CLEAN) / CLEAN;
    }

    /** As a detail of a shape; empty where its sizes are out of range. */
    Optional<Detail> detail() {
        Place place = new Place.FromShoulder(clean((from + to) / 2));
        double width = clean(to - from);
        try {
            return Optional.of(
                    switch (kind) {
                        case BEAD -> new Detail.Bead(place, width, heightMm);
                        case COVE -> new Detail.Cove(place, width, heightMm);
                        case VEE ->
                                width <= BURNT_MM
                                        ? new Detail.BurntLine(place, width, heightMm)
                                        : new Detail.Vee(place, width, heightMm);
                        case FILLET -> new Detail.Fillet(place, width, heightMm);
                        case FLAT -> new Detail.Flat(place, width);
                    });
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }
}
