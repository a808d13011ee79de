package haftline.set;

import haftline.figures.Figures;
import java.util.List;

/**
 * The pieces of a set side by side, shoulders in line: where each swell and each butt stands, so
 * that lines can be drawn from one to the next.
 *
 * @param places one place a piece, in the set's order
 * @param swellShare the middle of the swells' places, as a share of the visible wood
 */
public record LineUp(List<Places> places, double swellShare) {
    /**
     * Where the eye finds one piece.
     *
     * @param piece name of the piece
     * @param swellX place of its greatest diameter, mm from the shoulder
     * @param swellMm that diameter, mm
     * @param buttX where the wood ends, mm from the shoulder
     * @param buttMm diameter where the wood meets cap or butt, mm
     * @param endX where the piece ends, its cap included, mm from the shoulder
     */
    public record Places(
            String piece,
            double swellX,
            double swellMm,
            double buttX,
            double buttMm,
            double endX) {}

    /** Copies the list. */
    public LineUp {
        places = List.copyOf(places);
    }

    /**
     * The line-up of a family.
     *
     * @param family the pieces
     * @return where each swell and butt stands
     */
    public static LineUp of(Family family) {
        return new LineUp(
                family.members().stream().map(LineUp::places).toList(),
                family.row(Trait.SWELL_PLACE).map(Family.Row::common).orElse(Double.NaN));
    }

    private static Places places(Family.Member member) {
        Figures figures = member.figures();
        double buttX = figures.handle().buttX();
        return new Places(
                member.piece().name(),
                figures.grip().greatestX(),
                figures.grip().greatestMm(),
                buttX,
                Trait.BUTT_DIAMETER.of(figures),
                buttX + figures.handle().lengths().capMm());
    }
}
