package haftline.cli;

import haftline.figures.Figures;
import haftline.figures.Speeds;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Remedies;
import haftline.findings.Remedy;
import haftline.findings.WhoseRule;
import haftline.findings.Words;
import haftline.handle.Brief;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.Units;
import haftline.set.Family;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.set.Rates;
import haftline.stock.CatalogueException;
import haftline.stock.HandSize;
import haftline.stock.SpeedRule;
import haftline.stock.Stock;
import haftline.store.LoadedSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Works out every piece of a set: figures, findings, and remedies that were tried. */
final class Examination {
    /** How the catalogue names the size that is held against a handle's length. */
    private static final String BREADTH = "hand breadth";

    private final Optional<SpeedRule> speedRule;
    private final List<HandSize> breadths;
    private final double mixedMorePercent;
    private final Units units;

    Examination(
            Optional<SpeedRule> speedRule,
            List<HandSize> breadths,
            double mixedMorePercent,
            Units units) {
        this.speedRule = speedRule;
        this.breadths = breadths;
        this.mixedMorePercent = mixedMorePercent;
        this.units = units;
    }

    /**
     * Works out a set; lengths in the findings' words are in the units.
     *
     * @throws CatalogueException where a catalogue that the set itself does not need has errors
     */
    static ExaminedSet of(LoadedSet loaded, Units units) throws CatalogueException {
        Examination examination = in(loaded, units);
        List<ExaminedPiece> pieces = loaded.briefs().stream().map(examination::piece).toList();
        return new ExaminedSet(
                loaded.set().name(),
                loaded.set().batch(),
                pieces,
                Optional.of(examination.family(loaded.set(), pieces)));
    }

    /** With the catalogues of a set. */
    static Examination in(LoadedSet loaded, Units units) throws CatalogueException {
        Optional<SpeedRule> rule = loaded.catalogues().speeds().entries().stream().findFirst();
        List<HandSize> breadths =
                loaded.catalogues().hands().entries().stream()
                        .filter(size -> size.measure().equals(BREADTH))
                        .toList();
        return new Examination(
                rule,
                breadths,
                Rates.AdhesivePrice.allowancePercent(loaded.set().workshop().rates()),
                units);
    }

    /** How the pieces that can be drawn match. */
    private ExaminedFamily family(HandleSet set, List<ExaminedPiece> pieces) {
        List<Family.Member> members = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = set.pieces().get(i);
            pieces.get(i)
                    .figures()
                    .ifPresent(figures -> members.add(new Family.Member(piece, figures)));
        }
        Family family = Family.of(members);
        Map<String, Stock> stocks = new HashMap<>();
        pieces.forEach(piece -> stocks.putIfAbsent(piece.name(), piece.brief().stock()));
        return new ExaminedFamily(
                family,
                family.strays().stream()
                        .map(
                                stray ->
                                        new ExaminedFamily.Stray(
                                                stray,
                                                told(
                                                        stray.finding(),
                                                        stocks.get(stray.piece()),
                                                        family.remedy(stray, units))))
                        .toList());
    }

    ExaminedPiece piece(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            List<Told> findings = new ArrayList<>();
            for (Finding finding : Findings.of(figures)) {
                findings.add(
                        told(
                                finding,
                                brief.stock(),
                                Remedies.of(finding, figures, units).map(Remedy::text)));
            }
            Optional<Speeds> speeds =
                    speedRule.map(
                            rule ->
                                    Speeds.of(
                                            resolved.handle(),
                                            rule,
                                            OptionalDouble.of(Speeds.USUAL_LATHE_RPM)));
            return new ExaminedPiece(
                    brief,
                    Optional.of(figures),
                    new Guidance(speeds, breadths, mixedMorePercent),
                    findings);
        }
        List<Told> why =
                Findings.of((Resolution.Impossible) resolution).stream()
                        .map(finding -> told(finding, brief.stock(), Optional.empty()))
                        .toList();
        return new ExaminedPiece(brief, Optional.empty(), Guidance.NONE, why);
    }

    private Told told(Finding finding, Stock stock, Optional<String> remedy) {
        return new Told(
                finding,
                Words.message(finding, stock, units),
                WhoseRule.of(finding, stock),
                remedy);
    }
}
