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
 * @param leftFree whether the left edge lies on the body and may still be refined
 * @param rightFree whether the right edge does
 */
record LaidDetail(
        Kind kind, double from, double to, double heightMm, boolean leftFree, boolean rightFree) {
    /** A groove no wider than this was burnt with a wire, mm (common practice, no source). */
    private static final double BURNT_MM = 1;

    /** The details that readings can show. */
    enum Kind {
        BEAD,
        COVE,
        VEE,
        FILLET,
        FLAT
    }

    LaidDetail with(double newFrom, double newTo, double newHeight) {
        return new LaidDetail(kind, newFrom, newTo, newHeight, leftFree, rightFree);
    }

    /** As a detail of a shape; empty where its sizes are out of range. */
    Optional<Detail> detail() {
        Place place = new Place.FromShoulder((from + to) / 2);
        double width = to - from;
        try {
            return Optional.of(
                    switch (kind) {
                        case BEAD -> new Detail.Bead(place, width, heightMm);
                        case COVE -> new Detail.Cove(place, width, heightMm);
                        case VEE -> width <= BURNT_MM
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
