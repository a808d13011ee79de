package haftline.cli;

import haftline.adjust.doubt.TwoWays;
import haftline.figures.Figures;
import haftline.figures.Speeds;
import haftline.handle.Brief;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.stock.Caution;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** All pieces of a set on a page: one after the other, then side by side, then what to mind. */
final class SetPage {
    /** A figure with its unit: three digits, two decimals, a unit of two letters. */
    private static final int FIGURE_MM = 9;

    /** In inches three decimals, and the nearest sixty-fourth behind. */
    private static final int FIGURE_INCH = 20;

    private static final int NAME = 27;

    private static final String LATHE =
            "Face shield or goggles, dust mask and extraction. Nothing loose at a running lathe: no"
                    + " gloves, sleeves, rings, rags or hair. Stop it to measure, to move the rest"
                    + " and to clear chips; turn the work by hand before the switch.";

    private static final String BLADE =
            "Cover the blade's edge and point until the handle is done.";

    private static final String DEFER =
            "The manuals of your tools, the data sheets and local rules come before this page.";

    private final Paper paper;
    private final Units units;
    private final LengthText lengths;

    private SetPage(Units units, Ink ink) {
        this.units = units;
        this.lengths = new LengthText(units);
        this.paper =
                units == Units.MM ? new Paper(ink, FIGURE_MM, 2) : new Paper(ink, FIGURE_INCH, 3);
    }

    /** The whole page. */
    static String of(ExaminedSet set, Units units, Ink ink) {
        return of(set, units, ink, piece -> Optional.empty());
    }

    /** The same with what chance makes of each piece, where it was asked for. */
    static String of(
            ExaminedSet set,
            Units units,
            Ink ink,
            Function<ExaminedPiece, Optional<TwoWays>> doubts) {
        SetPage page = new SetPage(units, ink);
        page.write(set, doubts);
        return page.paper.text();
    }

    private void write(ExaminedSet set, Function<ExaminedPiece, Optional<TwoWays>> doubts) {
        for (ExaminedPiece piece : set.pieces()) {
            PiecePage.write(paper, units, set.batch(), piece);
            doubts.apply(piece).ifPresent(doubt -> DoubtRows.write(paper, lengths, doubt));
        }
        summary(set);
        set.family().ifPresent(family -> FamilyPage.write(paper, lengths, family));
        paper.blank();
        mind(set);
    }

    private void summary(ExaminedSet set) {
        int count = set.pieces().size();
        String counts =
                count + (count == 1 ? " piece: " : " pieces: ") + Verdict.counts(set::count);
        paper.heading(set.name() + ", batch " + set.batch(), counts, counts);
        line("", "long", "across", "drill", "mass", "balance", "");
        line("", lengths.unit(), lengths.unit(), lengths.unit(), "g", lengths.unit(), "");
        for (ExaminedPiece piece : set.pieces()) {
            String verdict = new Verdict(piece).shortInInk(paper.ink());
            if (piece.figures().isEmpty()) {
                line(piece.name(), "", "", "", "", "", verdict);
                continue;
            }
            Figures figures = piece.figures().get();
            line(
                    piece.name(),
                    lengths.contour(figures.handle().lengths().overallMm()),
                    lengths.contour(figures.grip().greatestMm()),
                    lengths.drill(figures.handle().tangBore().deepest().drillMm()),
                    NumberText.fixed(figures.balance().totalG(), 1),
                    lengths.contour(figures.balance().fromFerruleFaceMm()),
                    verdict);
        }
    }

    private void line(
            String name,
            String overall,
            String across,
            String drill,
            String mass,
            String balance,
            String verdict) {
        paper.line(
                Paper.pad(Paper.cut(Paper.harmless(name), NAME - 1), NAME)
                        + Paper.padLeft(overall, 6)
                        + Paper.padLeft(across, 7)
                        + Paper.padLeft(drill, 7)
                        + Paper.padLeft(mass, 7)
                        + Paper.padLeft(balance, 8)
                        + "  "
                        + verdict);
    }

    private void mind(ExaminedSet set) {
        mind("lathe", LATHE);
        if (set.pieces().stream().anyMatch(piece -> piece.guidance().speeds().isPresent())) {
            mind("speeds", Speeds.CAUTION);
        }
        mind("blade", BLADE);
        Set<String> told = new LinkedHashSet<>();
        for (ExaminedPiece piece : set.pieces()) {
            Brief brief = piece.brief();
            mind("stock", brief.stock().name(), brief.stock().cautions(), told);
            mind("glue", brief.adhesive().name(), List.of(brief.adhesive().caution()), told);
        }
        mind("above all", DEFER);
    }

    private void mind(String label, String of, List<Caution> cautions, Set<String> told) {
        for (Caution caution : cautions) {
            String text = of + ": " + caution.text();
            if (told.add(text)) {
                mind(label, text);
            }
        }
    }

    private void mind(String label, String text) {
        paper.row("Mind", label, text);
    }
}
