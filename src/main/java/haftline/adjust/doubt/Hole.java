package haftline.adjust.doubt;

import haftline.curve.Outline;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.BoreStep;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawn bore, ready to be drilled many times over, deeper or shallower and wider than drawn. All
 * of its steps are deeper by the same, since they are stopped by one hand from one face, and wider
 * by the same. As in the drawn bore a wider hole has a longer point.
 */
final class Hole {
    private final Bore bore;
    private final double[] depth;
    private final double[] radius;
    private final double reach;

    /** How many mm deeper the point ends for each mm that the radius is wider. */
    private final double pointPerMm;

    private final double volume;
    private final double moment;

    /** Integrals of the radius, and of radius times depth, over depth. */
    private final double radii;

    private final double radiiMoment;

    Hole(Bore bore) {
        this.bore = bore;
        BoreProfile edge = BoreProfile.of(bore);
        int n = edge.size();
        depth = new double[n];
        radius = new double[n];
        for (int i = 0; i < n; i++) {
            depth[i] = edge.depth(i);
            radius[i] = edge.radius(i);
        }
        reach = depth[n - 1];
        pointPerMm = (depth[n - 1] - depth[n - 2]) / (radius[n - 2] - radius[n - 1]);
        volume = edge.volumeMm3();
        moment = edge.momentMm4();
        double sum = 0;
        double first = 0;
        for (int i = 1; i < n; i++) {
            double h = depth[i] - depth[i - 1];
            double a = radius[i - 1];
            double b = radius[i];
            sum += h * (a + b) / 2;
            first += depth[i - 1] * h * (a + b) / 2 + h * h * (a + 2 * b) / 6;
        }
        radii = sum;
        radiiMoment = first;
    }

    Bore bore() {
        return bore;
    }

    double reachMm() {
        return reach;
    }

    /** Depths of the edge's corners behind the mouth, as drawn. */
    int corners() {
        return depth.length - 1;
    }

    double cornerDepth(int corner) {
        return depth[corner + 1];
    }

    /** The same for a mouth of its own: where a drilled hole's deepest point is. */
    double tipDepth(double deeper, double wider) {
        return reach + deeper + wider * pointPerMm;
    }

    /**
     * Radius of the drilled hole at a depth, mm; negative beyond its point.
     *
     * @param z depth from the face, mm
     * @param deeper by how much deeper it is drilled, mm
     * @param wider by how much wider it is cut, mm of radius
     */
    double radiusAt(double z, double deeper, double wider) {
        double drawn = z - deeper;
        if (drawn <= 0) {
            return radius[0] + wider;
        }
        for (int i = 1; i < depth.length; i++) {
            if (drawn <= depth[i]) {
                double h = depth[i] - depth[i - 1];
                double share = h > 0 ? (drawn - depth[i - 1]) / h : 0;
                return radius[i - 1] + share * (radius[i] - radius[i - 1]) + wider;
            }
        }
        return pointPerMm > 0 ? wider - (drawn - reach) / pointPerMm : -1;
    }

    /** How much more than drawn is drilled away, mm³; the longer point's own hair is left out. */
    double moreVolume(double deeper, double wider) {
        double mouth = radius[0] + wider;
        return widened(wider) - volume + Math.PI * mouth * mouth * deeper;
    }

    /** How much greater the first moment of the hole about the shoulder is than drawn, mm⁴. */
    double moreMoment(double deeper, double wider) {
        double mouth = radius[0] + wider;
        double alongDepth =
                2 * Math.PI * wider * radiiMoment
                        + Math.PI * wider * wider * reach * reach / 2
                        + widened(wider) * deeper
                        + Math.PI * mouth * mouth * deeper * deeper / 2;
        double sign = bore.end() == Bore.End.FERRULE ? 1 : -1;
        return bore.faceX() * moreVolume(deeper, wider) + sign * alongDepth;
    }

    private double widened(double wider) {
        return volume + 2 * Math.PI * wider * radii + Math.PI * wider * wider * reach;
    }

    /** Under which zone's rule the wall at a place is. */
    Zone zoneAt(double x) {
        return bore.end() == Bore.End.BUTT ? Zone.CAP : x <= 0 ? Zone.TENON : Zone.BODY;
    }

    /**
     * Places between two ends where the drawn edge has a corner.
     *
     * @param low mm from the shoulder
     * @param high mm from the shoulder
     */
    List<Double> cornersBetween(double low, double high) {
        List<Double> places = new ArrayList<>();
        for (BoreStep step : bore.steps()) {
            for (double z : new double[] {step.depthMm(), step.depthMm() + step.pointMm()}) {
                double x = bore.xAt(z);
                if (x > low && x < high) {
                    places.add(x);
                }
            }
        }
        return places;
    }

    /** How far along the outline a hole can reach that is drilled so much too deep. */
    double[] span(Outline drawn, double deeper) {
        double end = bore.xAt(reach + deeper);
        return new double[] {
            Math.max(drawn.startX(), Math.min(bore.faceX(), end)),
            Math.min(drawn.endX(), Math.max(bore.faceX(), end))
        };
    }
}
