package haftline.ui.adjust;

import haftline.adjust.solve.Freedom;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Proposal;
import haftline.measure.Length;
import haftline.ui.model.Asked;
import haftline.ui.model.EditorModel;
import haftline.ui.model.ProposalModel;
import haftline.ui.model.ProposalModel.Stage;
import haftline.ui.model.ProposalModel.State;
import haftline.ui.model.ProposalWords;
import haftline.ui.theme.Mark;
import haftline.ui.words.Shown;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Asks what is to be met and what may move, and shows what is proposed. */
public final class AdjustPane extends BorderPane {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private static final Map<Need.Group, String> DEMANDS = new EnumMap<>(Need.Group.class);
    private static final Map<Freedom, String> FREEDOMS = new EnumMap<>(Freedom.class);

    static {
        DEMANDS.put(Need.Group.WALLS, "Walls hold at the worst wander");
        DEMANDS.put(Need.Group.BALANCE, "It balances within");
        DEMANDS.put(Need.Group.GRIP, "It is as thick as the hand wants,");
        DEMANDS.put(Need.Group.COVES, "The cutter reaches every hollow");
        DEMANDS.put(Need.Group.SWELL, "Pieces share one swell");
        DEMANDS.put(Need.Group.CHARACTER, "What rises goes on rising, what falls falls");
        FREEDOMS.put(Freedom.LENGTH, "Length of the handle");
        FREEDOMS.put(Freedom.SWELL, "The swell that pieces share");
        FREEDOMS.put(Freedom.DEPTH, "Depth of the bores");
    }

    private final EditorModel editor;
    private final ProposalModel model;
    private final Runnable close;
    private final Label verdict = Words.heading("");
    private final Label note = Words.small("");
    private final VBox form = new VBox(5);
    private final VBox found = new VBox(5);
    private final ScrollPane scroll = new ScrollPane(form);
    private final TextField fairBand = new TextField();
    private final Button work = new Button("Work it out");
    private final Button fair = new Button("Fair the line");
    private final Button accept = new Button("Accept");
    private final Button discard = new Button("Discard");
    private final ProgressBar bar = new ProgressBar();
    private final HBox buttons = new HBox(8);
    private Button asker = work;

    /**
     * The panel.
     *
     * @param editor what all views share
     * @param model what is asked and proposed
     * @param close puts the panel away
     */
    public AdjustPane(EditorModel editor, ProposalModel model, Runnable close) {
        this.editor = editor;
        this.model = model;
        this.close = close;
        getStyleClass().addAll("inspector", "adjust");
        setId("adjust");
        Label title = new Label("Adjust and fair");
        title.getStyleClass().add("guide-title");
        Button away = new Button("Close");
        away.setId("adjust-close");
        away.getStyleClass().add("quiet");
        away.setAccessibleText("Close adjusting; nothing is changed");
        away.setOnAction(e -> leave());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, away);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("adjust-bar");
        setTop(head);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("inspector-scroll");
        setCenter(scroll);
        buttons();
        ask();
        found.getStyleClass().add("folds");
        model.state().follow(this::show);
        editor.units().watch(units -> show(model.state().value()));
        setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        if (model.state().value().stage() == Stage.ASKING) {
                            leave();
                        } else {
                            model.discard();
                        }
                        e.consume();
                    }
                });
    }

    /** Gives the keyboard to what is to be pressed next. */
    public void focusFirst() {
        (model.state().value().stage() == Stage.PROPOSED ? accept : work).requestFocus();
    }

    private void leave() {
        model.discard();
        close.run();
    }

    private void buttons() {
        work.setId("adjust-work");
        work.getStyleClass().add("first");
        work.setOnAction(
                e -> {
                    asker = work;
                    model.adjust();
                });
        fair.setId("fair-work");
        fair.setOnAction(
                e -> {
                    asker = fair;
                    model.fair();
                });
        accept.setId("adjust-accept");
        accept.getStyleClass().add("first");
        accept.setAccessibleText("Accept what is proposed, as one step");
        accept.setOnAction(e -> model.accept());
        discard.setId("adjust-discard");
        discard.setAccessibleText("Discard what is proposed; all stays as it is");
        discard.setOnAction(e -> model.discard());
        bar.setAccessibleText("Being worked out");
        bar.setPrefWidth(90);
        buttons.setAlignment(Pos.CENTER_LEFT);
        note.setId("adjust-note");
        verdict.setId("adjust-verdict");
        VBox foot = new VBox(6, note, buttons);
        foot.getStyleClass().add("adjust-foot");
        setBottom(foot);
    }

    private void ask() {
        form.getStyleClass().add("folds");
        form.getChildren()
                .add(
                        Words.small(
                                "Finds the least change that meets what you ask for and shows it"
                                        + " dashed on the board. Nothing changes before you accept."));
        form.getChildren().add(Words.heading("What may change"));
        ToggleGroup group = new ToggleGroup();
        for (Asked.Whom whom : Asked.Whom.values()) {
            RadioButton button = new RadioButton(whom.words());
            button.setId("whom-" + whom.name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.setSelected(model.asked().value().whom() == whom);
            button.setOnAction(e -> model.asked().set(model.asked().value().withWhom(whom)));
            form.getChildren().add(button);
        }
        form.getChildren().add(Words.heading("What is to be met"));
        for (Need.Group demand : Need.Group.values()) {
            CheckBox box = new CheckBox(DEMANDS.get(demand));
            box.setId("demand-" + demand.word());
            box.setSelected(model.asked().value().demands().contains(demand));
            box.setOnAction(
                    e -> model.asked().set(model.asked().value().with(demand, box.isSelected())));
            if (demand == Need.Group.SWELL) {
                ofFamily(box);
            }
            form.getChildren().add(box);
            if (demand == Need.Group.BALANCE) {
                form.getChildren()
                        .add(
                                indented(
                                        new BandField(
                                                "demand-balance-band",
                                                "band of the balance point, behind the ferrule's"
                                                        + " face",
                                                () -> editor.units().value(),
                                                b ->
                                                        model.asked()
                                                                .set(
                                                                        model.asked()
                                                                                .value()
                                                                                .withBalance(b)))));
            } else if (demand == Need.Group.GRIP) {
                form.getChildren()
                        .add(
                                indented(
                                        new BandField(
                                                "demand-grip-band",
                                                "band of the greatest diameter",
                                                () -> editor.units().value(),
                                                b ->
                                                        model.asked()
                                                                .set(
                                                                        model.asked()
                                                                                .value()
                                                                                .withGrip(b)))));
            }
        }
        form.getChildren().add(Words.heading("What may move beside the nodes"));
        for (Freedom freedom : Freedom.values()) {
            CheckBox box = new CheckBox(FREEDOMS.get(freedom));
            box.setId("free-" + freedom.word());
            box.setOnAction(
                    e -> model.asked().set(model.asked().value().with(freedom, box.isSelected())));
            if (freedom == Freedom.SWELL) {
                ofFamily(box);
            }
            form.getChildren().add(box);
        }
        form.getChildren().add(Words.heading("Fairing"));
        form.getChildren().add(fairing());
    }

    private static HBox indented(Region field) {
        HBox line = new HBox(field);
        line.getStyleClass().add("indented");
        return line;
    }

    /** What pieces share moves only where they move together. */
    private void ofFamily(CheckBox box) {
        model.asked().follow(asked -> box.setDisable(!asked.isOfFamily()));
    }

    private Node fairing() {
        fairBand.setId("fair-band");
        fairBand.setPrefWidth(84);
        fairBand.setAccessibleText("how far fairing may move a diameter either way");
        Runnable fill =
                () ->
                        fairBand.setText(
                                new Shown(editor.units().value())
                                        .length(model.asked().value().fairMm(), 2));
        fill.run();
        editor.units().watch(units -> fill.run());
        fairBand.textProperty()
                .addListener(
                        (o, was, is) -> {
                            OptionalDouble mm = Length.parse(is, editor.units().value());
                            boolean isGood =
                                    mm.isPresent()
                                            && mm.getAsDouble() >= 0.01
                                            && mm.getAsDouble() <= 5;
                            fairBand.pseudoClassStateChanged(WRONG, !isGood);
                            fair.setDisable(!isGood);
                            if (isGood) {
                                model.asked()
                                        .set(model.asked().value().withFairMm(mm.getAsDouble()));
                            }
                        });
        Label within = new Label("Within");
        Label either = new Label("either way");
        // The words are worth more room than the number.
        within.setMinWidth(Region.USE_PREF_SIZE);
        either.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(8, within, fairBand, either);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private void show(State state) {
        boolean had = isFocusWithin();
        note.setText(Shown.unbroken(state.note()));
        note.setVisible(!state.note().isEmpty());
        note.setManaged(!state.note().isEmpty());
        switch (state.stage()) {
            case ASKING -> {
                scroll.setContent(form);
                buttons.getChildren().setAll(work, fair);
                keepFocus(had, asker);
            }
            case WORKING -> {
                buttons.getChildren().setAll(discard, bar);
                keepFocus(had, discard);
            }
            case PROPOSED -> {
                fill(state.proposal().orElseThrow());
                scroll.setContent(found);
                scroll.setVvalue(0);
                keepFocus(had, accept.isDisabled() ? discard : accept);
            }
        }
    }

    private static void keepFocus(boolean had, Button next) {
        if (had) {
            next.requestFocus();
        }
    }

    private void fill(Proposal proposal) {
        ProposalWords words = new ProposalWords(editor.units().value());
        verdict.setText(Shown.unbroken(words.verdict(proposal)));
        found.getChildren().setAll(verdict);
        for (ProposalWords.Part part : words.parts(proposal)) {
            found.getChildren().add(Words.heading(part.title()));
            for (ProposalWords.Line line : part.lines()) {
                found.getChildren().add(line(line));
            }
        }
        accept.setDisable(proposal.moves().isEmpty());
        discard.setText(proposal.moves().isEmpty() ? "Back" : "Discard");
        buttons.getChildren().setAll(accept, discard);
    }

    private static Node line(ProposalWords.Line line) {
        VBox words = new VBox(Words.wrapped(line.text()));
        if (!line.aside().isEmpty()) {
            words.getChildren().add(Words.small(line.aside()));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox box = new HBox(8);
        if (line.isMarked()) {
            Mark mark = new Mark();
            mark.show(line.gravity());
            VBox held = new VBox(mark);
            held.getStyleClass().add("mark-hold");
            held.setMinWidth(Region.USE_PREF_SIZE);
            box.getChildren().add(held);
        }
        box.getChildren().add(words);
        return box;
    }
}
