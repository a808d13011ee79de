package haftline.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A piece rebuilt from nothing but the answer for other programs, by general quadrature and brute
 * force: none of the program's own geometry is used.
 */
final class JsonPiece {
    /**
     * Parts of a stretch between two breaks, so that a crossing of outline and bore spoils little.
     */
    private static final int LOOKS = 64;

    private static final int POINTS = 20;
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    /** One segment of the outline, by the parameter that the answer gives. */
    record Segment(
            double startX,
            double endX,
            double from,
            double to,
            DoubleUnaryOperator x,
            DoubleUnaryOperator r,
            DoubleUnaryOperator dx,
            DoubleUnaryOperator parameter) {
        double radiusAt(double place) {
            return r.applyAsDouble(parameter.applyAsDouble(place));
        }
    }

    /** One step of a bore: radius, depth, length of its point. */
    private record Step(double radius, double depth, double point) {}

    private record Bore(boolean fromFerrule, List<Step> steps) {
        /** Radius at a depth; negative infinity beyond it. */
        double radius(double z) {
            double widest = Double.NEGATIVE_INFINITY;
            for (Step step : steps) {
                double over = z - step.depth;
                if (over <= 0) {
                    widest = Math.max(widest, step.radius);
                } else if (over < step.point) {
                    widest = Math.max(widest, step.radius * (1 - over / step.point));
                }
            }
            return widest;
        }
    }

    private final JsonNode piece;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Bore> bores = new ArrayList<>();

    JsonPiece(JsonNode piece) {
        this.piece = piece;
        piece.get("outline").forEach(node -> segments.add(segment(node)));
        piece.get("bores").forEach(node -> bores.add(bore(node)));
    }

    private static Bore bore(JsonNode node) {
        List<Step> steps = new ArrayList<>();
        for (JsonNode step : node.get("steps")) {
            double radius = step.get("diameter_mm").asDouble() / 2;
            double angle = step.get("point_angle_deg").asDouble();
            double point = angle == 180 ? 0 : radius / Math.tan(Math.toRadians(angle / 2));
            steps.add(new Step(radius, step.get("depth_mm").asDouble(), point));
        }
        return new Bore(node.get("end").asText().equals("ferrule"), steps);
    }

    List<Segment> segments() {
        return segments;
    }

    private static Segment segment(JsonNode node) {
        String kind = node.get("kind").asText();
        if (kind.equals("line") || kind.equals("cubic")) {
            double[] x = column(node.get("points"), 0);
            double[] r = column(node.get("points"), 1);
            double length = x[x.length - 1] - x[0];
            return new Segment(
                    x[0],
                    x[x.length - 1],
                    0,
                    1,
                    t -> bernstein(x, t),
                    t -> bernstein(r, t),
                    t -> slope(x, t),
                    // The control points stand at thirds, so that the parameter is even in x.
                    place -> (place - x[0]) / length);
        }
        double cx = node.get("centre").get(0).asDouble();
        double cr = node.get("centre").get(1).asDouble();
        boolean ellipse = kind.equals("ellipse");
        double a =
                ellipse ? node.get("semi_axes").get(0).asDouble() : node.get("radius").asDouble();
        double b = ellipse ? node.get("semi_axes").get(1).asDouble() : a;
        double from = Math.toRadians(node.get("from_deg").asDouble());
        double to = Math.toRadians(node.get("to_deg").asDouble());
        return new Segment(
                cx + a * Math.cos(from),
                cx + a * Math.cos(to),
                from,
                to,
                t -> cx + a * Math.cos(t),
                t -> cr + b * Math.sin(t),
                t -> -a * Math.sin(t),
                place ->
                        Math.copySign(
                                Math.acos(Math.max(-1, Math.min(1, (place - cx) / a))), from + to));
    }

    private static double[] column(JsonNode points, int column) {
        double[] values = new double[points.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = points.get(i).get(column).asDouble();
        }
        return values;
    }

    private static double bernstein(double[] p, double t) {
        double s = 1 - t;
        return p.length == 2
                ? s * p[0] + t * p[1]
                : s * s * (s * p[0] + 3 * t * p[1]) + t * t * (3 * s * p[2] + t * p[3]);
    }

    private static double slope(double[] p, double t) {
        double s = 1 - t;
        return p.length == 2
                ? p[1] - p[0]
                : 3 * (s * s * (p[1] - p[0]) + 2 * s * t * (p[2] - p[1]) + t * t * (p[3] - p[2]));
    }

    double solid(int power) {
        double sum = 0;
        for (Segment s : segments) {
            sum +=
                    integral(
                            t -> {
                                double r = s.r().applyAsDouble(t);
                                return Math.PI
                                        * Math.pow(s.x().applyAsDouble(t), power)
                                        * r
                                        * r
                                        * s.dx().applyAsDouble(t);
                            },
                            s.from(),
                            s.to());
        }
        return sum;
    }

    /** Volume (power 0) or first moment (power 1) of the union of the bores inside the solid. */
    double removed(int power) {
        double sum = 0;
        double[] breaks = breaks();
        for (int i = 0; i + 1 < breaks.length; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            if (to - from < 1e-12) {
                continue;
            }
            Segment s = segmentAt((from + to) / 2);
            for (int k = 0; k < LOOKS; k++) {
                sum +=
                        integral(
                                x -> {
                                    double r = Math.min(s.radiusAt(x), widestBore(x));
                                    return Math.PI * Math.pow(x, power) * r * r;
                                },
                                from + (to - from) * k / LOOKS,
                                from + (to - from) * (k + 1) / LOOKS);
            }
        }
        return sum;
    }

    private static double integral(DoubleUnaryOperator f, double from, double to) {
        return GAUSS.legendre(POINTS, Math.min(from, to), Math.max(from, to))
                        .integrate(f::applyAsDouble)
                * Math.signum(to - from);
    }

    Segment segmentAt(double x) {
        for (Segment s : segments) {
            if (x < s.endX()) {
                return s;
            }
        }
        return segments.get(segments.size() - 1);
    }

    double startX() {
        return segments.get(0).startX();
    }

    double endX() {
        return segments.get(segments.size() - 1).endX();
    }

    /** Places where outline or bore change their law. */
    private double[] breaks() {
        DoubleStream.Builder all = DoubleStream.builder();
        segments.forEach(s -> all.add(s.startX()));
        all.add(endX());
        for (Bore bore : bores) {
            for (Step step : bore.steps) {
                all.add(place(bore, step.depth));
                all.add(place(bore, step.depth + step.point));
            }
        }
        return all.build().filter(x -> x >= startX() && x <= endX()).sorted().toArray();
    }

    private double place(Bore bore, double depth) {
        return bore.fromFerrule ? startX() + depth : endX() - depth;
    }

    private double depth(Bore bore, double x) {
        return bore.fromFerrule ? x - startX() : endX() - x;
    }

    private double widestBore(double x) {
        double widest = 0;
        for (Bore bore : bores) {
            widest = Math.max(widest, bore.radius(depth(bore, x)));
        }
        return widest;
    }

    /** Least wall of a zone in steps, and where; the bore's wander times a factor is taken off. */
    double[] leastWall(String zone, double stepMm, double wander) {
        Bore bore = bores.get(zone.equals("cap") ? 1 : 0);
        double from = zone.equals("tenon") ? startX() : 0;
        double to = zone.equals("tenon") ? 0 : endX();
        double e0 = wander * piece.get("wander").get("e0_mm").asDouble();
        double k = wander * piece.get("wander").get("k").asDouble();
        double least = Double.POSITIVE_INFINITY;
        double at = Double.NaN;
        for (Segment s : segments) {
            double low = Math.max(from, s.startX());
            double high = Math.min(to, s.endX());
            int count = (int) Math.ceil((high - low) / stepMm);
            for (int i = 0; i <= count; i++) {
                double x = low + (high - low) * i / count;
                double z = depth(bore, x);
                double wall = s.radiusAt(x) - bore.radius(z) - e0 - k * z;
                if (wall < least) {
                    least = wall;
                    at = x;
                }
            }
        }
        return new double[] {least, at};
    }

    /** Steepest slope of the outline in a zone, by differences. */
    double steepest(double stepMm) {
        double steepest = 0;
        for (Segment s : segments) {
            int count = (int) Math.ceil((s.endX() - s.startX()) / stepMm);
            double before = s.radiusAt(s.startX());
            for (int i = 1; i <= count; i++) {
                double x = s.startX() + (s.endX() - s.startX()) * i / count;
                double r = s.radiusAt(x);
                steepest =
                        Math.max(steepest, Math.abs(r - before) * count / (s.endX() - s.startX()));
                before = r;
            }
        }
        return steepest;
    }
}
