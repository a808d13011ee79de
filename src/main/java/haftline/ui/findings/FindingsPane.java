package haftline.ui.findings;

import haftline.findings.Finding;
import haftline.findings.Remedy;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FindingsModel;
import haftline.ui.model.RuleSource;
import haftline.ui.theme.Later;
import haftline.ui.theme.Mark;
import haftline.ui.theme.SteadyBox;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The findings of the piece on the board, each with the remedy that was tried. */
public final class FindingsPane extends VBox {
    private static final double LEAST_ROW = 34;

    /** Air over and under the words of a row, px. */
    private static final double AIR = 8;

    /** What borders and a scroll bar take of the list's width, px. */
    private static final double BESIDE = 46;

    /** The finding comes first: its remedy never takes more than this share of the row. */
    private static final double REMEDY_SHARE = 0.31;

    /** What mark, rule and the gaps of a row take beside words and remedy, px. */
    private static final double MARKS = 110;

    private final EditorModel editor;
    private final FindingsModel model;
    private final Consumer<RuleSource> shown;
    private final ListView<Finding> list = new ListView<>();
    private final Label title = new Label();
    private boolean remediesWait;
    private boolean wasWaiting;
    private boolean filling;
    private final List<Row> rows = new ArrayList<>();

    /**
     * The findings of the piece at hand.
     *
     * @param editor what all views share
     * @param model the findings, and which is chosen
     * @param shown told whose rule is to be shown
     */
    public FindingsPane(EditorModel editor, FindingsModel model, Consumer<RuleSource> shown) {
        this.shown = shown;
        this.editor = editor;
        this.model = model;
        getStyleClass().add("findings");
        title.getStyleClass().add("panel-title");
        title.setLabelFor(list);
        Label none = new Label("Nothing found: it can be made as drawn.");
        none.getStyleClass().add("small");
        list.setPlaceholder(none);
        list.setId("findings");
        list.setAccessibleText("Findings");
        list.widthProperty()
                .addListener(
                        o -> {
                            rows.forEach(Row::measureAnew);
                            list.refresh();
                        });
        list.setCellFactory(view -> new Row());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (o, was, is) -> {
                            if (!filling) {
                                model.chosen().set(Optional.ofNullable(is));
                            }
                        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        Later later =
                new Later(
                        () -> {
                            remediesWait = editor.document().isInGesture();
                            fill();
                        });
        editor.worked()
                .watch(
                        worked -> {
                            // Remedies are tried once the hand rests; sentences follow it.
                            remediesWait = editor.document().isInGesture();
                            fill();
                            later.call();
                        });
        editor.inHand().watch(inHand -> later.call());
        editor.units().watch(units -> fill());
        fill();
    }

    /** Gives the list the keyboard. */
    public void focusList() {
        list.requestFocus();
    }

    /** Its size never goes by what it holds: the window is not laid out anew for a sentence. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    private void fill() {
        List<Finding> found = model.findings().value();
        title.setText(found.isEmpty() ? "Findings" : "Findings for " + editor.piece().value());
        if (editor.document().isInGesture() && isOfSame(found)) {
            // A drag changes figures only: their sentences are written into the rows that are
            // there.
            rows.forEach(row -> row.tell(found));
            return;
        }
        filling = true;
        if (list.getItems().size() == found.size()) {
            for (int i = 0; i < found.size(); i++) {
                if (!list.getItems().get(i).equals(found.get(i))) {
                    list.getItems().set(i, found.get(i));
                }
            }
        } else {
            list.getItems().setAll(found);
        }
        if (model.chosen().value().isPresent()) {
            list.getSelectionModel().select(model.chosen().value().get());
        } else {
            list.getSelectionModel().clearSelection();
        }
        filling = false;
        if (!editor.document().isInGesture() || wasWaiting != remediesWait) {
            list.refresh();
        }
        wasWaiting = remediesWait;
    }

    private boolean isOfSame(List<Finding> found) {
        List<Finding> shown = list.getItems();
        return shown.size() == found.size()
                && IntStream.range(0, found.size())
                        .allMatch(i -> shown.get(i).isAbout(found.get(i)));
    }

    private Optional<Remedy> remedy(Finding finding) {
        return remediesWait ? Optional.empty() : model.remedy(finding);
    }

    private final class Row extends ListCell<Finding> {
        private final Mark mark = new Mark();
        private final Label sentence = new Label();
        private final Hyperlink rule = new Hyperlink("rule");
        private final Button apply =
                new Button() {
                    @Override
                    protected double computeMinWidth(double height) {
                        return remedyWidth(this);
                    }
                };
        private final Label advice =
                new Label() {
                    @Override
                    protected double computeMinWidth(double height) {
                        return remedyWidth(this);
                    }
                };
        private final Label aside = new Label();
        private final VBox words;
        private final SteadyBox box;

        Row() {
            sentence.getStyleClass().add("finding");
            sentence.setMinWidth(0);
            sentence.setWrapText(true);
            rule.getStyleClass().add("whose");
            rule.setMinWidth(Region.USE_PREF_SIZE);
            apply.getStyleClass().add("apply");
            apply.setWrapText(true);
            apply.maxWidthProperty().bind(list.widthProperty().multiply(REMEDY_SHARE));
            aside.getStyleClass().add("advice");
            aside.setMinWidth(0);
            aside.setWrapText(true);
            words =
                    new VBox(1, sentence, aside) {
                        @Override
                        protected double computeMinWidth(double height) {
                            return Math.min(sentence.prefWidth(-1), wordsWidth());
                        }
                    };
            words.setAlignment(Pos.CENTER_LEFT);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            HBox line = new HBox(10, mark, words, rule, gap, advice, apply);
            advice.getStyleClass().add("advice");
            advice.setWrapText(true);
            advice.maxWidthProperty().bind(list.widthProperty().multiply(REMEDY_SHARE));
            line.setAlignment(Pos.CENTER_LEFT);
            // The list lays all its rows anew where one asks for it: only where that one grows.
            box = new SteadyBox(line);
            box.setAlignment(Pos.CENTER_LEFT);
            box.setMinWidth(0);
            setPrefWidth(0);
            for (Node reached : List.of(rule, apply)) {
                reached.addEventHandler(KeyEvent.KEY_RELEASED, this::bringIntoSight);
            }
            rows.add(this);
        }

        /** What the keyboard reaches is seen; under a mouse no row moves. */
        private void bringIntoSight(KeyEvent event) {
            if (event.getCode() == KeyCode.TAB
                    && list.lookup(".virtual-flow") instanceof VirtualFlow<?> flow) {
                flow.scrollTo(getIndex());
            }
        }

        /** Its words take a share of the list's width, which is another one now. */
        void measureAnew() {
            words.requestLayout();
            apply.requestLayout();
            advice.requestLayout();
        }

        private double wordsWidth() {
            return Math.max(0, list.getWidth() * (1 - REMEDY_SHARE) - BESIDE - MARKS);
        }

        /** A remedy is read beside its finding, never a word a line. */
        private double remedyWidth(Labeled told) {
            return Math.min(told.prefWidth(-1), list.getWidth() * REMEDY_SHARE);
        }

        /** Tells the finding of its row anew. */
        void tell(List<Finding> found) {
            if (!isEmpty() && getIndex() >= 0 && getIndex() < found.size()) {
                mark.show(Optional.of(found.get(getIndex()).gravity()));
                sentence.setText(Shown.unbroken(model.message(found.get(getIndex()))));
                // What was tried on the piece as it was keeps its room and says nothing.
                for (Node tried : List.of(aside, advice, apply)) {
                    tried.setVisible(tried.isVisible() && !remediesWait);
                }
                // The list's cells are laid out by the list alone, which is not asked.
                box.layout();
            }
        }

        /** As tall as its words need at the list's width: nothing said is cut short. */
        @Override
        protected double computePrefHeight(double width) {
            return isEmpty()
                    ? LEAST_ROW
                    : Math.max(
                            LEAST_ROW, Math.ceil(box.prefHeight(list.getWidth() - BESIDE)) + AIR);
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
            String message = model.message(finding);
            String whose = model.rule(finding);
            sentence.setText(Shown.unbroken(message));
            rule.setVisited(false);
            rule.setAccessibleText("whose rule: " + whose);
            rule.setTooltip(new Tooltip("Whose rule: " + whose));
            rule.setOnAction(
                    e -> {
                        rule.setVisited(false);
                        list.getSelectionModel().select(finding);
                        shown.accept(model.source(finding));
                    });
            Optional<Remedy> remedy = remedy(finding);
            boolean byChoice = remedy.flatMap(Remedy::choices).isPresent();
            String more = byChoice ? remedy.map(Remedy::aside).orElse("") : "";
            aside.setText(
                    more.isEmpty()
                            ? ""
                            : Shown.unbroken(
                                    Character.toUpperCase(more.charAt(0)) + more.substring(1)));
            aside.setVisible(!more.isEmpty());
            aside.setManaged(!more.isEmpty());
            advice.setText(
                    byChoice ? "" : remedy.map(Remedy::text).map(Shown::unbroken).orElse(""));
            advice.setVisible(remedy.isPresent() && !byChoice);
            advice.setManaged(remedy.isPresent() && !byChoice);
            apply.setVisible(byChoice);
            apply.setManaged(byChoice);
            remedy.ifPresent(
                    r -> {
                        apply.setText(Shown.unbroken(r.change()));
                        apply.setAccessibleText("Apply: " + r.text());
                        apply.setTooltip(
                                new Tooltip(r.text() + ". Tried on this piece; press to apply it"));
                        apply.setOnAction(
                                e -> {
                                    // The button goes with its finding; the hand stays here.
                                    list.requestFocus();
                                    model.apply(finding);
                                });
                    });
            setAccessibleText(
                    Mark.words(Optional.of(finding.gravity())) + ": " + message + "; " + whose);
            setGraphic(box);
        }
    }
}
