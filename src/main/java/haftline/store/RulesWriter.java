package haftline.store;

import static haftline.store.RulesKeys.*;

import haftline.handle.Rules;
import haftline.handle.Spreads;
import haftline.handle.Wander;
import java.util.function.BiFunction;

/** Rules as a document that says only where they differ from common practice. */
final class RulesWriter {
    private static final Rules USUAL = Rules.COMMON_PRACTICE;

    private RulesWriter() {}

    /**
     * The document.
     *
     * @param rules the rules
     * @param old the text that it takes the place of, whose name and note it keeps
     */
    static Tree.Fields tree(Rules rules, OldText old) {
        Tree.Fields tree = Document.head(KIND);
        old.text(OldText.path("", NAME.name())).ifPresent(name -> tree.text(NAME, name));
        old.text(OldText.path("", NOTE.name())).ifPresent(note -> tree.note(NOTE, note));
        group(tree, LENGTHS, rules.lengths(), USUAL.lengths(), RulesWriter::lengths);
        group(tree, FITS, rules.fits(), USUAL.fits(), RulesWriter::fits);
        group(tree, BORES, rules.bores(), USUAL.bores(), RulesWriter::bores);
        group(tree, TENONS, rules.tenons(), USUAL.tenons(), RulesWriter::tenons);
        group(tree, WALLS, rules.walls(), USUAL.walls(), RulesWriter::walls);
        tree.unless(
                rules.wander().equals(USUAL.wander()), WanderReader.WANDER, wander(rules.wander()));
        group(tree, BALANCE, rules.balance(), USUAL.balance(), RulesWriter::balance);
        group(tree, BLANKS, rules.blanks(), USUAL.blanks(), RulesWriter::blanks);
        group(tree, CLIMATE, rules.climate(), USUAL.climate(), RulesWriter::climate);
        group(tree, COPYING, rules.copying(), USUAL.copying(), RulesWriter::copying);
        group(tree, READINGS, rules.readings(), USUAL.readings(), RulesWriter::readings);
        group(tree, SPREADS, rules.spreads(), USUAL.spreads(), RulesWriter::spreads);
        return tree;
    }

    private static <R> void group(
            Tree.Fields tree, Key key, R own, R usual, BiFunction<R, R, Tree.Fields> written) {
        tree.unless(own.equals(usual), key, written.apply(own, usual));
    }

    /** By how it is drilled, where that says the same. */
    static Tree wander(Wander wander) {
        return WanderReader.PRESETS.entrySet().stream()
                .filter(preset -> preset.getValue().equals(wander))
                .findFirst()
                .<Tree>map(preset -> new Tree.Word(preset.getKey()))
                .orElseGet(
                        () ->
                                Tree.Fields.flat()
                                        .number(WanderReader.AT_FACE, wander.startMm())
                                        .number(WanderReader.PER_MM, wander.slope()));
    }

    private static Tree.Fields lengths(Rules.Lengths own, Rules.Lengths usual) {
        return Tree.Fields.flat()
                .number(RATIO, own.ratio(), usual.ratio())
                .number(SLIDE, own.slideShare(), usual.slideShare());
    }

    private static Tree.Fields fits(Rules.Fits own, Rules.Fits usual) {
        return Tree.Fields.flat()
                .number(PRESSED_UNDER, own.pressedUnderMm(), usual.pressedUnderMm())
                .number(PRESSED_BARB_UNDER, own.pressedBarbUnderMm(), usual.pressedBarbUnderMm())
                .number(PRESSED_FLAT_LEAST, own.pressedFlatLeast(), usual.pressedFlatLeast())
                .number(BONDED_OVER, own.bondedOverMm(), usual.bondedOverMm())
                .number(GLUE_LINE_THIN, own.lineThinMm(), usual.lineThinMm())
                .number(GLUE_LINE_THICK, own.lineThickMm(), usual.lineThickMm())
                .number(LOOSE, own.looseMm(), usual.looseMm())
                .number(SLEEVE, own.sleeveMm(), usual.sleeveMm())
                .number(SPLIT_WARN, own.splitWarn(), usual.splitWarn());
    }

    private static Tree.Fields bores(Rules.Bores own, Rules.Bores usual) {
        return Tree.Fields.flat()
                .number(DEPTH_ALLOWANCE, own.depthAllowanceMm(), usual.depthAllowanceMm())
                .number(CAP_OVER, own.capOverMm(), usual.capOverMm())
                .number(CAP_ALLOWANCE, own.capAllowanceMm(), usual.capAllowanceMm())
                .number(POINT_ANGLE, own.pointAngleDeg(), usual.pointAngleDeg())
                .number(ECCENTRICITY, own.eccentricityMm(), usual.eccentricityMm())
                .number(MOST_STEPS, own.mostSteps(), usual.mostSteps())
                .number(WEB, own.webMm(), usual.webMm());
    }

    private static Tree.Fields tenons(Rules.Tenons own, Rules.Tenons usual) {
        return Tree.Fields.flat()
                .number(BONDED_UNDER, own.bondedUnderMm(), usual.bondedUnderMm())
                .number(DRIVEN_OVER, own.drivenOverMm(), usual.drivenOverMm())
                .number(PLASTIC_UNDER, own.plasticUnderMm(), usual.plasticUnderMm())
                .number(SHORT, own.shortMm(), usual.shortMm())
                .yesNo(DRIVEN, own.driven(), usual.driven())
                .number(LOOSE_GAP, own.looseGapMm(), usual.looseGapMm());
    }

    private static Tree.Fields walls(Rules.Walls own, Rules.Walls usual) {
        return Tree.Fields.flat()
                .number(TENON_WOOD, own.tenonWoodMm(), usual.tenonWoodMm())
                .number(TENON_PLASTIC, own.tenonPlasticMm(), usual.tenonPlasticMm())
                .number(BODY_WOOD, own.bodyWoodMm(), usual.bodyWoodMm())
                .number(BODY_PLASTIC, own.bodyPlasticMm(), usual.bodyPlasticMm())
                .number(CAP, own.capMm(), usual.capMm())
                .number(STOP, own.stopMm(), usual.stopMm());
    }

    private static Tree.Fields balance(Rules.Balance own, Rules.Balance usual) {
        return Tree.Fields.flat()
                .number(FROM, own.lowMm(), usual.lowMm())
                .number(TO, own.highMm(), usual.highMm());
    }

    private static Tree.Fields blanks(Rules.Blanks own, Rules.Blanks usual) {
        return Tree.Fields.flat()
                .number(CENTRE_ERROR, own.centreErrorMm(), usual.centreErrorMm())
                .number(MOUTH_ERROR, own.mouthErrorMm(), usual.mouthErrorMm())
                .number(CLEAN_UP, own.cleanUpMm(), usual.cleanUpMm())
                .number(FACING, own.facingMm(), usual.facingMm())
                .number(PARTING, own.partingMm(), usual.partingMm())
                .number(SANDING, own.sandingMm(), usual.sandingMm());
    }

    private static Tree.Fields climate(Rules.Climate own, Rules.Climate usual) {
        Tree.Fields tree = Tree.Fields.flat();
        air(tree, SHOP, own.shopC(), usual.shopC(), own.shopRh(), usual.shopRh());
        air(tree, DRY, own.dryC(), usual.dryC(), own.dryRh(), usual.dryRh());
        air(tree, DAMP, own.dampC(), usual.dampC(), own.dampRh(), usual.dampRh());
        return tree;
    }

    private static void air(
            Tree.Fields tree, Key key, double c, double usualC, double rh, double usualRh) {
        Tree.Fields air =
                Tree.Fields.flat().number(TEMPERATURE, c, usualC).number(HUMIDITY, rh, usualRh);
        tree.unless(c == usualC && rh == usualRh, key, air);
    }

    private static Tree.Fields copying(Rules.Copying own, Rules.Copying usual) {
        return Tree.Fields.flat()
                .number(NOSE, own.noseMm(), usual.noseMm())
                .number(FOLLOWER, own.followerMm(), usual.followerMm())
                .number(STEEPEST, own.steepestDeg(), usual.steepestDeg());
    }

    private static Tree.Fields readings(Rules.Readings own, Rules.Readings usual) {
        return Tree.Fields.flat()
                .number(SPREAD, own.spreadMm(), usual.spreadMm())
                .number(OVAL, own.ovalMm(), usual.ovalMm());
    }

    private static Tree.Fields spreads(Spreads own, Spreads usual) {
        return Tree.Fields.flat()
                .number(TURNED, own.turnedMm(), usual.turnedMm())
                .number(TENON, own.tenonMm(), usual.tenonMm())
                .number(DEPTH, own.depthMm(), usual.depthMm())
                .number(OVERSIZE, own.oversizeMm(), usual.oversizeMm())
                .number(WANDER_WITHIN, own.wanderWithin(), usual.wanderWithin())
                .number(DENSITY_WOOD, own.densityWood(), usual.densityWood())
                .number(DENSITY_PLASTIC, own.densityPlastic(), usual.densityPlastic())
                .number(RECKONED, own.reckoned(), usual.reckoned());
    }
}
