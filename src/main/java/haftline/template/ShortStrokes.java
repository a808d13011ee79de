package haftline.template;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes strokes out of a loop that are too short for a machine to follow smoothly: the neighbours
 * are carried on until they meet, where the line hardly moves by it. A short face that is meant
 * stays.
 */
final class ShortStrokes {
    /** Shorter strokes make cutters stutter, mm (common practice, no source). */
    static final double SHORTEST_MM = 0.055;

    /** How far the line may move, mm: a fraction of what any saw or beam wanders. */
    private static final double MOST_MOVE_MM = 0.01;

    private ShortStrokes() {}

    /** The loop without its short strokes, as far as they could be taken out. */
    static Loop joined(Loop loop) {
        List<Stroke> strokes = new ArrayList<>(loop.strokes());
        int i = 0;
        while (i < strokes.size() && strokes.size() > 3) {
            if (strokes.get(i).length() >= SHORTEST_MM || !join(strokes, i)) {
                i++;
            } else {
                // The neighbours changed; one of them may be short and lies before this place.
                i = Math.max(0, i - 2);
            }
        }
        return new Loop(strokes);
    }

    private static boolean join(List<Stroke> strokes, int index) {
        int n = strokes.size();
        Stroke before = strokes.get((index + n - 1) % n);
        Stroke gone = strokes.get(index);
        Stroke after = strokes.get((index + 1) % n);
        Spot meeting = meeting(before, gone, after);
        if (gone.distance(meeting) > MOST_MOVE_MM
                || meeting.equals(before.start())
                || meeting.equals(after.end())) {
            return false;
        }
        Stroke newBefore = new Stroke(before.start(), meeting, before.bulge());
        Stroke newAfter = new Stroke(meeting, after.end(), after.bulge());
        if (strays(newBefore, before) || strays(newAfter, after)) {
            return false;
        }
        strokes.set((index + n - 1) % n, newBefore);
        strokes.set((index + 1) % n, newAfter);
        strokes.remove(index);
        return true;
    }

    /** Whether a neighbour that was carried on has left its old line along the way. */
    private static boolean strays(Stroke changed, Stroke old) {
        for (double share : new double[] {0.25, 0.5, 0.75}) {
            Spot spot = changed.at(share);
            if (old.distance(spot) > MOST_MOVE_MM) {
                return true;
            }
        }
        return false;
    }

    /** Where the tangents of the neighbours meet, or the middle where they hardly bend. */
    private static Spot meeting(Stroke before, Stroke gone, Stroke after) {
        double a = before.endRad();
        double b = after.startRad();
        double cross = Math.sin(b - a);
        double dx = gone.end().x() - gone.start().x();
        double dy = gone.end().y() - gone.start().y();
        double along = (dx * Math.sin(b) - dy * Math.cos(b)) / cross;
        // Nearly parallel tangents meet nowhere near.
        return Math.abs(along) <= gone.chord()
                ? gone.start().moved(along * Math.cos(a), along * Math.sin(a))
                : gone.at(0.5);
    }
}
