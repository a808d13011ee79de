package haftline.template;

import haftline.measure.Checks;

/**
 * An open slot that slides over the work: straight jaws as wide as the diameter, a round bottom, a
 * lead at the mouth.
 *
 * @param widthMm between the jaws, mm, 1 to 200
 * @param label what is written under it
 * @param note a second line, may be empty
 */
record Slot(double widthMm, String label, String note) {
    /** Chamfer at the mouth, so that the jaws find the work, mm (common practice). */
    static final double LEAD_MM = 0.5;

    /** Straight jaw over the centre of the work, lead included, mm. */
    static final double JAW_MM = 5;

    /** Card between two slots, mm: stiff enough not to spring open. */
    static final double WALL_MM = 7;

    /** Checks the width. */
    Slot {
        Checks.withinMm("slot width", widthMm, 1, 200);
    }

    /** How deep it goes. */
    double depthMm() {
        return JAW_MM + widthMm / 2;
    }

    /** Draws it into a top edge that runs to the right. */
    void draw(CardEdge edge, double centreX, double topY) {
        double half = widthMm / 2;
        edge.to(centreX - half - LEAD_MM, topY)
                .to(centreX - half, topY - LEAD_MM)
                .to(centreX - half, topY - JAW_MM)
                .bent(centreX + half, topY - JAW_MM, 1)
                .to(centreX + half, topY - LEAD_MM)
                .to(centreX + half + LEAD_MM, topY);
    }
}
