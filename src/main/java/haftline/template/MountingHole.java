package haftline.template;

import haftline.measure.Checks;
import haftline.set.TemplateSettings;

/**
 * A hole by which a copying template is held.
 *
 * @param end the end line it is measured from
 * @param beyondMm how far beyond that line, away from the work, mm, -500 to 200; negative is
 *     between the two lines
 * @param y height over the axis, mm, -200 to 200; 0 on the centre line, negative towards the back
 * @param diameterMm mm, 0.5 to 50
 */
public record MountingHole(End end, double beyondMm, double y, double diameterMm) {
    /** One of the template's end lines. */
    public enum End {
        /** The shoulder. */
        SHOULDER,
        /** The seat. */
        SEAT
    }

    /** Checks the ranges. */
    public MountingHole {
        Checks.withinMm("mounting hole, beyond", beyondMm, -500, 200);
        Checks.within("mounting hole, height", y, -200, 200);
        Checks.withinMm("mounting hole, diameter", diameterMm, 0.5, 50);
    }

    static MountingHole of(TemplateSettings.Hole hole) {
        End end = hole.from() == TemplateSettings.Hole.End.SHOULDER ? End.SHOULDER : End.SEAT;
        return new MountingHole(end, hole.beyondMm(), hole.heightMm(), hole.diameterMm());
    }

    /** Where its centre lies on a template. */
    Spot centre(double seatX) {
        return new Spot(end == End.SHOULDER ? -beyondMm : seatX + beyondMm, y);
    }
}
