package haftline.ui.app;

import haftline.measure.Units;
import haftline.ui.model.EditorModel;
import haftline.ui.theme.Switches;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The strip along the top: which set, which view, which units. */
final class Header extends HBox {
    private final Label name = new Label();
    private final Tooltip whole = new Tooltip();

    /** Its room is kept while it is not shown: the switches beside it stay where they are. */
    private final Label state = new Label("not saved");

    private final ToggleButton board = new ToggleButton("Board");
    private final ToggleButton lineUp = new ToggleButton("Line-up");
    private final ToggleButton sheet = new ToggleButton("Sheet");
    private final ToggleButton templates = new ToggleButton("Templates");
    private final ToggleButton batch = new ToggleButton("New batch");
    private final ToggleButton production = new ToggleButton("Production");
    private final ToggleButton mm = new ToggleButton("mm");
    private final ToggleButton inch = new ToggleButton("inch");
    private final EditorModel editor;

    Header(EditorModel editor, Actions actions) {
        this.editor = editor;
        getStyleClass().add("header");
        setAlignment(Pos.CENTER_LEFT);
        name.getStyleClass().add("set-name");
        state.getStyleClass().add("small");
        Switches views = new Switches(board, lineUp, sheet, templates, batch, production);
        views.getStyleClass().add("views");
        views.setAlignment(Pos.CENTER);
        board.setOnAction(e -> actions.showBoard());
        lineUp.setOnAction(e -> actions.showLineUp());
        sheet.setOnAction(e -> actions.showSheet());
        templates.setOnAction(e -> actions.showTemplates());
        batch.setOnAction(e -> actions.showBatch());
        production.setOnAction(e -> actions.showProduction());
        Button export = new Button("Export");
        export.setId("export");
        export.getStyleClass().add("first");
        export.setOnAction(e -> actions.showExport());
        Switches units = new Switches(mm, inch);
        units.getStyleClass().add("units");
        units.setAlignment(Pos.CENTER);
        mm.setId("units-mm");
        inch.setId("units-inch");
        mm.setOnAction(e -> actions.units(Units.MM));
        inch.setOnAction(e -> actions.units(Units.INCH));
        name.setMinWidth(0);
        name.setTooltip(whole);
        state.setMinWidth(Region.USE_PREF_SIZE);
        export.setMinWidth(Region.USE_PREF_SIZE);
        HBox left = new HBox(8, name, state);
        left.setMinWidth(0);
        left.setMaxHeight(Region.USE_PREF_SIZE);
        left.setAlignment(Pos.BASELINE_LEFT);
        Region gap = new Region();
        Region gap2 = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox.setHgrow(gap2, Priority.ALWAYS);
        getChildren().addAll(left, gap, views, gap2, units, export);
        editor.draft().watch(draft -> refresh());
        editor.status().watch(status -> refresh());
        editor.units().watch(unit -> refresh());
        refresh();
    }

    void viewing(Showing showing) {
        Map<ToggleButton, Showing> switches =
                Map.of(
                        board, Showing.BOARD,
                        lineUp, Showing.LINE_UP,
                        sheet, Showing.SHEET,
                        templates, Showing.TEMPLATES,
                        batch, Showing.BATCH,
                        production, Showing.PRODUCTION);
        boolean isHere = switches.keySet().stream().anyMatch(Node::isFocused);
        switches.forEach(
                (button, view) -> {
                    button.setSelected(view == showing);
                    if (isHere && view == showing) {
                        // A view that is chosen by its key takes the keyboard from another's
                        // switch.
                        button.requestFocus();
                    }
                });
    }

    private void refresh() {
        name.setText(editor.draft().value().set().name());
        whole.setText(name.getText());
        state.setVisible(editor.status().value().isModified());
        (editor.units().value() == Units.MM ? mm : inch).setSelected(true);
    }
}
