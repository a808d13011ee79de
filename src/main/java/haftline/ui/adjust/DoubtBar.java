package haftline.ui.adjust;

import haftline.ui.model.DoubtModel;
import haftline.ui.model.DoubtModel.Stage;
import haftline.ui.model.DoubtModel.State;
import haftline.ui.model.DoubtWords;
import haftline.ui.model.EditorModel;
import haftline.ui.words.Shown;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The calm lines under the curves that say what chance makes of the piece. */
public final class DoubtBar extends HBox {
    /** In a narrow window what is said is scrolled rather than the piece made small, px. */
    private static final double MOST_WORDS = 62;

    private final EditorModel editor;
    private final DoubtModel model;
    private final Label thin = Words.wrapped("");
    private final Label rest = Words.small("");
    private final ProgressBar bar = new ProgressBar(0);
    private final Button stop = new Button("Stop");
    private final Tooltip how = new Tooltip();

    /**
     * The lines.
     *
     * @param editor what all views share
     * @param model what is said
     * @param close puts the lines away
     */
    public DoubtBar(EditorModel editor, DoubtModel model, Runnable close) {
        super(12);
        this.editor = editor;
        this.model = model;
        setId("doubt");
        getStyleClass().add("doubt");
        setAlignment(Pos.CENTER_LEFT);
        thin.setId("doubt-words");
        rest.setId("doubt-rest");
        how.setWrapText(true);
        how.setPrefWidth(420);
        VBox words = new VBox(1, thin, rest);
        words.setMinWidth(0);
        ScrollPane scroll = new ScrollPane(words);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinWidth(0);
        scroll.maxHeightProperty().bind(Bindings.min(words.heightProperty(), MOST_WORDS));
        scroll.prefHeightProperty().bind(scroll.maxHeightProperty());
        scroll.minHeightProperty().bind(scroll.maxHeightProperty());
        HBox.setHgrow(scroll, Priority.ALWAYS);
        bar.setPrefWidth(110);
        bar.setMinWidth(Region.USE_PREF_SIZE);
        bar.setAccessibleText("How many handles are made in figures");
        stop.setId("doubt-stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.setAccessibleText("Stop reckoning the doubt");
        stop.setOnAction(e -> model.stop());
        Button away = new Button("Close");
        away.setId("doubt-close");
        away.getStyleClass().add("quiet");
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.setAccessibleText("Close the doubt");
        away.setOnAction(e -> close.run());
        getChildren().addAll(scroll, bar, stop, away);
        model.state().follow(this::show);
        editor.units().watch(units -> show(model.state().value()));
    }

    private void show(State state) {
        Stage stage = state.stage();
        setVisible(stage != Stage.OFF);
        setManaged(stage != Stage.OFF);
        boolean isRunning = stage == Stage.RUNNING;
        bar.setVisible(isRunning);
        bar.setManaged(isRunning);
        bar.setProgress(state.share());
        stop.setVisible(isRunning);
        stop.setManaged(isRunning);
        DoubtWords words = new DoubtWords(editor.units().value());
        thin.setText(Shown.unbroken(state.answer().map(words::thin).orElse(said(stage))));
        rest.setText(Shown.unbroken(state.answer().map(words::rest).orElse(" ")));
        Tooltip.uninstall(this, how);
        state.answer().map(words::how).ifPresent(this::tip);
    }

    private void tip(String text) {
        how.setText(text);
        Tooltip.install(this, how);
        thin.setAccessibleHelp(text);
    }

    private static String said(Stage stage) {
        return switch (stage) {
            case WAITING -> "The doubt is reckoned anew once the hand rests.";
            case RUNNING -> "Making the handle many times in figures…";
            case STOPPED -> "Stopped; the next change begins it anew.";
            case IMPOSSIBLE -> "The piece cannot be drawn, so there is nothing to doubt.";
            default -> "";
        };
    }
}
