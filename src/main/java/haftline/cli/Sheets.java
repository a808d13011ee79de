package haftline.cli;

import haftline.drawing.Drawing;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.measure.Units;
import haftline.sheet.CareCard;
import haftline.sheet.InstructionSheet;
import haftline.sheet.LatheSheet;
import haftline.sheet.Remark;
import haftline.sheet.SheetPiece;
import haftline.sheet.html.CareHtml;
import haftline.sheet.html.InstructionHtml;
import haftline.sheet.html.LatheHtml;
import haftline.sheet.page.CarePages;
import haftline.sheet.page.Field;
import haftline.sheet.page.InstructionPages;
import haftline.sheet.page.LathePage;
import haftline.write.PlannedFile;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** The papers of a piece: lathe sheet, instruction sheet, care card. */
final class Sheets {
    private final FileGroup group;
    private final Wanted wanted;
    private final Units units;
    private final Field field;

    private Sheets(FileGroup group, Wanted wanted, Units units, Field field) {
        this.group = group;
        this.wanted = wanted;
        this.units = units;
        this.field = field;
    }

    /** Adds the papers of a piece that are wanted; none of a piece that cannot be drawn. */
    static void addTo(
            FileGroup group,
            String name,
            ExaminedSet set,
            ExaminedPiece piece,
            Wanted wanted,
            Units units,
            Field field) {
        Sheets sheets = new Sheets(group, wanted, units, field);
        source(set, piece).ifPresent(source -> sheets.add(name, source));
    }

    /** A piece as the sheets want it; empty where it cannot be drawn. */
    static Optional<SheetPiece> source(ExaminedSet set, ExaminedPiece piece) {
        return piece.figures()
                .map(
                        figures ->
                                new SheetPiece(
                                        set.name(),
                                        set.batch(),
                                        figures,
                                        piece.guidance().speeds(),
                                        piece.guidance().mixedMorePercent(),
                                        piece.findings().stream()
                                                .map(told -> remark(told, piece))
                                                .toList()));
    }

    /** What the stock does to people stands among the cautions, in full. */
    private static Remark remark(Told told, ExaminedPiece piece) {
        Finding finding = told.finding();
        String message =
                finding.code() == Code.STOCK_IRRITATES
                        ? "Cautions are known of "
                                + piece.brief().stock().name()
                                + ": see the cautions"
                        : told.message();
        OptionalDouble atX =
                Double.isNaN(finding.atX())
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(finding.atX());
        return new Remark(finding.gravity(), message, atX, told.remedy());
    }

    private void add(String name, SheetPiece piece) {
        Supplier<LatheSheet> lathe = new Once<>(() -> LatheSheet.of(piece, units));
        add(
                Part.SHEET,
                name + "-lathe",
                piece.name() + ", lathe sheet",
                () -> LathePage.pages(lathe.get(), field),
                () -> LatheHtml.of(lathe.get(), field));
        // What is not to be made has no buyer to instruct.
        if (!piece.stops().isEmpty()) {
            return;
        }
        Supplier<InstructionSheet> steps = new Once<>(() -> InstructionSheet.of(piece, units));
        add(
                Part.INSTRUCTIONS,
                name + "-instructions",
                piece.name() + ", instructions",
                () -> InstructionPages.pages(steps.get(), field),
                () -> InstructionHtml.of(steps.get(), field));
        Supplier<CareCard> card = new Once<>(() -> CareCard.of(piece));
        add(
                Part.CARE,
                name + "-care",
                piece.name() + ", care card",
                () -> CarePages.pages(card.get(), field),
                () -> CareHtml.of(card.get(), field));
        if (wanted.has(Part.CARE, Format.TXT)) {
            group.add(text(name + "-care.txt", () -> CareHtml.text(card.get())));
        }
    }

    private void add(
            Part part,
            String stem,
            String title,
            Supplier<List<Drawing>> pages,
            Supplier<String> html) {
        if (wanted.has(part, Format.PDF)) {
            Supplier<List<Drawing>> drawn = new Once<>(pages);
            group.add(
                    PlannedFile.of(
                            stem + ".pdf",
                            () -> drawn.get().get(0),
                            () -> field.pdf(title, drawn.get()).content()));
        }
        if (wanted.has(part, Format.HTML)) {
            group.add(text(stem + ".html", html));
        }
    }

    private static PlannedFile text(String name, Supplier<String> text) {
        return PlannedFile.of(name, () -> DrawingFiles.bytes(text.get()));
    }
}
