package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Resolution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Everything that is found about one handle. */
public final class Findings {
    /**
     * Gravest first, then in the order of the codes, which follows the handle from walls to hand.
     */
    private static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::gravity).thenComparing(Finding::code);

    private Findings() {}

    /**
     * Findings on a handle.
     *
     * @param figures its figures
     * @return gravest first; without words and remedies, which are made on demand
     */
    public static List<Finding> of(Figures figures) {
        List<Finding> found = new ArrayList<>(16);
        WallRules.add(figures, found);
        FitRules.add(figures, found);
        ShapeRules.add(figures, found);
        PieceRules.add(figures, found);
        found.sort(ORDER);
        return List.copyOf(found);
    }

    /**
     * The one finding where no handle can be drawn.
     *
     * @param impossible why not
     * @return a stop
     */
    public static List<Finding> of(Resolution.Impossible impossible) {
        return List.of(
                new Finding(
                        Code.CANNOT_BE_DRAWN,
                        Gravity.STOP,
                        Place.PIECE,
                        Finding.NONE,
                        impossible.figure(),
                        impossible.limit(),
                        impossible.unit().equals("deg") ? Finding.Unit.DEG : Finding.Unit.MM,
                        impossible.message()));
    }
}
