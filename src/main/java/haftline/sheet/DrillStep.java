package haftline.sheet;

/**
 * One drill in one end of the blank. Texts are without units; the sheet names the unit once.
 *
 * @param number its place in the order of drilling
 * @param drill its diameter
 * @param name what is stamped on it where that is not the diameter, and what hole it makes where
 *     that is wider; may be empty
 * @param depth depth to full diameter from the finished face
 * @param lips stop from the blank's face, before it is faced, for a stop that is set at the drill's
 *     lips
 * @param point the same for a stop that is set at the drill's point
 * @param speed revolutions a minute, at most
 */
public record DrillStep(
        int number,
        String drill,
        String name,
        String depth,
        String lips,
        String point,
        String speed) {}
