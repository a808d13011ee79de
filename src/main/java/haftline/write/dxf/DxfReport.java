package haftline.write.dxf;

import haftline.drawing.Bounds;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What went into a DXF file.
 *
 * @param entities how many entities of each type, by DXF name
 * @param shortestSegmentMm length of the shortest line or arc, alone or in a polyline; infinite
 *     where there is none
 * @param shortSegments how many are shorter than {@link DxfWriter#SHORTEST_SEGMENT_MM} and could
 *     not be merged into a neighbour without moving the line
 * @param mergedSegments how many short ones were merged into a neighbour
 * @param duplicates how many lines and arcs were left out because they were drawn already on the
 *     same layer
 * @param doubledSegments how many were drawn twice all the same, being part of two closed loops
 * @param extents the rectangle that holds everything but text
 */
public record DxfReport(
        Map<String, Integer> entities,
        double shortestSegmentMm,
        int shortSegments,
        int mergedSegments,
        int duplicates,
        int doubledSegments,
        Bounds extents) {
    /** Copies the counts, in the order of their names. */
    public DxfReport {
        entities = Collections.unmodifiableMap(new TreeMap<>(entities));
    }
}
