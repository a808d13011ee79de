package haftline.ui.board;

import haftline.curve.Edge;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import haftline.handle.Wander;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.ui.model.View;
import haftline.ui.model.Viewpoint;
import haftline.ui.theme.Palette;
import java.util.List;

/** The ink: outlines, bores with their points, wander, blade and centre line. */
final class LinePainter {
    /** Line widths of a drawing, wide and narrow (ISO 128-2: 2 to 1), px. */
    static final double WIDE = 1.8;

    private static final double NARROW = 0.9;
    private static final int DOME_CHORDS = 18;

    private final Pen pen;
    private final BoardScene scene;
    private final View view;
    private final Ink ink;
    private final Palette palette;
    private final Handle handle;

    private final boolean isLined;

    /**
     * A painter.
     *
     * @param isLined whether the outline of the wood is drawn already
     */
    LinePainter(Pen pen, BoardScene scene, View view, boolean isLined) {
        this.isLined = isLined;
        this.pen = pen;
        this.scene = scene;
        this.view = view;
        ink = pen.ink;
        palette = scene.palette();
        handle = scene.handle();
    }

    void paint() {
        centreLine();
        bores();
        wander();
        shank();
        ferrule();
        handle.brief().kit().cap().ifPresent(this::cap);
        wood();
    }

    private void centreLine() {
        pen.dashed(palette.soft(), NARROW, 16, 3, 3, 3);
        double y = Pen.sharp(view.axisY());
        pen.line(
                view.px(handle.ferruleFaceX() - Viewpoint.BLADE_SHOWN_MM) - 8,
                y,
                view.px(handle.buttX() + handle.lengths().capMm()) + 22,
                y);
    }

    private void wood() {
        pen.style(palette.ink(), WIDE);
        if (!isLined) {
            OutlinePath.stroke(ink, handle.outline(), view, 1, 0);
            OutlinePath.stroke(ink, handle.outline(), view, -1, 0);
        }
        double butt = view.px(handle.buttX());
        double r = handle.outline().rBefore(handle.buttX());
        pen.line(butt, view.py(r), butt, view.py(-r));
        double shoulder = handle.outline().rAfter(0);
        double ferrule = handle.brief().kit().ferrule().outside().mean() / 2;
        double top = Math.max(shoulder, ferrule);
        pen.line(view.px(0), view.py(top), view.px(0), view.py(-top));
        // The tenon shows below the axis only, where the ferrule is cut open.
        pen.style(palette.ink(), NARROW);
        double tenon = -handle.tenon().diameterMm() / 2;
        pen.line(view.px(handle.tenonEndX()), view.py(tenon), view.px(0), view.py(tenon));
        pen.line(
                view.px(handle.tenonEndX()),
                view.py(tenon),
                view.px(handle.tenonEndX()),
                view.py(-handle.tangBore().radiusAt(handle.tenonEndX())));
    }

    private void ferrule() {
        Ferrule ferrule = handle.brief().kit().ferrule();
        double front = view.px(handle.ferruleFaceX());
        double rear = view.px(0);
        double r = ferrule.outside().mean() / 2;
        pen.style(palette.ink(), WIDE);
        ink.strokeRect(front, view.py(r), rear - front, view.py(-r) - view.py(r));
        pen.style(palette.ink(), NARROW);
        double inside = -ferrule.bore().mean() / 2;
        pen.line(
                view.px(handle.ferruleFaceX() + ferrule.lipMm()),
                view.py(inside),
                rear,
                view.py(inside));
    }

    private void cap(EndCap cap) {
        double x0 = handle.buttX();
        double head = cap.headThickness().mean();
        double r = cap.headDiameter().mean() / 2;
        pen.style(palette.ink(), WIDE);
        ink.beginPath();
        ink.moveTo(view.px(x0), view.py(r));
        if (cap.form() == EndCap.Form.DOMED) {
            for (int i = 1; i < 2 * DOME_CHORDS; i++) {
                double a = Math.PI / 2 - Math.PI * i / (2 * DOME_CHORDS);
                ink.lineTo(view.px(x0 + head * Math.cos(a)), view.py(r * Math.sin(a)));
            }
        } else {
            ink.lineTo(view.px(x0 + head), view.py(r));
            ink.lineTo(view.px(x0 + head), view.py(-r));
        }
        ink.lineTo(view.px(x0), view.py(-r));
        ink.closePath();
        ink.stroke();
        pen.style(palette.ink(), NARROW);
        double spigot = -cap.spigotDiameter().mean() / 2;
        double end = view.px(x0 - cap.spigotLength().mean());
        pen.line(end, view.py(0), end, view.py(spigot));
        pen.line(end, view.py(spigot), view.px(x0), view.py(spigot));
    }

    private void bores() {
        pen.style(palette.ink(), NARROW + 0.3);
        drilled(handle.tangBore());
        handle.capBore().ifPresent(this::drilled);
    }

    /** Line by line: most lie along the axes, which is quicker than a path. */
    private void drilled(Bore bore) {
        for (Edge edge : BoreProfile.edges(bore, Wander.NONE)) {
            pen.line(
                    view.px(edge.x0()),
                    view.py(-edge.r0()),
                    view.px(edge.x1()),
                    view.py(-edge.r1()));
        }
    }

    /** How far the hole may have wandered by the worst of bad luck: a dashed line round it. */
    private void wander() {
        pen.dashed(palette.stop(), 1, 5, 3);
        strayed(handle.tangBore());
        handle.capBore().ifPresent(this::strayed);
    }

    private void strayed(Bore bore) {
        List<Edge> edges = BoreProfile.edges(bore, handle.wander());
        ink.beginPath();
        ink.moveTo(view.px(edges.get(0).x0()), view.py(-edges.get(0).r0()));
        for (Edge edge : edges) {
            ink.lineTo(view.px(edge.x1()), view.py(-edge.r1()));
        }
        ink.stroke();
    }

    private void shank() {
        Kit kit = handle.brief().kit();
        double seat = handle.fit().seatX();
        double tip = handle.fit().tipX();
        double length = tip - seat;
        pen.style(palette.ink(), NARROW);
        double end = view.py(-kit.tang().envelopeMm(length) / 2);
        pen.line(view.px(seat), view.py(-kit.tang().envelopeMm(0) / 2), view.px(tip), end);
        pen.line(view.px(tip), end, view.px(tip), view.py(0));
        blade(kit, seat);
    }

    /**
     * The blade in outline, broken off by the zigzag of a long break (ISO 128-2): its length is
     * dimensioned elsewhere and would take the handle its room.
     */
    private void blade(Kit kit, double seat) {
        double edge = kit.blade().edgeMm();
        double back = kit.blade().widthMm() - edge;
        double root = kit.tang().envelopeMm(0) / 2;
        double front = handle.ferruleFaceX() - Viewpoint.BLADE_SHOWN_MM;
        double neck = Math.min(seat, handle.ferruleFaceX());
        double heel = neck - 6;
        double rise = (neck - heel) * 0.75;
        ink.beginPath();
        ink.moveTo(view.px(neck), view.py(root));
        ink.bezierCurveTo(
                view.px(neck - rise),
                view.py(root),
                view.px(heel + rise),
                view.py(back),
                view.px(heel - 4),
                view.py(back));
        ink.lineTo(view.px(front), view.py(back));
        double mid = view.axisY() - (back - edge) / 2 * view.scale();
        ink.lineTo(view.px(front), mid - 9);
        ink.lineTo(view.px(front) - 6, mid - 4);
        ink.lineTo(view.px(front) + 6, mid + 4);
        ink.lineTo(view.px(front), mid + 9);
        ink.lineTo(view.px(front), view.py(-edge));
        ink.lineTo(view.px(heel), view.py(-edge));
        ink.bezierCurveTo(
                view.px(heel + 1.5),
                view.py(-edge),
                view.px(neck - 3),
                view.py(-root),
                view.px(neck),
                view.py(-root));
        ink.closePath();
        ink.setFill(palette.steel().deriveColor(0, 1, 1, 0.16));
        ink.fill();
        pen.style(palette.soft(), NARROW + 0.2);
        ink.stroke();
    }
}
