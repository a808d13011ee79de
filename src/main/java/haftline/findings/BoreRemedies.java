package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Bore;
import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.stock.Drill;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Other drills, other depths, another fit. */
final class BoreRemedies extends RemedyBench {
    BoreRemedies(Finding finding, Figures figures, RemedySearch search, Units units) {
        super(finding, figures, search, units);
    }

    /** The next drills down the rack, as long as they suit the tang. */
    Optional<Remedy> narrowerDrill() {
        boolean cap = finding.place() == Place.CAP;
        Bore bore = cap ? figures.handle().capBore().orElseThrow() : figures.handle().tangBore();
        double drill = bore.deepest().drillMm();
        for (int tries = 0; tries < 3; tries++) {
            Optional<Drill> next = brief().rack().largestAtMost(drill - 0.01);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            drill = next.get().diameterMm();
            Optional<Remedy> found = withDrill(cap, next.get());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    Optional<Remedy> widerDrill() {
        double drill = figures.handle().tangBore().deepest().drillMm();
        for (int tries = 0; tries < 4; tries++) {
            Optional<Drill> next = brief().rack().smallestAtLeast(drill + 0.01);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            drill = next.get().diameterMm();
            Optional<Trial> trial =
                    search.mending(choices().toBuilder().tangDrillMm(drill).build());
            if (trial.isPresent()) {
                double index = trial.get().figures().splitIndex().orElseThrow().index();
                return Optional.of(
                        new Remedy(
                                Optional.of(trial.get().choices()),
                                "Drill "
                                        + next.get().name()
                                        + ": split index "
                                        + NumberText.fixed(index, 1),
                                index));
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> withDrill(boolean cap, Drill drill) {
        Choices changed = drilled(cap, drill);
        return search.mending(changed)
                .map(
                        trial -> {
                            double wall = worst(trial);
                            return new Remedy(
                                    Optional.of(changed),
                                    "Drill " + drill.name() + ": wall " + Say.wall(wall, units),
                                    wall);
                        });
    }

    /** The shallowest bore that still takes the tang, or the spigot where that one is at fault. */
    Optional<Remedy> shallower() {
        double engaged = figures.handle().fit().engagedMm();
        double deepest = figures.handle().tangBore().deepest().depthMm();
        double least = engaged + 0.5;
        if (least >= deepest) {
            return Optional.empty();
        }
        Optional<RemedySearch.Found> found =
                search.least(
                        0,
                        deepest - least,
                        0.5,
                        less -> choices().toBuilder().tangDepthMm(deepest - less).build());
        return found.flatMap(
                f ->
                        remedy(
                                f,
                                "Drill the tang's bore only "
                                        + length(deepest - f.value(), 1)
                                        + " deep",
                                deepest - f.value()));
    }

    /** As deep as the rule would have it for the longest tang. */
    Optional<Remedy> deeper() {
        double mm = finding.limit() + brief().rules().bores().depthAllowanceMm();
        return search.mending(choices().toBuilder().tangDepthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Drill the tang's bore " + length(mm, 1) + " deep",
                                        mm));
    }

    Optional<Remedy> bonded() {
        return search.mending(choices().toBuilder().fit(Fit.BONDED).build())
                .map(
                        trial -> {
                            Bore bore = trial.figures().handle().tangBore();
                            return new Remedy(
                                    Optional.of(trial.choices()),
                                    "Bond it in a bore of "
                                            + bore.deepest().drill()
                                            + " with two-part epoxy",
                                    bore.deepest().diameterMm());
                        });
    }

    /** Leaves the choice of drill to the rule, or takes the next that the maker owns. */
    Optional<Remedy> ruleDrill() {
        boolean cap = finding.place() == Place.CAP;
        Bore bore = cap ? figures.handle().capBore().orElseThrow() : figures.handle().tangBore();
        double wish = bore.deepest().drillMm();
        Choices open =
                cap
                        ? choices().toBuilder().capDrillByRule().build()
                        : choices().toBuilder().tangDrillByRule().build();
        List<Choices> tries = new ArrayList<>();
        tries.add(open);
        brief().rack().smallestAtLeast(wish).ifPresent(d -> tries.add(drilled(cap, d)));
        brief().rack().largestAtMost(wish).ifPresent(d -> tries.add(drilled(cap, d)));
        for (Choices changed : tries) {
            Optional<Trial> trial = search.mending(changed).filter(this::fits);
            if (trial.isPresent()) {
                var handle = trial.get().figures().handle();
                Bore made = cap ? handle.capBore().orElseThrow() : handle.tangBore();
                return Optional.of(
                        new Remedy(
                                Optional.of(changed),
                                "Drill " + made.deepest().drill(),
                                made.deepest().diameterMm()));
            }
        }
        return Optional.empty();
    }

    /** A drill that the maker owns is no remedy where it leaves the fit as bad as it was. */
    private boolean fits(Trial trial) {
        return trial.findings().stream()
                .noneMatch(
                        now ->
                                now.place() == finding.place()
                                        && (now.code() == Code.BORE_LOOSE
                                                || now.code() == Code.BORE_TIGHT));
    }

    private Choices drilled(boolean cap, Drill drill) {
        return cap
                ? choices().toBuilder().capDrillMm(drill.diameterMm()).build()
                : choices().toBuilder().tangDrillMm(drill.diameterMm()).build();
    }

    Optional<Remedy> deeperCap() {
        if (!finding.subject().equals("spigot")) {
            return Optional.empty();
        }
        double mm = finding.limit() + brief().rules().bores().capAllowanceMm();
        return search.mending(choices().toBuilder().capDepthMm(mm).build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Drill the cap's bore " + length(mm, 1) + " deep",
                                        mm));
    }
}
