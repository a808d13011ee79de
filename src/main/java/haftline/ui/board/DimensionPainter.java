package haftline.ui.board;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.Spread;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.text.TextAlignment;

/** Dimensions in the drawing office's manner (ISO 129-1), and the point of balance. */
final class DimensionPainter {
    private static final double OVERSHOOT = 4;

    /** How far a diameter stands over its node, and over another diameter, px. */
    private static final double LIFT = 14;

    private final Pen pen;
    private final BoardScene scene;
    private final Sheet sheet;
    private final View view;
    private final Palette palette;
    private final Handle handle;
    private final Shown shown;

    DimensionPainter(Pen pen, BoardScene scene, Sheet sheet, View view) {
        this.pen = pen;
        this.scene = scene;
        this.sheet = sheet;
        this.view = view;
        palette = scene.palette();
        handle = scene.handle();
        shown = scene.shown();
    }

    void paint() {
        double room = scene.room(view);
        double end = handle.buttX() + handle.lengths().capMm();
        double over = -room - 44;
        along(handle.ferruleFaceX(), end, over, -room, "", handle.lengths().overallMm());
        double under = room + 20;
        Bore bore = handle.tangBore();
        double depth = bore.deepest().depthMm();
        balance(view.axisY() + under + 58);
        along(
                bore.faceX(),
                bore.xAt(depth),
                under,
                room,
                "bore ⌀ " + number(bore.deepest().diameterMm()) + ", ",
                depth);
        handle.capBore()
                .ifPresent(
                        cap ->
                                along(
                                        cap.xAt(cap.deepest().depthMm()),
                                        cap.faceX(),
                                        under,
                                        room,
                                        "",
                                        cap.deepest().depthMm()));
        along(0, handle.buttX(), under + 26, room, "", handle.lengths().visibleWoodMm());
        diameters();
    }

    private String number(double mm) {
        return shown.length(mm);
    }

    /**
     * One length along the axis; its arrows stand outside where there is no room between them.
     *
     * @param below of the dimension line, px under the axis
     * @param edge of the room for the piece, px under the axis
     */
    private void along(double x0, double x1, double below, double edge, String lead, double mm) {
        double a = Pen.sharp(view.px(Math.min(x0, x1)));
        double b = Pen.sharp(view.px(Math.max(x0, x1)));
        double line = Pen.sharp(view.axisY() + below);
        double away = Math.signum(edge);
        double from = Math.round(view.axisY() + edge) + 6 * away;
        double to = line + OVERSHOOT * away;
        String text = lead + number(mm);
        pen.style(palette.soft(), 1);
        pen.line(a, from, a, to);
        pen.line(b, from, b, to);
        pen.ink.setFill(palette.soft());
        double width = Pen.width(text);
        if (b - a > width + 34) {
            pen.line(a, line, b, line);
            pen.arrow(a, line, -1);
            pen.arrow(b, line, 1);
            pen.patched(text, middle(a, b, width), line + 4, palette.ink(), palette.paper());
        } else {
            pen.line(a - 16, line, b + 16, line);
            pen.arrow(a, line, 1);
            pen.arrow(b, line, -1);
            boolean right = b + 24 + width < sheet.width();
            pen.text(
                    text,
                    right ? b + 20 : a - 20,
                    line + 4,
                    palette.ink(),
                    right ? TextAlignment.LEFT : TextAlignment.RIGHT);
        }
    }

    /**
     * Where the words of a dimension stand: clear of the shoulder's line, which may run through.
     */
    private double middle(double a, double b, double width) {
        double middle = (a + b) / 2;
        double behind = view.px(0) + width / 2 + 10;
        boolean isCrossed = Math.abs(view.px(0) - middle) < width / 2 + 10 && view.px(0) > a + 1;
        return isCrossed && behind + width / 2 + 14 < b ? behind : middle;
    }

    /** The diameters over their nodes; each is lifted until it lies on none before it. */
    private void diameters() {
        List<Rectangle2D> taken = new ArrayList<>();
        for (PlacedNode node : handle.nodes()) {
            double x = view.px(node.x());
            double rest = view.py(node.radiusMm()) - LIFT;
            String text = "⌀ " + number(2 * node.radiusMm());
            double wide = Pen.width(text) + 8;
            double shift = node.isFree() ? 0 : node.x() <= 0 ? -22 : 24;
            // At the edge of the board it is still read whole.
            double middle =
                    x < sheet.width()
                            ? Math.min(sheet.width() - wide / 2 - 2, x + shift)
                            : x + shift;
            Rectangle2D box = new Rectangle2D(middle - wide / 2, rest - 11, wide, LIFT);
            while (lies(box, taken)) {
                box = new Rectangle2D(box.getMinX(), box.getMinY() - LIFT, wide, LIFT);
            }
            double y = box.getMinY() + 11;
            if (y < Sheet.RULER + 12) {
                continue;
            }
            taken.add(box);
            if (y < rest) {
                pen.style(palette.soft(), 1);
                pen.line(Pen.sharp(x), y + 3, Pen.sharp(x), rest + LIFT - 7);
            }
            pen.patched(text, middle, y, palette.ink(), palette.paper());
        }
    }

    private static boolean lies(Rectangle2D box, List<Rectangle2D> taken) {
        return taken.stream().anyMatch(box::intersects);
    }

    /** A knife edge under the point of balance, and the band where it is wanted. */
    private void balance(double y) {
        double face = handle.ferruleFaceX();
        double at = scene.figures().balance().fromFerruleFaceMm();
        double low = handle.brief().rules().balance().lowMm();
        double high = handle.brief().rules().balance().highMm();
        boolean met = at >= low && at <= high;
        double x = view.px(face + at);
        double a = view.px(face + low);
        double b = view.px(face + high);
        pen.ink.setFill(palette.good().deriveColor(0, 1, 1, 0.24));
        pen.ink.fillRect(a, y, b - a, 9);
        pen.style(palette.good(), 1.2);
        pen.line(a, y - 2, a, y + 11);
        pen.line(b, y - 2, b, y + 11);
        pen.ink.setFill(met ? palette.good() : palette.near());
        pen.ink.fillPolygon(new double[] {x - 8, x + 8, x}, new double[] {y + 10, y + 10, y - 4});
        pen.style(palette.soft(), 0.8);
        pen.dashed(palette.soft(), 0.8, 2, 3);
        pen.line(Pen.sharp(x), view.py(-PiecePicture.radius(handle)) + 6, Pen.sharp(x), y - 6);
        String where = at < 0 ? " before the ferrule's face" : " behind the ferrule's face";
        String text =
                "balance "
                        + shown.length(Math.abs(at))
                        + where
                        + (met ? ", within " : ", wanted within ")
                        + shown.length(low)
                        + " to "
                        + shown.length(high);
        double right = Math.max(b, x + 8);
        Optional<Spread> spread = scene.overlay().doubt().map(Doubt::balance);
        if (spread.isPresent()) {
            right = Math.max(right, spread(spread.get(), y + 14));
        }
        pen.text(text, right + 12, y + 9, palette.ink(), TextAlignment.LEFT);
    }

    /** A bracket under the fulcrum, in which 9 in 10 handles balance; its right end, px. */
    private double spread(Spread balance, double y) {
        double face = handle.ferruleFaceX();
        double a = view.px(face + balance.low());
        double b = view.px(face + balance.high());
        pen.style(palette.accent(), 1.6);
        pen.line(a, y, b, y);
        pen.line(a, y - 4, a, y);
        pen.line(b, y - 4, b, y);
        return b;
    }
}
