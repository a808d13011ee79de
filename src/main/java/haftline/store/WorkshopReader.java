package haftline.store;

import static haftline.store.WorkshopKeys.*;

import haftline.measure.NumberText;
import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import haftline.stock.Catalogue;
import haftline.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a workshop document: what it does not say is common practice. */
final class WorkshopReader {
    private WorkshopReader() {}

    /**
     * Reads a workshop.
     *
     * @param stock the catalogue that keys of stock must stand in, or empty where there is none to
     *     look them up in
     */
    static Optional<Workshop> read(MapReader map, Optional<Catalogue<Stock>> stock) {
        Workshop usual = Workshop.COMMON_PRACTICE;
        map.optionalText(NAME);
        map.optionalText(NOTE);
        var files = map.map(FILES).flatMap(m -> files(m, usual.files()));
        TemplateSettings usualHere =
                Workshop.commonPractice(files.orElse(usual.files()).paper()).templates();
        var templates = map.map(TEMPLATES).flatMap(m -> templates(m, usualHere));
        var lengths =
                map.map(StockLengthsKeys.STOCK_LENGTHS)
                        .flatMap(m -> StockLengthsReader.read(m, stock));
        var rates = map.map(RatesKeys.RATES).flatMap(RatesReader::read);
        return map.build(
                () ->
                        new Workshop(
                                templates.orElse(usualHere),
                                files.orElse(usual.files()),
                                lengths,
                                rates));
    }

    private static Optional<TemplateSettings> templates(MapReader map, TemplateSettings usual) {
        var cutting = cutting(map, usual.cutting());
        var sheet = map.map(SHEET).flatMap(m -> sheet(m, usual.sheet()));
        var lettering = map.word(LETTERING, TemplateSettings.Lettering.values());
        var gauges = map.map(GAUGES).flatMap(m -> gauges(m, usual.gauges()));
        var copying = map.map(COPYING).flatMap(m -> copying(m, usual.copying()));
        return map.build(
                () ->
                        new TemplateSettings(
                                cutting.orElse(usual.cutting()),
                                sheet.orElse(usual.sheet()),
                                lettering.orElse(usual.lettering()),
                                gauges.orElse(usual.gauges()),
                                copying.orElse(usual.copying())));
    }

    private static Optional<TemplateSettings.Cutting> cutting(
            MapReader map, TemplateSettings.Cutting usual) {
        var tool = map.word(TOOL, TemplateSettings.Tool.values());
        double kerf =
                map.map(LASER).map(m -> m.length(KERF, usual.kerfMm())).orElse(usual.kerfMm());
        Optional<MapReader> router = map.map(ROUTER);
        double bit = router.map(m -> m.length(BIT, usual.bitMm())).orElse(usual.bitMm());
        boolean relieved =
                router.map(m -> m.yesNo(RELIEVED, usual.cornersRelieved()))
                        .orElse(usual.cornersRelieved());
        return map.build(
                () -> new TemplateSettings.Cutting(tool.orElse(usual.tool()), kerf, bit, relieved));
    }

    private static Optional<TemplateSettings.Sheet> sheet(
            MapReader map, TemplateSettings.Sheet usual) {
        double width = map.length(WIDTH, usual.widthMm());
        double height = map.length(HEIGHT, usual.heightMm());
        double margin = map.length(MARGIN, usual.marginMm());
        double gap = map.length(GAP, usual.gapMm());
        double thickness = map.length(THICKNESS, usual.thicknessMm());
        double room = (Math.min(width, height) - TemplateSettings.Sheet.LEAST_ROOM_MM) / 2;
        map.require(
                margin <= room,
                MARGIN,
                "at most " + NumberText.upTo(room, 3) + " mm, which leaves room on the sheet");
        return map.build(() -> new TemplateSettings.Sheet(width, height, margin, gap, thickness));
    }

    private static Optional<TemplateSettings.Gauges> gauges(
            MapReader map, TemplateSettings.Gauges usual) {
        boolean profile = map.yesNo(PROFILE, usual.profile());
        boolean slots = map.yesNo(SLOTS, usual.slots());
        boolean rod = map.yesNo(STORY_ROD, usual.storyRod());
        var cards = map.word(CARDS, TemplateSettings.Gauges.Cards.values());
        var register = map.word(REGISTER, TemplateSettings.Gauges.Register.values());
        double relief = map.length(RELIEF, usual.reliefMm());
        double clearance = map.length(CLEARANCE, usual.clearanceMm());
        double over = map.length(SLOTS_OVER, usual.slotsOverMm());
        double tolerance = map.length(TENON_TOLERANCE, usual.tenonToleranceMm());
        double hole = map.length(HANGING_HOLE, usual.hangingHoleMm());
        return map.build(
                () ->
                        new TemplateSettings.Gauges(
                                profile,
                                slots,
                                rod,
                                cards.orElse(usual.cards()),
                                register.orElse(usual.register()),
                                relief,
                                clearance,
                                over,
                                tolerance,
                                hole));
    }

    private static Optional<TemplateSettings.Copying> copying(
            MapReader map, TemplateSettings.Copying usual) {
        boolean made = map.yesNo(MADE, usual.made());
        var sides = map.word(SIDES, TemplateSettings.Copying.Sides.values());
        double back = map.length(BACK, usual.backMm());
        double runOn = map.length(RUN_ON, usual.runOnMm());
        double runOff = map.length(RUN_OFF, usual.runOffMm());
        double ratio = map.number(RADIAL_RATIO, usual.radialRatio());
        OptionalDouble angle = map.optionalNumber(CUTTER_ANGLE);
        double clearance = map.number(CUTTER_CLEARANCE, usual.cutterClearanceDeg());
        List<TemplateSettings.Hole> holes = new ArrayList<>();
        map.maps(HOLES).forEach(each -> hole(each).ifPresent(holes::add));
        return map.build(
                () ->
                        new TemplateSettings.Copying(
                                made,
                                sides.orElse(usual.sides()),
                                back,
                                runOn,
                                runOff,
                                ratio,
                                angle,
                                clearance,
                                map.has(HOLES) ? holes : usual.holes()));
    }

    private static Optional<TemplateSettings.Hole> hole(MapReader map) {
        var from = map.word(FROM, TemplateSettings.Hole.End.values());
        double beyond = map.length(BEYOND, 0);
        double height = map.length(HOLE_HEIGHT, 0);
        double diameter = map.length(HOLE_DIAMETER, 1);
        return map.build(
                () -> new TemplateSettings.Hole(from.orElseThrow(), beyond, height, diameter));
    }

    private static Optional<FileSettings> files(MapReader map, FileSettings usual) {
        var dxf = map.word(DXF, FileSettings.Dxf.values());
        boolean hairlines = map.yesNo(HAIRLINES, usual.hairlines());
        var paper = map.word(PAPER, FileSettings.Paper.values());
        var printer = map.map(PRINTER).flatMap(m -> printer(m, usual.printer()));
        return map.build(
                () ->
                        new FileSettings(
                                dxf.orElse(usual.dxf()),
                                hairlines,
                                paper.orElse(usual.paper()),
                                printer.orElse(usual.printer())));
    }

    private static Optional<FileSettings.Printer> printer(
            MapReader map, FileSettings.Printer usual) {
        double shortEdge = map.length(SHORT_EDGE, usual.shortEdgeBarMm());
        double longEdge = map.length(LONG_EDGE, usual.longEdgeBarMm());
        return map.build(() -> new FileSettings.Printer(shortEdge, longEdge));
    }
}
