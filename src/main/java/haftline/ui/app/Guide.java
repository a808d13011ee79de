package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.store.Starter;
import haftline.ui.model.Watched;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * A few words on the board for who sees it for the first time: a card in a corner, or, where the
 * board is so small that a card would hide the piece, a strip along its foot that says one thing at
 * a time.
 */
final class Guide extends VBox {
    /** A board that is at least so wide and tall has a corner to spare, px. */
    private static final double ROOMY_WIDTH = 760;

    private static final double ROOMY_HEIGHT = 480;

    /** Air beside the strip, px. */
    private static final double BESIDE = 28;

    private static final List<String> STEPS =
            List.of(
                    "Drag an open ring to shape the wood; a black block is fixed by its part.",
                    "Double click adds a node; a right click joins, slopes or removes one, or adds a detail.",
                    "Below the axis is the section: wall, bores and how far they may wander.",
                    "A finding's button applies its remedy; one step back undoes it.");

    private final Label title = new Label();
    private final Label said = new Label();
    private final Button further = new Button("Next");
    private final Button close = new Button("Understood");
    private boolean isStrip;
    private int step = -1;

    /**
     * A guide.
     *
     * @param opened the open set
     * @param board over which it is laid
     * @param dismissed told when it is to go
     */
    Guide(Watched<OpenDocument> opened, Region board, Runnable dismissed) {
        getStyleClass().add("guide");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        opened.follow(
                document ->
                        title.setText(
                                Starter.isSet(document.loaded().file())
                                        ? "This is the demonstration set; its data is invented"
                                        : "First steps on the board"));
        title.getStyleClass().add("guide-title");
        title.setWrapText(true);
        said.setWrapText(true);
        said.setMinHeight(Region.USE_PREF_SIZE);
        said.setMaxWidth(Double.MAX_VALUE);
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
        board.layoutBoundsProperty().addListener(o -> fit(board.getWidth(), board.getHeight()));
        fit(board.getWidth(), board.getHeight());
    }

    /** Takes the form that leaves the piece to be seen; before the first layout nobody knows. */
    private void fit(double width, double height) {
        boolean isSmall = width > 0 && (width < ROOMY_WIDTH || height < ROOMY_HEIGHT);
        int strip = (int) Math.max(0, width - BESIDE);
        // The style sheet has a width of its own for the card.
        setStyle(isSmall ? "-fx-pref-width: " + strip + "; -fx-max-width: " + strip : "");
        if (isSmall != isStrip) {
            isStrip = isSmall;
            lay();
        }
    }

    private void lay() {
        getStyleClass().remove("strip");
        if (isStrip) {
            getStyleClass().add("strip");
            getChildren().setAll(new HBox(8, said, further, close));
            say(step);
            return;
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        getChildren().setAll(title);
        STEPS.forEach(line -> getChildren().add(line(line)));
        getChildren().add(new HBox(gap, close));
    }

    /** The title comes first, at -1: it says what the set is. */
    private void say(int which) {
        step = which;
        said.setText(which < 0 ? title.getText() + "." : STEPS.get(which));
        boolean isLast = which == STEPS.size() - 1;
        further.setVisible(!isLast);
        further.setManaged(!isLast);
    }

    private static Label line(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        return label;
    }
}
