package haftline.ui.lineup;

import haftline.findings.Remedy;
import haftline.set.Family;
import haftline.set.LineUp;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FamilyModel;
import haftline.ui.model.FamilyModel.Matched;
import haftline.ui.theme.Mark;
import haftline.ui.theme.Switches;
import haftline.ui.theme.WideCell;
import haftline.ui.theme.WrapBar;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What the eye sees between the pieces, in figures, and what falls out of the family. */
final class DifferencesPane extends VBox {
    private static final double NAME_WIDTH = 116;

    /** A long name takes no more height than the figures beside it, px. */
    private static final double TWO_LINES = 34;

    private static final double GAP = 6;

    /** No column is narrower, px: a narrow table is scrolled. */
    private static final double LEAST_COLUMN = 72;

    /** The bar of the rows and the air on both sides, px. */
    private static final double ASIDE = 30;

    /** A remedy never takes more than this share of its row: the finding comes first. */
    private static final double REMEDY_SHARE = 0.4;

    private final EditorModel editor;
    private final FamilyModel model;
    private final ToggleButton table = new ToggleButton("Differences");
    private final ToggleButton out = new ToggleButton();
    private final HBox head = new HBox(GAP);
    private final ListView<LineUp.Places> rows = new ListView<>();
    private final ListView<Family.Stray> strays = new ListView<>();
    private final VBox tablePage = new VBox(head, rows);
    private final ScrollPane scrolled = new ScrollPane(tablePage);
    private final Label none = new Label();

    DifferencesPane(EditorModel editor, FamilyModel model) {
        this.editor = editor;
        this.model = model;
        getStyleClass().add("paged");
        rows.setId("differences");
        rows.setAccessibleText("What each piece differs in from the middle one of all");
        rows.getStyleClass().add("lines");
        rows.setCellFactory(view -> new TraitCell());
        rows.widthProperty().addListener(o -> rows.refresh());
        none.getStyleClass().add("small");
        none.setWrapText(true);
        rows.setPlaceholder(none);
        strays.setId("strays");
        strays.setAccessibleText("What falls out of the family");
        strays.getStyleClass().add("lines");
        strays.setCellFactory(view -> new StrayCell());
        strays.widthProperty().addListener(o -> strays.refresh());
        Label well = new Label("Nothing falls out of the family.");
        well.getStyleClass().add("small");
        strays.setPlaceholder(well);
        VBox.setVgrow(rows, Priority.ALWAYS);
        scrolled.setFitToWidth(true);
        scrolled.setFitToHeight(true);
        scrolled.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scrolled.setFocusTraversable(false);
        scrolled.setMinHeight(0);
        StackPane pages = new StackPane(scrolled, strays);
        VBox.setVgrow(pages, Priority.ALWAYS);
        head.getStyleClass().add("differences-head");
        head.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().addAll(bar(), pages);
        model.matched().follow(this::show);
        model.remedies().watch(remedies -> strays.refresh());
        editor.units().watch(units -> show(model.matched().value()));
        turn();
    }

    private WrapBar bar() {
        table.setOnAction(e -> turn());
        out.setOnAction(e -> turn());
        table.setId("show-differences");
        out.setId("show-strays");
        Label how =
                new Label(
                        "Against the middle one of all pieces, which stands at the head. ▲ reads as"
                                + " another pattern.");
        how.getStyleClass().add("small");
        how.setMinWidth(0);
        how.setWrapText(true);
        return new WrapBar(List.of(new Switches(table, out), how), List.of());
    }

    private void turn() {
        scrolled.setVisible(table.isSelected());
        strays.setVisible(out.isSelected());
    }

    private void show(Matched matched) {
        int count = matched.strays().size();
        out.setText(count == 0 ? "Out of the family: none" : "Out of the family: " + count);
        none.setText(matched.family().rows().isEmpty() ? "A family takes two pieces or more." : "");
        head.getChildren().clear();
        head.setAlignment(Pos.TOP_LEFT);
        Label corner = new Label("piece");
        corner.getStyleClass().add("small");
        corner.setMinWidth(NAME_WIDTH);
        corner.setPrefWidth(NAME_WIDTH);
        if (!matched.family().rows().isEmpty()) {
            head.getChildren().add(corner);
        }
        for (Family.Row row : matched.family().rows()) {
            Label trait = new Label(row.trait().words() + "\n" + model.common(row));
            trait.getStyleClass().add("small");
            column(trait);
            head.getChildren().add(trait);
        }
        int columns = matched.family().rows().size();
        tablePage.setMinWidth(
                columns == 0 ? 0 : NAME_WIDTH + columns * (LEAST_COLUMN + GAP) + ASIDE);
        rows.getItems()
                .setAll(matched.family().rows().isEmpty() ? List.of() : matched.lineUp().places());
        strays.getItems().setAll(matched.strays());
    }

    private static void column(Label label) {
        label.setMinWidth(0);
        label.setPrefWidth(40);
        label.setMaxWidth(Double.MAX_VALUE);
        label.setAlignment(Pos.CENTER_RIGHT);
        label.setStyle("-fx-text-alignment: right;");
        HBox.setHgrow(label, Priority.ALWAYS);
    }

    private final class TraitCell extends WideCell<LineUp.Places> {
        private final Label name = new Label();
        private final HBox row = new HBox(GAP);

        TraitCell() {
            super(rows);
            name.setMinWidth(NAME_WIDTH);
            name.setPrefWidth(NAME_WIDTH);
            name.setMaxHeight(TWO_LINES);
            name.setWrapText(true);
            name.getStyleClass().add("piece-name");
            row.setAlignment(Pos.CENTER_LEFT);
        }

        @Override
        protected void updateItem(LineUp.Places places, boolean empty) {
            super.updateItem(places, empty);
            if (empty || places == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            name.setText(places.piece());
            setTooltip(new Tooltip(places.piece()));
            row.getChildren().setAll(name);
            for (Family.Row trait : model.matched().value().family().rows()) {
                row.getChildren().add(cell(trait, trait.entry(places.piece())));
            }
            setAccessibleText(model.words(places.piece()));
            show(row);
        }

        private Label cell(Family.Row trait, Optional<Family.Entry> entry) {
            Label cell = new Label();
            column(cell);
            if (entry.isEmpty()) {
                cell.setText("none");
                cell.getStyleClass().add("tone-same");
                return cell;
            }
            Family.Likeness likeness = entry.get().likeness();
            String percent = model.percent(entry.get());
            cell.setText(
                    likeness == Family.Likeness.ALIKE
                            ? "alike"
                            : (likeness == Family.Likeness.APART ? "▲ " : "")
                                    + model.number(trait.trait(), entry.get())
                                    + (percent.isEmpty() ? "" : "\n" + percent));
            cell.getStyleClass()
                    .add(
                            switch (likeness) {
                                case ALIKE -> "tone-same";
                                case SEEN -> "tone-seen";
                                case APART -> "tone-warning";
                            });
            return cell;
        }
    }

    private final class StrayCell extends WideCell<Family.Stray> {
        private final Mark mark = new Mark();
        private final Label sentence = new Label();
        private final Label aside = new Label();
        private final Button apply = new Button();
        private final HBox row;

        StrayCell() {
            super(strays);
            sentence.setWrapText(true);
            sentence.setMinWidth(0);
            aside.setWrapText(true);
            aside.setMinWidth(0);
            aside.getStyleClass().add("advice");
            apply.getStyleClass().add("apply");
            apply.setWrapText(true);
            apply.setMinWidth(0);
            apply.maxWidthProperty().bind(strays.widthProperty().multiply(REMEDY_SHARE));
            VBox words = new VBox(1, sentence, aside);
            words.setMinWidth(0);
            HBox.setHgrow(words, Priority.ALWAYS);
            row = new HBox(10, mark, words, apply);
            row.setAlignment(Pos.CENTER_LEFT);
        }

        @Override
        protected void updateItem(Family.Stray stray, boolean empty) {
            super.updateItem(stray, empty);
            if (empty || stray == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            model.ask(stray);
            mark.show(Optional.of(stray.finding().gravity()));
            sentence.setText(Shown.unbroken(model.message(stray)));
            Optional<Remedy> remedy =
                    model.remedies().value().getOrDefault(stray, Optional.empty());
            boolean isLooking = !model.remedies().value().containsKey(stray);
            boolean isChoice = remedy.flatMap(Remedy::choices).isPresent();
            List<String> more = new ArrayList<>();
            if (isLooking) {
                more.add("Looking for the least change…");
            } else if (remedy.isEmpty()) {
                more.add("No one choice brings it back");
            } else {
                if (!isChoice) {
                    more.add(remedy.get().change());
                }
                if (!remedy.get().aside().isEmpty()) {
                    more.add(capital(remedy.get().aside()));
                }
            }
            aside.setText(Shown.unbroken(String.join("; ", more)));
            aside.setManaged(!more.isEmpty());
            apply.setVisible(isChoice);
            apply.setManaged(isChoice);
            apply.setText(remedy.map(Remedy::change).map(Shown::unbroken).orElse(""));
            apply.setOnAction(
                    e -> {
                        editor.choose(stray.piece());
                        model.apply(stray);
                    });
            setAccessibleText(sentence.getText() + ". " + aside.getText());
            show(row);
        }

        private static String capital(String words) {
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
    }
}
