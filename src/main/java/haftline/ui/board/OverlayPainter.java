package haftline.ui.board;

import haftline.adjust.fair.CurvatureComb;
import haftline.adjust.fair.CurvatureComb.Tooth;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** What is laid over the piece while it rests: the ghost of a proposal, the curvature comb. */
final class OverlayPainter {
    private static final double GHOST = 1.6;

    /** A diameter that changes by less is not told, mm. */
    private static final double LEAST_CHANGE_MM = 0.005;

    /** What moves is written so far under the outline, px. */
    private static final double UNDER_NODE = 24;

    /** The tooth that all but a few are shorter than gets this long, px. */
    private static final double TOOTH = 52;

    /** Longer teeth are cut, px: a bead's would leave the board. */
    private static final double LONGEST = 78;

    private static final double ALL_BUT_A_FEW = 0.85;

    /** The sample in the legend is no longer than this, px. */
    private static final double SAMPLE = 44;

    /** No radius matters beyond this, mm: the line is straight. */
    private static final double STRAIGHT_MM = 1e4;

    private static final double LEGEND_X = 10;
    private static final double LEGEND_Y = Sheet.RULER + 16;
    private static final double LEGEND_LINE = 16;

    private final Pen pen;
    private final BoardScene scene;
    private final View view;
    private final Ink ink;
    private final Palette palette;

    OverlayPainter(Pen pen, BoardScene scene, View view) {
        this.pen = pen;
        this.scene = scene;
        this.view = view;
        ink = pen.ink;
        palette = scene.palette();
    }

    /** The outline as proposed: dashed, over the present one, with what moves at the nodes. */
    void ghost() {
        scene.overlay().ghost().ifPresent(this::ghost);
    }

    private void ghost(Handle ghost) {
        pen.dashed(palette.accent(), GHOST, 7, 4);
        OutlinePath.stroke(ink, ghost.outline(), view, 1, 0);
        OutlinePath.stroke(ink, ghost.outline(), view, -1, 0);
        double butt = view.px(ghost.buttX());
        double r = ghost.outline().rBefore(ghost.buttX());
        pen.line(butt, view.py(r), butt, view.py(-r));
        pen.dashed(palette.accent(), GHOST, 7, 4);
        pen.line(LEGEND_X, LEGEND_Y - 4, LEGEND_X + 26, LEGEND_Y - 4);
        pen.text("as proposed", LEGEND_X + 34, LEGEND_Y, palette.accent(), TextAlignment.LEFT);
        for (PlacedNode node : ghost.nodes()) {
            scene.node(node.name()).ifPresent(now -> change(now, node));
        }
    }

    /** On the wood under the node, where nothing else is written. */
    private void change(PlacedNode now, PlacedNode proposed) {
        double by = 2 * (proposed.radiusMm() - now.radiusMm());
        if (Math.abs(by) < LEAST_CHANGE_MM) {
            return;
        }
        String text =
                (by < 0 ? "−" : "+")
                        + NumberText.fixed(
                                Math.abs(by) / scene.units().millimetres(),
                                scene.units() == Units.MM ? 2 : 3)
                        + " "
                        + scene.units().symbol();
        double inner = Math.min(now.radiusMm(), proposed.radiusMm());
        pen.patched(
                text,
                view.px(now.x()),
                view.py(inner) + UNDER_NODE,
                palette.accent(),
                palette.paper());
    }

    /** Teeth square to the upper outline, outward where the wood is round. */
    void comb() {
        scene.overlay().comb().ifPresent(this::comb);
    }

    private void comb(CurvatureComb comb) {
        double usual = usual(comb.teeth());
        if (usual < 1 / STRAIGHT_MM) {
            return;
        }
        // px of a tooth of curvature 1/mm.
        double px = TOOTH / usual;
        Color teeth = palette.accent().deriveColor(0, 1, 1, 0.55);
        pen.style(teeth, 0.8);
        for (Tooth tooth : comb.teeth()) {
            ink.strokeLine(
                    view.px(tooth.x()),
                    view.py(tooth.radiusMm()),
                    endX(tooth, px),
                    endY(tooth, px));
        }
        pen.style(palette.accent(), 1.2);
        Tooth before = null;
        boolean isCut = false;
        for (Tooth tooth : comb.teeth()) {
            isCut |= isCut(tooth, px);
            if (before != null && !(isCut(tooth, px) && isCut(before, px))) {
                ink.strokeLine(
                        endX(before, px), endY(before, px), endX(tooth, px), endY(tooth, px));
            }
            before = tooth;
        }
        legend(px, isCut);
    }

    private static double usual(List<Tooth> teeth) {
        double[] sorted =
                teeth.stream().mapToDouble(t -> Math.abs(t.curvature())).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[(int) ((sorted.length - 1) * ALL_BUT_A_FEW)];
    }

    private static boolean isCut(Tooth tooth, double px) {
        return Math.abs(tooth.curvature()) * px > LONGEST;
    }

    /** Length on the board with its sign, px. */
    private static double length(Tooth tooth, double px) {
        return Math.max(-LONGEST, Math.min(LONGEST, -tooth.curvature() * px));
    }

    private double endX(Tooth tooth, double px) {
        return view.px(tooth.x()) + length(tooth, px) * tooth.normalX();
    }

    private double endY(Tooth tooth, double px) {
        return view.py(tooth.radiusMm()) - length(tooth, px) * tooth.normalR();
    }

    /** A sample tooth with its radius. */
    private void legend(double px, boolean isCut) {
        double y = LEGEND_Y + (scene.overlay().ghost().isPresent() ? LEGEND_LINE : 0);
        double unit = scene.units().millimetres();
        double radius = round(px / SAMPLE / unit) * unit;
        double length = px / radius;
        pen.style(palette.accent(), 1.2);
        pen.line(LEGEND_X, Pen.sharp(y - 4), LEGEND_X + length, Pen.sharp(y - 4));
        pen.line(LEGEND_X + 0.5, y - 7, LEGEND_X + 0.5, y);
        pen.line(LEGEND_X + length, y - 7, LEGEND_X + length, y);
        String text =
                "curvature: a tooth this long is a radius of "
                        + NumberText.upTo(radius / unit, 2)
                        + " "
                        + scene.units().symbol()
                        + (isCut ? "; far longer ones are cut" : "");
        pen.text(text, LEGEND_X + length + 8, y, palette.accent(), TextAlignment.LEFT);
    }

    /** The next 1, 2 or 5 with noughts, not under a value. */
    private static double round(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        double times = value / power;
        return power * (times <= 1 ? 1 : times <= 2 ? 2 : times <= 5 ? 5 : 10);
    }
}
