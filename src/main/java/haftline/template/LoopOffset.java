package haftline.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What comes of moving a loop outward or inward by a distance: exactly the places at that distance
 * from it on that side.
 *
 * @param source the loop that was moved, anticlockwise
 * @param outwardMm the distance asked for, mm, negative inward
 * @param loops the result, each with the material on its left: anticlockwise loops are parts,
 *     clockwise ones openings that closed themselves off; none where the loop vanished
 */
public record LoopOffset(Loop source, double outwardMm, List<Loop> loops) {
    /** A corner that turns less than this is smooth and gets no arc, radians. */
    private static final double SMOOTH_RAD = 1e-10;

    /** Neighbours that miss each other by less are joined, mm. */
    private static final double SNAP_MM = 4e-6;

    /** Copies the list. */
    public LoopOffset {
        loops = List.copyOf(loops);
    }

    static LoopOffset of(Loop loop, double outwardMm) {
        Loop source = loop.anticlockwise();
        if (outwardMm == 0) {
            return new LoopOffset(source, 0, List.of(source));
        }
        List<Stroke> raw = raw(source.strokes(), outwardMm, true);
        return new LoopOffset(
                source, outwardMm, OffsetTrim.loops(raw, source.strokes(), Math.abs(outwardMm)));
    }

    /** Offset strokes and the arcs about corners that open, in order along the chain. */
    static List<Stroke> raw(List<Stroke> chain, double toRightMm, boolean closed) {
        List<Stroke> raw = new ArrayList<>(2 * chain.size());
        for (int i = 0; i < chain.size(); i++) {
            Stroke stroke = chain.get(i);
            Stroke moved = stroke.toRight(toRightMm);
            if (moved != null) {
                raw.add(moved);
            }
            if (closed || i + 1 < chain.size()) {
                corner(raw, stroke, chain.get((i + 1) % chain.size()), toRightMm);
            }
        }
        for (int i = closed ? 0 : 1; i < raw.size(); i++) {
            snap(raw, (i + raw.size() - 1) % raw.size(), i);
        }
        return raw;
    }

    /**
     * Joins neighbours that nearly meet: at a bend of a millionth they overlap by so little that
     * their crossing cannot be told from their ends.
     */
    private static void snap(List<Stroke> raw, int before, int after) {
        Stroke a = raw.get(before);
        Stroke b = raw.get(after);
        double gap = a.end().distance(b.start());
        if (gap > 0 && gap < SNAP_MM && !a.end().equals(b.end())) {
            raw.set(after, new Stroke(a.end(), b.end(), b.bulge()));
        }
    }

    private static void corner(List<Stroke> raw, Stroke before, Stroke after, double toRightMm) {
        double from = before.endRad();
        double turn = before.turnTo(after);
        if (turn * toRightMm > 0 && Math.abs(turn) > SMOOTH_RAD) {
            // The right-hand normal stands a quarter turn clockwise of the way; for an offset to
            // the left the radius points the other way.
            double normal = from - Math.copySign(Math.PI / 2, toRightMm);
            double half = turn / 2;
            raw.add(Stroke.arc(before.end(), Math.abs(toRightMm), normal, half));
            raw.add(Stroke.arc(before.end(), Math.abs(toRightMm), normal + half, half));
        }
    }

    /**
     * The one loop that came of it, where it stayed in one piece.
     *
     * @return the loop
     * @throws IllegalStateException where there is not exactly one
     */
    public Loop single() {
        if (loops.size() != 1) {
            throw new IllegalStateException("offset gave " + loops.size() + " loops, not one");
        }
        return loops.get(0);
    }

    /**
     * The loop that holds most.
     *
     * @return the loop
     * @throws IllegalStateException where nothing is left
     */
    public Loop largest() {
        return loops.stream()
                .max(Comparator.comparingDouble(Loop::area))
                .orElseThrow(() -> new IllegalStateException("offset left no loop"));
    }

    /**
     * Whether it stayed in one piece without closing anything off.
     *
     * @return true for exactly one loop
     */
    boolean isSingle() {
        return loops.size() == 1;
    }

    /**
     * Whether nothing is left.
     *
     * @return true for no loop
     */
    public boolean isVanished() {
        return loops.isEmpty();
    }

    /**
     * The check of the offset against its definition.
     *
     * @param toleranceMm how far a place on it may miss its distance from the source, mm
     * @return what was found
     */
    public OffsetCheck check(double toleranceMm) {
        return OffsetCheck.of(loops, source.strokes(), Math.abs(outwardMm), toleranceMm);
    }
}
