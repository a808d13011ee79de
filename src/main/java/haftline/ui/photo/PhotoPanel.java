package haftline.ui.photo;

import haftline.ui.model.EditorModel;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.PhotoState;
import haftline.ui.model.PhotoWords;
import haftline.ui.words.Shown;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The column beside the board while a photograph is set up and traced over. */
public final class PhotoPanel extends BorderPane {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private static final Map<Tool, String> TOOLS = new EnumMap<>(Tool.class);

    static {
        TOOLS.put(Tool.POINTS, "Sets the two points and the axis");
        TOOLS.put(Tool.TRACE, "Traces the outline");
        TOOLS.put(Tool.BOARD, "Shapes the piece on the board");
    }

    /** What the panel cannot do itself. */
    public interface Doings {
        /** Asks for a photograph. */
        void choose();

        /** Hands the readings to the take-off. */
        void takeOff();

        /** Asks where to save the readings and saves them. */
        void save();

        /** Puts the panel away; the photograph stays. */
        void close();
    }

    private final EditorModel editor;
    private final PhotoModel model;
    private final Doings doings;
    private final Label picture = wrapped("", "");
    private final Label placing = wrapped("", "");
    private final Label traced = wrapped("", "");
    private final Label aim = wrapped("", "small");
    private final Label note = wrapped("", "");
    private final TextField apart = new TextField();
    private final TextField front = new TextField();
    private final Label apartWrong = wrapped("", "small");
    private final Label frontWrong = wrapped("", "small");
    private final CheckBox onAxis = new CheckBox("Both lie on the lathe axis");
    private final Slider strength = new Slider(0.1, 1, PhotoModel.USUAL_SHARE);
    private final Button choose = new Button("Choose a photograph…");
    private final Button remove = new Button("Remove it");
    private final Button takeOff = new Button("Take off");
    private final Button save = new Button("Save readings…");
    private final Button back = new Button("Step back");
    private final Button last = new Button("Take a point back");
    private final Button clear = new Button("Trace anew");
    private final ProgressBar bar = new ProgressBar();
    private final Map<Tool, RadioButton> tools = new EnumMap<>(Tool.class);
    private final VBox rest = new VBox(5);

    /**
     * The panel.
     *
     * @param editor what all views share
     * @param model the photograph
     * @param doings what the panel cannot do itself
     */
    public PhotoPanel(EditorModel editor, PhotoModel model, Doings doings) {
        this.editor = editor;
        this.model = model;
        this.doings = doings;
        getStyleClass().addAll("inspector", "adjust");
        setId("photo");
        setTop(head());
        VBox form = new VBox(5);
        form.getStyleClass().add("folds");
        choose.setId("photo-choose");
        choose.setOnAction(e -> doings.choose());
        remove.setId("photo-remove");
        remove.getStyleClass().add("quiet");
        remove.setOnAction(e -> model.remove());
        bar.setAccessibleText("The photograph is being read");
        bar.setPrefWidth(60);
        HBox which = new HBox(8, choose, remove, bar);
        which.setAlignment(Pos.CENTER_LEFT);
        form.getChildren()
                .addAll(
                        wrapped(
                                "Lies under the board to be traced over. It is"
                                        + " no part of the set and is not saved with it.",
                                "small"),
                        which,
                        picture,
                        rest);
        rest();
        ScrollPane scroll = new ScrollPane(form);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("inspector-scroll");
        setCenter(scroll);
        setBottom(foot());
        model.state().follow(state -> show());
        model.isReading().follow(is -> show());
        model.note().follow(text -> say());
        model.hand().tool().follow(tool -> tools.get(tool).setSelected(true));
        model.hand().tool().watch(tool -> show());
        model.hand().aim().follow(at -> aim());
        editor.units()
                .watch(
                        units -> {
                            show();
                            aim();
                        });
        setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        doings.close();
                        e.consume();
                    }
                });
    }

    /** Gives the keyboard to the panel. */
    public void focusFirst() {
        choose.requestFocus();
    }

    /** Gives the keyboard to the field of the distance. */
    public void focusApart() {
        apart.requestFocus();
    }

    private Node head() {
        Label title = new Label("Photograph");
        title.getStyleClass().add("guide-title");
        Button away = new Button("Close");
        away.setId("photo-close");
        away.getStyleClass().add("quiet");
        away.setAccessibleText("Close this column; the photograph stays under the board");
        away.setOnAction(e -> doings.close());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        back.setId("photo-undo");
        back.getStyleClass().add("quiet");
        back.setAccessibleText("One step back in what was done to the photograph");
        back.setOnAction(e -> model.undo());
        HBox head = new HBox(4, title, gap, back, away);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("adjust-bar");
        return head;
    }

    private void rest() {
        strength.setId("photo-strength");
        strength.setAccessibleText("How strong the photograph shows");
        strength.setBlockIncrement(0.1);
        strength.valueProperty().addListener((o, was, is) -> model.share(is.doubleValue()));
        model.share().follow(strength::setValue);
        HBox.setHgrow(strength, Priority.ALWAYS);
        Label faint = wrapped("drawing", "small");
        Label strong = wrapped("photograph", "small");
        HBox line = new HBox(8, faint, strength, strong);
        line.setAlignment(Pos.CENTER_LEFT);
        ToggleGroup group = new ToggleGroup();
        rest.getChildren().addAll(line, heading("What the pointer does over it"));
        for (Map.Entry<Tool, String> each : TOOLS.entrySet()) {
            RadioButton button = new RadioButton(each.getValue());
            button.setId("photo-" + each.getKey().name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.setOnAction(e -> model.hand().use(each.getKey()));
            tools.put(each.getKey(), button);
        }
        rest.getChildren()
                .addAll(tools.get(Tool.POINTS), tools.get(Tool.TRACE), tools.get(Tool.BOARD));
        points();
        last.setId("photo-take-back");
        last.setOnAction(
                e -> {
                    model.hand().use(Tool.TRACE);
                    model.hand().takeBack();
                });
        clear.setId("photo-clear");
        clear.getStyleClass().add("quiet");
        clear.setOnAction(e -> model.clearTrace());
        traced.setId("photo-traced");
        rest.getChildren()
                .addAll(
                        heading("Traced outline"),
                        wrapped(
                                "Click along the edge from shoulder to butt, above the axis, below"
                                        + " it or both; both are better. With Shift a point stands"
                                        + " straight over the one before: the other side of a step.",
                                "small"),
                        traced,
                        aim,
                        new HBox(8, last, clear),
                        wrapped(
                                "A photograph has perspective: hold the camera far off and use its"
                                        + " zoom, its back level with the axis (common practice, no"
                                        + " source). A rule that lies 12 mm deeper than the axis, 1"
                                        + " m from the lens, makes all 1.2 % too thick: points on"
                                        + " the handle itself are surer.",
                                "small"));
    }

    private void points() {
        field(apart, "photo-apart", "distance of the two points", apartWrong, model::apart);
        field(
                front,
                "photo-front",
                "first point on the axis, from the shoulder",
                frontWrong,
                model::front);
        onAxis.setId("photo-on-axis");
        onAxis.setOnAction(e -> model.onAxis(onAxis.isSelected()));
        placing.setId("photo-placing");
        rest.getChildren()
                .addAll(
                        heading("Scale and axis"),
                        wrapped(
                                "Click two points that you have measured, the one nearer to the"
                                        + " shoulder first, such as shoulder and butt.",
                                "small"),
                        line("how far apart they are", apart),
                        apartWrong,
                        onAxis,
                        line("front point on the axis, from the shoulder", front),
                        frontWrong,
                        placing);
    }

    private Node foot() {
        note.setId("photo-note");
        takeOff.setId("photo-take-off");
        takeOff.getStyleClass().add("first");
        takeOff.setAccessibleText("Take a shape off what was traced");
        takeOff.setOnAction(e -> doings.takeOff());
        save.setId("photo-save");
        save.setOnAction(e -> doings.save());
        for (Button button : new Button[] {takeOff, save, back, last, clear, choose, remove}) {
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        VBox foot = new VBox(6, note, new HBox(8, takeOff, save));
        foot.getStyleClass().add("adjust-foot");
        return foot;
    }

    private static Label wrapped(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        if (!style.isEmpty()) {
            label.getStyleClass().add(style);
        }
        return label;
    }

    private static Label heading(String text) {
        return wrapped(text, "part-heading");
    }

    private static Node line(String text, TextField field) {
        Label label = wrapped(text, "field-label");
        label.setLabelFor(field);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox line = new HBox(8, label, field);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** A field that is read with Enter or when the keyboard leaves it. */
    private static void field(
            TextField field,
            String id,
            String name,
            Label wrong,
            Function<String, Optional<String>> read) {
        field.setId(id);
        field.setAccessibleText(name);
        field.getStyleClass().add("photo-field");
        Runnable enter =
                () -> {
                    Optional<String> why =
                            field.getText().isBlank()
                                    ? Optional.empty()
                                    : read.apply(field.getText());
                    field.pseudoClassStateChanged(WRONG, why.isPresent());
                    field.setAccessibleHelp(why.orElse(""));
                    show(wrong, why.orElse(""));
                };
        field.setOnAction(e -> enter.run());
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (was) {
                                enter.run();
                            }
                        });
        show(wrong, "");
    }

    private static void show(Label label, String text) {
        label.setText(Shown.unbroken(text));
        show((Node) label, !text.isEmpty());
    }

    private static void show(Node node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }

    private void show() {
        PhotoState state = model.state().value();
        PhotoWords words = new PhotoWords(editor.units().value());
        show(bar, model.isReading().value());
        show(picture, state.picture().map(words::picture).orElse(""));
        show(rest, state.picture().isPresent());
        show(remove, state.picture().isPresent());
        placing.setText(Shown.unbroken(words.placing(state)));
        traced.setText(Shown.unbroken(words.trace(state)));
        onAxis.setSelected(state.isOnAxis());
        Shown shown = new Shown(editor.units().value());
        fill(
                apart,
                state.apartMm().isPresent() ? length(shown, state.apartMm().getAsDouble()) : "");
        fill(front, length(shown, state.frontMm()));
        boolean isTraced = !state.trace().isEmpty();
        takeOff.setDisable(!isTraced || !state.isPlaced());
        save.setDisable(!isTraced || !state.isPlaced());
        last.setDisable(!isTraced);
        clear.setDisable(!isTraced);
        back.setDisable(!model.canUndo());
        say();
        aim();
    }

    private static String length(Shown shown, double mm) {
        return shown.length(mm, 2);
    }

    /** What is being typed is not overwritten. */
    private static void fill(TextField field, String text) {
        if (!field.isFocused() || !field.getPseudoClassStates().contains(WRONG)) {
            field.setText(text);
        }
    }

    private void say() {
        String text = model.note().value();
        show(note, text.isEmpty() || text.endsWith(".") ? text : text + ".");
    }

    private void aim() {
        boolean isAiming = model.hand().tool().value() != Tool.BOARD;
        show(
                aim,
                isAiming && model.state().value().isPlaced()
                        ? "Aim: "
                                + new PhotoWords(editor.units().value())
                                        .place(model.hand().aim().value())
                                + "."
                        : "");
    }
}
