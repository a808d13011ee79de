package haftline.drawing;

import haftline.curve.EllipseQuarter;
import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.parts.BarbedTang;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The kit's metal beside the wood, drawn for reference at its mean sizes. */
final class PartOutlines {
    /** Where the blade's heel stands in front of the seating face, mm, as sketched. */
    private static final double NECK_MM = 5;

    /** How much of the blade is shown behind the break, mm. */
    static final double STUB_MM = 14;

    /** Barbs stand about so far apart, mm, as sketched. */
    private static final double BARB_PITCH_MM = 3;

    /** The share of a barbed tang that carries barbs, from its tip, as sketched. */
    private static final double BARBED_SHARE = 0.75;

    private final Handle handle;
    private final UnaryOperator<Outline> shown;

    /**
     * For a handle.
     *
     * @param shown how a curve is to be drawn: as it is, or fitted with arcs
     */
    PartOutlines(Handle handle, UnaryOperator<Outline> shown) {
        this.handle = handle;
        this.shown = shown;
    }

    List<Element> all() {
        List<Element> out = new ArrayList<>();
        Path ferrule = ferrule(handle.brief().kit().ferrule());
        out.add(ferrule);
        out.add(ferrule.mirrored());
        handle.brief().kit().cap().ifPresent(cap -> out.add(cap(cap)));
        tang(out, handle.brief().kit().tang());
        blade(out, handle.brief().kit().blade());
        return List.copyOf(out);
    }

    /** The upper cut through the ring and its lip. */
    private Path ferrule(Ferrule ferrule) {
        double front = handle.ferruleFaceX();
        double inside = ferrule.bore().mean() / 2;
        double outside = ferrule.outside().mean() / 2;
        double chamfer = ferrule.chamferMm();
        boolean lipped = ferrule.lipMm() > 0;
        double hole = lipped ? ferrule.lipHoleMm().orElse(0) / 2 : inside;
        PathBuilder path =
                Path.from(front, hole)
                        .lineTo(front, outside)
                        .lineTo(-chamfer, outside)
                        .lineTo(0, outside - chamfer)
                        .lineTo(0, inside);
        if (lipped) {
            path.lineTo(front + ferrule.lipMm(), inside).lineTo(front + ferrule.lipMm(), hole);
        }
        return path.close(Layer.PART);
    }

    private Path cap(EndCap cap) {
        double seat = handle.buttX();
        double head = cap.headDiameter().mean() / 2;
        double spigot = cap.spigotDiameter().mean() / 2;
        double inner = seat - cap.spigotLength().mean();
        double pole = seat + cap.headThickness().mean();
        PathBuilder path =
                Path.from(inner, -spigot)
                        .lineTo(inner, spigot)
                        .lineTo(seat, spigot)
                        .lineTo(seat, head);
        if (cap.form() == EndCap.Form.DOMED) {
            Outline dome =
                    shown.apply(
                            Outline.of(
                                    new EllipseQuarter(
                                            seat, 0, pole - seat, head, seat, pole, true)));
            OutlinePath.follow(path, dome);
            OutlinePath.follow(Path.from(seat, head), dome)
                    .open(Layer.PART)
                    .mirrored()
                    .reversed()
                    .segments()
                    .forEach(path::add);
        } else {
            path.lineTo(pole, head).lineTo(pole, -head).lineTo(seat, -head);
        }
        return path.lineTo(seat, -spigot).close(Layer.PART);
    }

    private void tang(List<Element> out, Tang tang) {
        double seat = handle.fit().seatX();
        double tip = handle.fit().tipX();
        PathBuilder half = Path.from(seat, 0);
        tang.flare().ifPresent(flare -> flare(half, flare, tang));
        if (tang instanceof BarbedTang barbed) {
            barbs(half, barbed, seat, tip);
        } else if (tang instanceof TaperedTang tapered) {
            half.lineTo(seat + flared(tang), radiusAt(tapered, flared(tang)))
                    .lineTo(tip, tapered.tipDiameter().mean() / 2);
        } else {
            double r = halfWidth(tang);
            half.lineTo(seat + flared(tang), r).lineTo(tip, r);
        }
        Path upper = half.lineTo(tip, 0).open(Layer.PART);
        out.add(upper);
        out.add(upper.mirrored());
        if (tang instanceof ThreadedTang threaded) {
            thread(out, threaded, seat, tip);
        }
    }

    private static double flared(Tang tang) {
        return tang.flare()
                .map(flare -> Math.min(flare.length().mean(), tang.length().mean() / 2))
                .orElse(0.0);
    }

    private void flare(PathBuilder half, Flare flare, Tang tang) {
        half.lineTo(handle.fit().seatX(), flare.diameter().mean() / 2);
    }

    private static double radiusAt(TaperedTang tang, double fromSeat) {
        double root = tang.rootDiameter().mean() / 2;
        double tip = tang.tipDiameter().mean() / 2;
        return root + (tip - root) * fromSeat / tang.length().mean();
    }

    /** Half of what is seen square to the blade's face: a flat tang lies in the blade's plane. */
    private static double halfWidth(Tang tang) {
        if (tang instanceof FlatTang flat) {
            return flat.width().mean() / 2;
        }
        if (tang instanceof SquareTang square) {
            return square.width().mean() / 2;
        }
        // Round and threaded: the envelope of one section.
        return tang.envelopeMm(0) / 2;
    }

    /** Upright towards the root and sloping towards the tip, so that they hold in the wood. */
    private static void barbs(PathBuilder half, BarbedTang tang, double seat, double tip) {
        double core = tang.coreDiameter().mean() / 2;
        double barb = tang.barbDiameter().mean() / 2;
        double barbed = (tip - seat) * BARBED_SHARE;
        int count = (int) Math.max(1, Math.round(barbed / BARB_PITCH_MM));
        half.lineTo(seat + flared(tang), core);
        for (int i = 0; i < count; i++) {
            double x = tip - barbed + barbed * i / count;
            half.lineTo(x, core).lineTo(x, barb);
            double next = i + 1 == count ? tip : tip - barbed + barbed * (i + 1) / count;
            half.lineTo(next, core);
        }
    }

    /** The thread's root as a second line, and the end of the plain part. */
    private static void thread(List<Element> out, ThreadedTang tang, double seat, double tip) {
        double crest = tang.crestDiameter().mean() / 2;
        double root = Math.min(tang.threadBoreMm() / 2, crest * 0.85);
        double from = seat + tang.plainLength().mean();
        if (from < tip) {
            for (int side = -1; side <= 1; side += 2) {
                out.add(
                        Path.line(
                                Layer.PART,
                                new Vertex(from, side * root),
                                new Vertex(tip, side * root)));
            }
            out.add(Path.line(Layer.PART, new Vertex(from, -crest), new Vertex(from, crest)));
        }
    }

    /** Neck and heel of the blade up to a break; where the blade points is up to the kit. */
    private void blade(List<Element> out, Blade blade) {
        double seat = handle.fit().seatX();
        double neck = Math.min(halfWidth(handle.brief().kit().tang()), blade.widthMm() / 2);
        double heel = Math.min(seat, handle.ferruleFaceX()) - NECK_MM;
        double end = heel - (STUB_MM - NECK_MM);
        double below = -blade.edgeMm();
        double above = blade.widthMm() + below;
        out.add(
                Path.from(end, above)
                        .lineTo(heel, above)
                        .lineTo(heel, Math.min(neck, above))
                        .lineTo(seat, Math.min(neck, above))
                        .open(Layer.PART));
        out.add(
                Path.from(end, below)
                        .lineTo(heel, below)
                        .lineTo(heel, Math.max(-neck, below))
                        .lineTo(seat, Math.max(-neck, below))
                        .open(Layer.PART));
        double third = (above - below) / 3;
        // A break is a narrow line by free hand.
        out.add(
                Path.from(end, below)
                        .arcTo(end, below + third, 0.35)
                        .arcTo(end, below + 2 * third, -0.35)
                        .arcTo(end, above, 0.35)
                        .open(Layer.TEXT));
    }
}
