package haftline.ui.findings;

import haftline.edit.ChoiceEdits;
import haftline.edit.Scope;
import haftline.edit.Worked;
import haftline.findings.Finding;
import haftline.findings.Remedies;
import haftline.findings.Remedy;
import haftline.findings.Words;
import haftline.stock.Stock;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Mark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
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

    private final EditorModel editor;
    private final Watched<Optional<Finding>> chosen;
    private final ListView<Finding> list = new ListView<>();
    private final Label title = new Label();
    private final Map<Finding, Optional<Remedy>> remedies = new HashMap<>();
    private boolean remediesWait;
    private boolean filling;

    /**
     * The findings of the piece at hand.
     *
     * @param editor what all views share
     * @param chosen the finding whose place is shown on the board; set by a choice in the list
     */
    public FindingsPane(EditorModel editor, Watched<Optional<Finding>> chosen) {
        this.editor = editor;
        this.chosen = chosen;
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
                                chosen.set(Optional.ofNullable(is));
                            }
                        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        Later later =
                new Later(
                        () -> {
                            remediesWait = false;
                            fill();
                        });
        editor.worked()
                .watch(
                        worked -> {
                            // Remedies are tried once the hand rests; sentences follow it.
                            remedies.clear();
                            chosen.set(Optional.empty());
                            remediesWait = editor.document().isInGesture();
                            fill();
                            if (remediesWait) {
                                later.call();
                            }
                        });
        editor.units()
                .watch(
                        units -> {
                            remedies.clear();
                            fill();
                        });
        fill();
    }

    private void fill() {
        List<Finding> found = editor.worked().value().findings();
        title.setText(found.isEmpty() ? "Findings" : "Findings for " + editor.piece().value());
        filling = true;
        if (!list.getItems().equals(found)) {
            list.getItems().setAll(found);
        }
        if (chosen.value().isEmpty()) {
            list.getSelectionModel().clearSelection();
        }
        filling = false;
        list.refresh();
    }

    private Optional<Remedy> remedy(Finding finding) {
        Worked worked = editor.worked().value();
        if (remediesWait || worked.figures().isEmpty()) {
            return Optional.empty();
        }
        return remedies.computeIfAbsent(
                finding, f -> Remedies.of(f, worked.figures().get(), editor.units().value()));
    }

    private Stock stock() {
        return editor.worked().value().brief().stock();
    }

    private void apply(Remedy remedy) {
        ChoiceEdits edits = new ChoiceEdits(editor.piece().value(), Scope.THIS_PIECE);
        remedy.choices()
                .ifPresent(
                        after ->
                                editor.run(
                                        edits.remedy(
                                                remedy.change(),
                                                editor.worked().value().brief().choices(),
                                                after)));
    }

    private final class Row extends ListCell<Finding> {
        private final Mark mark = new Mark();
        private final Label sentence = new Label();
        private final Hyperlink rule = new Hyperlink("whose rule");
        private final Tooltip source = new Tooltip();
        private final Button apply = new Button();
        private final Label advice = new Label();
        private final HBox box;

        Row() {
            sentence.getStyleClass().add("finding");
            sentence.setMinWidth(0);
            rule.getStyleClass().add("whose");
            rule.setMinWidth(Region.USE_PREF_SIZE);
            rule.setOnAction(e -> showSource());
            source.setAutoHide(true);
            apply.getStyleClass().add("apply");
            apply.setMinWidth(Region.USE_PREF_SIZE);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            box = new HBox(10, mark, sentence, rule, gap, advice, apply);
            advice.getStyleClass().add("advice");
            advice.setMinWidth(0);
            box.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
        }

        private void showSource() {
            Point2D at = rule.localToScreen(0, -30);
            source.show(rule, at.getX(), at.getY());
            rule.setVisited(false);
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
            String message = Words.message(finding, stock(), editor.units().value());
            String whose = Words.rule(finding, stock());
            sentence.setText(message);
            sentence.setTooltip(new Tooltip(message));
            rule.setVisited(false);
            rule.setAccessibleText("whose rule: " + whose);
            source.setText("Rule: " + whose);
            Optional<Remedy> remedy = remedy(finding);
            boolean byChoice = remedy.flatMap(Remedy::choices).isPresent();
            advice.setText(byChoice ? "" : remedy.map(Remedy::change).orElse(""));
            advice.setVisible(remedy.isPresent() && !byChoice);
            advice.setManaged(remedy.isPresent() && !byChoice);
            apply.setVisible(byChoice);
            apply.setManaged(byChoice);
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
