package haftline.ui.theme;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * A bar of controls that goes on in another line where the window is narrow. Whatever comes after
 * its gap stands at the right of the line it falls into; words that wrap take what their line
 * leaves.
 */
public final class WrapBar extends Pane {
    private static final double GAP = 10;
    private static final double LINE_GAP = 6;

    /** Words are not wrapped narrower where they could stand in a line of their own, px. */
    private static final double LEAST_WORDS = 120;

    private final List<Node> ending;

    /**
     * A bar.
     *
     * @param first what stands at the left, in its order
     * @param last what stands at the right
     */
    public WrapBar(List<? extends Node> first, List<? extends Node> last) {
        getStyleClass().add("sheet-bar");
        ending = List.copyOf(last);
        getChildren().addAll(first);
        getChildren().addAll(last);
        setMinHeight(USE_PREF_SIZE);
    }

    private record Line(List<Node> nodes, double used) {}

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** Words give way; all else is as wide as it wants to be. */
    private static boolean gives(Node node) {
        return node.isResizable() && node.minWidth(-1) < 1 && node.prefWidth(-1) > 0;
    }

    private static double least(Node node) {
        double wanted = node.prefWidth(-1);
        return gives(node) ? Math.min(wanted, LEAST_WORDS) : wanted;
    }

    /** What is shown: words that say nothing take no room. */
    private List<Node> shown() {
        return getManagedChildren().stream()
                .map(Node.class::cast)
                .filter(node -> node.prefWidth(-1) > 0)
                .toList();
    }

    private List<Line> lines(double room) {
        List<Line> lines = new ArrayList<>();
        List<Node> now = new ArrayList<>();
        double used = 0;
        for (Node node : shown()) {
            double wide = least(node);
            // What stands at the right stays together while it can.
            double together = ending.indexOf(node) == 0 ? endingWidth() : wide;
            if (!now.isEmpty() && used + GAP + together > room) {
                lines.add(new Line(now, used));
                now = new ArrayList<>();
                used = 0;
            }
            used += (now.isEmpty() ? 0 : GAP) + wide;
            now.add(node);
        }
        if (!now.isEmpty()) {
            lines.add(new Line(now, used));
        }
        return lines;
    }

    private double endingWidth() {
        double wide = -GAP;
        for (Node node : shown()) {
            wide += ending.contains(node) ? GAP + least(node) : 0;
        }
        return wide;
    }

    /** Words share what their line leaves, up to what they want. */
    private static double width(Node node, Line line, double room) {
        double least = Math.min(room, least(node));
        if (!gives(node)) {
            return least;
        }
        long giving = line.nodes().stream().filter(WrapBar::gives).count();
        double more = Math.max(0, room - line.used()) / giving;
        return Math.min(node.prefWidth(-1), least + more);
    }

    private static double height(Line line, double room) {
        return line.nodes().stream()
                .mapToDouble(node -> node.prefHeight(width(node, line, room)))
                .max()
                .orElse(0);
    }

    private double aside() {
        return snappedLeftInset() + snappedRightInset();
    }

    @Override
    protected double computeMinWidth(double height) {
        return aside() + shown().stream().mapToDouble(WrapBar::least).max().orElse(0);
    }

    @Override
    protected double computePrefWidth(double height) {
        double wide = aside();
        for (Node node : shown()) {
            wide += node.prefWidth(-1) + GAP;
        }
        return wide;
    }

    @Override
    protected double computePrefHeight(double width) {
        double room = (width < 0 ? prefWidth(-1) : width) - aside();
        double tall = snappedTopInset() + snappedBottomInset();
        List<Line> lines = lines(room);
        for (Line line : lines) {
            tall += height(line, room);
        }
        return snapSizeY(tall + LINE_GAP * Math.max(0, lines.size() - 1));
    }

    @Override
    protected void layoutChildren() {
        double room = getWidth() - aside();
        double y = snappedTopInset();
        for (Line line : lines(room)) {
            double tall = height(line, room);
            double left = 0;
            for (Node node : line.nodes()) {
                left += width(node, line, room) + GAP;
            }
            double spare = Math.max(0, room - (left - GAP));
            double x = snappedLeftInset();
            boolean isMoved = false;
            for (Node node : line.nodes()) {
                if (!isMoved && ending.contains(node)) {
                    x += spare;
                    isMoved = true;
                }
                double wide = width(node, line, room);
                layoutInArea(
                        node,
                        x,
                        y,
                        wide,
                        tall,
                        0,
                        Insets.EMPTY,
                        true,
                        false,
                        HPos.LEFT,
                        VPos.CENTER);
                x += wide + GAP;
            }
            y += tall + LINE_GAP;
        }
    }
}
