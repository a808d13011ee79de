package haftline.sheet.page;

import haftline.curve.Segment;
import haftline.drawing.BladeForm;
import haftline.drawing.Element;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.PathBuilder;
import haftline.handle.Handle;
import haftline.parts.EndCap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A finished piece as an engraver draws turned work: its outline, and meridians of the surface that
 * crowd towards the dark side. Black lines alone, so that any printer shows it. x from the
 * shoulder, y from the axis, mm.
 */
final class Engraving {
    /** Meridians of wood, degrees from the line of sight, positive upwards: light from above. */
    private static final double[] WOOD_DEG = {
        80, 70, 56, -4, -16, -26, -35, -43, -50, -57, -63, -69, -74, -79, -84
    };

    /** Polished metal is bright but for its edges and one dark band. */
    private static final double[] METAL_DEG = {78, 64, 6, 1, -4, -58, -66, -73, -79, -84};

    private static final int SAMPLES = 14;

    private final List<Element> out = new ArrayList<>();

    private Engraving() {}

    static List<Element> of(Handle handle) {
        Engraving engraving = new Engraving();
        double root = Math.min(handle.fit().seatX(), handle.ferruleFaceX());
        engraving.out.addAll(BladeForm.of(handle).paths(root, Layer.OUTLINE));
        double ferrule = handle.brief().kit().ferrule().outside().mean() / 2;
        engraving.turned(even(handle.ferruleFaceX(), 0, SAMPLES), x -> ferrule, METAL_DEG);
        engraving.wood(handle);
        handle.brief().kit().cap().ifPresent(cap -> engraving.cap(handle.buttX(), cap));
        return engraving.out;
    }

    private void wood(Handle handle) {
        for (Segment segment : handle.outline().segments()) {
            if (segment.startX() >= 0) {
                List<Double> xs = even(segment.startX(), segment.endX(), SAMPLES);
                meridians(xs, segment::r, WOOD_DEG);
                edge(xs, segment::r, 1);
                edge(xs, segment::r, -1);
                face(segment.endX(), handle.outline().rBefore(segment.endX()));
            }
        }
        face(0, handle.outline().rAfter(0));
    }

    private void cap(double from, EndCap cap) {
        double r = cap.headDiameter().mean() / 2;
        double thick = cap.headThickness().mean();
        if (cap.form() == EndCap.Form.FLAT) {
            turned(even(from, from + thick, SAMPLES), x -> r, METAL_DEG);
            return;
        }
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i <= SAMPLES; i++) {
            xs.add(from + thick * Math.sin(Math.PI / 2 * i / SAMPLES));
        }
        turned(
                xs,
                x -> {
                    double share = Math.min(1, (x - from) / thick);
                    return r * Math.sqrt(Math.max(0, 1 - share * share));
                },
                METAL_DEG);
    }

    private void turned(List<Double> xs, DoubleUnaryOperator r, double[] degrees) {
        meridians(xs, r, degrees);
        edge(xs, r, 1);
        edge(xs, r, -1);
        face(xs.get(0), r.applyAsDouble(xs.get(0)));
        double end = xs.get(xs.size() - 1);
        face(end, r.applyAsDouble(end));
    }

    private void meridians(List<Double> xs, DoubleUnaryOperator r, double[] degrees) {
        for (double degree : degrees) {
            chain(Layer.HATCH, xs, r, Math.sin(Math.toRadians(degree)));
        }
    }

    private void edge(List<Double> xs, DoubleUnaryOperator r, double side) {
        chain(Layer.OUTLINE, xs, r, side);
    }

    private void chain(Layer layer, List<Double> xs, DoubleUnaryOperator r, double share) {
        PathBuilder path = Path.from(xs.get(0), share * r.applyAsDouble(xs.get(0)));
        for (double x : xs.subList(1, xs.size())) {
            path.lineTo(x, share * r.applyAsDouble(x));
        }
        out.add(path.open(layer));
    }

    /** An upright joint seen from the side. */
    private void face(double x, double r) {
        if (r > 0) {
            out.add(Path.from(x, -r).lineTo(x, r).open(Layer.TEXT));
        }
    }

    private static List<Double> even(double from, double to, int count) {
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            xs.add(i == count ? to : from + (to - from) * i / count);
        }
        return xs;
    }
}
