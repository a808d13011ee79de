package haftline.ui.board;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.Spread;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.text.TextAlignment;

/** Dimensions in the drawing office's manner (ISO 129-1), and the point of balance. */
final class DimensionPainter {
    private static final double OVERSHOOT = 4;

    /** The overall length's row over the room for the piece, px. */
    private static final double OVERALL_ROW = 44;

    /** Rows under the room for the piece, px; a row of its own for the cap's bore when crowded. */
    private static final double FIRST_ROW = 20;

    private static final double CAP_ROW = 38;
    private static final double SECOND_ROW = 46;
    private static final double THIRD_ROW = 56;
    private static final double BALANCE_ROW = 78;

    /** The words of the balance keep this far from the board's edges, px. */
    private static final double EDGE = 6;

    /** From one line of words to the next, px. */
    private static final double LINE = 17;

    /** Air between two dimensions in one row, px. */
    private static final double APART = 6;

    /** Half the side of the place of a node, px. */
    private static final double NODE = 8;

    private final Pen pen;
    private final BoardScene scene;
    private final Sheet sheet;
    private final View view;
    private final Palette palette;
    private final Handle handle;
    private final Shown shown;
    private final List<Diameter> diameters;
    private final List<Rectangle2D> painted = new ArrayList<>();

    DimensionPainter(Pen pen, BoardScene scene, Sheet sheet, View view, List<Rectangle2D> grips) {
        this.pen = pen;
        this.scene = scene;
        this.sheet = sheet;
        this.view = view;
        palette = scene.palette();
        handle = scene.handle();
        shown = scene.shown();
        diameters = placedDiameters(grips);
    }

    /**
     * Where words stand on the board, px, that what is read keeps off: the overall length's, and
     * the diameter of the chosen node.
     */
    private List<Rectangle2D> keptWords() {
        List<Rectangle2D> kept = new ArrayList<>();
        kept.add(overallWords());
        scene.selected()
                .ifPresent(
                        name ->
                                diameters.stream()
                                        .filter(each -> each.node().name().equals(name))
                                        .map(Diameter::box)
                                        .forEach(kept::add));
        return kept;
    }

    /** What is kept off once it is painted, the words of grips too. */
    CrossHair.Kept kept(List<Rectangle2D> gripWords) {
        List<Rectangle2D> words = new ArrayList<>(gripWords);
        diameters.forEach(each -> words.add(each.box()));
        words.addAll(painted);
        // What a hand may reach for is not hidden either.
        handle.nodes().stream()
                .map(node -> new Point2D(view.px(node.x()), view.py(node.radiusMm())))
                .map(p -> new Rectangle2D(p.getX() - NODE, p.getY() - NODE, 2 * NODE, 2 * NODE))
                .forEach(words::add);
        List<Rectangle2D> first = new ArrayList<>(gripWords);
        first.addAll(keptWords());
        double left = view.px(handle.ferruleFaceX());
        double right = view.px(handle.buttX() + handle.lengths().capMm());
        double radius = PiecePicture.radius(handle);
        double top = view.py(radius);
        return new CrossHair.Kept(
                words,
                first,
                new Rectangle2D(left, top, right - left, view.py(-radius) - top),
                sheet.curvesTop());
    }

    /** Where all words over the piece stand, px. */
    List<Rectangle2D> wordsAbove() {
        List<Rectangle2D> all = new ArrayList<>();
        all.add(overallWords());
        diameters.forEach(each -> all.add(each.box()));
        return all;
    }

    private Rectangle2D overallWords() {
        Dimension overall = overall();
        double wide = overall.width + 2 * APART;
        double line = view.axisY() - scene.room(view) - OVERALL_ROW;
        return new Rectangle2D(overall.middle() - wide / 2, line - LINE / 2, wide, LINE);
    }

    private Dimension overall() {
        double end = handle.buttX() + handle.lengths().capMm();
        return along(new Stretch(handle.ferruleFaceX(), end, "", handle.lengths().overallMm()));
    }

    void paint() {
        double room = scene.room(view);
        double fulcrum = view.axisY() + room + BALANCE_ROW;
        plumbLine(fulcrum - 6);
        overall().paint(-room - OVERALL_ROW, -room);
        Bore bore = handle.tangBore();
        double depth = bore.deepest().depthMm();
        Dimension tang =
                along(
                        new Stretch(
                                bore.faceX(),
                                bore.xAt(depth),
                                "bore ⌀ " + number(bore.deepest().diameterMm()) + ", ",
                                depth));
        Optional<Dimension> cap =
                handle.capBore()
                        .map(
                                hole ->
                                        new Stretch(
                                                hole.xAt(hole.deepest().depthMm()),
                                                hole.faceX(),
                                                "",
                                                hole.deepest().depthMm()))
                        .map(this::along);
        Dimension wood =
                along(new Stretch(0, handle.buttX(), "", handle.lengths().visibleWoodMm()));
        // On a small board the bores' words meet: three rows stand where two did.
        boolean isCrowded = cap.isPresent() && tang.meets(cap.get());
        // From below upwards: words are patched over what runs past them to a lower row.
        wood.paint(room + (isCrowded ? THIRD_ROW : SECOND_ROW), room);
        cap.ifPresent(hole -> hole.paint(room + (isCrowded ? CAP_ROW : FIRST_ROW), room));
        tang.paint(room + FIRST_ROW, room);
        balance(fulcrum);
        diameters();
    }

    private String number(double mm) {
        return shown.length(mm);
    }

    /** What one dimension tells: from where to where in mm, its words and its length. */
    private record Stretch(double x0, double x1, String lead, double mm) {}

    /** One length along the axis, where it will stand. */
    private Dimension along(Stretch stretch) {
        double a = Pen.sharp(view.px(Math.min(stretch.x0(), stretch.x1())));
        double b = Pen.sharp(view.px(Math.max(stretch.x0(), stretch.x1())));
        String text = stretch.lead() + number(stretch.mm());
        return new Dimension(a, b, text, Pen.width(text));
    }

    /** One length along the axis; its arrows stand outside where there is no room between them. */
    private final class Dimension {
        private final double a;
        private final double b;
        private final String text;
        private final double width;
        private final boolean isInside;
        private final boolean isRight;

        Dimension(double a, double b, String text, double width) {
            this.a = a;
            this.b = b;
            this.text = text;
            this.width = width;
            isInside = b - a > width + 34;
            isRight = b + 24 + width < sheet.width();
        }

        private double left() {
            return isInside ? a : a - (isRight ? 16 : 20 + width);
        }

        private double right() {
            return isInside ? b : b + (isRight ? 20 + width : 16);
        }

        /** The middle of its words, px. */
        private double middle() {
            if (isInside) {
                return DimensionPainter.this.middle(a, b, width);
            }
            return isRight ? b + 20 + width / 2 : a - 20 - width / 2;
        }

        /** Whether both cannot stand in one row. */
        boolean meets(Dimension other) {
            return left() < other.right() + APART && other.left() < right() + APART;
        }

        /**
         * Draws it.
         *
         * @param below of the dimension line, px under the axis
         * @param edge of the room for the piece, px under the axis
         */
        void paint(double below, double edge) {
            double line = Pen.sharp(view.axisY() + below);
            double away = Math.signum(edge);
            double from = Math.round(view.axisY() + edge) + 6 * away;
            double to = line + OVERSHOOT * away;
            pen.style(palette.soft(), 1);
            pen.line(a, from, a, to);
            pen.line(b, from, b, to);
            pen.ink.setFill(palette.soft());
            if (isInside) {
                pen.line(a, line, b, line);
                pen.arrow(a, line, -1);
                pen.arrow(b, line, 1);
            } else {
                pen.line(a - 16, line, b + 16, line);
                pen.arrow(a, line, 1);
                pen.arrow(b, line, -1);
            }
            pen.patched(text, middle(), line + 4, palette.ink(), palette.paper());
            note(middle() - width / 2, line + 4, width);
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

    private List<Diameter> placedDiameters(List<Rectangle2D> grips) {
        List<Rectangle2D> taken = new ArrayList<>(grips);
        taken.add(overallWords());
        return Diameter.placed(handle.nodes(), view, sheet, taken, shown);
    }

    private void diameters() {
        for (Diameter each : diameters) {
            double x = Pen.sharp(view.px(each.node().x()));
            double middle = each.box().getMinX() + each.box().getWidth() / 2;
            boolean isAside = each.box().getMinX() > x || each.box().getMaxX() < x;
            if (each.isLed() || isAside) {
                double end = each.rest() + Diameter.LIFT - 7;
                pen.style(palette.soft(), 1);
                pen.line(isAside ? nearest(each.box(), x) : x, each.line() + 3, x, end);
            }
            pen.patched(each.text(), middle, each.line(), palette.ink(), palette.paper());
        }
    }

    /** The end of some words that is nearer to a place. */
    private static double nearest(Rectangle2D box, double x) {
        return box.getMinX() > x ? box.getMinX() + 4 : box.getMaxX() - 4;
    }

    /** From the ferrule's face, mm. */
    private double balanceMm() {
        return scene.figures().balance().fromFerruleFaceMm();
    }

    /** From the piece down to its fulcrum, under the words of all dimensions. */
    private void plumbLine(double bottom) {
        double x = Pen.sharp(view.px(handle.ferruleFaceX() + balanceMm()));
        pen.dashed(palette.soft(), 0.8, 2, 3);
        pen.line(x, view.py(-PiecePicture.radius(handle)) + 6, x, bottom);
    }

    /** A knife edge under the point of balance, and the band where it is wanted. */
    private void balance(double y) {
        double face = handle.ferruleFaceX();
        double at = balanceMm();
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
        String where = at < 0 ? " before the ferrule's face" : " behind the ferrule's face";
        String lead = "balance " + shown.length(Math.abs(at));
        String wanted =
                (met ? ", within " : ", wanted within ")
                        + shown.length(low)
                        + " to "
                        + shown.length(high);
        double left = Math.min(a, x - 8);
        double right = Math.max(b, x + 8);
        Optional<Spread> spread = scene.overlay().doubt().map(Doubt::balance);
        if (spread.isPresent()) {
            left = Math.min(left, view.px(face + spread.get().low()));
            right = Math.max(right, spread(spread.get(), y + 14));
        }
        painted.add(new Rectangle2D(left, y - 4, right - left, LINE));
        place(lead + where + wanted, lead, left - 12, right + 12, y + 9);
    }

    /**
     * Words behind a mark, before it where the board ends sooner, or under it where neither side
     * has room for them; a few words where the curves begin right under it.
     */
    private void place(String text, String few, double before, double behind, double y) {
        double width = Pen.width(text);
        if (behind + width + EDGE <= sheet.width()) {
            write(text, behind, y);
        } else if (before - width >= EDGE) {
            write(text, before - width, y);
        } else if (y + LINE + 5 > sheet.curvesTop()) {
            write(few, behind, y);
        } else {
            double left = Math.max(EDGE, Math.min(behind, sheet.width() - EDGE - width));
            write(text, left, y + LINE);
        }
    }

    private void write(String text, double left, double y) {
        pen.text(text, left, y, palette.ink(), TextAlignment.LEFT);
        note(left, y, Pen.width(text));
    }

    /** Words that what is read keeps off; the marks of the balance are such too. */
    private void note(double left, double y, double width) {
        painted.add(new Rectangle2D(left, y - LINE + APART, width, LINE));
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
