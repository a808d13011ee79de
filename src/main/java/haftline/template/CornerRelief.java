package haftline.template;

import java.util.ArrayList;
import java.util.List;

/**
 * Opens inside corners between two straight sides by a round through the corner, so that a square
 * edge fits into them although a bit cut them.
 */
final class CornerRelief {
    /** A corner that turns less than this needs no relief, radians. */
    private static final double LEAST_TURN = Math.toRadians(20);

    private CornerRelief() {}

    /** The loop with its straight-sided inside corners opened; an anticlockwise loop. */
    static Loop of(Loop loop, double radiusMm) {
        List<Stroke> source = loop.anticlockwise().strokes();
        int n = source.size();
        List<Stroke> strokes = new ArrayList<>();
        double[] cutBefore = new double[n];
        double[] cutAfter = new double[n];
        boolean[] open = new boolean[n];
        for (int i = 0; i < n; i++) {
            Stroke before = source.get((i + n - 1) % n);
            Stroke after = source.get(i);
            double turn = before.turnTo(after);
            // How far the round reaches along either side.
            double reach = 2 * radiusMm * Math.cos((Math.PI + turn) / 2);
            open[i] =
                    turn < -LEAST_TURN
                            && before.isStraight()
                            && after.isStraight()
                            && 2 * reach < Math.min(before.chord(), after.chord());
            cutAfter[i] = open[i] ? reach : 0;
            cutBefore[(i + n - 1) % n] = cutAfter[i];
        }
        Spot at = null;
        Spot first = null;
        for (int i = 0; i < n; i++) {
            Stroke stroke = source.get(i);
            Spot start = along(stroke, cutAfter[i]);
            Spot end = along(stroke, stroke.chord() - cutBefore[i]);
            if (open[i] && at != null) {
                strokes.addAll(round(at, stroke.start(), start, radiusMm));
            }
            first = first == null ? start : first;
            strokes.add(new Stroke(start, end, stroke.bulge()));
            at = end;
        }
        if (open[0]) {
            strokes.addAll(round(at, source.get(0).start(), first, radiusMm));
        }
        return new Loop(strokes);
    }

    private static Spot along(Stroke stroke, double mm) {
        return stroke.isStraight()
                ? stroke.at(mm / stroke.chord())
                : mm <= 0 ? stroke.start() : stroke.end();
    }

    /** Two arcs of the round, from one side through the corner to the other. */
    private static List<Stroke> round(Spot from, Spot corner, Spot to, double radiusMm) {
        double bulge = bulge(from, corner, radiusMm);
        return List.of(new Stroke(from, corner, bulge), new Stroke(corner, to, bulge));
    }

    /** The bulge of a chord of the round; the round lies on the material's side, clockwise. */
    private static double bulge(Spot from, Spot to, double radiusMm) {
        double half = Math.asin(Math.min(1, from.distance(to) / (2 * radiusMm)));
        return -Math.tan(half / 2);
    }
}
