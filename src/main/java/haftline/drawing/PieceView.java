package haftline.drawing;

import haftline.curve.EllipseQuarter;
import haftline.curve.GraphCubic;
import haftline.curve.Joint;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.handle.Handle;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished piece seen from the side: wood, ferrule, cap and blade, with fine lines along the wood
 * that make it look round. The blade is as sketched from its sizes.
 */
final class PieceView {
    /** A bend of the outline under this many degrees shows no edge. */
    private static final double EDGE_DEG = 3;

    /** A step of the radius under this shows no edge, mm. */
    private static final double STEP_MM = 0.02;

    /** Heights of the lines along the wood as shares of its radius, closer where it is in shade. */
    private static final double[] SHADE = {0.55, -0.2, -0.5, -0.72, -0.87, -0.96};

    private final Handle handle;
    private final Outline body;

    PieceView(Handle handle) {
        this.handle = handle;
        this.body = handle.outline().part(0, handle.buttX());
    }

    /** Everything, x from the shoulder, y from the axis. */
    List<Path> paths() {
        List<Path> out = new ArrayList<>();
        for (double height : SHADE) {
            shade(out, height);
        }
        double root = Math.min(handle.fit().seatX(), handle.ferruleFaceX());
        out.addAll(BladeForm.of(handle).paths(root, Layer.DIMENSION));
        ferrule(out, handle.brief().kit().ferrule());
        handle.brief().kit().cap().ifPresent(cap -> cap(out, cap));
        out.add(wood());
        for (Joint joint : body.joints()) {
            if (Math.abs(joint.step()) > STEP_MM || Math.abs(joint.bendDegrees()) > EDGE_DEG) {
                double r = Math.max(joint.rBefore(), joint.rAfter());
                out.add(across(Layer.DIMENSION, joint.x(), r));
            }
        }
        return out;
    }

    /** Half of the greatest height over the axis or under it, mm. */
    double halfHeightMm() {
        Blade blade = handle.brief().kit().blade();
        double metal =
                Math.max(
                        handle.brief().kit().ferrule().outside().greatest() / 2,
                        handle.brief()
                                .kit()
                                .cap()
                                .map(cap -> cap.headDiameter().mean() / 2)
                                .orElse(0.0));
        double knife = Math.max(blade.edgeMm(), Math.abs(blade.widthMm() - blade.edgeMm()));
        return Math.max(body.greatest().r(), Math.max(metal, knife));
    }

    /** Where it begins, mm from the shoulder, negative. */
    double frontX() {
        return handle.fit().seatX() - handle.brief().kit().blade().length().mean();
    }

    /** Where it ends, mm from the shoulder. */
    double endX() {
        return handle.buttX() + handle.lengths().capMm();
    }

    private Path wood() {
        PathBuilder loop = Path.from(0, -body.rAfter(0)).lineTo(0, body.rAfter(0));
        OutlinePath.follow(loop, body);
        Path lower =
                OutlinePath.follow(Path.from(0, body.rAfter(0)), body)
                        .open(Layer.OUTLINE)
                        .mirrored()
                        .reversed();
        loop.lineTo(body.endX(), -body.rBefore(body.endX()));
        lower.segments().forEach(loop::add);
        return loop.close(Layer.OUTLINE);
    }

    private static Path across(Layer layer, double x, double r) {
        return Path.line(layer, new Vertex(x, -r), new Vertex(x, r));
    }

    /** A line along the wood at a share of its radius; arcs of small details are left bare. */
    private void shade(List<Path> out, double height) {
        List<Segment> run = new ArrayList<>();
        for (Segment segment : body.segments()) {
            Segment flat = flattened(segment, Math.abs(height));
            if (flat == null) {
                shade(out, run, height);
                run.clear();
            } else {
                run.add(flat);
            }
        }
        shade(out, run, height);
    }

    private static void shade(List<Path> out, List<Segment> run, double height) {
        if (run.isEmpty()) {
            return;
        }
        Outline line = new Outline(run);
        Path path =
                OutlinePath.follow(Path.from(line.startX(), line.rAfter(line.startX())), line)
                        .open(Layer.HATCH);
        out.add(height < 0 ? path.mirrored() : path);
    }

    private static Segment flattened(Segment segment, double share) {
        if (segment instanceof StraightLine line) {
            return new StraightLine(line.x0(), share * line.r0(), line.x1(), share * line.r1());
        }
        if (segment instanceof GraphCubic cubic) {
            return new GraphCubic(
                    cubic.x0(),
                    cubic.x1(),
                    share * cubic.r0(),
                    share * cubic.d0(),
                    share * cubic.r1(),
                    share * cubic.d1());
        }
        if (segment instanceof EllipseQuarter dome && dome.centreR() == 0) {
            return new EllipseQuarter(
                    dome.centreX(),
                    0,
                    dome.semiX(),
                    share * dome.semiR(),
                    dome.startX(),
                    dome.endX(),
                    dome.upper());
        }
        return null;
    }

    private void ferrule(List<Path> out, Ferrule ferrule) {
        double front = handle.ferruleFaceX();
        double r = ferrule.outside().mean() / 2;
        double chamfer = ferrule.chamferMm();
        PathBuilder ring = Path.from(front, -r).lineTo(front, r).lineTo(-chamfer, r);
        ring.lineTo(0, r - chamfer).lineTo(0, chamfer - r).lineTo(-chamfer, -r);
        out.add(ring.close(Layer.OUTLINE));
    }

    private void cap(List<Path> out, EndCap cap) {
        double seat = handle.buttX();
        double end = seat + cap.headThickness().mean();
        double r = cap.headDiameter().mean() / 2;
        if (cap.form() == EndCap.Form.DOMED) {
            out.add(
                    Path.from(seat, -r)
                            .lineTo(seat, r)
                            .ellipseTo(end, 0, seat, 0, end - seat, r, false)
                            .ellipseTo(seat, -r, seat, 0, end - seat, r, false)
                            .close(Layer.OUTLINE));
        } else {
            out.add(
                    Path.from(seat, -r)
                            .lineTo(seat, r)
                            .lineTo(end, r)
                            .lineTo(end, -r)
                            .close(Layer.OUTLINE));
        }
    }
}
