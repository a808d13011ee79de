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

    private final List<Stroke> source;
    private final double radiusMm;

    /** How far the round of the corner at each stroke's start reaches along its sides, mm. */
    private final double[] reach;

    private CornerRelief(List<Stroke> source, double radiusMm) {
        this.source = source;
        this.radiusMm = radiusMm;
        this.reach = new double[source.size()];
    }

    /** The loop with its straight-sided inside corners opened where there is room for it. */
    static Loop of(Loop loop, double radiusMm) {
        return new CornerRelief(loop.anticlockwise().strokes(), radiusMm).relieved();
    }

    private Loop relieved() {
        boolean[] open = new boolean[source.size()];
        for (int i = 0; i < open.length; i++) {
            open[i] = mayOpen(i);
        }
        Loop all = built(open);
        if (Flattened.areValid(List.of(all))) {
            return all;
        }
        // Two rounds meet, or one breaks into a neighbour: take only those that have room.
        boolean[] kept = new boolean[open.length];
        for (int i = 0; i < open.length; i++) {
            kept[i] = open[i];
            if (kept[i] && !Flattened.areValid(List.of(built(kept)))) {
                kept[i] = false;
            }
        }
        return built(kept);
    }

    private boolean mayOpen(int i) {
        Stroke before = source.get((i + source.size() - 1) % source.size());
        Stroke after = source.get(i);
        double turn = before.turnTo(after);
        // The chord of the round along a side that makes half the corner's angle with its diameter.
        reach[i] = 2 * radiusMm * Math.cos((Math.PI + turn) / 2);
        return turn < -LEAST_TURN
                && before.isStraight()
                && after.isStraight()
                && 2 * reach[i] < Math.min(before.chord(), after.chord());
    }

    private Loop built(boolean[] open) {
        int n = source.size();
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Stroke stroke = source.get(i);
            int next = (i + 1) % n;
            Spot start = open[i] ? along(stroke, reach[i]) : stroke.start();
            Spot end = open[next] ? along(stroke, stroke.chord() - reach[next]) : stroke.end();
            strokes.add(new Stroke(start, end, stroke.bulge()));
            if (open[next]) {
                Spot corner = stroke.end();
                strokes.add(round(end, corner));
                strokes.add(round(corner, along(source.get(next), reach[next])));
            }
        }
        return new Loop(strokes);
    }

    private static Spot along(Stroke straight, double mm) {
        return straight.at(mm / straight.chord());
    }

    /** An arc of the round; it lies on the material's side of its chord, clockwise. */
    private Stroke round(Spot from, Spot to) {
        double half = Math.asin(Math.min(1, from.distance(to) / (2 * radiusMm)));
        return new Stroke(from, to, -Math.tan(half / 2));
    }
}
