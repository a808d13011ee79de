package haftline.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns of one kind of catalogue file.
 *
 * @param kind what the file holds and what its starter file is called, such as {@code woods}
 * @param required columns that must be there
 * @param optional columns that may be left out
 */
record Layout(String kind, List<String> required, List<String> optional) {
    static final Layout SOURCES = new Layout("sources", List.of("key", "title", "kind"), List.of());

    static final Layout WOODS =
            new Layout(
                    "woods",
                    List.of("key", "name", "botanical", "group", "density_kg_m3", "density_source"),
                    List.of(
                            "density_moisture_percent",
                            "hardness_n",
                            "hardness_source",
                            "compression_across_mpa",
                            "compression_across_source",
                            "tension_across_mpa",
                            "tension_across_source",
                            "shear_along_mpa",
                            "shear_along_source",
                            "modulus_mpa",
                            "modulus_source",
                            "tangential_ratio",
                            "tangential_ratio_source",
                            "radial_ratio",
                            "radial_ratio_source",
                            "poisson_across",
                            "poisson_across_source",
                            "radial_shrinkage_percent",
                            "radial_shrinkage_source",
                            "tangential_shrinkage_percent",
                            "tangential_shrinkage_source",
                            "radial_movement",
                            "radial_movement_source",
                            "tangential_movement",
                            "tangential_movement_source",
                            "pressed",
                            "pressed_source",
                            "pores",
                            "pores_source",
                            "reactions",
                            "body_colour",
                            "early_colour",
                            "late_colour",
                            "colour_source",
                            "grain",
                            "grain_source"));

    static final Layout REACTIONS =
            new Layout(
                    "reactions",
                    List.of(
                            "key",
                            "reaction",
                            "site",
                            "potency",
                            "exposure",
                            "incidence",
                            "source"),
                    List.of());

    static final Layout PLASTICS =
            new Layout(
                    "plastics",
                    List.of("key", "name", "density_kg_m3", "density_source", "caution"),
                    List.of(
                            "modulus_mpa",
                            "modulus_source",
                            "tensile_strength_mpa",
                            "tensile_strength_source",
                            "poisson",
                            "poisson_source",
                            "expansion_per_k",
                            "expansion_source",
                            "caution_source",
                            "body_colour",
                            "early_colour",
                            "late_colour",
                            "colour_source"));

    static final Layout METALS =
            new Layout(
                    "metals",
                    List.of("key", "name", "density_kg_m3", "density_source"),
                    List.of(
                            "modulus_mpa",
                            "modulus_source",
                            "poisson",
                            "poisson_source",
                            "colour",
                            "colour_source"));

    static final Layout ADHESIVES =
            new Layout(
                    "adhesives",
                    List.of(
                            "key",
                            "name",
                            "density_kg_m3",
                            "density_source",
                            "mixing",
                            "caution",
                            "caution_source"),
                    List.of(
                            "gap_least_mm",
                            "gap_best_mm",
                            "gap_limit_mm",
                            "gap_source",
                            "working_minutes",
                            "handling_hours",
                            "full_cure_hours",
                            "cure_source"));

    static final Layout DRILLS =
            new Layout("drills", List.of("series", "drill", "diameter_mm", "source"), List.of());

    static final Layout FLUTES =
            new Layout(
                    "flutes",
                    List.of("over_mm", "up_to_mm", "flute_length_mm", "source"),
                    List.of());

    static final Layout HANDS =
            new Layout(
                    "hands",
                    List.of("key", "people", "measure", "count", "mean_mm", "deviation_mm"),
                    List.of(
                            "p1_mm", "p5_mm", "p10_mm", "p25_mm", "p50_mm", "p75_mm", "p90_mm",
                            "p95_mm", "p99_mm", "source"));

    static final Layout GRIPS =
            new Layout(
                    "grips",
                    List.of("key", "statement", "quantity", "least", "greatest", "source"),
                    List.of());

    static final Layout SPEEDS =
            new Layout(
                    "speeds",
                    List.of("key", "name", "least_in_rpm", "greatest_in_rpm", "source"),
                    List.of());

    static final Layout CLIMATES =
            new Layout(
                    "climates",
                    List.of("key", "name", "temperature_c", "humidity_percent", "source"),
                    List.of());

    static final Layout DUST =
            new Layout(
                    "dust",
                    List.of("key", "authority", "what", "limit_mg_m3", "source", "note"),
                    List.of());

    static final List<Layout> ALL =
            List.of(
                    SOURCES, WOODS, REACTIONS, PLASTICS, METALS, ADHESIVES, DRILLS, FLUTES, HANDS,
                    GRIPS, SPEEDS, CLIMATES, DUST);

    /** All columns, for the search of the nearest name. */
    List<String> columns() {
        List<String> columns = new ArrayList<>(required);
        columns.addAll(optional);
        return columns;
    }

    /**
     * The layout that a header row fits best: one whose required columns are all there and that
     * knows every column, else the one that shares the most with it.
     */
    static Layout fitting(List<String> header) {
        Layout best = SOURCES;
        int bestScore = Integer.MIN_VALUE;
        for (Layout layout : ALL) {
            int score = 0;
            for (String column : layout.required) {
                score += header.contains(column) ? 1 : -1;
            }
            for (String column : header) {
                score += layout.knows(column) ? 1 : -1;
            }
            if (score > bestScore) {
                bestScore = score;
                best = layout;
            }
        }
        return best;
    }

    boolean knows(String column) {
        return required.contains(column) || optional.contains(column);
    }
}
