package haftline.ui.board;

import haftline.ui.model.ReadOut;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

    private final Line line = new Line();
    private final ReadOutCard card = new ReadOutCard(NAMES.length);
    private List<Rectangle2D> kept = List.of();

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
        card.setLayoutX(Math.round(beside(line.getStartX(), width)));
        card.setLayoutY(TOP);
    }

    /**
     * Words of the board that stay readable while the card is shown. They moved with the board
     * under a hand at rest: the card makes way for them too.
     */
    void keepOff(List<Rectangle2D> words, double width) {
        kept = List.copyOf(words);
        if (card.isVisible()) {
            place(width);
        }
    }

    /**
     * Right of the line or left of it, as there is room, further off where words stand there; else
     * on it, at the board's edge.
     */
    private double beside(double px, double width) {
        double right = px + ASIDE;
        double left = px - ASIDE - card.wide();
        List<Double> places = new ArrayList<>(List.of(right, left));
        for (Rectangle2D words : kept) {
            places.add(words.getMaxX() + EDGE);
            places.add(words.getMinX() - EDGE - card.wide());
        }
        return places.stream()
                .filter(x -> x >= right || x <= left)
                .filter(x -> x >= EDGE && x + card.wide() + EDGE < width && !covers(x))
                .min(Comparator.comparingDouble(x -> Math.abs(x + card.wide() / 2 - px)))
                .orElse(right + card.wide() + EDGE < width ? right : Math.max(EDGE, left));
    }

    private boolean covers(double x) {
        return kept.stream().anyMatch(words -> words.intersects(x, TOP, card.wide(), card.tall()));
    }

    private static String bend(ReadOut at, Shown shown) {
        if (at.bendRadiusMm().isEmpty()) {
            return "straight";
        }
        double radius = at.bendRadiusMm().getAsDouble();
        return shown.length(Math.abs(radius), 0) + (radius > 0 ? " hollow" : " round");
    }
}
