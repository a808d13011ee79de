package haftline.ui.model;

import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.handle.Rules;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A rule of the maker's, as the rules file names it.
 *
 * @param group its group in the file
 * @param key its key in the group
 * @param value reads it
 * @param times what the finding's limit is of it: a glue line counts on both sides
 */
record RuleKey(String group, String key, ToDoubleFunction<Rules> value, double times) {
    private static final double SAME = 1e-9;

    private static RuleKey of(String group, String key, ToDoubleFunction<Rules> value) {
        return new RuleKey(group, key, value, 1);
    }

    private static final List<RuleKey> WALLS =
            List.of(
                    of("walls", "tenon_wood", r -> r.walls().tenonWoodMm()),
                    of("walls", "tenon_plastic", r -> r.walls().tenonPlasticMm()),
                    of("walls", "body_wood", r -> r.walls().bodyWoodMm()),
                    of("walls", "body_plastic", r -> r.walls().bodyPlasticMm()),
                    of("walls", "cap", r -> r.walls().capMm()),
                    of("walls", "stop", r -> r.walls().stopMm()));

    private static final List<RuleKey> FITS =
            List.of(
                    new RuleKey("fits", "glue_line_thin", r -> r.fits().lineThinMm(), 2),
                    new RuleKey("fits", "glue_line_thick", r -> r.fits().lineThickMm(), 2),
                    of("fits", "loose", r -> r.fits().looseMm()),
                    of("fits", "sleeve", r -> r.fits().sleeveMm()),
                    of("fits", "bonded_over", r -> r.fits().bondedOverMm()));

    private static final List<RuleKey> BALANCE =
            List.of(
                    of("balance", "from", r -> r.balance().lowMm()),
                    of("balance", "to", r -> r.balance().highMm()));

    /**
     * The rule that a finding goes by: of those that its code is held against, the one that is its
     * limit.
     */
    static Optional<RuleKey> of(Finding finding, Rules rules, boolean isWood) {
        return candidates(finding, isWood).stream()
                .filter(
                        each ->
                                Double.isNaN(finding.limit())
                                        || Math.abs(
                                                        each.times()
                                                                        * each.value()
                                                                                .applyAsDouble(
                                                                                        rules)
                                                                - finding.limit())
                                                < SAME)
                .findFirst();
    }

    private static List<RuleKey> candidates(Finding finding, boolean isWood) {
        if (finding.code() == Code.WALL_TOO_THIN
                || finding.code() == Code.BORE_THROUGH_DETAIL
                || finding.code() == Code.BORE_BOTTOM_TOO_NEAR) {
            return walls(finding, isWood);
        }
        return switch (finding.code()) {
            case BORES_MEET -> List.of(of("bores", "web", r -> r.bores().webMm()));
            case SPLIT_INDEX -> List.of(of("fits", "split_warn", r -> r.fits().splitWarn()));
            case FERRULE_LOOSE_IN_WINTER ->
                    List.of(of("tenons", "loose_gap", r -> r.tenons().looseGapMm()));
            case FERRULE_OVAL -> List.of(of("readings", "oval", r -> r.readings().ovalMm()));
            case READINGS_DISAGREE ->
                    List.of(of("readings", "spread", r -> r.readings().spreadMm()));
            case BORE_LOOSE, BORE_TIGHT, TENON_FIT -> FITS;
            case TOO_STEEP_TO_COPY ->
                    List.of(of("copying", "steepest", r -> r.copying().steepestDeg()));
            case HOLLOW_TIGHTER_THAN_CUTTER ->
                    List.of(of("copying", "nose", r -> r.copying().noseMm()));
            case BALANCE_OFF_TARGET -> BALANCE;
            default -> List.of();
        };
    }

    private static List<RuleKey> walls(Finding finding, boolean isWood) {
        String own =
                switch (finding.place()) {
                    case TENON -> isWood ? "tenon_wood" : "tenon_plastic";
                    case CAP -> "cap";
                    default -> isWood ? "body_wood" : "body_plastic";
                };
        return WALLS.stream().filter(w -> w.key().equals(own) || w.key().equals("stop")).toList();
    }
}
