package haftline.ui.model;

import haftline.edit.Choice;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Handle;
import java.util.ArrayList;
import java.util.List;

/** The bores: which drill, how deep, from which end, and what stands over them. */
final class BoreRows {
    private final Inspected at;

    BoreRows(Inspected at) {
        this.at = at;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                at.length(
                        "tang drill",
                        Choice.TANG_DRILL,
                        h -> h.tangBore().deepest().drillMm(),
                        this::tangDrill,
                        ChoicesBuilder::tangDrillMm));
        rows.add(
                at.length(
                        "tang bore's depth",
                        Choice.TANG_DEPTH,
                        h -> h.tangBore().deepest().depthMm(),
                        h -> depth("from the tenon's end", h.tangBore()),
                        ChoicesBuilder::tangDepthMm));
        if (at.brief().kit().cap().isPresent()) {
            rows.add(
                    at.length(
                            "cap drill",
                            Choice.CAP_DRILL,
                            h -> h.capBore().orElseThrow().deepest().drillMm(),
                            h -> at.because("cap drill"),
                            ChoicesBuilder::capDrillMm));
            rows.add(
                    at.length(
                            "cap bore's depth",
                            Choice.CAP_DEPTH,
                            h -> h.capBore().orElseThrow().deepest().depthMm(),
                            h -> depth("from the butt", h.capBore().orElseThrow()),
                            ChoicesBuilder::capDepthMm));
        }
        rows.add(wall("wall on the tenon", Zone.TENON));
        rows.add(wall("wall on the body", Zone.BODY));
        if (at.brief().kit().cap().isPresent()) {
            rows.add(wall("wall over the cap's bore", Zone.CAP));
            rows.add(at.figure("wood between the bores", this::web, this::webLimit));
        }
        return rows;
    }

    private String tangDrill(Handle handle) {
        double miss = handle.fit().missMm(handle.tangBore());
        String hole =
                handle.tangBore().steps().size() > 1
                        ? handle.tangBore().steps().size() + " steps; the deepest"
                        : "the hole";
        return hole
                + " is "
                + at.shown().length(handle.tangBore().deepest().diameterMm(), 2)
                + ", "
                + at.shown().length(Math.abs(miss), 2)
                + (miss < 0 ? " under" : " over")
                + " the wish of "
                + at.shown().length(handle.fit().wishMm(), 2)
                + (handle.fit().onRack() ? "" : "; not on the rack");
    }

    private String depth(String from, Bore bore) {
        return from + ", to full width; its point " + at.shown().length(bore.reachMm());
    }

    private Row wall(String label, Zone zone) {
        return at.figure(
                label,
                f -> f.wall(zone).map(w -> at.shown().wall(w.worstMm())).orElse("no bore there"),
                f -> f.wall(zone).map(this::limit).orElse(""));
    }

    private String limit(Wall wall) {
        return "at the worst wander, at "
                + at.shown().length(wall.atX())
                + "; limit "
                + at.shown().length(wall.limitMm());
    }

    private String web(Figures figures) {
        return figures.web().map(web -> at.shown().wall(web.mm())).orElse("no cap");
    }

    private String webLimit(Figures figures) {
        return figures.web().map(web -> "limit " + at.shown().length(web.limitMm())).orElse("");
    }
}
