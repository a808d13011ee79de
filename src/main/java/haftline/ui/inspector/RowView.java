package haftline.ui.inspector;

import haftline.ui.model.Row;
import haftline.ui.theme.SteadyBox;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** One row: its name, what it shows, and the reason, or what was expected instead, under it. */
public final class RowView extends SteadyBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass OWN = PseudoClass.getPseudoClass("own");

    // All rows share them: each would be a window with a scene of its own, made before the first
    // frame.
    private static final Tooltip RELEASE = new Tooltip("Leaves it to what set and rule say");
    private static final Tooltip NUMBER = new Tooltip("Takes 12.5, 12,5 mm, 1/2\" or 31/64 in");
    private static final String TAKES =
            "Takes 12.5, 12,5 mm, 1/2\", 31/64 in, or readings: 6.5; 6.6; 6.55";
    private static final Tooltip READINGS = new Tooltip(TAKES);

    /** So many characters any field shows. */
    private static final int SEEN_WHOLE = 20;

    /** Width of a box as the style sheet has it, px. */
    private static final double USUAL_BOX = 182;

    /** The widest box that leaves its label a word a line, px. */
    private static final double WIDEST_BOX = 216;

    /** What arrow and borders take of a box, px. */
    private static final double BESIDE_CHOICE = 46;

    private static final Text MEASURE = new Text();

    static {
        MEASURE.setFont(Font.font(12));
    }

    private final Row row;
    private final HBox line;

    /** The line below, which most rows never need; so do its parts, as they come. */
    private final HBox under = new HBox(6);

    private final Label note = new Label();
    private Optional<Hyperlink> release = Optional.empty();
    private Runnable stop = () -> {};

    /**
     * A view that follows its row.
     *
     * @param row the row
     */
    public RowView(Row row) {
        this(row, row.label());
    }

    /**
     * A view that stands under a title which says part of its row's label.
     *
     * @param row the row
     * @param words what is left of its label; the whole is its accessible name
     */
    RowView(Row row, String words) {
        this.row = row;
        getStyleClass().add("field-row");
        Label label = new Label(words);
        label.getStyleClass().add("field-label");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        if (words.indexOf(' ') < 0) {
            // One word is never broken, however much its figure has to say.
            label.setMinWidth(Region.USE_PREF_SIZE);
        }
        label.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(label, Priority.ALWAYS);
        Node shown = shown();
        label.setLabelFor(shown);
        line = new HBox(8, label, shown);
        line.setAlignment(Pos.CENTER_LEFT);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        HBox.setHgrow(note, Priority.ALWAYS);
        under.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(line);
        follow();
    }

    private Hyperlink release() {
        Hyperlink link = new Hyperlink("by the rule");
        link.getStyleClass().add("whose");
        link.setMinWidth(Region.USE_PREF_SIZE);
        link.setTooltip(RELEASE);
        link.setAccessibleText(row.label() + " by the rule");
        link.setOnAction(
                e -> {
                    row.release();
                    link.setVisited(false);
                });
        return link;
    }

    private Node shown() {
        Control control =
                switch (row.kind()) {
                    case READINGS, NUMBER, PLAIN, NAME -> field();
                    case CHOICE -> box();
                    case TICK -> tick();
                    case FIGURE -> figure();
                };
        control.setAccessibleText(row.label());
        control.setId("row-" + row.label().replaceAll("[^a-z0-9]+", "-"));
        return control;
    }

    /** Shows the state from now on; a row that is gone is let go by {@link #forget}. */
    private void follow() {
        stop = row.state().follow(this::explain);
    }

    void forget() {
        stop.run();
    }

    private void explain(Row.State state) {
        boolean wrong = state.wrong().isPresent();
        note.setText(Shown.unbroken(state.wrong().orElse(state.because())));
        note.pseudoClassStateChanged(WRONG, wrong);
        layUnder();
        Node shown = line.getChildren().get(1);
        shown.pseudoClassStateChanged(WRONG, wrong);
        shown.pseudoClassStateChanged(OWN, state.source() == Row.Source.PIECE);
        shown.setAccessibleHelp(state.wrong().orElse(state.because()));
        if (shown instanceof TextField field) {
            // What was typed wrongly is left to be mended while the hand is still there.
            if (!(wrong && field.isFocused()) && !field.getText().equals(state.text())) {
                field.setText(state.text());
            }
        } else if (shown instanceof CheckBox tick) {
            tick.setSelected(state.text().equals("yes"));
        } else if (shown instanceof Label figure) {
            figure.setText(Shown.unbroken(state.text()));
        } else {
            choose((ComboBox<?>) shown, state.text());
        }
    }

    /** A part that says nothing is not in the window: every frame walks through what is. */
    private void layUnder() {
        if (row.canRelease() && release.isEmpty()) {
            release = Optional.of(release());
        }
        List<Node> parts = new ArrayList<>();
        release.filter(link -> row.canRelease()).ifPresent(parts::add);
        if (!note.getText().isEmpty()) {
            parts.add(note);
        }
        if (!under.getChildren().equals(parts)) {
            under.getChildren().setAll(parts);
        }
        if (parts.isEmpty()) {
            getChildren().remove(under);
        } else if (!getChildren().contains(under)) {
            getChildren().add(under);
        }
    }

    private TextField field() {
        TextField field = new Field();
        field.setMinWidth(Region.USE_PREF_SIZE);
        switch (row.kind()) {
            case READINGS -> field.setTooltip(READINGS);
            case NUMBER -> field.setTooltip(NUMBER);
            case NAME -> field.getStyleClass().add("name");
            default -> {}
        }
        field.setOnMouseEntered(e -> tellWhole(field));
        field.textProperty().addListener(o -> tellWhole(field));
        field.setOnAction(e -> row.enter(field.getText()));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (was && !field.getText().equals(row.state().value().text())) {
                                row.enter(field.getText());
                                // The last good value stands once the hand is elsewhere.
                                field.setText(row.state().value().text());
                            }
                        });
        field.setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        field.setText(row.state().value().text());
                        row.enter(field.getText());
                        e.consume();
                    }
                });
        return field;
    }

    /** Many readings are longer than their field. */
    private void tellWhole(TextField field) {
        if (row.kind() == Row.Kind.READINGS && field.isHover()) {
            READINGS.setText(
                    field.getLength() > SEEN_WHOLE ? field.getText() + "\n" + TAKES : TAKES);
        }
    }

    private ComboBox<String> box() {
        ComboBox<String> box = new ComboBox<>();
        box.setSkin(new ChoiceSkin(box));
        box.setMinWidth(Region.USE_PREF_SIZE);
        box.setVisibleRowCount(14);
        box.setOnShowing(e -> fill(box, row.options()));
        // While the list is open, arrows pass over choices that are not meant.
        box.setOnAction(e -> enter(box));
        box.setOnHidden(e -> enter(box));
        return box;
    }

    private void enter(ComboBox<String> box) {
        String value = box.getValue();
        if (!box.isShowing() && value != null && !value.equals(row.state().value().text())) {
            row.enter(value);
            // What was chosen may have made a choice of another name, which is shown from now on.
            fill(box, row.options());
            box.setValue(row.state().value().text());
        }
    }

    private static void fill(ComboBox<String> box, List<String> options) {
        if (!box.getItems().equals(options)) {
            String value = box.getValue();
            box.getItems().setAll(options);
            box.setValue(value);
        }
    }

    @SuppressWarnings("unchecked")
    private static void choose(ComboBox<?> box, String text) {
        ((ComboBox<String>) box).setValue(text);
        // A long choice takes room from its label, which wraps; a still longer one is told whole.
        MEASURE.setText(text);
        double wanted = MEASURE.getLayoutBounds().getWidth() + BESIDE_CHOICE;
        box.setMinWidth(wanted > USUAL_BOX ? Math.min(wanted, WIDEST_BOX) : Region.USE_PREF_SIZE);
        box.setTooltip(wanted > WIDEST_BOX ? new Tooltip(text) : null);
    }

    private CheckBox tick() {
        CheckBox tick = new CheckBox();
        tick.setOnAction(e -> row.enter(tick.isSelected() ? "yes" : "no"));
        return tick;
    }

    private static Label figure() {
        Label figure = new Label();
        figure.getStyleClass().add("figure");
        figure.setWrapText(true);
        figure.setMinHeight(Region.USE_PREF_SIZE);
        return figure;
    }
}
