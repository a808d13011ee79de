package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A chain of segments that abut in x: the profile of a turned piece. The radius may step between
 * two segments (a flat face square to the axis) and the tangent may bend (a crisp edge).
 *
 * @param segments at least one, in rising x, each starting exactly where the one before ends
 */
public record Outline(List<Segment> segments) {
    /** Refuses an empty chain, a gap and an overlap. */
    public Outline {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("segments must hold at least one segment");
        }
        for (int i = 1; i < segments.size(); i++) {
            double end = segments.get(i - 1).endX();
            double start = segments.get(i).startX();
            if (start != end) {
                throw new IllegalArgumentException(
                        "segment "
                                + i
                                + " must start where the one before ends, at x "
                                + end
                                + ", not at "
                                + start);
            }
        }
    }

    /**
     * Returns an outline of the given segments.
     *
     * @param segments in rising x
     * @return the outline
     */
    public static Outline of(Segment... segments) {
        return new Outline(List.of(segments));
    }

    /** Returns the x where the outline starts, mm. */
    public double startX() {
        return segments.get(0).startX();
    }

    /** Returns the x where the outline ends, mm. */
    public double endX() {
        return segments.get(segments.size() - 1).endX();
    }

    /**
     * Returns the place in the list of the segment that holds x; at a joint the later one; x in mm,
     * within the outline.
     */
    public int indexAt(double x) {
        Checks.inside("x", x, startX(), endX());
        int low = 0;
        int high = segments.size() - 1;
        while (low < high) {
            int mid = (low + high + 1) >>> 1;
            if (segments.get(mid).startX() <= x) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return low;
    }

    /** Returns the segment that holds x; at a joint the later one; x in mm, within the outline. */
    public Segment segmentAt(double x) {
        return segments.get(indexAt(x));
    }

    /** Returns the radius as x is reached from the smaller side; x in mm, within the outline. */
    public double rBefore(double x) {
        int i = indexAt(x);
        Segment segment = segments.get(i);
        return i > 0 && segment.startX() == x ? segments.get(i - 1).r(x) : segment.r(x);
    }

    /** Returns the radius as x is left towards the greater side; x in mm, within the outline. */
    public double rAfter(double x) {
        return segmentAt(x).r(x);
    }

    /** Returns the radius; at a step the lesser of the two; x in mm, within the outline. */
    public double r(double x) {
        return Math.min(rBefore(x), rAfter(x));
    }

    /** Returns the slope; at a joint that of the later segment; x in mm, within the outline. */
    public double slope(double x) {
        return segmentAt(x).slope(x);
    }

    /**
     * Returns the signed curvature; at a joint that of the later segment; x in mm, within the
     * outline.
     */
    public double curvature(double x) {
        return segmentAt(x).curvature(x);
    }

    /** Returns volume and moments of the whole solid. */
    public Moments moments() {
        double volume = 0;
        double first = 0;
        double second = 0;
        double axis = 0;
        for (int i = 0; i < segments.size(); i++) {
            Moments m = segments.get(i).moments();
            volume += m.volume();
            first += m.firstX();
            second += m.secondX();
            axis += m.aboutAxis();
        }
        return new Moments(volume, first, second, axis);
    }

    /**
     * Returns volume and moments of a slice.
     *
     * @param fromX start, mm, within the outline
     * @param toX end, mm, within the outline
     * @return the moments; none where the slice has no length
     */
    public Moments moments(double fromX, double toX) {
        return fromX == toX ? Moments.NONE : part(fromX, toX).moments();
    }

    /**
     * Returns the least height over the line c + m x. At a step that is an end of the stretch only
     * the side inside the stretch counts.
     *
     * @param c the line's height at x = 0, mm
     * @param m the line's slope
     * @param fromX start of the stretch, mm, cut to the outline
     * @param toX end of the stretch, mm
     * @return least of r(x) - (c + m x) and where
     */
    public Gap leastAbove(double c, double m, double fromX, double toX) {
        int last = segments.size() - 1;
        int i = first(fromX, toX);
        Gap best = segments.get(i).leastAbove(c, m, fromX, toX);
        while (i < last && segments.get(i).endX() < toX) {
            i++;
            best = best.least(segments.get(i).leastAbove(c, m, fromX, toX));
        }
        return best;
    }

    /**
     * Returns the greatest height over the line c + m x, as {@link #leastAbove} the least.
     *
     * @param c the line's height at x = 0, mm
     * @param m the line's slope
     * @param fromX start of the stretch, mm, cut to the outline
     * @param toX end of the stretch, mm
     * @return greatest of r(x) - (c + m x) and where
     */
    public Gap greatestAbove(double c, double m, double fromX, double toX) {
        int last = segments.size() - 1;
        int i = first(fromX, toX);
        Gap best = segments.get(i).greatestAbove(c, m, fromX, toX);
        while (i < last && segments.get(i).endX() < toX) {
            i++;
            Gap next = segments.get(i).greatestAbove(c, m, fromX, toX);
            best = next.height() > best.height() ? next : best;
        }
        return best;
    }

    /** The first segment that shares more than an end with the stretch. */
    private int first(double fromX, double toX) {
        Checks.overlap(fromX, toX, startX(), endX());
        return indexAt(Math.min(Math.max(fromX, startX()), endX()));
    }

    /** Returns the least radius of a stretch, from and to in mm, cut to the outline. */
    public Extreme least(double fromX, double toX) {
        Gap gap = leastAbove(0, 0, fromX, toX);
        return new Extreme(gap.x(), gap.height());
    }

    /** Returns the least radius. */
    public Extreme least() {
        return least(startX(), endX());
    }

    /** Returns the greatest radius of a stretch, from and to in mm, cut to the outline. */
    public Extreme greatest(double fromX, double toX) {
        Gap gap = greatestAbove(0, 0, fromX, toX);
        return new Extreme(gap.x(), gap.height());
    }

    /** Returns the greatest radius. */
    public Extreme greatest() {
        return greatest(startX(), endX());
    }

    /**
     * Returns the steepest slope without its sign; steps do not count, {@link #joints()} tells
     * them.
     *
     * @param fromX start, mm
     * @param toX end, mm
     * @return greatest |dr/dx|; infinite at the pole of a dome
     */
    public double steepest(double fromX, double toX) {
        Checks.overlap(fromX, toX, startX(), endX());
        double steepest = 0;
        for (Segment segment : segments) {
            if (segment.startX() <= toX && segment.endX() >= fromX) {
                steepest = Math.max(steepest, segment.steepest(fromX, toX));
            }
        }
        return steepest;
    }

    /**
     * Returns the tightest hollow inside the segments; crisp bends do not count, {@link #joints()}
     * tells them.
     *
     * @param fromX start, mm
     * @param toX end, mm
     * @return radius and place, or {@link BendRadius#NONE}
     */
    public BendRadius tightestConcave(double fromX, double toX) {
        return tightest(fromX, toX, true);
    }

    /**
     * Returns the tightest round inside the segments; crisp bends do not count.
     *
     * @param fromX start, mm
     * @param toX end, mm
     * @return radius and place, or {@link BendRadius#NONE}
     */
    public BendRadius tightestConvex(double fromX, double toX) {
        return tightest(fromX, toX, false);
    }

    private BendRadius tightest(double fromX, double toX, boolean concave) {
        Checks.overlap(fromX, toX, startX(), endX());
        BendRadius best = BendRadius.NONE;
        for (Segment segment : segments) {
            if (segment.startX() <= toX && segment.endX() >= fromX) {
                best =
                        best.tighter(
                                concave
                                        ? segment.tightestConcave(fromX, toX)
                                        : segment.tightestConvex(fromX, toX));
            }
        }
        return best;
    }

    /**
     * Describes every place where two segments meet.
     *
     * @return one joint fewer than segments, in rising x
     */
    public List<Joint> joints() {
        List<Joint> joints = new ArrayList<>(segments.size());
        for (int i = 1; i < segments.size(); i++) {
            joints.add(Joint.between(segments.get(i - 1), segments.get(i)));
        }
        return List.copyOf(joints);
    }

    /**
     * Returns the length along the outline, step faces included.
     *
     * @param toleranceMm greatest error, mm
     * @return length, mm
     */
    public double arcLength(double toleranceMm) {
        Checks.positive("toleranceMm", toleranceMm);
        double sum = 0;
        for (int i = 0; i < segments.size(); i++) {
            sum += segments.get(i).arcLength(toleranceMm / segments.size());
            if (i > 0) {
                sum += Math.abs(segments.get(i).start().r() - segments.get(i - 1).end().r());
            }
        }
        return sum;
    }

    /**
     * Returns the turned area, step faces included, end faces not.
     *
     * @param toleranceMm2 greatest error, mm^2
     * @return area, mm^2
     */
    public double surfaceArea(double toleranceMm2) {
        Checks.positive("toleranceMm2", toleranceMm2);
        double sum = 0;
        for (int i = 0; i < segments.size(); i++) {
            sum += segments.get(i).surfaceArea(toleranceMm2 / segments.size());
            if (i > 0) {
                double before = segments.get(i - 1).end().r();
                double after = segments.get(i).start().r();
                sum += Math.PI * Math.abs(after - before) * (after + before);
            }
        }
        return sum;
    }

    /**
     * Returns the outline between two places.
     *
     * @param fromX start, mm, within the outline
     * @param toX end, mm, within the outline, greater than fromX
     * @return the slice
     */
    public Outline part(double fromX, double toX) {
        stretch(fromX, toX);
        List<Segment> kept = new ArrayList<>();
        addPart(kept, fromX, toX);
        return new Outline(kept);
    }

    private void stretch(double fromX, double toX) {
        Checks.inside("fromX", fromX, startX(), endX());
        Checks.inside("toX", toX, startX(), endX());
        Checks.increasing(fromX, toX);
    }

    private void addPart(List<Segment> kept, double fromX, double toX) {
        for (Segment segment : segments) {
            double from = Math.max(fromX, segment.startX());
            double to = Math.min(toX, segment.endX());
            if (from < to) {
                boolean whole = from == segment.startX() && to == segment.endX();
                kept.add(whole ? segment : segment.part(from, to));
            }
        }
    }

    /**
     * Returns the outline with a stretch replaced: a detail laid over the body.
     *
     * @param fromX start of the stretch, mm, within the outline
     * @param toX end of the stretch, mm, within the outline, greater than fromX
     * @param detail segments that abut and run exactly from fromX to toX
     * @return the new outline
     */
    public Outline replaced(double fromX, double toX, List<Segment> detail) {
        stretch(fromX, toX);
        Outline laid = new Outline(detail);
        if (laid.startX() != fromX || laid.endX() != toX) {
            throw new IllegalArgumentException(
                    "detail must run from "
                            + fromX
                            + " to "
                            + toX
                            + ", not from "
                            + laid.startX()
                            + " to "
                            + laid.endX());
        }
        List<Segment> kept = new ArrayList<>();
        addPart(kept, startX(), fromX);
        kept.addAll(detail);
        addPart(kept, toX, endX());
        return new Outline(kept);
    }

    /**
     * Returns the outline with another one set behind it.
     *
     * @param next starts exactly where this ends
     * @return both together
     */
    public Outline followedBy(Outline next) {
        List<Segment> all = new ArrayList<>(segments);
        all.addAll(next.segments);
        return new Outline(all);
    }

    /**
     * Returns the outline moved along the axis.
     *
     * @param dx how far towards the butt, mm
     * @return the moved outline
     */
    public Outline shifted(double dx) {
        List<Segment> moved = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            moved.add(segment.shifted(dx));
        }
        return new Outline(moved);
    }
}
