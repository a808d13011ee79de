package haftline.findings;

import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import java.util.List;
import java.util.Optional;

/** What every remedy works with: the finding, the handle that has it, the search. */
abstract class RemedyBench {
    /** Diameters of the wood are named in steps of this, mm. */
    static final double TENTH = 0.1;

    final Finding finding;
    final Figures figures;
    final RemedySearch search;
    final Units units;

    RemedyBench(Finding finding, Figures figures, RemedySearch search, Units units) {
        this.finding = finding;
        this.figures = figures;
        this.search = search;
        this.units = units;
    }

    double worst(Trial trial) {
        Zone zone =
                finding.place() == Place.CAP
                        ? Zone.CAP
                        : finding.place() == Place.TENON ? Zone.TENON : Zone.BODY;
        Wall wall = trial.figures().wall(zone).orElseThrow();
        return finding.code() == Code.BORE_BOTTOM_TOO_NEAR
                ? wall.shortestWorstMm()
                : wall.worstMm();
    }

    static Optional<Remedy> remedy(RemedySearch.Found found, String change, double outcome) {
        return Optional.of(new Remedy(Optional.of(found.trial().choices()), change, outcome));
    }

    Brief brief() {
        return figures.handle().brief();
    }

    Choices choices() {
        return brief().choices();
    }

    double ratio() {
        return choices().lengthRatio().orElse(brief().rules().lengths().ratio());
    }

    String length(double mm, int decimals) {
        return Say.length(mm, decimals, units);
    }

    static double tenths(double mm) {
        return Math.round(mm * 10) / 10.0;
    }

    /** Nodes with the diameters chosen for them: {@code "a" 12.0 mm, "b" 13.5 mm and ...}. */
    String eachNode(List<PlacedNode> nodes, Choices changed) {
        return listed(
                nodes.stream()
                        .map(
                                node ->
                                        '"'
                                                + node.name()
                                                + "\" "
                                                + length(
                                                        changed.nodeDiametersMm().get(node.name()),
                                                        1))
                        .toList());
    }

    static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
