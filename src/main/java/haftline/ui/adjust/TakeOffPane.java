package haftline.ui.adjust;

import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.measure.Units;
import haftline.ui.model.EditorModel;
import haftline.ui.model.TakeOffModel;
import haftline.ui.model.TakeOffModel.Stage;
import haftline.ui.model.TakeOffModel.State;
import haftline.ui.model.TakeOffWords;
import haftline.ui.sheet.DrawingPainter;
import haftline.ui.words.Shown;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;

/** The page on which a shape is taken off readings of a handle that is there. */
public final class TakeOffPane extends VBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final double FORM_WIDTH = 330;

    /** Air round the drawing, px. */
    private static final double AIR = 18;

    /** Strays beyond these are counted, not listed. */
    private static final int MOST_STRAYS = 6;

    private final EditorModel editor;
    private final TakeOffModel model;
    private final Runnable close;
    private final Label name = Words.wrapped("");
    private final VBox ofTable = new VBox(5);
    private final VBox ofTrace = new VBox(5);
    private final VBox says = new VBox(4);
    private final Canvas canvas = new Canvas();
    private final Pane sheet = new Pane(canvas);
    private final Button accept = new Button();
    private final Button save = new Button("Save as a shape document…");
    private final Button other = new Button("Other readings…");
    private final ProgressBar bar = new ProgressBar();
    private Optional<Drawing> drawing = Optional.empty();

    /**
     * The page.
     *
     * @param editor what all views share
     * @param model what is taken off
     * @param choose asks for readings
     * @param target asks where to save a shape of a name
     * @param close goes back to the board
     */
    public TakeOffPane(
            EditorModel editor,
            TakeOffModel model,
            Supplier<Optional<Path>> choose,
            Function<String, Optional<Path>> target,
            Runnable close) {
        this.editor = editor;
        this.model = model;
        this.close = close;
        getStyleClass().addAll("export", "take-off");
        setId("take-off");
        Label title = new Label("Take off a handle");
        title.getStyleClass().add("set-name");
        VBox form = form();
        sheet.getStyleClass().add("take-off-sheet");
        sheet.setMinSize(0, 0);
        sheet.widthProperty().addListener(o -> paint());
        sheet.heightProperty().addListener(o -> paint());
        HBox.setHgrow(sheet, Priority.ALWAYS);
        HBox page = new HBox(18, form, sheet);
        VBox.setVgrow(page, Priority.ALWAYS);
        other.setId("take-off-other");
        other.setOnAction(e -> choose.get().ifPresent(model::open));
        accept.setId("take-off-accept");
        accept.getStyleClass().add("first");
        accept.setOnAction(
                e -> {
                    if (model.accept().isDone()) {
                        close.run();
                    }
                });
        save.setId("take-off-save");
        save.setOnAction(e -> target.apply(plainName()).ifPresent(model::save));
        Button back = new Button("Back to the board");
        back.setId("take-off-back");
        back.getStyleClass().add("quiet");
        back.setOnAction(e -> close.run());
        bar.setAccessibleText("The readings are being read and fitted");
        bar.setPrefWidth(110);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox buttons = new HBox(10, bar, gap, back, save, accept);
        buttons.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(title, page, buttons);
        model.state().follow(this::show);
        model.source().watch(source -> name());
        editor.piece().follow(piece -> accept.setText("Make it the shape of " + piece));
        editor.units().watch(units -> show(model.state().value()));
        setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        close.run();
                        e.consume();
                    }
                });
    }

    /** Gives the keyboard to the page. */
    public void focusFirst() {
        other.requestFocus();
    }

    private String plainName() {
        return model.state().value().taken().map(t -> t.shape().name()).orElse("shape") + ".yaml";
    }

    private VBox form() {
        ToggleGroup units = new ToggleGroup();
        HBox which = new HBox(12);
        for (Units unit : Units.values()) {
            RadioButton button = new RadioButton(unit == Units.MM ? "mm" : "inches");
            button.setId("take-off-" + unit.symbol());
            button.setToggleGroup(units);
            button.setSelected(model.settings().value().units() == unit);
            button.setOnAction(e -> model.units(unit));
            which.getChildren().add(button);
        }
        ofTable.getChildren()
                .addAll(Words.small("Unit of the table, where its heading names none"), which);
        ofTrace.getChildren()
                .addAll(
                        Words.small("Traced outline: scale and axis, where the file does not say"),
                        line("mm a unit", field("take-off-scale", "mm a unit", "", model::scale)),
                        line("axis at", field("take-off-axis", "axis at", "", model::axis)));
        TextField tolerance =
                field(
                        "take-off-tolerance",
                        "Tolerance on the diameter",
                        toleranceText(),
                        model::tolerance);
        model.settings()
                .watch(
                        settings -> {
                            if (!tolerance.isFocused()) {
                                tolerance.setText(toleranceText());
                            }
                        });
        CheckBox ends = new CheckBox("The piece's ferrule and cap tell its ends");
        ends.setId("take-off-ends");
        ends.setOnAction(e -> model.endsOfPiece(ends.isSelected()));
        VBox form =
                new VBox(
                        7,
                        Words.small("Readings"),
                        name,
                        other,
                        ofTable,
                        ofTrace,
                        Words.small("How far the line may run beside the true one"),
                        line("on the diameter", tolerance),
                        ends,
                        says);
        form.setMinWidth(FORM_WIDTH);
        form.setMaxWidth(FORM_WIDTH);
        return form;
    }

    private String toleranceText() {
        return new Shown(editor.units().value()).length(model.settings().value().toleranceMm(), 2);
    }

    private static HBox line(String text, Node field) {
        Label label = new Label(text);
        label.setMinWidth(100);
        HBox line = new HBox(8, label, field);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** A field that is read with Enter or when the keyboard leaves it. */
    private static TextField field(
            String id, String name, String text, Function<String, Optional<String>> read) {
        TextField field = new TextField(text);
        field.setId(id);
        field.setAccessibleText(name);
        field.setPrefWidth(96);
        Consumer<String> enter =
                typed -> {
                    Optional<String> wrong = read.apply(typed);
                    field.pseudoClassStateChanged(WRONG, wrong.isPresent());
                    field.setAccessibleHelp(wrong.orElse(""));
                };
        field.setOnAction(e -> enter.accept(field.getText()));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (was) {
                                enter.accept(field.getText());
                            }
                        });
        return field;
    }

    private static String name(TakeOffModel.Source source) {
        return source.file().isPresent() ? source.name() : "traced over " + source.name();
    }

    private void name() {
        name.setText(model.source().value().map(TakeOffPane::name).orElse("none yet"));
        show(ofTable, model.isTable());
        show(ofTrace, model.isTraced());
    }

    private static void show(Node node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }

    private void show(State state) {
        name();
        drawing = state.drawing();
        show(bar, state.stage() == Stage.WORKING);
        accept.setDisable(state.stage() != Stage.READY);
        save.setDisable(state.stage() != Stage.READY);
        TakeOffWords words = new TakeOffWords(editor.units().value());
        says.getChildren().clear();
        if (state.stage() == Stage.EMPTY) {
            says.getChildren()
                    .add(
                            Words.small(
                                    "A table with x and diameter a line (CSV), or an outline traced"
                                            + " in an SVG or DXF file, butt to the right. To trace"
                                            + " over a photograph, lay one under the board (Work"
                                            + " out, Photograph)."));
        }
        state.taken()
                .ifPresent(
                        taken -> {
                            says.getChildren().add(Words.wrapped(words.found(taken)));
                            var strays = words.strays(taken);
                            strays.stream()
                                    .limit(MOST_STRAYS)
                                    .forEach(s -> says.getChildren().add(Words.wrapped(s)));
                            if (strays.size() > MOST_STRAYS) {
                                says.getChildren()
                                        .add(
                                                Words.wrapped(
                                                        "And "
                                                                + (strays.size() - MOST_STRAYS)
                                                                + " more."));
                            }
                            says.getChildren()
                                    .add(
                                            Words.small(
                                                    "As a piece's shape its ends follow ferrule and"
                                                            + " cap, and its length stays the piece's"
                                                            + " own."));
                        });
        if (!state.text().isEmpty()) {
            says.getChildren().add(Words.wrapped(state.text()));
        }
        paint();
    }

    private void paint() {
        double width = Math.floor(sheet.getWidth());
        double height = Math.floor(sheet.getHeight());
        canvas.setWidth(Math.max(1, width));
        canvas.setHeight(Math.max(1, height));
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, width, height);
        canvas.setAccessibleText(
                drawing.isPresent()
                        ? "Readings, the line taken off them, and what is left between the two"
                        : "No drawing yet");
        if (drawing.isEmpty() || width < 4 * AIR || height < 4 * AIR) {
            return;
        }
        gc.setFill(Color.WHITE);
        gc.fillRect(0, 0, width, height);
        Bounds bounds = drawing.get().bounds();
        double scale =
                Math.min(
                        (width - 2 * AIR) / bounds.widthMm(),
                        (height - 2 * AIR) / bounds.heightMm());
        double left = (width - bounds.widthMm() * scale) / 2 - bounds.minXMm() * scale;
        double top = (height - bounds.heightMm() * scale) / 2 + bounds.maxYMm() * scale;
        new DrawingPainter(gc, scale, left, top).paint(drawing.get());
    }
}
