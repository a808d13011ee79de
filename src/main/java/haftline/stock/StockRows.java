package haftline.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the rows of woods, plastics, metals and adhesives become entries. */
final class StockRows {
    /** Woods are weighed air-dry unless a file says otherwise. */
    private static final double USUAL_MOISTURE_PERCENT = 12;

    /** A maker's own stock without colours is drawn in a plain brown. */
    private static final int PLAIN_BODY = 0xA9825A;

    private static final int PLAIN_EARLY = 0xBF9A70;
    private static final int PLAIN_LATE = 0x8C6741;
    private static final Source PLAIN =
            new Source("plain", "plain brown for want of a colour", Basis.INVENTED);
    private static final Source UNSAID =
            new Source("unsaid", "not stated in the catalogue", Basis.COMMON_PRACTICE);

    private final Catalogue<Source> sources;

    StockRows(Catalogue<Source> sources) {
        this.sources = sources;
    }

    Wood wood(Row row, Map<String, List<WoodReaction>> reactions) {
        Wood.Group group = row.word("group", Wood.Group.class);
        double moisture =
                row.has("density_moisture_percent")
                        ? row.number(
                                "density_moisture_percent", 0, Moisture.FIBRE_SATURATION_PERCENT)
                        : USUAL_MOISTURE_PERCENT;
        Density density =
                new Density(
                        row.figure("density_kg_m3", "density_source", 50, 2000, sources), moisture);
        WoodStrength strength = strength(row, group, density.specificGravityAt12());
        return new Wood(
                row.key("key"),
                row.text("name"),
                row.text("botanical"),
                group,
                density,
                strength,
                stiffness(row, group, density.specificGravityAt12()),
                movement(row),
                pressed(row, strength.sideHardnessN()),
                source(row, "pressed", "pressed_source"),
                row.has("pores") ? row.word("pores", Wood.Pores.class) : Wood.Pores.OPEN,
                source(row, "pores", "pores_source"),
                reactionsOf(row, reactions),
                colours(row),
                row.has("grain") ? row.word("grain", Wood.Grain.class) : Wood.Grain.DIFFUSE);
    }

    private static List<WoodReaction> reactionsOf(
            Row row, Map<String, List<WoodReaction>> reactions) {
        List<WoodReaction> found = new ArrayList<>();
        for (String key : row.codes("reactions", reactions.keySet())) {
            found.addAll(reactions.getOrDefault(key, List.of()));
        }
        return found;
    }

    private WoodStrength strength(Row row, Wood.Group group, double gravity) {
        return new WoodStrength(
                row.maybe(
                        "hardness_n",
                        "hardness_source",
                        100,
                        40000,
                        sources,
                        WoodEstimate.sideHardnessN(group, gravity)),
                row.maybe(
                        "compression_across_mpa",
                        "compression_across_source",
                        0.1,
                        100,
                        sources,
                        WoodEstimate.compressionAcrossMPa(group, gravity)),
                row.maybe(
                        "tension_across_mpa",
                        "tension_across_source",
                        0.1,
                        50,
                        sources,
                        WoodEstimate.tensionAcrossMPa(group, gravity)),
                row.maybe(
                        "shear_along_mpa",
                        "shear_along_source",
                        0.1,
                        100,
                        sources,
                        WoodEstimate.shearAlongMPa(group, gravity)));
    }

    private WoodStiffness stiffness(Row row, Wood.Group group, double gravity) {
        return new WoodStiffness(
                row.maybe(
                        "modulus_mpa",
                        "modulus_source",
                        500,
                        50000,
                        sources,
                        WoodEstimate.bendingModulusMPa(group, gravity)),
                row.maybe(
                        "tangential_ratio",
                        "tangential_ratio_source",
                        0.01,
                        1,
                        sources,
                        WoodEstimate.tangentialRatio(group)),
                row.maybe(
                        "radial_ratio",
                        "radial_ratio_source",
                        0.01,
                        1,
                        sources,
                        WoodEstimate.radialRatio(group)),
                row.maybe(
                        "poisson_across",
                        "poisson_across_source",
                        0,
                        1,
                        sources,
                        WoodEstimate.POISSON_ACROSS));
    }

    private WoodMovement movement(Row row) {
        return new WoodMovement(
                row.maybe("radial_shrinkage_percent", "radial_shrinkage_source", 0, 30, sources),
                row.maybe(
                        "tangential_shrinkage_percent",
                        "tangential_shrinkage_source",
                        0,
                        30,
                        sources),
                row.maybe("radial_movement", "radial_movement_source", 0, 0.02, sources),
                row.maybe("tangential_movement", "tangential_movement_source", 0, 0.02, sources));
    }

    /** Without a word the rule of hardness decides; without a hardness the tang is bonded. */
    private static boolean pressed(Row row, Optional<Figure> hardness) {
        return row.has("pressed")
                ? row.word("pressed", YesNo.class) == YesNo.YES
                : hardness.map(figure -> Wood.pressable(figure.value())).orElse(false);
    }

    private enum YesNo {
        YES,
        NO
    }

    private Source source(Row row, String column, String sourceColumn) {
        return row.has(column) ? row.source(sourceColumn, sources) : UNSAID;
    }

    private Colours colours(Row row) {
        if (!row.has("body_colour")) {
            return new Colours(PLAIN_BODY, PLAIN_EARLY, PLAIN_LATE, PLAIN);
        }
        int body = row.colour("body_colour");
        return new Colours(
                body,
                row.has("early_colour") ? row.colour("early_colour") : body,
                row.has("late_colour") ? row.colour("late_colour") : body,
                row.source("colour_source", sources));
    }

    WoodReaction reaction(Row row) {
        return new WoodReaction(
                row.key("key"),
                row.codes("reaction", WoodReaction.REACTIONS),
                row.codes("site", WoodReaction.SITES),
                row.cell("potency"),
                row.codes("exposure", WoodReaction.EXPOSURES),
                row.cell("incidence"),
                row.source("source", sources));
    }

    Plastic plastic(Row row) {
        return new Plastic(
                row.key("key"),
                row.text("name"),
                row.figure("density_kg_m3", "density_source", 50, 5000, sources),
                row.maybe("modulus_mpa", "modulus_source", 10, 1e6, sources),
                row.maybe("tensile_strength_mpa", "tensile_strength_source", 1, 5000, sources),
                row.maybe("poisson", "poisson_source", 0, 0.5, sources),
                row.maybe("expansion_per_k", "expansion_source", 0, 0.001, sources),
                row.has("caution") ? List.of(caution(row)) : List.of(),
                colours(row));
    }

    private Caution caution(Row row) {
        return new Caution(row.text("caution"), row.source("caution_source", sources));
    }

    Metal metal(Row row) {
        if (row.has("colour")) {
            row.source("colour_source", sources);
        }
        return new Metal(
                row.key("key"),
                row.text("name"),
                row.figure("density_kg_m3", "density_source", 500, 25000, sources),
                row.maybe("modulus_mpa", "modulus_source", 1000, 1e6, sources),
                row.maybe("poisson", "poisson_source", 0, 0.5, sources),
                row.has("colour") ? row.colour("colour") : PLAIN_BODY);
    }

    Adhesive adhesive(Row row) {
        return new Adhesive(
                row.key("key"),
                row.text("name"),
                row.figure("density_kg_m3", "density_source", 500, 5000, sources),
                row.maybe("gap_least_mm", "gap_source", 0, Adhesive.GREATEST_GAP_MM, sources),
                row.maybe("gap_best_mm", "gap_source", 0, Adhesive.GREATEST_GAP_MM, sources),
                row.maybe("gap_limit_mm", "gap_source", 0, Adhesive.GREATEST_GAP_MM, sources),
                row.maybe("working_minutes", "cure_source", 0, 1e4, sources),
                row.maybe("handling_hours", "cure_source", 0, 1e4, sources),
                row.maybe("full_cure_hours", "cure_source", 0, 1e4, sources),
                row.text("mixing"),
                caution(row));
    }
}
