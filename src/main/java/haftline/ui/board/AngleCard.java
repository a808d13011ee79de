package haftline.ui.board;

import haftline.edit.Outcome;
import haftline.measure.NumberText;
import haftline.ui.model.BoardModel;
import haftline.ui.model.NodeSlope;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Asks for the slope at a node; says what it may be, and stays until that is kept. */
final class AngleCard extends VBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final BoardModel model;
    private final Runnable closed;
    private final Runnable said;
    private final Label title = new Label();
    private final TextField field = new TextField();
    private final Label range = new Label();

    /**
     * A card, not shown yet.
     *
     * @param closed told when it is closed
     * @param said told when it has said why a slope is refused, so that nobody else need
     */
    AngleCard(BoardModel model, Runnable closed, Runnable said) {
        this.model = model;
        this.said = said;
        this.closed = closed;
        getStyleClass().add("angle-card");
        setManaged(false);
        setVisible(false);
        title.getStyleClass().add("guide-title");
        title.setLabelFor(field);
        field.setId("slope-angle");
        field.setOnAction(e -> enter());
        Button set = new Button("Set");
        set.setId("slope-set");
        set.setAccessibleText("Set the slope");
        set.setOnAction(e -> enter());
        Button close = new Button("Close");
        close.getStyleClass().add("quiet");
        close.setAccessibleText("Close without a change");
        close.setOnAction(e -> hide());
        range.getStyleClass().add("field-note");
        range.setWrapText(true);
        HBox line = new HBox(6, field, set, close);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(title, line, range);
        addEventHandler(
                javafx.scene.input.KeyEvent.KEY_PRESSED,
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        hide();
                    }
                    // What is typed here is not meant for the board behind.
                    e.consume();
                });
        setOnMousePressed(e -> e.consume());
    }

    /**
     * Asks for the slope of the chosen node.
     *
     * @param x where the card stands at most, px from the left
     * @param y px from the top
     */
    void ask(double x, double y, double width, double height) {
        NodeSlope slope = model.slopes().now().orElse(null);
        if (slope == null) {
            return;
        }
        title.setText("Slope at " + slope.node());
        field.setText(NumberText.said(NumberText.upTo(slope.deg(), 1)) + "°");
        field.setAccessibleText("slope at " + slope.node() + ", degrees from the axis");
        say(slope.range() + "; empty leaves it to the batten", false);
        setVisible(true);
        applyCss();
        double wide = prefWidth(-1);
        double tall = prefHeight(wide);
        resizeRelocate(
                Math.round(Math.max(4, Math.min(x, width - wide - 4))),
                Math.round(Math.max(Sheet.RULER + 4, Math.min(y, height - tall - 4))),
                wide,
                tall);
        // The letter that called the card is not meant for its field.
        Platform.runLater(
                () -> {
                    field.requestFocus();
                    field.selectAll();
                });
    }

    private void enter() {
        Outcome outcome = model.slopes().set(field.getText());
        if (outcome.isDone()) {
            hide();
        } else {
            say(outcome.refusal().orElse(""), true);
            said.run();
            resize(getWidth(), prefHeight(getWidth()));
            field.requestFocus();
        }
    }

    private void say(String text, boolean wrong) {
        range.setText(text);
        range.pseudoClassStateChanged(WRONG, wrong);
        field.pseudoClassStateChanged(WRONG, wrong);
        field.setAccessibleHelp(text);
    }

    void hide() {
        if (isVisible()) {
            setVisible(false);
            closed.run();
        }
    }
}
