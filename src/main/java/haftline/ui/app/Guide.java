package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.store.Starter;
import haftline.ui.model.Watched;
import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A few words on the board for who sees it for the first time: a card in a corner, or, where the
 * board is so small that a card would hide the piece, a strip along its foot that says one thing at
 * a time; the board makes room for it, so that it lies on none of the board's own words.
 */
final class Guide extends VBox {
    /** On a board that is at least so wide and tall the card lies over the curves alone, px. */
    private static final double ROOMY_WIDTH = 760;

    private static final double ROOMY_HEIGHT = 740;

    /** Air beside the strip, px. */
    private static final double BESIDE = 28;

    /** Air over the strip and under it, px. */
    private static final double OVER = 16;

    private static final List<String> STEPS =
            List.of(
                    "Drag an open ring to shape the wood; a black block is fixed by its part.",
                    "Double click adds a node; a right click joins, slopes or removes one, or adds a detail.",
                    "Below the axis is the section: wall, bores and how far they may wander.",
                    "A finding's button applies its remedy; one step back undoes it.");

    private final Label title = words("");
    private final StackPane said = new StackPane();
    private final Button further = new Button("Next");
    private final Button close = new Button("Understood");
    private final Region room;
    private final Node board;
    private boolean isStrip;
    private int step;

    /**
     * A guide.
     *
     * @param opened the open set
     * @param room over which it is laid
     * @param board what makes way for the strip, within the room
     * @param dismissed told when it is to go
     */
    Guide(Watched<OpenDocument> opened, Region room, Node board, Runnable dismissed) {
        this.room = room;
        this.board = board;
        getStyleClass().add("guide");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Label first = words("");
        opened.follow(
                document -> {
                    title.setText(
                            Starter.isSet(document.loaded().file())
                                    ? "This is the demonstration set; its data is invented"
                                    : "First steps on the board");
                    first.setText(title.getText() + ".");
                });
        title.getStyleClass().add("guide-title");
        // All lie over each other: the strip is as tall as the longest needs, whichever is said.
        said.getChildren().add(first);
        STEPS.forEach(line -> said.getChildren().add(words(line)));
        said.setAlignment(Pos.CENTER_LEFT);
        said.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(said, Priority.ALWAYS);
        for (Button button : List.of(further, close)) {
            button.getStyleClass().add("quiet");
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        further.setId("guide-next");
        further.setOnAction(e -> say(step + 1));
        close.setId("guide-close");
        close.setOnAction(e -> dismissed.run());
        lay();
        ChangeListener<Object> fitting = (o, was, is) -> fit();
        room.widthProperty().addListener(fitting);
        room.heightProperty().addListener(fitting);
        heightProperty().addListener(o -> makeRoom());
        visibleProperty().addListener(o -> makeRoom());
        parentProperty().addListener(o -> makeRoom());
        fit();
    }

    /** Takes the form that leaves the piece to be seen; before the first layout nobody knows. */
    private void fit() {
        double width = room.getWidth();
        boolean isSmall = width > 0 && (width < ROOMY_WIDTH || room.getHeight() < ROOMY_HEIGHT);
        int strip = (int) Math.max(0, width - BESIDE);
        // The style sheet has a width of its own for the card.
        setStyle(isSmall ? "-fx-pref-width: " + strip + "; -fx-max-width: " + strip : "");
        if (isSmall != isStrip) {
            isStrip = isSmall;
            lay();
        }
    }

    private void makeRoom() {
        boolean isUnder = isStrip && isVisible() && getParent() != null;
        StackPane.setMargin(board, new Insets(0, 0, isUnder ? getHeight() + OVER : 0, 0));
    }

    private void lay() {
        getStyleClass().remove("strip");
        if (isStrip) {
            getStyleClass().add("strip");
            getChildren().setAll(new HBox(8, said, further, close));
            say(step);
        } else {
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            getChildren().setAll(title);
            STEPS.forEach(line -> getChildren().add(words(line)));
            getChildren().add(new HBox(gap, close));
        }
        makeRoom();
    }

    /** What the set is comes first. */
    private void say(int which) {
        step = which;
        for (int i = 0; i < said.getChildren().size(); i++) {
            said.getChildren().get(i).setVisible(i == step);
        }
        further.setVisible(step < STEPS.size());
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        return label;
    }
}
