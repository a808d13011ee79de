package haftline.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Loops as polygons of the JTS library, for checks and for the layout. Never the way back: what is
 * cut is the loop itself.
 */
final class Flattened {
    /** Chords of the validity check stay this near to their arcs, mm. */
    static final double CHECK_MM = 1e-3;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Flattened() {}

    static Polygon polygon(Loop loop, double toleranceMm) {
        return FACTORY.createPolygon(ring(loop, toleranceMm));
    }

    static Polygon polygon(Loop outline, List<Loop> openings, double toleranceMm) {
        LinearRing[] holes =
                openings.stream()
                        .map(opening -> ring(opening, toleranceMm))
                        .toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(outline, toleranceMm), holes);
    }

    private static LinearRing ring(Loop loop, double toleranceMm) {
        List<Coordinate> corners = new ArrayList<>();
        Spot start = loop.strokes().get(0).start();
        corners.add(new Coordinate(start.x(), start.y()));
        for (Spot spot : loop.chords(toleranceMm)) {
            corners.add(new Coordinate(spot.x(), spot.y()));
        }
        return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /** Whether a place lies inside a loop. */
    static boolean covers(Loop loop, Spot spot) {
        return polygon(loop, CHECK_MM)
                .contains(FACTORY.createPoint(new Coordinate(spot.x(), spot.y())));
    }

    /** Whether no loop crosses itself and no two cross each other. */
    static boolean areValid(List<Loop> loops) {
        List<Polygon> polygons = loops.stream().map(loop -> polygon(loop, CHECK_MM)).toList();
        for (int i = 0; i < polygons.size(); i++) {
            if (!polygons.get(i).isValid()) {
                return false;
            }
            for (int k = 0; k < i; k++) {
                // One inside the other is an opening; one partly inside the other is a mistake.
                if (polygons.get(i).overlaps(polygons.get(k))) {
                    return false;
                }
            }
        }
        return true;
    }
}
