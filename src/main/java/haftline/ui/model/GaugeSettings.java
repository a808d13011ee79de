package haftline.ui.model;

import haftline.set.GaugesBuilder;
import haftline.set.TemplateSettings.Gauges;
import haftline.set.TemplateSettings.Gauges.Cards;
import haftline.set.TemplateSettings.Gauges.Register;
import haftline.ui.model.Setting.Picture;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Which gauges are made, and how. */
final class GaugeSettings {
    private final WorkshopFields fields;

    GaugeSettings(WorkshopFields fields) {
        this.fields = fields;
    }

    private Gauges now() {
        return fields.templates().gauges();
    }

    private boolean isAny() {
        return now().profile() || now().slots() || now().storyRod();
    }

    List<Setting> all() {
        Row cards =
                fields.choice(
                        "on cards",
                        "",
                        Cards.values(),
                        GaugeSettings::word,
                        () -> now().cards(),
                        chosen ->
                                fields.changed(
                                        "which gauges share a card",
                                        t ->
                                                t.withGauges(
                                                        t.gauges().toBuilder()
                                                                .cards(chosen)
                                                                .build())));
        Row register =
                fields.choice(
                        "profile bears on",
                        "",
                        Register.values(),
                        GaugeSettings::word,
                        () -> now().register(),
                        chosen ->
                                fields.changed(
                                        "register",
                                        t ->
                                                t.withGauges(
                                                        t.gauges().toBuilder()
                                                                .register(chosen)
                                                                .build())));
        return List.of(
                tick("profile gauge", Gauges::profile, GaugesBuilder::profile),
                tick("sizing slots", Gauges::slots, GaugesBuilder::slots),
                tick("story rod", Gauges::storyRod, GaugesBuilder::storyRod),
                Setting.of(cards).where(this::isAny).drawnAs(Picture.CARDS),
                Setting.of(register).where(() -> now().profile()).drawnAs(Picture.REGISTER),
                length(
                                "relief at joints",
                                "so that dust does not hold it off; 0 for none",
                                new Limits(0, 6),
                                Gauges::reliefMm,
                                GaugesBuilder::reliefMm)
                        .where(() -> now().profile()),
                length(
                                "clearance",
                                "0 to judge by the light gap, more for roughing",
                                new Limits(0, 2),
                                Gauges::clearanceMm,
                                GaugesBuilder::clearanceMm)
                        .where(() -> now().profile()),
                length(
                                "slots wider by",
                                "",
                                new Limits(0, 3),
                                Gauges::slotsOverMm,
                                GaugesBuilder::slotsOverMm)
                        .where(() -> now().slots()),
                length(
                                "tenon, go and no-go",
                                "over and under the tenon's diameter",
                                new Limits(0.01, 0.5),
                                Gauges::tenonToleranceMm,
                                GaugesBuilder::tenonToleranceMm)
                        .where(() -> now().slots()),
                length(
                                "hanging hole",
                                "0 for none",
                                new Limits(0, 12),
                                Gauges::hangingHoleMm,
                                GaugesBuilder::hangingHoleMm)
                        .where(this::isAny));
    }

    private Setting tick(
            String label,
            Predicate<Gauges> now,
            BiFunction<GaugesBuilder, Boolean, GaugesBuilder> set) {
        return Setting.of(
                fields.tick(
                        label,
                        t -> now.test(t.gauges()),
                        (t, yes) -> t.withGauges(set.apply(t.gauges().toBuilder(), yes).build())));
    }

    private Setting length(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<Gauges> now,
            BiFunction<GaugesBuilder, Double, GaugesBuilder> set) {
        return Setting.of(
                fields.length(
                        label,
                        because,
                        range,
                        t -> now.applyAsDouble(t.gauges()),
                        (t, mm) -> t.withGauges(set.apply(t.gauges().toBuilder(), mm).build())));
    }

    private static String word(Cards cards) {
        return switch (cards) {
            case EACH_ALONE -> "each alone";
            case SLOTS_APART -> "slots apart";
            case ALL_ON_ONE -> "all on one";
        };
    }

    private static String word(Register register) {
        return switch (register) {
            case FERRULE_FACE -> "the ferrule's face";
            case SHOULDER -> "the shoulder";
        };
    }
}
