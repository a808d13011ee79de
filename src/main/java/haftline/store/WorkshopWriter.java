package haftline.store;

import static haftline.store.WorkshopKeys.*;

import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;

/** A workshop as a document that says only where it differs from common practice. */
final class WorkshopWriter {
    private WorkshopWriter() {}

    /**
     * The document.
     *
     * @param workshop the workshop
     * @param old the text that it takes the place of, whose name and note it keeps
     */
    static Tree.Fields tree(Workshop workshop, OldText old) {
        Workshop usual = Workshop.COMMON_PRACTICE;
        TemplateSettings usualTemplates =
                Workshop.commonPractice(workshop.files().paper()).templates();
        Tree.Fields tree = Document.head(KIND);
        old.text(OldText.path("", NAME.name())).ifPresent(name -> tree.text(NAME, name));
        old.text(OldText.path("", NOTE.name())).ifPresent(note -> tree.note(NOTE, note));
        tree.unless(
                workshop.templates().equals(usualTemplates),
                TEMPLATES,
                templates(workshop.templates(), usualTemplates));
        tree.unless(
                workshop.files().equals(usual.files()),
                FILES,
                files(workshop.files(), usual.files()));
        workshop.stockLengths()
                .ifPresent(
                        own ->
                                tree.put(
                                        StockLengthsKeys.STOCK_LENGTHS,
                                        RatesWriter.stockLengths(own)));
        workshop.rates().ifPresent(own -> tree.put(RatesKeys.RATES, RatesWriter.rates(own)));
        return tree;
    }

    private static Tree.Fields templates(TemplateSettings own, TemplateSettings usual) {
        TemplateSettings.Cutting cutting = own.cutting();
        TemplateSettings.Cutting common = usual.cutting();
        Tree.Fields laser = Tree.Fields.flat().number(KERF, cutting.kerfMm(), common.kerfMm());
        Tree.Fields router =
                Tree.Fields.flat()
                        .number(BIT, cutting.bitMm(), common.bitMm())
                        .yesNo(RELIEVED, cutting.cornersRelieved(), common.cornersRelieved());
        return word(Tree.Fields.tall(), TOOL, cutting.tool(), common.tool())
                .unless(cutting.kerfMm() == common.kerfMm(), LASER, laser)
                .unless(
                        cutting.bitMm() == common.bitMm()
                                && cutting.cornersRelieved() == common.cornersRelieved(),
                        ROUTER,
                        router)
                .unless(own.sheet().equals(usual.sheet()), SHEET, sheet(own.sheet(), usual.sheet()))
                .unless(
                        own.lettering() == usual.lettering(),
                        LETTERING,
                        new Tree.Word(MapReader.written(own.lettering())))
                .unless(
                        own.gauges().equals(usual.gauges()),
                        GAUGES,
                        gauges(own.gauges(), usual.gauges()))
                .unless(
                        own.copying().equals(usual.copying()),
                        COPYING,
                        copying(own.copying(), usual.copying()));
    }

    private static Tree.Fields word(Tree.Fields tree, Key key, Enum<?> own, Enum<?> usual) {
        return tree.unless(own == usual, key, new Tree.Word(MapReader.written(own)));
    }

    private static Tree.Fields sheet(TemplateSettings.Sheet own, TemplateSettings.Sheet usual) {
        return Tree.Fields.flat()
                .number(WIDTH, own.widthMm(), usual.widthMm())
                .number(HEIGHT, own.heightMm(), usual.heightMm())
                .number(MARGIN, own.marginMm(), usual.marginMm())
                .number(GAP, own.gapMm(), usual.gapMm())
                .number(THICKNESS, own.thicknessMm(), usual.thicknessMm());
    }

    private static Tree.Fields gauges(TemplateSettings.Gauges own, TemplateSettings.Gauges usual) {
        Tree.Fields tree =
                Tree.Fields.flat()
                        .yesNo(PROFILE, own.profile(), usual.profile())
                        .yesNo(SLOTS, own.slots(), usual.slots())
                        .yesNo(STORY_ROD, own.storyRod(), usual.storyRod());
        word(tree, CARDS, own.cards(), usual.cards());
        return word(tree, REGISTER, own.register(), usual.register())
                .number(RELIEF, own.reliefMm(), usual.reliefMm())
                .number(CLEARANCE, own.clearanceMm(), usual.clearanceMm())
                .number(SLOTS_OVER, own.slotsOverMm(), usual.slotsOverMm())
                .number(TENON_TOLERANCE, own.tenonToleranceMm(), usual.tenonToleranceMm())
                .number(HANGING_HOLE, own.hangingHoleMm(), usual.hangingHoleMm());
    }

    private static Tree.Fields copying(
            TemplateSettings.Copying own, TemplateSettings.Copying usual) {
        Tree.Fields tree = Tree.Fields.flat().yesNo(MADE, own.made(), usual.made());
        word(tree, SIDES, own.sides(), usual.sides())
                .number(BACK, own.backMm(), usual.backMm())
                .number(RUN_ON, own.runOnMm(), usual.runOnMm())
                .number(RUN_OFF, own.runOffMm(), usual.runOffMm())
                .number(RADIAL_RATIO, own.radialRatio(), usual.radialRatio());
        own.cutterAngleDeg().ifPresent(angle -> tree.number(CUTTER_ANGLE, angle));
        return tree.number(CUTTER_CLEARANCE, own.cutterClearanceDeg(), usual.cutterClearanceDeg())
                .unless(
                        own.holes().equals(usual.holes()),
                        HOLES,
                        Tree.Rows.flat(own.holes().stream().map(WorkshopWriter::hole).toList()));
    }

    private static Tree.Fields hole(TemplateSettings.Hole hole) {
        return Tree.Fields.flat()
                .word(FROM, hole.from())
                .number(BEYOND, hole.beyondMm())
                .number(HOLE_HEIGHT, hole.heightMm())
                .number(HOLE_DIAMETER, hole.diameterMm());
    }

    private static Tree.Fields files(FileSettings own, FileSettings usual) {
        FileSettings.Printer printer = own.printer();
        return word(Tree.Fields.flat(), DXF, own.dxf(), usual.dxf())
                .yesNo(HAIRLINES, own.hairlines(), usual.hairlines())
                .unless(own.paper() == usual.paper(), PAPER, new Tree.Word(own.paper().label()))
                .unless(
                        printer.equals(usual.printer()),
                        PRINTER,
                        Tree.Fields.flat()
                                .number(
                                        SHORT_EDGE,
                                        printer.shortEdgeBarMm(),
                                        usual.printer().shortEdgeBarMm())
                                .number(
                                        LONG_EDGE,
                                        printer.longEdgeBarMm(),
                                        usual.printer().longEdgeBarMm()));
    }
}
