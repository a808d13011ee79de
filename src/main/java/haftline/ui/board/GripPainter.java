package haftline.ui.board;

import haftline.handle.Handle;
import haftline.measure.NumberText;
import haftline.ui.model.BoardModel;
import haftline.ui.model.Grip;
import haftline.ui.model.Hit;
import haftline.ui.model.SlopeGrip;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;

/**
 * The grips of what is chosen, over everything else: edges and depth of a detail, the arm of a
 * node's slope, each with its figure.
 */
final class GripPainter {
    private static final double HALF = 4;

    /** The figures stand clear over the grips, px. */
    private static final double OVER = 18;

    /** And clear over the diameters of the nodes beside them, px. */
    private static final double OVER_DIAMETERS = 30;

    /** Room that the card of the cross-hair takes beside its line, px. */
    private static final double CARD = 290;

    private final Pen pen;
    private final BoardModel model;
    private final Palette palette;
    private final View view;
    private final List<Rectangle2D> words = new ArrayList<>();
    private List<Rectangle2D> taken = List.of();

    GripPainter(Ink ink, BoardModel model, Palette palette) {
        pen = new Pen(ink);
        this.model = model;
        this.palette = palette;
        view = model.viewpoint().view().value();
    }

    /**
     * Draws the grips of what is chosen.
     *
     * @param width of the board, px
     * @param taken where other words stand, px
     * @return where their words stand, px
     */
    List<Rectangle2D> paint(double width, List<Rectangle2D> taken) {
        this.taken = taken;
        Optional<Handle> handle = model.handle();
        handle.ifPresent(chosen -> paint(chosen, width));
        return List.copyOf(words);
    }

    /**
     * Where the grips of the chosen detail stand: no words belong there.
     *
     * @return px; empty where none is chosen
     */
    List<Rectangle2D> places() {
        double side = 2 * HALF + 2;
        return model
                .handle()
                .filter(handle -> model.details().detail().isPresent())
                .map(this::grips)
                .orElse(List.of())
                .stream()
                .map(g -> new Rectangle2D(g.px() - side / 2, g.py() - side / 2, side, side))
                .toList();
    }

    private List<Grip> grips(Handle handle) {
        return Grip.of(handle, model.details().chosen().value().orElseThrow(), view);
    }

    private void paint(Handle handle, double width) {
        model.details().detail().ifPresent(detail -> detail(grips(handle), width));
        model.selected()
                .value()
                .flatMap(node -> SlopeGrip.of(handle, node, view))
                .ifPresent(arm -> slope(arm, width));
    }

    private void detail(List<Grip> grips, double width) {
        double top = grips.stream().mapToDouble(Grip::py).min().orElseThrow();
        pen.style(palette.accent(), 1);
        pen.line(grips.get(0).px(), grips.get(0).py(), grips.get(1).px(), grips.get(1).py());
        grips.stream()
                .filter(grip -> grip.kind() == Grip.Kind.PROUD)
                .forEach(g -> pen.line(g.px(), g.py(), g.px(), g.py() + Grip.OVER_PX));
        for (Grip grip : grips) {
            boolean hovered =
                    model.hovered()
                            .value()
                            .filter(hit -> hit instanceof Hit.OnGrip on && on.kind() == grip.kind())
                            .isPresent();
            square(grip.px(), grip.py(), hovered);
        }
        double middle = (grips.get(0).px() + grips.get(1).px()) / 2;
        double over = Math.min(top - OVER, grips.get(0).py() - OVER_DIAMETERS);
        words(model.details().words().orElse(""), middle, over, width);
    }

    /** Squares for what is sized, so that they are not taken for nodes. */
    private void square(double x, double y, boolean hovered) {
        double half = hovered ? HALF + 1.5 : HALF;
        pen.ink.setFill(hovered ? palette.accent() : palette.paper());
        pen.style(palette.accent(), 1.8);
        pen.ink.fillRect(x - half, y - half, 2 * half, 2 * half);
        pen.ink.strokeRect(x - half, y - half, 2 * half, 2 * half);
    }

    private void slope(SlopeGrip arm, double width) {
        pen.style(palette.accent(), 1.2);
        pen.line(arm.nodePx(), arm.nodePy(), arm.px(), arm.py());
        boolean hovered =
                model.hovered().value().filter(hit -> hit instanceof Hit.OnSlope).isPresent();
        square(arm.px(), arm.py(), hovered);
        String words = "slope " + NumberText.said(NumberText.upTo(arm.slope().deg(), 1)) + "°";
        String range = hovered ? ", " + arm.slope().range() : "";
        words(words + range, arm.nodePx(), Math.min(arm.py(), arm.nodePy()) - 2 * OVER, width);
    }

    /**
     * Words on a patch of paper, wholly on the board, on the side of a place where the card of the
     * cross-hair does not stand, lifted off other words or moved aside.
     */
    private void words(String text, double at, double y, double width) {
        double half = Pen.width(text) / 2 + 6;
        boolean cardIsRight = at + CARD < width;
        double middle = cardIsRight ? at - half : at + half;
        double x = Math.max(half, Math.min(width - half, middle));
        Point2D free = free(x, half, y, cardIsRight ? -1 : 1, width);
        x = free.getX();
        double line = free.getY();
        pen.patched(text, x, line, palette.accent(), palette.paper());
        words.add(box(x, half, line));
    }

    /**
     * The middle of words and the line they stand on: as low as they may, moved aside, away from
     * the card, where all places over each other are taken.
     */
    private Point2D free(double x, double half, double y, int away, double width) {
        double highest = Sheet.RULER + 14;
        double aside = x;
        while (aside >= half && aside <= width - half) {
            for (double line = Math.max(highest, y); line >= highest; line -= 2) {
                if (!isTaken(box(aside, half, line))) {
                    return new Point2D(aside, line);
                }
            }
            aside += 4 * away;
        }
        return new Point2D(x, Math.max(highest, y));
    }

    private static Rectangle2D box(double x, double half, double line) {
        return new Rectangle2D(x - half, line - 11, 2 * half, 14);
    }

    private boolean isTaken(Rectangle2D box) {
        return taken.stream().anyMatch(box::intersects);
    }
}
