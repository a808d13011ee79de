package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Hatching of cut faces: parallel lines that all stem from one grid through the origin, so that two
 * faces of one part are hatched in line (ISO 128-50, from memory).
 *
 * @param angleDeg direction of the lines, degrees anticlockwise from +x; 45 by habit, another for a
 *     neighbour
 * @param spacingMm distance between lines, {@link #LEAST_SPACING_MM} or more
 */
public record Hatching(double angleDeg, double spacingMm) {
    /** Closer lines run together to grey, and a file of them grows without end. */
    public static final double LEAST_SPACING_MM = 0.5;

    /** Hatching only shows that a face is cut: a curve may be off by a tenth of a narrow line. */
    private static final double CHORD_TOLERANCE_MM = 0.02;

    /** A shorter piece in a corner is a speck. */
    private static final double LEAST_LENGTH_MM = 0.3;

    /**
     * Checks angle and spacing.
     *
     * @throws IllegalArgumentException where one is out of range
     */
    public Hatching {
        Checks.within("hatch angle", angleDeg, -Angle.FULL_TURN_DEG, Angle.FULL_TURN_DEG);
        Checks.within("hatch spacing", spacingMm, LEAST_SPACING_MM, Vertex.LIMIT_MM);
    }

    /**
     * The habit for cut wood and plastics at full size: 45 degrees.
     *
     * @return the hatching
     */
    public static Hatching standard() {
        return new Hatching(45, 2.5);
    }

    /**
     * Lines over what lies inside an odd number of loops, so that a loop within another is a hole.
     *
     * @param loops closed paths that do not cross each other
     * @return lines on {@link Layer#HATCH}
     * @throws IllegalArgumentException where a path is open
     */
    public List<Element> over(Collection<Path> loops) {
        SortedMap<Long, List<Double>> crossings = new TreeMap<>();
        for (Path loop : loops) {
            if (!loop.closed()) {
                throw new IllegalArgumentException("hatching: expected closed paths");
            }
            Vertex from = loop.segments().get(0).start();
            for (Segment segment : loop.segments()) {
                for (Vertex to : segment.chords(CHORD_TOLERANCE_MM)) {
                    cross(crossings, from, to);
                    from = to;
                }
            }
        }
        List<Element> lines = new ArrayList<>();
        crossings.forEach((row, along) -> lines(lines, row, along));
        return List.copyOf(lines);
    }

    /**
     * Adds the crossings of one chord with the rows between its ends; of a row through an end only
     * that of the chord above it counts, so that each passage through the edge counts once.
     */
    private void cross(SortedMap<Long, List<Double>> crossings, Vertex from, Vertex to) {
        double v0 = across(from);
        double v1 = across(to);
        long first = (long) Math.ceil(Math.min(v0, v1) / spacingMm);
        long end = (long) Math.ceil(Math.max(v0, v1) / spacingMm);
        for (long row = first; row < end; row++) {
            double share = (row * spacingMm - v0) / (v1 - v0);
            double u = along(from) + share * (along(to) - along(from));
            crossings.computeIfAbsent(row, key -> new ArrayList<>()).add(u);
        }
    }

    private void lines(List<Element> lines, long row, List<Double> along) {
        double[] sorted = along.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        for (int i = 0; i + 1 < sorted.length; i += 2) {
            if (sorted[i + 1] - sorted[i] >= LEAST_LENGTH_MM) {
                lines.add(
                        Path.line(
                                Layer.HATCH,
                                place(sorted[i], row * spacingMm),
                                place(sorted[i + 1], row * spacingMm)));
            }
        }
    }

    private double along(Vertex vertex) {
        return vertex.xMm() * Angle.cos(angleDeg) + vertex.yMm() * Angle.sin(angleDeg);
    }

    private double across(Vertex vertex) {
        return vertex.yMm() * Angle.cos(angleDeg) - vertex.xMm() * Angle.sin(angleDeg);
    }

    private Vertex place(double along, double across) {
        return new Vertex(
                along * Angle.cos(angleDeg) - across * Angle.sin(angleDeg),
                along * Angle.sin(angleDeg) + across * Angle.cos(angleDeg));
    }
}
