package haftline.ui.findings;

import haftline.ui.model.RuleSource;
import haftline.ui.words.Shown;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Whose rule a finding goes by: what it says and where that is written. */
public final class RuleCard extends VBox {
    private final Consumer<Path> opener;
    private final Runnable closed;

    /**
     * A card, not shown yet.
     *
     * @param opener opens a file on the desktop
     * @param closed told when the card is closed
     */
    public RuleCard(Consumer<Path> opener, Runnable closed) {
        this.opener = opener;
        this.closed = closed;
        setId("rule-card");
        getStyleClass().addAll("guide", "rule-card");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setVisible(false);
        setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        close();
                        e.consume();
                    }
                });
    }

    /**
     * Shows a source.
     *
     * @param source whose rule, and where it is written
     */
    public void show(RuleSource source) {
        getChildren().clear();
        Label title = new Label(source.title());
        title.getStyleClass().add("guide-title");
        getChildren().add(title);
        for (String line : source.lines()) {
            Label label = new Label(Shown.unbroken(line));
            label.setWrapText(true);
            getChildren().add(label);
        }
        Button close = new Button("Close");
        close.setId("rule-close");
        close.getStyleClass().add("quiet");
        close.setOnAction(e -> close());
        HBox buttons = new HBox(8);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        source.file()
                .filter(Files::isRegularFile)
                .ifPresent(
                        file -> {
                            Button open = new Button("Open the file");
                            open.setId("rule-open");
                            open.setOnAction(e -> opener.accept(file));
                            buttons.getChildren().add(open);
                        });
        buttons.getChildren().add(close);
        getChildren().add(buttons);
        setAccessibleText(source.title() + ". " + String.join(". ", source.lines()));
        setVisible(true);
        close.requestFocus();
    }

    private void close() {
        hide();
        closed.run();
    }

    /** Puts the card away; whoever has the keyboard keeps it. */
    public void hide() {
        setVisible(false);
    }
}
