package haftline.template;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed chain of lines and arcs: the outline of a card, or an opening in it.
 *
 * @param strokes two or more; each starts at the very place at which the one before it ends, the
 *     first where the last ends
 */
public record Loop(List<Stroke> strokes) {
    /** Checks that the chain closes. */
    public Loop {
        strokes = List.copyOf(strokes);
        if (strokes.size() < 2) {
            throw new IllegalArgumentException("loop: expected two strokes or more");
        }
        Spot at = strokes.get(strokes.size() - 1).end();
        for (Stroke stroke : strokes) {
            if (!stroke.start().equals(at)) {
                throw new IllegalArgumentException(
                        "loop: a stroke starts at " + stroke.start() + ", expected " + at);
            }
            at = stroke.end();
        }
    }

    /**
     * A circle, anticlockwise.
     *
     * @param centre centre
     * @param diameterMm diameter, over 0
     * @return two half circles
     */
    public static Loop circle(Spot centre, double diameterMm) {
        Spot right = centre.moved(diameterMm / 2, 0);
        Spot left = centre.moved(-diameterMm / 2, 0);
        return new Loop(List.of(new Stroke(right, left, 1), new Stroke(left, right, 1)));
    }

    /**
     * Area inside.
     *
     * @return mm2, positive where it runs anticlockwise
     */
    public double area() {
        double sum = 0;
        for (Stroke stroke : strokes) {
            sum += stroke.sweptArea();
        }
        return sum;
    }

    /**
     * Length all round.
     *
     * @return mm
     */
    public double length() {
        double sum = 0;
        for (Stroke stroke : strokes) {
            sum += stroke.length();
        }
        return sum;
    }

    /**
     * The same loop walked with its inside on the left.
     *
     * @return an anticlockwise loop
     */
    public Loop anticlockwise() {
        return area() >= 0 ? this : reversed();
    }

    /**
     * The same loop walked the other way.
     *
     * @return the reversed loop
     */
    public Loop reversed() {
        List<Stroke> backwards = new ArrayList<>(strokes.size());
        for (int i = strokes.size() - 1; i >= 0; i--) {
            backwards.add(strokes.get(i).reversed());
        }
        return new Loop(backwards);
    }

    /**
     * The loop moved.
     *
     * @param dx along x, mm
     * @param dy along y, mm
     * @return the moved loop
     */
    public Loop moved(double dx, double dy) {
        // Each shared place is moved alone, but equal places move to equal places.
        return new Loop(strokes.stream().map(stroke -> stroke.moved(dx, dy)).toList());
    }

    /**
     * The loop turned by half a turn about the origin.
     *
     * @return the turned loop
     */
    public Loop turned() {
        return new Loop(strokes.stream().map(Stroke::turned).toList());
    }

    /**
     * Least rectangle that holds it.
     *
     * @return the rectangle
     */
    public Box box() {
        Box box = strokes.get(0).box();
        for (Stroke stroke : strokes) {
            box = box.with(stroke.box());
        }
        return box;
    }

    /**
     * The loop at a distance from this one, exactly: lines to lines, arcs to arcs, outer corners
     * rounded, trimmed where it crosses itself.
     *
     * @param outwardMm distance, mm; outward where positive, inward where negative
     * @return what comes of it: one loop, several, or none
     */
    public LoopOffset offset(double outwardMm) {
        return LoopOffset.of(this, outwardMm);
    }

    /** Shortest distance from a place to the line of the loop, mm. */
    double distance(Spot spot) {
        return distance(strokes, spot);
    }

    static double distance(List<Stroke> strokes, Spot spot) {
        double least = Double.POSITIVE_INFINITY;
        for (Stroke stroke : strokes) {
            // The box of a chord grown by the rise is a cheap lower bound.
            double rise = stroke.chord() * Math.abs(stroke.bulge()) / 2;
            double far = Box.of(stroke.start(), stroke.end()).distance(spot) - rise;
            if (far < least) {
                least = Math.min(least, stroke.distance(spot));
            }
        }
        return least;
    }

    /**
     * Corners of a chain of chords round the loop.
     *
     * @param toleranceMm greatest distance of the chords from the loop, over 0
     * @return the places, the first not repeated
     */
    public List<Spot> chords(double toleranceMm) {
        List<Spot> spots = new ArrayList<>();
        for (Stroke stroke : strokes) {
            spots.addAll(stroke.chords(toleranceMm));
        }
        return spots;
    }
}
