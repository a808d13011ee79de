package haftline.ui.templates;

import haftline.template.Card;
import haftline.ui.model.EditorModel;
import haftline.ui.model.LaidOut;
import haftline.ui.model.Preferences;
import haftline.ui.model.TemplatesModel;
import haftline.ui.model.Watched;
import haftline.ui.model.WorkshopModel;
import haftline.ui.theme.Palette;
import haftline.ui.theme.WrapBar;
import haftline.ui.words.Shown;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * All gauges and templates of the set on their sheets. What belongs to it but stands elsewhere in
 * the window is built when it is first shown: a start of the program does not wait for it.
 */
public final class TemplatesPane extends BorderPane {
    private final EditorModel editor;
    private final Preferences preferences;
    private final Watched<Palette> palette;
    private final TemplatesModel model;
    private final SheetCanvas sheet;
    private final Button back = new Button("‹");
    private final Button on = new Button("›");
    private final Label number = new Label();
    private final Label use = new Label();
    private final Label tool = new Label();
    private final Label under = new Label();
    private final HBox working;
    private Optional<Node> settings = Optional.empty();
    private Optional<Node> remarks = Optional.empty();

    /**
     * The sheets of the open set.
     *
     * @param editor what all views share
     * @param preferences what is folded away
     * @param palette colours of the theme
     * @param export shows the page on which the sheets are written
     */
    public TemplatesPane(
            EditorModel editor,
            Preferences preferences,
            Watched<Palette> palette,
            Runnable export) {
        this.editor = editor;
        this.preferences = preferences;
        this.palette = palette;
        model = new TemplatesModel(editor, background(), Platform::runLater);
        sheet = new SheetCanvas(model, palette, editor.units());
        getStyleClass().add("sheet");
        setId("templates");
        ProgressBar bar = new ProgressBar(ProgressBar.INDETERMINATE_PROGRESS);
        bar.setPrefWidth(60);
        bar.setAccessibleText("Sheets are being laid out");
        Label busy = new Label("laying out…");
        busy.getStyleClass().add("small");
        working = new HBox(6, bar, busy);
        working.setId("templates-working");
        working.setAlignment(Pos.CENTER_LEFT);
        setTop(bar(export));
        setCenter(sheet);
        setBottom(foot());
        visibleProperty().addListener((o, was, is) -> model.show(is));
        model.laidOut().follow(laid -> tell());
        model.sheet().watch(shown -> tell());
        model.working().follow(this::busy);
        model.trouble().watch(why -> tell());
        editor.units().watch(units -> tell());
        sheet.under().watch(this::say);
    }

    /** One thread: a run that was overtaken ends before the next begins. */
    private static Executor background() {
        return Executors.newSingleThreadExecutor(
                work -> {
                    Thread thread = new Thread(work, "sheets");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    private Node bar(Runnable export) {
        back.setId("sheet-back");
        back.setAccessibleText("Sheet before");
        back.setOnAction(e -> model.turn(-1));
        on.setId("sheet-on");
        on.setAccessibleText("Next sheet");
        on.setOnAction(e -> model.turn(1));
        use.setId("templates-use");
        use.setWrapText(true);
        use.setMinWidth(0);
        tool.getStyleClass().add("small");
        tool.setWrapText(true);
        tool.setMinWidth(0);
        number.setMinWidth(Region.USE_PREF_SIZE);
        VBox words = new VBox(1, use, tool);
        words.setMinWidth(0);
        Button write = new Button("Export sheets…");
        write.setId("templates-export");
        write.setMinWidth(Region.USE_PREF_SIZE);
        write.setOnAction(e -> export.run());
        HBox turn = new HBox(10, back, number, on);
        turn.setAlignment(Pos.CENTER_LEFT);
        return new WrapBar(List.of(turn, words), List.of(working, write));
    }

    private Node foot() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        under.getStyleClass().add("small");
        HBox foot = new HBox(18, new Legend(palette), gap, under);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("sheet-foot");
        return foot;
    }

    private void busy(boolean isBusy) {
        working.setVisible(isBusy);
        working.setManaged(isBusy);
    }

    private void tell() {
        int sheets = model.laidOut().value().map(laid -> laid.sheets().size()).orElse(0);
        int shown = model.sheet().value();
        for (Node each : new Node[] {back, on, number}) {
            each.setVisible(sheets > 1);
            each.setManaged(sheets > 1);
        }
        back.setDisable(shown == 0);
        on.setDisable(shown >= sheets - 1);
        number.setText("Sheet " + (shown + 1) + " of " + sheets);
        use.setText(model.use());
        tool.setText(model.toolNote());
        sheet.setAccessibleText(
                "Sheet "
                        + (shown + 1)
                        + " of "
                        + sheets
                        + "; "
                        + model.use()
                        + "; "
                        + model.toolNote()
                        + ". Page up and down turn the sheets, arrow keys move the sheet, Home"
                        + " shows it whole");
    }

    private void say(Optional<Card> card) {
        Shown shown = new Shown(editor.units().value());
        under.setText(
                card.map(
                                c ->
                                        c.name()
                                                + ", "
                                                + shown.length(c.box().width())
                                                + " × "
                                                + shown.length(c.box().height()))
                        .orElse(""));
    }

    /**
     * The settings by which the sheets are made, for the side of the window.
     *
     * @return the panel
     */
    public Node settings() {
        if (settings.isEmpty()) {
            settings =
                    Optional.of(
                            new SettingsPane(
                                    WorkshopModel.ofTemplates(editor),
                                    editor,
                                    preferences,
                                    palette));
        }
        return settings.get();
    }

    /**
     * What was found about the cards, for the foot of the window.
     *
     * @return the list
     */
    public Node remarks() {
        if (remarks.isEmpty()) {
            remarks = Optional.of(new RemarksPane(model, editor.units()));
        }
        return remarks.get();
    }

    /**
     * The sheets as they last were laid out.
     *
     * @return watched; empty before the first time
     */
    public Watched<Optional<LaidOut>> laidOut() {
        return model.laidOut();
    }

    /** Brings the whole sheet into sight. */
    public void fit() {
        sheet.fit();
    }

    /**
     * Larger or smaller about the middle.
     *
     * @param in whether larger
     */
    public void zoom(boolean in) {
        sheet.zoom(in);
    }
}
