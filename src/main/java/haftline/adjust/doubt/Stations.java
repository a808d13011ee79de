package haftline.adjust.doubt;

import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.figures.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * The places along the drawn bores where the wall of every made handle is taken: every half
 * millimetre, and at every joint of the outline and corner of the drawn edge. Between two of them
 * the outline dips by no more than h²/8 of its curvature, a micron or two on a handle.
 *
 * @param x mm from the shoulder
 * @param depth mm from the face of the bore
 * @param segment number of the outline's segment
 * @param zone number of the zone, in the order of the zones
 * @param hole number of the hole
 * @param isDrawn whether the drawn bore reaches it
 */
record Stations(
        double[] x, double[] depth, int[] segment, int[] zone, int[] hole, boolean[] isDrawn) {
    private static final double STATION_MM = 0.5;

    /** Two places nearer than this are one station, mm. */
    private static final double SAME_MM = 1e-6;

    /**
     * The stations of a handle.
     *
     * @param drawn its outline
     * @param zones the zones that count
     * @param holes its bores
     * @param deeper how much deeper than drawn any is drilled, mm
     */
    static Stations of(Outline drawn, List<Zone> zones, List<Hole> holes, double deeper) {
        List<double[]> all = new ArrayList<>();
        for (int h = 0; h < holes.size(); h++) {
            along(drawn, zones, holes.get(h), h, deeper, all);
        }
        int n = all.size();
        Stations stations =
                new Stations(
                        new double[n],
                        new double[n],
                        new int[n],
                        new int[n],
                        new int[n],
                        new boolean[n]);
        for (int s = 0; s < n; s++) {
            double[] one = all.get(s);
            int number = (int) one[3];
            Hole hole = holes.get(number);
            stations.x[s] = one[0];
            stations.depth[s] = Math.max(0, hole.bore().depthAt(one[0]));
            stations.segment[s] = (int) one[1];
            stations.zone[s] = (int) one[2];
            stations.hole[s] = number;
            stations.isDrawn[s] = stations.depth[s] <= hole.reachMm();
        }
        return stations;
    }

    private static void along(
            Outline drawn,
            List<Zone> zones,
            Hole hole,
            int number,
            double deeper,
            List<double[]> all) {
        double[] span = hole.span(drawn, deeper);
        for (int i = 0; i < drawn.segments().size(); i++) {
            Segment piece = drawn.segments().get(i);
            double low = Math.max(span[0], piece.startX());
            double high = Math.min(span[1], piece.endX());
            int zone = zones.indexOf(hole.zoneAt(piece.endX()));
            // No wall is reckoned for a cap's bore under the tenon.
            boolean counts = zone >= 0 && !(zones.get(zone) == Zone.CAP && high <= 0);
            if (low < high && counts) {
                List<Double> places = new ArrayList<>(List.of(low, high));
                for (double at = low + STATION_MM; at < high - SAME_MM; at += STATION_MM) {
                    places.add(at);
                }
                places.addAll(hole.cornersBetween(low, high));
                places.sort(null);
                for (double at : places) {
                    all.add(new double[] {at, i, zone, number});
                }
            }
        }
    }

    int size() {
        return x.length;
    }
}
