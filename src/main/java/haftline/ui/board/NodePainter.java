package haftline.ui.board;

import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.handle.PlacedNode;
import haftline.shape.Join;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import javafx.scene.paint.Color;

/** What can be moved as open rings, what is fixed as blocks of ink, and the place of a finding. */
final class NodePainter {
    static final double RING = 5.5;

    private NodePainter() {}

    static void paint(Pen pen, BoardScene scene, View view) {
        for (PlacedNode node : scene.handle().nodes()) {
            node(pen, scene, view, node);
        }
    }

    private static void node(Pen pen, BoardScene scene, View view, PlacedNode node) {
        Palette palette = scene.palette();
        double x = view.px(node.x());
        double y = view.py(node.radiusMm());
        if (!node.isFree()) {
            pen.ink.setFill(palette.ink());
            pen.ink.fillRect(Math.round(x) - 5, Math.round(y) - 5, 10, 10);
            return;
        }
        boolean selected = scene.selected().filter(node.name()::equals).isPresent();
        boolean hovered = scene.hovered().filter(node.name()::equals).isPresent();
        double r = hovered || selected ? RING + 1.5 : RING;
        if (selected) {
            pen.ink.setFill(palette.accent().deriveColor(0, 1, 1, 0.22));
            pen.ink.fillOval(x - 13, y - 13, 26, 26);
        }
        pen.ink.setFill(selected ? palette.accent() : palette.paper());
        pen.style(palette.accent(), 2.2);
        if (node.join() == Join.CRISP) {
            double[] xs = {x - r - 1, x, x + r + 1, x};
            double[] ys = {y, y - r - 1, y, y + r + 1};
            pen.ink.fillPolygon(xs, ys);
            pen.ink.strokePolygon(xs, ys);
        } else {
            pen.ink.fillOval(x - r, y - r, 2 * r, 2 * r);
            pen.ink.strokeOval(x - r, y - r, 2 * r, 2 * r);
        }
    }

    /** A flag on the place that a finding speaks of. */
    static void place(Pen pen, BoardScene scene, View view, double top, double bottom) {
        Finding finding = scene.chosen().orElse(null);
        if (finding == null || finding.knownX().isEmpty()) {
            return;
        }
        Color colour = colour(scene.palette(), finding.gravity());
        double x = Pen.sharp(view.px(finding.knownX().getAsDouble()));
        pen.ink.setFill(colour.deriveColor(0, 1, 1, 0.13));
        pen.ink.fillRect(x - 9, top, 18, bottom - top);
        pen.style(colour, 1.2);
        pen.line(x, top, x, bottom);
        pen.ink.setFill(colour);
        pen.ink.fillPolygon(new double[] {x - 6, x + 6, x}, new double[] {top, top, top + 9});
    }

    static Color colour(Palette palette, Gravity gravity) {
        return switch (gravity) {
            case STOP -> palette.stop();
            case WARN -> palette.near();
            case NOTE -> palette.soft();
        };
    }
}
