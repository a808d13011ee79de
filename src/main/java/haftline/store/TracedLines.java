package haftline.store;

import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.NumberText;
import haftline.measure.OutOfRange;
import haftline.measure.Units;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** Lines and curves of a drawing, and the readings that a calliper would take along them. */
final class TracedLines {
    /** Chords of one curve: on a dome of 25 mm they miss by under a hundredth of a millimetre. */
    private static final int CHORDS = 64;

    /** Readings along an outline, besides those at its corners. */
    private static final int READINGS = 200;

    /** Two heights at one place that differ by more are the two sides of a step, mm. */
    private static final double STEP_MM = 0.02;

    /** How far beside a corner the two sides are looked at, as a share of the length. */
    private static final double BESIDE = 1e-7;

    /** Places at which the two sides of an outline are compared. */
    private static final int LOOKS = 60;

    /** How far they may differ, as a share of its width. */
    private static final double SAME_SIDES = 0.02;

    /** Two straight lines that bend less where they meet draw a curve, not a corner, degrees. */
    private static final double CORNER_DEG = 3;

    private static final int DECIMALS = 3;

    private final List<double[]> chords = new ArrayList<>();
    private final TreeSet<Double> ends = new TreeSet<>();

    /** Where the last straight line ends, and its way along both axes; null where none was last. */
    private double[] last;

    private boolean open;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    double width() {
        return right - left;
    }

    /** Whether all of it is drawn with numbers; true where nothing is drawn. */
    boolean isFinite() {
        return chords.isEmpty() || Double.isFinite(right - left + high - low);
    }

    /**
     * Where the axis lies: in the middle of a closed outline that is the same on both sides, along
     * the straight side of a closed half; empty where neither is so.
     */
    OptionalDouble axis() {
        double size = high - low;
        double askew = 0;
        double below = Double.NEGATIVE_INFINITY;
        double above = Double.POSITIVE_INFINITY;
        for (int k = 1; k < LOOKS; k++) {
            double[] span = span(left + width() * k / LOOKS);
            askew = Math.max(askew, Math.abs(span[0] + span[1] - low - high) / 2);
            below = Math.max(below, span[0]);
            above = Math.min(above, span[1]);
        }
        if (open) {
            return OptionalDouble.empty();
        }
        if (askew < SAME_SIDES * size) {
            return OptionalDouble.of((low + high) / 2);
        }
        if (below - low < SAME_SIDES * size) {
            return OptionalDouble.of(low);
        }
        return high - above < SAME_SIDES * size ? OptionalDouble.of(high) : OptionalDouble.empty();
    }

    /** Least and greatest y over a place. */
    private double[] span(double x) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double[] c : chords) {
            if (x >= Math.min(c[0], c[2]) && x <= Math.max(c[0], c[2]) && c[0] != c[2]) {
                double y = c[1] + (c[3] - c[1]) * (x - c[0]) / (c[2] - c[0]);
                least = Math.min(least, y);
                most = Math.max(most, y);
            }
        }
        return new double[] {least, most};
    }

    void line(double x0, double y0, double x1, double y1) {
        if (!goesOn(x0, y0, x1 - x0, y1 - y0)) {
            lineEnds();
            ends.add(x0);
        }
        last = new double[] {x1, y1, x1 - x0, y1 - y0};
        chord(x0, y0, x1, y1);
    }

    /** Whether a straight line carries on a curve that is drawn in straight lines. */
    private boolean goesOn(double x, double y, double along, double across) {
        return last != null
                && last[0] == x
                && last[1] == y
                && Math.abs(
                                Math.atan2(
                                        last[2] * across - last[3] * along,
                                        last[2] * along + last[3] * across))
                        < Math.toRadians(CORNER_DEG)
                && Math.hypot(along, across) > 0;
    }

    private void lineEnds() {
        if (last != null) {
            ends.add(last[0]);
            last = null;
        }
    }

    private void chord(double x0, double y0, double x1, double y1) {
        chords.add(new double[] {x0, y0, x1, y1});
        left = Math.min(left, Math.min(x0, x1));
        right = Math.max(right, Math.max(x0, x1));
        low = Math.min(low, Math.min(y0, y1));
        high = Math.max(high, Math.max(y0, y1));
    }

    void leftOpen() {
        open = true;
    }

    /** An arc of a circle, degrees anticlockwise. */
    void arc(double x, double y, double radius, double fromDeg, double toDeg) {
        double sweep = toDeg - fromDeg;
        double ax = x + radius * Math.cos(Math.toRadians(fromDeg));
        double ay = y + radius * Math.sin(Math.toRadians(fromDeg));
        lineEnds();
        ends.add(ax);
        for (int k = 1; k <= CHORDS; k++) {
            double at = Math.toRadians(fromDeg + sweep * k / CHORDS);
            double bx = x + radius * Math.cos(at);
            double by = y + radius * Math.sin(at);
            chord(ax, ay, bx, by);
            ax = bx;
            ay = by;
        }
        ends.add(ax);
    }

    /** An arc by its bulge, the tangent of a quarter of its sweep, positive anticlockwise. */
    void bulge(double x0, double y0, double x1, double y1, double bulge) {
        if (bulge == 0 || x0 == x1 && y0 == y1) {
            line(x0, y0, x1, y1);
            return;
        }
        double f = (1 / bulge - bulge) / 4;
        double cx = (x0 + x1) / 2 - f * (y1 - y0);
        double cy = (y0 + y1) / 2 + f * (x1 - x0);
        double from = Math.toDegrees(Math.atan2(y0 - cy, x0 - cx));
        double sweep = Math.toDegrees(4 * Math.atan(bulge));
        arc(cx, cy, Math.hypot(x0 - cx, y0 - cy), from, from + sweep);
    }

    /** Paths as the Java library gives them: lines, quadratic and cubic Bezier curves. */
    void add(PathIterator path) {
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        boolean drawn = false;
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(p);
            if (kind == PathIterator.SEG_MOVETO) {
                open |= drawn && (x != startX || y != startY);
                startX = p[0];
                startY = p[1];
                x = startX;
                y = startY;
                drawn = false;
                continue;
            }
            drawn = true;
            if (kind == PathIterator.SEG_CLOSE) {
                line(x, y, startX, startY);
                x = startX;
                y = startY;
            } else if (kind == PathIterator.SEG_LINETO) {
                line(x, y, p[0], p[1]);
                x = p[0];
                y = p[1];
            } else {
                int order = kind == PathIterator.SEG_QUADTO ? 2 : 3;
                curve(x, y, p, order);
                x = p[2 * order - 2];
                y = p[2 * order - 1];
            }
        }
        open |= drawn && (x != startX || y != startY);
    }

    private void curve(double x, double y, double[] p, int order) {
        double ax = x;
        double ay = y;
        lineEnds();
        ends.add(x);
        for (int k = 1; k <= CHORDS; k++) {
            double t = (double) k / CHORDS;
            double bx = bezier(x, p, 0, t, order);
            double by = bezier(y, p, 1, t, order);
            chord(ax, ay, bx, by);
            ax = bx;
            ay = by;
        }
        ends.add(ax);
    }

    private static double bezier(double start, double[] p, int axis, double t, int order) {
        double s = 1 - t;
        return order == 2
                ? s * s * start + 2 * s * t * p[axis] + t * t * p[2 + axis]
                : s * s * s * start
                        + 3 * s * s * t * p[axis]
                        + 3 * s * t * t * p[2 + axis]
                        + t * t * t * p[4 + axis];
    }

    /**
     * Readings every two hundredth of the length, and at every corner, on both sides of a step.
     *
     * @param problems told where the outline is longer or wider at this scale than any handle, or
     *     has more corners than a take-off takes; the readings are then empty
     */
    List<Reading> readings(double axis, double mmPerUnit, Problems problems) {
        lineEnds();
        double length = width() * mmPerUnit;
        if (!(length <= Reading.LONGEST_MM)) {
            refuse("length of the outline", length, Reading.LONGEST_MM, problems);
            return List.of();
        }
        if (ends.size() > TakeOff.MOST - READINGS) {
            problems.addToFile(
                    "the outline has "
                            + ends.size()
                            + " corners: expected at most "
                            + (TakeOff.MOST - READINGS)
                            + "; simplify it in the drawing program");
            return List.of();
        }
        double beside = BESIDE * width();
        TreeSet<Double> places = new TreeSet<>();
        for (int k = 0; k <= READINGS; k++) {
            places.add(left + width() * k / READINGS);
        }
        for (double end : ends) {
            places.subSet(end - beside, false, end + beside, false).clear();
            places.add(end);
        }
        List<Reading> readings = new ArrayList<>();
        for (double x : places) {
            OptionalDouble before = height(x - beside, axis);
            OptionalDouble after = height(x + beside, axis);
            double first = 2 * mmPerUnit * before.orElse(after.orElse(0));
            double second = 2 * mmPerUnit * after.orElse(before.orElse(0));
            double place = (x - left) * mmPerUnit;
            double wider = Math.max(first, second);
            if (!(wider >= 0 && wider <= Reading.WIDEST_MM)) {
                refuse(
                        "diameter " + told(place) + " mm from the left",
                        wider,
                        Reading.WIDEST_MM,
                        problems);
                return List.of();
            }
            if (Math.abs(second - first) > STEP_MM) {
                readings.add(new Reading(place, first, 0));
                readings.add(new Reading(place, second, 0));
            } else {
                readings.add(new Reading(place, (first + second) / 2, 0));
            }
        }
        return readings;
    }

    private static void refuse(String what, double mm, double mostMm, Problems problems) {
        problems.add(
                0,
                0,
                what,
                told(mm)
                        + " mm: expected a length "
                        + OutOfRange.range(0, mostMm, Units.MM)
                        + "; are scale and axis right (--scale, --known, --axis)?");
    }

    private static String told(double mm) {
        return NumberText.upTo(mm, DECIMALS);
    }

    /** Greatest distance from the axis of what is drawn over a place. */
    private OptionalDouble height(double x, double axis) {
        double most = -1;
        for (double[] c : chords) {
            double from = Math.min(c[0], c[2]);
            double to = Math.max(c[0], c[2]);
            if (x >= from && x <= to && to > from) {
                double y = c[1] + (c[3] - c[1]) * (x - c[0]) / (c[2] - c[0]);
                most = Math.max(most, Math.abs(y - axis));
            }
        }
        return most < 0 ? OptionalDouble.empty() : OptionalDouble.of(most);
    }
}
