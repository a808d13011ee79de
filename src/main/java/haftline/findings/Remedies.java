package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.measure.Units;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Remedies for findings. Each is tried on the handle before it is named: the changed choices are
 * resolved and figured anew, the finding must be gone, and nothing graver may have come.
 */
public final class Remedies {
    private final Finding finding;
    private final Figures figures;
    private final RemedySearch search;
    private final Units units;
    private final WallRemedies walls;
    private final BoreRemedies bores;
    private final PieceRemedies piece;
    private final ShapeRemedies shapes;
    private final RunRemedies runs;

    private Remedies(Finding finding, Figures figures, Units units, boolean atACost) {
        this.finding = finding;
        this.figures = figures;
        this.search = new RemedySearch(finding, figures, atACost);
        this.units = units;
        this.walls = new WallRemedies(finding, figures, search, units);
        this.bores = new BoreRemedies(finding, figures, search, units);
        this.piece = new PieceRemedies(finding, figures, search, units);
        this.shapes = new ShapeRemedies(finding, figures, search, units);
        this.runs = new RunRemedies(finding, figures, search, units);
    }

    /**
     * The least change that mends a finding.
     *
     * @param finding one of the findings on a handle
     * @param figures the figures of that handle
     * @param units unit of the lengths in the remedy's words
     * @return a remedy that was tried, or empty where no such change mends it; where each brings a
     *     warning that weighs less, one that says so
     */
    public static Optional<Remedy> of(Finding finding, Figures figures, Units units) {
        Optional<Remedy> clean = new Remedies(finding, figures, units, false).find();
        if (clean.isPresent() || finding.gravity() == Gravity.NOTE) {
            return clean;
        }
        return new Remedies(finding, figures, units, true).atACost();
    }

    private Optional<Remedy> atACost() {
        return find().flatMap(
                        remedy -> remedy.choices().map(changed -> remedy.with(cost(changed))));
    }

    /** The warnings that a change brings, in words. */
    private String cost(Choices changed) {
        Brief brief = figures.handle().brief();
        return Trial.of(brief.withChoices(changed)).stream()
                .flatMap(trial -> search.warningsOf(trial).stream())
                .map(now -> Words.message(now, brief.stock(), units))
                .map(
                        text ->
                                "but then "
                                        + Character.toLowerCase(text.charAt(0))
                                        + text.substring(1))
                .collect(Collectors.joining("; "));
    }

    private Optional<Remedy> find() {
        return switch (finding.code()) {
            case WALL_TOO_THIN, BORE_THROUGH_DETAIL ->
                    walls.thickenNode()
                            .or(bores::narrowerDrill)
                            .or(walls::drillTruer)
                            .or(walls::widerFerrule);
            case BORE_BOTTOM_TOO_NEAR -> walls.thickenNode().or(bores::shallower).or(piece::longer);
            case BORE_TOO_SHALLOW -> bores.deeper();
            case BORES_MEET -> bores.shallower().or(piece::longer);
            case TANG_LONGER_THAN_WOOD -> piece.longer();
            case PRESSED_IN_PLASTIC, PRESSED_WHERE_BONDED -> bores.bonded();
            case SPLIT_INDEX -> bores.widerDrill().or(bores::bonded);
            case BORE_LOOSE, BORE_TIGHT, DRILL_NOT_ON_RACK -> bores.ruleDrill();
            case TENON_FIT -> piece.ruleTenonDiameter();
            case SHOULDER_GAP -> piece.ruleTenonLength();
            case CAP_PROUD -> bores.deeperCap();
            case NOT_MONOTONE -> runs.withoutATurn();
            case TOO_SLENDER -> shapes.thicken();
            case TOO_THICK -> shapes.slim();
            case LENGTH_FOR_THE_HAND -> piece.relength();
            case BALANCE_OFF_TARGET -> piece.rebalance();
            case BLANK_TOO_SMALL -> shapes.intoTheBlank();
            default -> Optional.empty();
        };
    }
}
