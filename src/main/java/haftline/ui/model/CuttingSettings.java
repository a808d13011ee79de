package haftline.ui.model;

import haftline.edit.WorkshopEdits;
import haftline.set.FileSettings;
import haftline.set.TemplateSettings.Cutting;
import haftline.set.TemplateSettings.Lettering;
import haftline.set.TemplateSettings.Sheet;
import haftline.set.TemplateSettings.Tool;
import haftline.ui.model.Setting.Picture;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;

/** What cuts, out of what, and how files of it are written. */
final class CuttingSettings {
    private static final Limits SIDE = new Limits(20, 5000);
    private static final Limits BAR =
            new Limits(FileSettings.Printer.LEAST_BAR_MM, FileSettings.Printer.GREATEST_BAR_MM);

    private final WorkshopFields fields;

    CuttingSettings(WorkshopFields fields) {
        this.fields = fields;
    }

    private Tool tool() {
        return fields.templates().cutting().tool();
    }

    List<Setting> tools() {
        Row tool =
                fields.choice(
                        "tool",
                        "",
                        Tool.values(),
                        CuttingSettings::word,
                        this::tool,
                        chosen ->
                                WorkshopEdits.templates(
                                        "cut with " + word(chosen),
                                        t ->
                                                t.withCutting(
                                                        cutting(
                                                                t.cutting(),
                                                                chosen,
                                                                t.cutting().kerfMm(),
                                                                t.cutting().bitMm()))));
        Row kerf =
                fields.length(
                        "kerf",
                        "width of the cut: cut a square, measure it, enter what is missing",
                        new Limits(0, 2),
                        t -> t.cutting().kerfMm(),
                        (t, mm) ->
                                t.withCutting(
                                        cutting(
                                                t.cutting(),
                                                t.cutting().tool(),
                                                mm,
                                                t.cutting().bitMm())));
        Row bit =
                fields.length(
                        "bit's diameter",
                        "",
                        new Limits(0.2, 30),
                        t -> t.cutting().bitMm(),
                        (t, mm) ->
                                t.withCutting(
                                        cutting(
                                                t.cutting(),
                                                t.cutting().tool(),
                                                t.cutting().kerfMm(),
                                                mm)));
        Row relieved =
                fields.tick(
                        "open square inside corners",
                        t -> t.cutting().cornersRelieved(),
                        (t, yes) ->
                                t.withCutting(
                                        new Cutting(
                                                t.cutting().tool(),
                                                t.cutting().kerfMm(),
                                                t.cutting().bitMm(),
                                                yes)));
        return List.of(
                Setting.of(tool).drawnAs(Picture.TOOL),
                Setting.of(kerf).where(() -> tool() == Tool.LASER),
                Setting.of(bit).where(() -> tool() == Tool.ROUTER),
                Setting.of(relieved).where(() -> tool() == Tool.ROUTER));
    }

    private static Cutting cutting(Cutting from, Tool tool, double kerfMm, double bitMm) {
        return new Cutting(tool, kerfMm, bitMm, from.cornersRelieved());
    }

    static String word(Tool tool) {
        return switch (tool) {
            case HAND_SAW -> "saw and file";
            case LASER -> "laser";
            case ROUTER -> "router";
        };
    }

    List<Setting> sheet() {
        return List.of(
                side(
                                "sheet's width",
                                "along the handles",
                                SIDE,
                                Sheet::widthMm,
                                (s, mm) -> sheet(s, mm, s.heightMm(), s.marginMm(), s.gapMm()))
                        .drawnAs(Picture.SHEET),
                side(
                        "sheet's height",
                        "",
                        SIDE,
                        Sheet::heightMm,
                        (s, mm) -> sheet(s, s.widthMm(), mm, s.marginMm(), s.gapMm())),
                side(
                        "margin",
                        "",
                        new Limits(0, 100),
                        Sheet::marginMm,
                        (s, mm) -> sheet(s, s.widthMm(), s.heightMm(), mm, s.gapMm())),
                side(
                        "gap between cards",
                        "",
                        new Limits(0, 50),
                        Sheet::gapMm,
                        (s, mm) -> sheet(s, s.widthMm(), s.heightMm(), s.marginMm(), mm)),
                side(
                        "thickness",
                        "noted on the cards",
                        new Limits(0.2, 25),
                        Sheet::thicknessMm,
                        (s, mm) ->
                                new Sheet(s.widthMm(), s.heightMm(), s.marginMm(), s.gapMm(), mm)));
    }

    private static Sheet sheet(
            Sheet from, double widthMm, double heightMm, double marginMm, double gapMm) {
        return new Sheet(widthMm, heightMm, marginMm, gapMm, from.thicknessMm());
    }

    private Setting side(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<Sheet> now,
            BiFunction<Sheet, Double, Sheet> set) {
        return Setting.of(
                fields.length(
                        label,
                        because,
                        range,
                        t -> now.applyAsDouble(t.sheet()),
                        (t, mm) -> t.withSheet(set.apply(t.sheet(), mm))));
    }

    List<Setting> lettering() {
        return List.of(
                Setting.of(
                                fields.choice(
                                        "written as",
                                        "nothing is cut by it",
                                        Lettering.values(),
                                        CuttingSettings::word,
                                        () -> fields.templates().lettering(),
                                        chosen ->
                                                fields.changed(
                                                        "lettering", t -> t.withLettering(chosen))))
                        .drawnAs(Picture.LETTERING));
    }

    private static String word(Lettering lettering) {
        return switch (lettering) {
            case STROKES -> "single strokes";
            case OUTLINES -> "outlines";
            case FONT -> "the reader's font";
            case NONE -> "no lettering";
        };
    }

    List<Setting> files() {
        return List.of(
                Setting.of(
                                fields.choice(
                                        "DXF files are for",
                                        "",
                                        FileSettings.Dxf.values(),
                                        CuttingSettings::word,
                                        () -> fields.shop().files().dxf(),
                                        chosen ->
                                                WorkshopEdits.files(
                                                        "change purpose of DXF",
                                                        f -> f.withDxf(chosen))))
                        .drawnAs(Picture.DXF),
                Setting.of(
                                fields.choice(
                                        "paper",
                                        "",
                                        FileSettings.Paper.values(),
                                        FileSettings.Paper::label,
                                        () -> fields.shop().files().paper(),
                                        chosen ->
                                                WorkshopEdits.files(
                                                        "print on " + chosen.label(),
                                                        f -> f.withPaper(chosen))))
                        .drawnAs(Picture.PRINT),
                Setting.of(
                        bar(
                                "bar along the short edge",
                                FileSettings.Printer::shortEdgeBarMm,
                                (p, mm) -> new FileSettings.Printer(mm, p.longEdgeBarMm()))),
                Setting.of(
                        bar(
                                "bar along the long edge",
                                FileSettings.Printer::longEdgeBarMm,
                                (p, mm) -> new FileSettings.Printer(p.shortEdgeBarMm(), mm))));
    }

    private Row bar(
            String label,
            ToDoubleFunction<FileSettings.Printer> now,
            BiFunction<FileSettings.Printer, Double, FileSettings.Printer> set) {
        return fields.fileLength(
                label,
                "what the bar of " + "100 mm measures on a print that was not corrected",
                BAR,
                f -> now.applyAsDouble(f.printer()),
                (f, mm) -> f.withPrinter(set.apply(f.printer(), mm)));
    }

    private static String word(FileSettings.Dxf dxf) {
        return switch (dxf) {
            case CUTTING -> "cutting";
            case DRAWING -> "drawing";
            case OLD_CONTROLLER -> "an old controller";
        };
    }
}
