package haftline.ui.inspector;

import haftline.edit.Choice;
import haftline.edit.ChoiceEdits;
import haftline.edit.Command;
import haftline.edit.Scope;
import haftline.figures.Figures;
import haftline.handle.Bore;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Reason;
import haftline.measure.Length;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.parts.Kit;
import haftline.set.Piece;
import haftline.stock.CatalogueException;
import haftline.stock.Stock;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.words.Shown;
import haftline.ui.words.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The piece on the board in figures: parts, stock and fit, length and balance, shape, bores. */
public final class InspectorPane extends ScrollPane {
    private static final String BY_RULE = "by the rule";

    private final EditorModel editor;
    private final BoardModel board;
    private final VBox folds = new VBox();
    private final List<Refreshed> rows = new ArrayList<>();
    private String built = "";

    /**
     * The inspector of the piece at hand.
     *
     * @param editor what all views share
     * @param board what is done to nodes
     */
    public InspectorPane(EditorModel editor, BoardModel board) {
        this.editor = editor;
        this.board = board;
        getStyleClass().add("inspector");
        folds.getStyleClass().add("folds");
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        editor.worked().watch(worked -> follow());
        editor.units().watch(units -> follow());
        follow();
    }

    private void follow() {
        // Rows are made anew only for other rows; a field being typed in keeps the keyboard.
        Brief brief = brief();
        String form =
                brief.name()
                        + brief.kit().tang().kind()
                        + brief.kit().cap().isPresent()
                        + brief.shape().nodes().stream().map(n -> n.name() + n.join()).toList()
                        + System.identityHashCode(editor.document());
        if (form.equals(built)) {
            rows.forEach(Refreshed::refresh);
        } else {
            built = form;
            build();
        }
    }

    private void build() {
        rows.clear();
        folds.getChildren().clear();
        add(parts());
        add(stockAndFit());
        add(length());
        add(new Fold("Shape").with(new NodeTable(editor, board)));
        add(bores());
    }

    private void add(Fold fold) {
        rows.add(fold);
        folds.getChildren().add(fold);
    }

    private Fold parts() {
        Fold fold = new Fold("Parts, as measured");
        for (KitFields.Size size : KitFields.of(brief().kit())) {
            fold.with(
                    new FieldRow(
                            size.name(),
                            () ->
                                    Typed.readings(
                                            size.read().of(brief().kit()), editor.units().value()),
                            () -> doubt(size.read().of(brief().kit())),
                            text -> measure(size, text)));
        }
        return fold;
    }

    private String doubt(Measured size) {
        if (size.count() < 2) {
            return "";
        }
        return "mean " + shown().length(size.mean(), 2) + " ± " + shown().length(size.doubt(), 2);
    }

    private Optional<String> measure(KitFields.Size size, String text) {
        Kit kit = brief().kit();
        Optional<Measured> readings =
                Typed.readings(text, editor.units().value(), size.read().of(kit).resolution());
        if (readings.isEmpty()) {
            return Optional.of("Expected a length or readings: 6.5; 6.6; 6.55 mm");
        }
        return editor.run(
                        new Command(
                                "measure " + size.name(),
                                draft ->
                                        draft.withSet(
                                                KitFields.inSet(
                                                        draft.set(),
                                                        size.write().with(kit, readings.get())))))
                .refusal();
    }

    private Fold stockAndFit() {
        List<Stock> stocks = stocks();
        List<String> names = stocks.stream().map(Stock::name).toList();
        Fold fold = new Fold("Stock and fit");
        fold.with(
                new ChoiceRow(
                        "stock",
                        names,
                        () -> brief().stock().name(),
                        () -> piece().stock().isPresent() ? "this piece alone" : "",
                        name -> editor.run(edits().stock(stocks.get(names.indexOf(name))))));
        fold.with(
                new ChoiceRow(
                        "fit",
                        List.of(BY_RULE, "pressed", "bonded"),
                        () -> choices().fit().map(InspectorPane::word).orElse(BY_RULE),
                        () -> handle().map(this::fitReason).orElse(""),
                        this::fit));
        fold.with(
                length(
                        "tenon diameter",
                        Choice.TENON_DIAMETER,
                        h -> h.tenon().diameterMm(),
                        2,
                        "tenon diameter",
                        ChoicesBuilder::tenonDiameterMm));
        fold.with(
                length(
                        "tenon length",
                        Choice.TENON_LENGTH,
                        h -> h.tenon().lengthMm(),
                        1,
                        "tenon length",
                        ChoicesBuilder::tenonLengthMm));
        return fold;
    }

    private static String word(Fit fit) {
        return fit.name().toLowerCase(Locale.ROOT);
    }

    private String fitReason(Handle handle) {
        return word(handle.fit().fit()) + ": " + handle.fit().because();
    }

    private void fit(String word) {
        editor.run(
                word.equals(BY_RULE)
                        ? edits().byRule(Choice.FIT)
                        : edits().choose(
                                        Choice.FIT,
                                        b -> b.fit(Fit.valueOf(word.toUpperCase(Locale.ROOT)))));
    }

    private ChoiceEdits edits() {
        return new ChoiceEdits(editor.piece().value(), Scope.THIS_PIECE);
    }

    private Piece piece() {
        return editor.draft().value().piece(editor.piece().value());
    }

    private List<Stock> stocks() {
        List<Stock> stocks = new ArrayList<>();
        try {
            stocks.addAll(editor.document().loaded().catalogues().woods().entries());
            stocks.addAll(editor.document().loaded().catalogues().plastics().entries());
        } catch (CatalogueException spoilt) {
            // The maker's own catalogue changed since the set was read; what it said is kept.
            return List.of(brief().stock());
        }
        return stocks;
    }

    private Fold length() {
        Fold fold = new Fold("Length and balance");
        fold.with(
                new FieldRow(
                        "length to blade",
                        () -> NumberText.fixed(ratio(), 2) + " × blade",
                        () -> because("length"),
                        text -> {
                            OptionalDouble ratio = Typed.number(text);
                            return ratio.isEmpty()
                                    ? Optional.of("Expected a number, such as 1.25")
                                    : choose(
                                            Choice.LENGTH_RATIO,
                                            b -> b.lengthRatio(ratio.getAsDouble()));
                        }));
        fold.with(
                new FigureRow(
                        "overall",
                        () -> figure(h -> shown().length(h.lengths().overallMm())),
                        () -> ""));
        fold.with(
                new FigureRow(
                        "visible wood",
                        () -> figure(h -> shown().length(h.lengths().visibleWoodMm())),
                        () -> ""));
        fold.with(
                new FigureRow(
                        "mass, blade and all",
                        () -> figures(f -> shown().mass(f.balance().totalG())),
                        () -> ""));
        fold.with(
                new FigureRow(
                        "balance",
                        () -> figures(f -> shown().length(f.balance().fromFerruleFaceMm())),
                        this::balanceReason));
        return fold;
    }

    private String balanceReason() {
        var band = brief().rules().balance();
        return "behind the ferrule's face; wanted within "
                + shown().length(band.lowMm())
                + " to "
                + shown().length(band.highMm());
    }

    private double ratio() {
        return choices().lengthRatio().orElse(brief().rules().lengths().ratio());
    }

    private Fold bores() {
        Fold fold = new Fold("Bores");
        fold.with(
                length(
                        "tang drill",
                        Choice.TANG_DRILL,
                        h -> h.tangBore().deepest().drillMm(),
                        2,
                        "",
                        ChoicesBuilder::tangDrillMm));
        fold.with(
                new FigureRow(
                        "hole, ferrule end",
                        () -> figure(h -> hole(h.tangBore())),
                        () ->
                                figure(
                                        h ->
                                                "misses the wish of "
                                                        + shown().length(h.fit().wishMm(), 2)
                                                        + " by "
                                                        + shown().length(
                                                                        h.fit()
                                                                                .missMm(
                                                                                        h
                                                                                                .tangBore()),
                                                                        2))));
        fold.with(
                length(
                        "depth, full width",
                        Choice.TANG_DEPTH,
                        h -> h.tangBore().deepest().depthMm(),
                        1,
                        "",
                        ChoicesBuilder::tangDepthMm));
        if (brief().kit().cap().isPresent()) {
            fold.with(
                    length(
                            "cap drill",
                            Choice.CAP_DRILL,
                            h -> h.capBore().map(b -> b.deepest().drillMm()).orElse(0.0),
                            2,
                            "cap drill",
                            ChoicesBuilder::capDrillMm));
            fold.with(
                    length(
                            "cap bore depth",
                            Choice.CAP_DEPTH,
                            h -> h.capBore().map(b -> b.deepest().depthMm()).orElse(0.0),
                            1,
                            "",
                            ChoicesBuilder::capDepthMm));
        }
        return fold;
    }

    private String hole(Bore bore) {
        return "⌀ " + shown().length(bore.deepest().diameterMm(), 2);
    }

    private FieldRow length(
            String name,
            Choice choice,
            Function<Handle, Double> value,
            int decimals,
            String reason,
            BiConsumer<ChoicesBuilder, Double> set) {
        return new FieldRow(
                name,
                () -> figure(h -> shown().length(value.apply(h), decimals)),
                () -> reason.isEmpty() ? "" : because(reason),
                text -> {
                    OptionalDouble mm = Length.parse(text, editor.units().value());
                    return mm.isEmpty()
                            ? Optional.of("Expected a length, such as 12.5 mm or 31/64 in")
                            : choose(choice, b -> set.accept(b, mm.getAsDouble()));
                });
    }

    private Optional<String> choose(Choice choice, Consumer<ChoicesBuilder> set) {
        return editor.run(
                        edits().choose(
                                        choice,
                                        own -> {
                                            set.accept(own);
                                            return own;
                                        }))
                .refusal();
    }

    private String because(String subject) {
        return handle().flatMap(
                        h ->
                                h.reasons().stream()
                                        .filter(r -> r.subject().equals(subject))
                                        .map(Reason::because)
                                        .findFirst())
                .orElse("");
    }

    private Shown shown() {
        return new Shown(editor.units().value());
    }

    private Brief brief() {
        return editor.worked().value().brief();
    }

    private Choices choices() {
        return brief().choices();
    }

    private Optional<Handle> handle() {
        return editor.worked().value().figures().map(Figures::handle);
    }

    private String figure(Function<Handle, String> read) {
        return handle().map(read).orElse("not drawn");
    }

    private String figures(Function<Figures, String> read) {
        Supplier<String> none = () -> "not drawn";
        return editor.worked().value().figures().map(read).orElseGet(none);
    }
}
