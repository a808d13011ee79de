package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.store.Starter;
import haftline.ui.model.Watched;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A few words on the board for who sees it for the first time. */
final class Guide extends VBox {
    /**
     * A guide.
     *
     * @param opened the open set
     * @param dismissed told when it is to go
     */
    Guide(Watched<OpenDocument> opened, Runnable dismissed) {
        getStyleClass().add("guide");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Label title = new Label();
        opened.follow(
                document ->
                        title.setText(
                                Starter.isSet(document.loaded().file())
                                        ? "This is the demonstration set; its data is invented"
                                        : "First steps on the board"));
        title.getStyleClass().add("guide-title");
        Button close = new Button("Understood");
        close.setId("guide-close");
        close.getStyleClass().add("quiet");
        close.setOnAction(e -> dismissed.run());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        getChildren()
                .addAll(
                        title,
                        line(
                                "Drag an open ring to shape the wood; a black block is fixed by its part."),
                        line(
                                "Double click adds a node; a right click joins, slopes or removes one, or adds a detail."),
                        line(
                                "Below the axis is the section: wall, bores and how far they may wander."),
                        line("A finding's button applies its remedy; one step back undoes it."),
                        new HBox(gap, close));
    }

    private static Label line(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        return label;
    }
}
