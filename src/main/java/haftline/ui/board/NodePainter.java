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
            pen.gc.setFill(palette.ink());
            pen.gc.fillRect(Math.round(x) - 5, Math.round(y) - 5, 10, 10);
            return;
        }
        boolean selected = scene.selected().filter(node.name()::equals).isPresent();
        boolean hovered = scene.hovered().filter(node.name()::equals).isPresent();
        double r = hovered || selected ? RING + 1.5 : RING;
        if (selected) {
            pen.gc.setFill(palette.accent().deriveColor(0, 1, 1, 0.22));
            pen.gc.fillOval(x - 13, y - 13, 26, 26);
        }
        pen.gc.setFill(selected ? palette.accent() : palette.paper());
        pen.style(palette.accent(), 2.2);
        if (node.join() == Join.CRISP) {
            double[] xs = {x - r - 1, x, x + r + 1, x};
            double[] ys = {y, y - r - 1, y, y + r + 1};
            pen.gc.fillPolygon(xs, ys, 4);
            pen.gc.strokePolygon(xs, ys, 4);
        } else {
            pen.gc.fillOval(x - r, y - r, 2 * r, 2 * r);
            pen.gc.strokeOval(x - r, y - r, 2 * r, 2 * r);
        }
    }

    /** A flag on the place that a finding speaks of. */
    static void place(Pen pen, BoardScene scene, View view, Sheet sheet) {
        Finding finding = scene.chosen().orElse(null);
        if (finding == null || finding.knownX().isEmpty()) {
            return;
        }
        Color colour = colour(scene.palette(), finding.gravity());
        double x = Pen.sharp(view.px(finding.knownX().getAsDouble()));
        pen.gc.setFill(colour.deriveColor(0, 1, 1, 0.13));
        pen.gc.fillRect(x - 9, Sheet.RULER, 18, sheet.height() - Sheet.RULER);
        pen.style(colour, 1.2);
        pen.line(x, Sheet.RULER, x, sheet.height());
        pen.gc.setFill(colour);
        pen.gc.fillPolygon(
                new double[] {x - 6, x + 6, x},
                new double[] {Sheet.RULER, Sheet.RULER, Sheet.RULER + 9},
                3);
    }

    static Color colour(Palette palette, Gravity gravity) {
        return switch (gravity) {
            case STOP -> palette.stop();
            case WARN -> palette.near();
            case NOTE -> palette.soft();
        };
    }
}
