package haftline.findings;

import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.measure.Units;
import java.util.Optional;

/** What every remedy works with: the finding, the handle that has it, the search. */
abstract class RemedyBench {
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
}
