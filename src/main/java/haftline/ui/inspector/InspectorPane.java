package haftline.ui.inspector;

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
import haftline.stock.Stock;
import haftline.ui.app.Desk;
import haftline.ui.app.NodeWork;
import haftline.ui.words.Shown;
import haftline.ui.words.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The piece on the board in figures: parts, stock and fit, length and balance, shape, bores. */
public final class InspectorPane extends ScrollPane {
    private static final String BY_RULE = "by the rule";

    private final Desk desk;
    private final NodeWork work;
    private final VBox folds = new VBox();
    private final List<Refreshed> rows = new ArrayList<>();
    private String built = "";

    /**
     * The inspector of what is on a desk.
     *
     * @param desk the desk
     * @param work what is done to nodes
     */
    public InspectorPane(Desk desk, NodeWork work) {
        this.desk = desk;
        this.work = work;
        getStyleClass().add("inspector");
        folds.getStyleClass().add("folds");
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        desk.listen(this::changed);
        changed(Desk.Change.ALL);
    }

    private void changed(Desk.Change change) {
        if (change == Desk.Change.SELECTION) {
            return;
        }
        // Rows are made anew only for other rows; a field being typed in keeps the keyboard.
        Brief brief = desk.examined().brief();
        String form =
                brief.name()
                        + brief.kit().tang().kind()
                        + brief.kit().cap().isPresent()
                        + brief.shape().nodes().stream().map(n -> n.name() + n.join()).toList()
                        + desk.set().pieces().size()
                        + desk.loaded().file();
        if (!form.equals(built)) {
            built = form;
            build();
        } else {
            rows.forEach(Refreshed::refresh);
        }
    }

    private void build() {
        rows.clear();
        folds.getChildren().clear();
        add(parts());
        add(stockAndFit());
        add(length());
        add(new Fold("Shape").with(new NodeTable(desk, work)));
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
                            () -> Typed.readings(size.read().of(brief().kit()), desk.units()),
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
                Typed.readings(text, desk.units(), size.read().of(kit).resolution());
        if (readings.isEmpty()) {
            return Optional.of("Expected a length or readings: 6.5; 6.6; 6.55 mm");
        }
        return tried(
                () -> {
                    Kit changed = size.write().with(kit, readings.get());
                    desk.change("measure " + size.name(), s -> KitFields.inSet(s, changed));
                });
    }

    /** Does it, or answers why it cannot be. */
    private Optional<String> tried(Runnable change) {
        try {
            change.run();
            return desk.notice().isEmpty() ? Optional.empty() : Optional.of(desk.notice());
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }

    private Fold stockAndFit() {
        List<Stock> stocks = desk.stocks();
        List<String> names = stocks.stream().map(Stock::name).toList();
        Fold fold = new Fold("Stock and fit");
        fold.with(
                new ChoiceRow(
                        "stock",
                        names,
                        () -> brief().stock().name(),
                        () -> desk.piece().stock().isPresent() ? "this piece alone" : "",
                        name -> stock(stocks.get(names.indexOf(name)).key())));
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
                        h -> h.tenon().diameterMm(),
                        2,
                        "tenon diameter",
                        ChoicesBuilder::tenonDiameterMm));
        fold.with(
                length(
                        "tenon length",
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

    private void stock(String key) {
        desk.changePiece(
                "change stock",
                p -> new Piece(p.name(), p.kit(), Optional.of(key), p.shape(), p.choices()));
    }

    private void fit(String word) {
        desk.changePiece(
                "change fit",
                p -> {
                    Choices own = p.choices();
                    Optional<Fit> fit =
                            word.equals(BY_RULE)
                                    ? Optional.empty()
                                    : Optional.of(Fit.valueOf(word.toUpperCase(Locale.ROOT)));
                    Choices changed =
                            new Choices(
                                    own.lengthRatio(),
                                    own.swellMm(),
                                    own.buttMm(),
                                    fit,
                                    own.tangDrillMm(),
                                    own.tangDepthMm(),
                                    own.capDrillMm(),
                                    own.capDepthMm(),
                                    own.tenonDiameterMm(),
                                    own.tenonLengthMm(),
                                    own.wander(),
                                    own.use(),
                                    own.blankSideMm(),
                                    own.blankLengthMm(),
                                    own.nodeDiametersMm(),
                                    own.nodePlaces());
                    return new Piece(p.name(), p.kit(), p.stock(), p.shape(), changed);
                });
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
                                            "change length",
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
                        h -> h.tangBore().deepest().depthMm(),
                        1,
                        "",
                        ChoicesBuilder::tangDepthMm));
        if (brief().kit().cap().isPresent()) {
            fold.with(
                    length(
                            "cap drill",
                            h -> h.capBore().map(b -> b.deepest().drillMm()).orElse(0.0),
                            2,
                            "cap drill",
                            ChoicesBuilder::capDrillMm));
            fold.with(
                    length(
                            "cap bore depth",
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
            Function<Handle, Double> value,
            int decimals,
            String reason,
            BiConsumer<ChoicesBuilder, Double> set) {
        return new FieldRow(
                name,
                () -> figure(h -> shown().length(value.apply(h), decimals)),
                () -> reason.isEmpty() ? "" : because(reason),
                text -> {
                    OptionalDouble mm = Length.parse(text, desk.units());
                    return mm.isEmpty()
                            ? Optional.of("Expected a length, such as 12.5 mm or 31/64 in")
                            : choose("change " + name, b -> set.accept(b, mm.getAsDouble()));
                });
    }

    private Optional<String> choose(String label, java.util.function.Consumer<ChoicesBuilder> set) {
        return tried(
                () ->
                        desk.changePiece(
                                label,
                                p -> {
                                    ChoicesBuilder own = p.choices().toBuilder();
                                    set.accept(own);
                                    return new Piece(
                                            p.name(), p.kit(), p.stock(), p.shape(), own.build());
                                }));
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
        return new Shown(desk.units());
    }

    private Brief brief() {
        return desk.examined().brief();
    }

    private Choices choices() {
        return brief().choices();
    }

    private Optional<Handle> handle() {
        return desk.examined().figures().map(Figures::handle);
    }

    private String figure(Function<Handle, String> read) {
        return handle().map(read).orElse("not drawn");
    }

    private String figures(Function<Figures, String> read) {
        Supplier<String> none = () -> "not drawn";
        return desk.examined().figures().map(read).orElseGet(none);
    }
}
