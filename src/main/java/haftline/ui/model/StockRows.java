package haftline.ui.model;

import haftline.edit.Choice;
import haftline.edit.Command;
import haftline.edit.Difference;
import haftline.edit.Differences;
import haftline.edit.Outcome;
import haftline.figures.Figures;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Wander;
import haftline.measure.NumberText;
import haftline.set.Materials;
import haftline.stock.Adhesive;
import haftline.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Stock and fit. */
final class StockRows {
    static final String BY_RULE = "by the rule";

    private final Inspected at;

    StockRows(Inspected at) {
        this.at = at;
    }

    List<Row> rows() {
        return List.of(
                stock(),
                adhesive(),
                fit(),
                wander(),
                at.length(
                        "tenon diameter",
                        Choice.TENON_DIAMETER,
                        h -> h.tenon().diameterMm(),
                        h -> at.because("tenon diameter"),
                        ChoicesBuilder::tenonDiameterMm),
                at.length(
                        "tenon length",
                        Choice.TENON_LENGTH,
                        h -> h.tenon().lengthMm(),
                        h -> at.because("tenon length"),
                        ChoicesBuilder::tenonLengthMm),
                at.figure("tang in the wood", f -> engaged(f.handle()), f -> ""),
                at.figure("split index", this::split, this::splitBecause),
                at.figure("adhesive", this::adhesiveVolume, f -> ""));
    }

    private String engaged(Handle handle) {
        return at.shown().length(handle.fit().engagedMm());
    }

    private Materials materials() {
        return at.editor().document().loaded().materials();
    }

    private Row stock() {
        return Row.choice(
                        "stock",
                        () -> materials().stock().entries().stream().map(Stock::name).toList(),
                        () ->
                                Row.State.of(
                                        at.brief().stock().name(),
                                        at.piece().stock().isPresent() ? "this piece alone" : "",
                                        at.piece().stock().isPresent()
                                                ? Row.Source.PIECE
                                                : Row.Source.SET),
                        name ->
                                materials().stock().entries().stream()
                                        .filter(stock -> stock.name().equals(name))
                                        .findFirst()
                                        .map(stock -> at.run(at.edits().stock(stock)))
                                        .orElseGet(() -> unknown(name)))
                .releasedBy(() -> at.run(Differences.release(at.piece().name(), Difference.STOCK)));
    }

    private Row adhesive() {
        return Row.choice(
                "adhesive",
                () -> materials().adhesives().entries().stream().map(Adhesive::name).toList(),
                () -> Row.State.of(at.brief().adhesive().name(), "", Row.Source.SET),
                name ->
                        materials().adhesives().entries().stream()
                                .filter(adhesive -> adhesive.name().equals(name))
                                .findFirst()
                                .map(adhesive -> at.run(take(adhesive)))
                                .orElseGet(() -> unknown(name)));
    }

    private static Command take(Adhesive adhesive) {
        return new Command(
                "take " + adhesive.name(),
                draft -> draft.withSet(draft.set().withAdhesive(adhesive.key())));
    }

    private static Outcome unknown(String name) {
        return new Outcome.Refused("\"" + name + "\" is not in the catalogue");
    }

    private Row fit() {
        return Row.choice(
                        "fit",
                        () -> List.of(BY_RULE, word(Fit.PRESSED), word(Fit.BONDED)),
                        () ->
                                Row.State.of(
                                        at.choices().fit().map(StockRows::word).orElse(BY_RULE),
                                        at.handle().map(this::fitBecause).orElse(""),
                                        at.source(Choice.FIT)),
                        word ->
                                word.equals(BY_RULE)
                                        ? at.free(Choice.FIT)
                                        : at.choose(Choice.FIT, b -> b.fit(fit(word))))
                .releasedBy(() -> at.free(Choice.FIT));
    }

    private String fitBecause(Handle handle) {
        return word(handle.fit().fit()) + ": " + handle.fit().because();
    }

    private static Fit fit(String word) {
        return word.equals(word(Fit.PRESSED)) ? Fit.PRESSED : Fit.BONDED;
    }

    private static String word(Fit fit) {
        return fit.name().toLowerCase(Locale.ROOT);
    }

    private Row wander() {
        return Row.choice(
                        "how it is drilled",
                        this::waysOfDrilling,
                        () -> Row.State.of(way(), spread(at.brief().wander()), wanderSource()),
                        way ->
                                way.equals(BY_RULE)
                                        ? at.free(Choice.WANDER)
                                        : Optional.ofNullable(Wander.PRESETS.get(way))
                                                .map(
                                                        w ->
                                                                at.choose(
                                                                        Choice.WANDER,
                                                                        b -> b.wander(w)))
                                                .orElse(Outcome.DONE))
                .releasedBy(() -> at.free(Choice.WANDER));
    }

    private Row.Source wanderSource() {
        return at.source(Choice.WANDER);
    }

    private List<String> waysOfDrilling() {
        List<String> ways = new ArrayList<>(List.of(BY_RULE));
        ways.addAll(Wander.PRESETS.keySet());
        if (!ways.contains(way())) {
            ways.add(way());
        }
        return ways;
    }

    private String way() {
        return at.choices()
                .wander()
                .map(
                        chosen ->
                                Wander.PRESETS.entrySet().stream()
                                        .filter(preset -> preset.getValue().equals(chosen))
                                        .map(Map.Entry::getKey)
                                        .findFirst()
                                        .orElse("by the maker's own test hole"))
                .orElse(BY_RULE);
    }

    private String spread(Wander wander) {
        return at.shown().length(wander.startMm(), 2)
                + " at the face and "
                + NumberText.upTo(100 * wander.slope(), 2)
                + " % of the depth off the axis";
    }

    private String split(Figures figures) {
        return figures.splitIndex().map(s -> NumberText.fixed(s.index(), 1)).orElse("none");
    }

    private String splitBecause(Figures figures) {
        return figures.splitIndex()
                .map(
                        s ->
                                "a screening figure: cherry, "
                                        + at.shown().length(6, 1)
                                        + " tang in "
                                        + at.shown().length(5.5, 1)
                                        + ", "
                                        + at.shown().length(3, 1)
                                        + " wall is 1"
                                        + (s.estimated() ? "; from estimated strengths" : ""))
                .orElse("nothing is pressed");
    }

    private String adhesiveVolume(Figures figures) {
        return NumberText.fixed(figures.adhesive().volumeMm3() / 1000, 1) + " cm³";
    }
}
