package haftline.ui.templates;

import haftline.measure.Units;
import haftline.template.TemplateFinding;
import haftline.ui.model.LaidOut;
import haftline.ui.model.LaidOut.Remark;
import haftline.ui.model.TemplatesModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Mark;
import haftline.ui.words.Shown;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What was found about cards; choosing a line shows its card. */
final class RemarksPane extends VBox {
    private final TemplatesModel model;
    private final Watched<Units> units;
    private final ListView<Remark> list = new ListView<>();
    private final Label none = new Label();
    private boolean isFilling;

    RemarksPane(TemplatesModel model, Watched<Units> units) {
        this.model = model;
        this.units = units;
        getStyleClass().add("findings");
        Label title = new Label("Findings on gauges and templates");
        title.getStyleClass().add("panel-title");
        title.setLabelFor(list);
        none.getStyleClass().add("small");
        list.setPlaceholder(none);
        list.setId("template-findings");
        list.setAccessibleText("Findings on gauges and templates; choosing one shows its card");
        list.setCellFactory(view -> new Line());
        list.widthProperty().addListener(o -> list.refresh());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (o, was, is) -> {
                            if (!isFilling) {
                                model.choose(Optional.ofNullable(is));
                            }
                        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        model.laidOut().follow(laid -> fill());
        units.watch(unit -> list.refresh());
    }

    private void fill() {
        List<Remark> remarks = model.laidOut().value().map(LaidOut::remarks).orElse(List.of());
        Optional<LaidOut> laid = model.laidOut().value();
        none.setText(
                laid.isEmpty()
                        ? "The cards are being laid out."
                        : laid.get().sheets().isEmpty()
                                ? "There are no cards."
                                : "Nothing found: the cards can be cut as drawn.");
        isFilling = true;
        list.getItems().setAll(remarks);
        isFilling = false;
    }

    private final class Line extends ListCell<Remark> {
        private final Mark mark = new Mark();
        private final Label sentence = new Label();
        private final Label where = new Label();
        private final HBox box;

        Line() {
            sentence.getStyleClass().add("finding");
            sentence.setWrapText(true);
            sentence.setMinWidth(0);
            HBox.setHgrow(sentence, Priority.ALWAYS);
            sentence.setMaxWidth(Double.MAX_VALUE);
            where.getStyleClass().add("small");
            where.setMinWidth(Region.USE_PREF_SIZE);
            box = new HBox(10, mark, sentence, where);
            box.setAlignment(Pos.CENTER_LEFT);
            box.setMinHeight(30);
            box.setPadding(new Insets(4, 0, 4, 0));
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(Remark remark, boolean empty) {
            super.updateItem(remark, empty);
            setText(null);
            if (empty || remark == null) {
                setGraphic(null);
                return;
            }
            TemplateFinding finding = remark.finding();
            mark.show(Optional.of(finding.gravity()));
            sentence.setText(
                    Shown.unbroken(finding.subject() + ": " + finding.message(units.value())));
            where.setText(remark.sheet() < 0 ? "on no sheet" : "sheet " + (remark.sheet() + 1));
            setAccessibleText(
                    Mark.words(Optional.of(finding.gravity()))
                            + ", "
                            + sentence.getText()
                            + ", "
                            + where.getText());
            setGraphic(box);
        }
    }
}
