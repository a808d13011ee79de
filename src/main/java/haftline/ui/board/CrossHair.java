package haftline.ui.board;

import haftline.ui.model.ReadOut;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;

/** The line through ruler, piece and curves, and the card with what it reads. */
final class CrossHair {
    private static final String[] NAMES = {
        "from the shoulder", "diameter", "wall, at worst", "slope", "radius along"
    };

    /** Beside the line: half the words of a node's diameter, and air, px. */
    private static final double ASIDE = 42;

    /** Under the ruler, px from the top. */
    private static final double TOP = Sheet.RULER + 6;

    private static final double EDGE = 4;

    /** Places along the board's sides are tried so far from each other, px. */
    private static final double STEP = 8;

    private final Line line = new Line();
    private final ReadOutCard card = new ReadOutCard(NAMES.length);
    private Kept kept = new Kept(List.of(), List.of(), new Rectangle2D(0, 0, 0, 0), 0);

    /**
     * What is to be read and seen while the card is shown, px.
     *
     * @param words all words round the piece, and its nodes
     * @param first those of them that are kept where no place is free of all
     * @param piece the piece without its blade
     * @param bottom down to where the card may stand
     */
    record Kept(
            List<Rectangle2D> words, List<Rectangle2D> first, Rectangle2D piece, double bottom) {
        Kept {
            words = List.copyOf(words);
            first = List.copyOf(first);
        }
    }

    CrossHair() {
        line.getStyleClass().add("cross-hair");
        line.setMouseTransparent(true);
        line.setManaged(false);
        hide();
    }

    Line line() {
        return line;
    }

    Node card() {
        return card;
    }

    boolean isShown() {
        return card.isVisible();
    }

    void hide() {
        line.setVisible(false);
        card.setVisible(false);
    }

    /**
     * Draws the line with everything else: over a drag a line of its own would have the whole
     * height of the board put on the screen anew.
     */
    void draw(Pen pen, Color colour, boolean isDragging) {
        line.setVisible(card.isVisible() && !isDragging);
        if (card.isVisible() && isDragging) {
            pen.style(colour, 1);
            pen.line(line.getStartX(), line.getStartY(), line.getEndX(), line.getEndY());
        }
    }

    /**
     * Shows what is read at a pixel.
     *
     * @param px from the left
     * @param read what is there, or empty beside the wood
     */
    void show(double px, Optional<ReadOut> read, Shown shown, double width, double height) {
        if (read.isEmpty()) {
            hide();
            return;
        }
        ReadOut at = read.get();
        line.setStartX(Pen.sharp(px));
        line.setEndX(Pen.sharp(px));
        line.setStartY(Sheet.RULER);
        line.setEndY(height);
        String[] figures = {
            shown.length(Math.abs(at.xMm())),
            shown.length(at.diameterMm()),
            at.wallMm().isEmpty() ? "solid" : shown.wall(Math.max(0, at.wallMm().getAsDouble())),
            shown.angle(at.slopeDeg()),
            bend(at, shown)
        };
        for (int i = 0; i < NAMES.length; i++) {
            card.write(i, i == 0 && at.xMm() < 0 ? "before the shoulder" : NAMES[i], figures[i]);
        }
        line.setVisible(true);
        card.setVisible(true);
        card.lay();
        place(width);
    }

    private void place(double width) {
        Point2D at =
                under(width, kept.words())
                        .or(() -> aside(width))
                        .or(() -> under(width, kept.first()))
                        .orElseGet(() -> new Point2D(onEdge(width), TOP));
        card.setLayoutX(Math.round(at.getX()));
        card.setLayoutY(Math.round(at.getY()));
    }

    /**
     * What stays in sight while the card is shown. It moved with the board under a hand at rest:
     * the card makes way for it too.
     */
    void keepOff(Kept seen, double width) {
        kept = seen;
        if (card.isVisible()) {
            place(width);
        }
    }

    private double right() {
        return line.getStartX() + ASIDE;
    }

    private double left() {
        return line.getStartX() - ASIDE - card.wide();
    }

    /**
     * Under the ruler, right of the line or left of it, as there is room, further off where words
     * stand there.
     */
    private Optional<Point2D> under(double width, List<Rectangle2D> words) {
        List<Double> places = new ArrayList<>(List.of(right(), left()));
        for (Rectangle2D each : words) {
            places.add(each.getMaxX() + EDGE);
            places.add(each.getMinX() - EDGE - card.wide());
        }
        return places.stream()
                .filter(x -> isOn(x, width) && !covers(x, TOP, words))
                .min(Comparator.comparingDouble(this::far))
                .map(x -> new Point2D(x, TOP));
    }

    /** At a side of the board, where the least of the piece is covered, and no words are. */
    private Optional<Point2D> aside(double width) {
        List<Point2D> places = new ArrayList<>();
        for (double x : new double[] {EDGE + 1, width - EDGE - 1 - card.wide()}) {
            for (double y = TOP; y + card.tall() <= kept.bottom(); y += STEP) {
                if (isOn(x, width) && !covers(x, y, kept.words())) {
                    places.add(new Point2D(x, y));
                }
            }
        }
        return places.stream()
                .min(
                        Comparator.comparingDouble(this::covered)
                                .thenComparing(at -> far(at.getX()))
                                .thenComparing(Point2D::getY));
    }

    private boolean isOn(double x, double width) {
        return x >= EDGE && x + card.wide() + EDGE < width && (x >= right() || x <= left());
    }

    private double far(double x) {
        return Math.abs(x + card.wide() / 2 - line.getStartX());
    }

    /** How much of the piece a card there covers, square px. */
    private double covered(Point2D at) {
        Rectangle2D piece = kept.piece();
        double wide =
                Math.min(at.getX() + card.wide(), piece.getMaxX())
                        - Math.max(at.getX(), piece.getMinX());
        double tall =
                Math.min(at.getY() + card.tall(), piece.getMaxY())
                        - Math.max(at.getY(), piece.getMinY());
        return Math.max(0, wide) * Math.max(0, tall);
    }

    private double onEdge(double width) {
        return right() + card.wide() + EDGE < width ? right() : Math.max(EDGE, left());
    }

    private boolean covers(double x, double y, List<Rectangle2D> words) {
        return words.stream().anyMatch(each -> each.intersects(x, y, card.wide(), card.tall()));
    }

    private static String bend(ReadOut at, Shown shown) {
        if (at.bendRadiusMm().isEmpty()) {
            return "straight";
        }
        double radius = at.bendRadiusMm().getAsDouble();
        return shown.length(Math.abs(radius), 0) + (radius > 0 ? " hollow" : " round");
    }
}
