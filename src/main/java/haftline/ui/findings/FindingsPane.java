package haftline.ui.findings;

import haftline.findings.Finding;
import haftline.findings.Remedies;
import haftline.findings.Remedy;
import haftline.findings.Words;
import haftline.set.Piece;
import haftline.ui.app.Desk;
import haftline.ui.app.Examined;
import haftline.ui.theme.Mark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The findings of the piece on the board, each with the remedy that was tried. */
public final class FindingsPane extends VBox {
    private static final double ROW = 32;

    private final Desk desk;
    private final ListView<Finding> list = new ListView<>();
    private final Label title = new Label();
    private final Map<Finding, Optional<Remedy>> remedies = new HashMap<>();
    private boolean inGesture;
    private boolean filling;

    /**
     * The findings of what is on a desk.
     *
     * @param desk the desk
     */
    public FindingsPane(Desk desk) {
        this.desk = desk;
        getStyleClass().add("findings");
        title.getStyleClass().add("panel-title");
        title.setLabelFor(list);
        Label none = new Label("Nothing found: it can be made as drawn.");
        none.getStyleClass().add("small");
        list.setPlaceholder(none);
        list.setId("findings");
        list.setAccessibleText("Findings");
        list.setFixedCellSize(ROW);
        list.setCellFactory(view -> new Row());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (o, was, is) -> {
                            if (!filling) {
                                desk.chooseFinding(Optional.ofNullable(is));
                            }
                        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        desk.listen(this::changed);
        changed(Desk.Change.ALL);
    }

    private void changed(Desk.Change change) {
        if (change == Desk.Change.SELECTION) {
            return;
        }
        inGesture = change == Desk.Change.GESTURE;
        List<Finding> found = desk.examined().findings();
        if (!inGesture) {
            remedies.clear();
        }
        title.setText(heading(found));
        filling = true;
        if (!list.getItems().equals(found)) {
            list.getItems().setAll(found);
        }
        list.refresh();
        if (desk.finding().isEmpty()) {
            list.getSelectionModel().clearSelection();
        }
        filling = false;
    }

    private String heading(List<Finding> found) {
        return found.isEmpty() ? "Findings" : "Findings for " + desk.piece().name();
    }

    private Optional<Remedy> remedy(Finding finding) {
        Examined examined = desk.examined();
        if (inGesture || examined.figures().isEmpty()) {
            return Optional.empty();
        }
        return remedies.computeIfAbsent(
                finding, f -> Remedies.of(f, examined.figures().get(), desk.units()));
    }

    private void apply(Remedy remedy) {
        desk.changePiece(
                remedy.change(),
                piece ->
                        new Piece(
                                piece.name(),
                                piece.kit(),
                                piece.stock(),
                                piece.shape(),
                                remedy.choices()));
    }

    private final class Row extends ListCell<Finding> {
        private final Mark mark = new Mark();
        private final Label sentence = new Label();
        private final Label rule = new Label();
        private final Button apply = new Button();
        private final HBox box;

        Row() {
            sentence.getStyleClass().add("finding");
            sentence.setMinWidth(0);
            rule.getStyleClass().add("small");
            rule.setMinWidth(0);
            apply.getStyleClass().add("apply");
            apply.setMinWidth(Region.USE_PREF_SIZE);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            box = new HBox(10, mark, sentence, rule, gap, apply);
            box.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(Finding finding, boolean empty) {
            super.updateItem(finding, empty);
            setText(null);
            if (empty || finding == null) {
                setGraphic(null);
                return;
            }
            mark.show(Optional.of(finding.gravity()));
            String message = Words.message(finding, desk.units());
            String whose = Words.rule(finding);
            sentence.setText(message);
            sentence.setTooltip(new Tooltip(message));
            rule.setText(whose);
            rule.setTooltip(new Tooltip("Whose rule: " + whose));
            Optional<Remedy> remedy = remedy(finding);
            apply.setVisible(remedy.isPresent());
            apply.setManaged(remedy.isPresent());
            remedy.ifPresent(
                    r -> {
                        apply.setText(r.change());
                        apply.setAccessibleText("Apply: " + r.change());
                        apply.setTooltip(new Tooltip("Tried on this piece; press to apply it"));
                        apply.setOnAction(e -> FindingsPane.this.apply(r));
                    });
            setAccessibleText(
                    Mark.words(Optional.of(finding.gravity())) + ": " + message + "; " + whose);
            setGraphic(box);
        }
    }
}
