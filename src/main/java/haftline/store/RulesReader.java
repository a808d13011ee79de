package haftline.store;

import static haftline.store.RulesKeys.*;

import haftline.handle.Rules;
import haftline.handle.Spreads;
import haftline.handle.Wander;
import java.util.Optional;

/** Reads a rules document: what it does not say is common practice. */
final class RulesReader {
    private RulesReader() {}

    static Optional<Rules> read(MapReader map) {
        Rules usual = Rules.COMMON_PRACTICE;
        map.optionalText(NAME);
        map.optionalText(NOTE);
        var lengths = map.map(LENGTHS).flatMap(m -> lengths(m, usual.lengths()));
        var fits = map.map(FITS).flatMap(m -> fits(m, usual.fits()));
        var bores = map.map(BORES).flatMap(m -> bores(m, usual.bores()));
        var tenons = map.map(TENONS).flatMap(m -> tenons(m, usual.tenons()));
        var walls = map.map(WALLS).flatMap(m -> walls(m, usual.walls()));
        Optional<Wander> wander = map.value(WanderReader.WANDER).flatMap(WanderReader::read);
        var balance = map.map(BALANCE).flatMap(m -> balance(m, usual.balance()));
        var blanks = map.map(BLANKS).flatMap(m -> blanks(m, usual.blanks()));
        var climate = map.map(CLIMATE).flatMap(m -> climate(m, usual.climate()));
        var copying = map.map(COPYING).flatMap(m -> copying(m, usual.copying()));
        var readings = map.map(READINGS).flatMap(m -> readings(m, usual.readings()));
        var spreads = map.map(SPREADS).flatMap(m -> spreads(m, usual.spreads()));
        return map.build(
                () ->
                        new Rules(
                                lengths.orElse(usual.lengths()),
                                fits.orElse(usual.fits()),
                                bores.orElse(usual.bores()),
                                tenons.orElse(usual.tenons()),
                                walls.orElse(usual.walls()),
                                wander.orElse(usual.wander()),
                                balance.orElse(usual.balance()),
                                blanks.orElse(usual.blanks()),
                                climate.orElse(usual.climate()),
                                copying.orElse(usual.copying()),
                                readings.orElse(usual.readings()),
                                spreads.orElse(usual.spreads())));
    }

    private static Optional<Rules.Lengths> lengths(MapReader map, Rules.Lengths usual) {
        double ratio = map.number(RATIO, usual.ratio());
        double slide = map.number(SLIDE, usual.slideShare());
        return map.build(() -> new Rules.Lengths(ratio, slide));
    }

    private static Optional<Rules.Fits> fits(MapReader map, Rules.Fits usual) {
        double pressedUnder = map.length(PRESSED_UNDER, usual.pressedUnderMm());
        double barbUnder = map.length(PRESSED_BARB_UNDER, usual.pressedBarbUnderMm());
        double flatLeast = map.number(PRESSED_FLAT_LEAST, usual.pressedFlatLeast());
        double bondedOver = map.length(BONDED_OVER, usual.bondedOverMm());
        double thin = map.length(GLUE_LINE_THIN, usual.lineThinMm());
        double thick = map.length(GLUE_LINE_THICK, usual.lineThickMm());
        double loose = map.length(LOOSE, usual.looseMm());
        double sleeve = map.length(SLEEVE, usual.sleeveMm());
        double split = map.number(SPLIT_WARN, usual.splitWarn());
        ordered(map, GLUE_LINE_THIN, thin, GLUE_LINE_THICK, thick);
        ordered(map, LOOSE, loose, SLEEVE, sleeve);
        return map.build(
                () ->
                        new Rules.Fits(
                                pressedUnder,
                                barbUnder,
                                flatLeast,
                                bondedOver,
                                thin,
                                thick,
                                loose,
                                sleeve,
                                split));
    }

    /** The lesser of a pair may not exceed the other; told at the one that the document gives. */
    private static void ordered(MapReader map, Key lesser, double less, Key greater, double more) {
        if (map.has(greater)) {
            map.require(less <= more, greater, KitReader.atLeast(lesser.name(), less));
        } else {
            map.require(less <= more, lesser, KitReader.atMost(greater.name(), more));
        }
    }

    private static Optional<Rules.Bores> bores(MapReader map, Rules.Bores usual) {
        double allowance = map.length(DEPTH_ALLOWANCE, usual.depthAllowanceMm());
        double capOver = map.length(CAP_OVER, usual.capOverMm());
        double capAllowance = map.length(CAP_ALLOWANCE, usual.capAllowanceMm());
        double angle = map.number(POINT_ANGLE, usual.pointAngleDeg());
        double eccentricity = map.length(ECCENTRICITY, usual.eccentricityMm());
        int steps = map.whole(MOST_STEPS, usual.mostSteps());
        double web = map.length(WEB, usual.webMm());
        return map.build(
                () ->
                        new Rules.Bores(
                                allowance, capOver, capAllowance, angle, eccentricity, steps, web));
    }

    private static Optional<Rules.Tenons> tenons(MapReader map, Rules.Tenons usual) {
        double bonded = map.length(BONDED_UNDER, usual.bondedUnderMm());
        double driven = map.length(DRIVEN_OVER, usual.drivenOverMm());
        double plastic = map.length(PLASTIC_UNDER, usual.plasticUnderMm());
        double shorter = map.length(SHORT, usual.shortMm());
        boolean dry = map.yesNo(DRIVEN, usual.driven());
        double gap = map.length(LOOSE_GAP, usual.looseGapMm());
        return map.build(() -> new Rules.Tenons(bonded, driven, plastic, shorter, dry, gap));
    }

    private static Optional<Rules.Walls> walls(MapReader map, Rules.Walls usual) {
        double tenonWood = map.length(TENON_WOOD, usual.tenonWoodMm());
        double tenonPlastic = map.length(TENON_PLASTIC, usual.tenonPlasticMm());
        double bodyWood = map.length(BODY_WOOD, usual.bodyWoodMm());
        double bodyPlastic = map.length(BODY_PLASTIC, usual.bodyPlasticMm());
        double cap = map.length(CAP, usual.capMm());
        double stop = map.length(STOP, usual.stopMm());
        return map.build(
                () -> new Rules.Walls(tenonWood, tenonPlastic, bodyWood, bodyPlastic, cap, stop));
    }

    private static Optional<Rules.Balance> balance(MapReader map, Rules.Balance usual) {
        double from = map.length(FROM, usual.lowMm());
        double to = map.length(TO, usual.highMm());
        ordered(map, FROM, from, TO, to);
        return map.build(() -> new Rules.Balance(from, to));
    }

    private static Optional<Rules.Blanks> blanks(MapReader map, Rules.Blanks usual) {
        double centre = map.length(CENTRE_ERROR, usual.centreErrorMm());
        double mouth = map.length(MOUTH_ERROR, usual.mouthErrorMm());
        double cleanUp = map.length(CLEAN_UP, usual.cleanUpMm());
        double facing = map.length(FACING, usual.facingMm());
        double parting = map.length(PARTING, usual.partingMm());
        double sanding = map.length(SANDING, usual.sandingMm());
        return map.build(() -> new Rules.Blanks(centre, mouth, cleanUp, facing, parting, sanding));
    }

    private static Optional<Rules.Climate> climate(MapReader map, Rules.Climate usual) {
        double[] shop = air(map.map(SHOP), usual.shopC(), usual.shopRh());
        double[] dry = air(map.map(DRY), usual.dryC(), usual.dryRh());
        double[] damp = air(map.map(DAMP), usual.dampC(), usual.dampRh());
        return map.build(
                () -> new Rules.Climate(shop[0], shop[1], dry[0], dry[1], damp[0], damp[1]));
    }

    /** Temperature and humidity. */
    private static double[] air(Optional<MapReader> map, double usualC, double usualRh) {
        return new double[] {
            map.map(m -> m.number(TEMPERATURE, usualC)).orElse(usualC),
            map.map(m -> m.number(HUMIDITY, usualRh)).orElse(usualRh)
        };
    }

    private static Optional<Rules.Copying> copying(MapReader map, Rules.Copying usual) {
        double nose = map.length(NOSE, usual.noseMm());
        double follower = map.length(FOLLOWER, usual.followerMm());
        double steepest = map.number(STEEPEST, usual.steepestDeg());
        return map.build(() -> new Rules.Copying(nose, follower, steepest));
    }

    private static Optional<Rules.Readings> readings(MapReader map, Rules.Readings usual) {
        double spread = map.length(SPREAD, usual.spreadMm());
        double oval = map.length(OVAL, usual.ovalMm());
        return map.build(() -> new Rules.Readings(spread, oval));
    }

    private static Optional<Spreads> spreads(MapReader map, Spreads usual) {
        double turned = map.length(TURNED, usual.turnedMm());
        double tenon = map.length(TENON, usual.tenonMm());
        double depth = map.length(DEPTH, usual.depthMm());
        double oversize = map.length(OVERSIZE, usual.oversizeMm());
        double within = map.number(WANDER_WITHIN, usual.wanderWithin());
        double wood = map.number(DENSITY_WOOD, usual.densityWood());
        double plastic = map.number(DENSITY_PLASTIC, usual.densityPlastic());
        double reckoned = map.number(RECKONED, usual.reckoned());
        return map.build(
                () -> new Spreads(turned, tenon, depth, oversize, within, wood, plastic, reckoned));
    }
}
