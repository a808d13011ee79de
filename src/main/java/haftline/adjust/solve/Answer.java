package haftline.adjust.solve;

/**
 * How one need of one piece is answered.
 *
 * @param piece the piece's name
 * @param need what was to be met
 * @param beforeMm its figure before, mm: a wall, a balance point, a diameter, a radius; infinite
 *     where there is no hollow, of the character the least step between two nodes in its direction
 * @param afterMm its figure after, mm
 * @param lowMm least that is wanted, mm
 * @param highMm most that is wanted, mm; infinity without an upper limit
 * @param marginBeforeMm what it had to spare, mm, negative where it was missed
 * @param marginAfterMm what it has to spare, mm, negative where it is missed
 * @param standing how it stands
 * @param because why it is impossible, a sentence without a full stop; else empty
 */
public record Answer(
        String piece,
        Need need,
        double beforeMm,
        double afterMm,
        double lowMm,
        double highMm,
        double marginBeforeMm,
        double marginAfterMm,
        Standing standing,
        String because) {}
