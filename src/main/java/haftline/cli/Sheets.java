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
import haftline.write.OutputFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The papers of a piece: lathe sheet, instruction sheet, care card. */
final class Sheets {
    private final Set<Format> formats;
    private final Units units;
    private final Field field;
    private final List<OutputFile> files = new ArrayList<>();

    private Sheets(Set<Format> formats, Units units, Field field) {
        this.formats = formats;
        this.units = units;
        this.field = field;
    }

    /** The papers of a piece in some formats; none of a piece that cannot be drawn. */
    static List<OutputFile> of(
            String name,
            ExaminedSet set,
            ExaminedPiece piece,
            Set<Format> formats,
            Units units,
            Field field) {
        Sheets sheets = new Sheets(formats, units, field);
        source(set, piece).ifPresent(source -> sheets.add(name, source));
        return sheets.files;
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
        return new Remark(finding.gravity(), message, told.remedy());
    }

    private void add(String name, SheetPiece piece) {
        if (formats.contains(Format.SHEET)) {
            LatheSheet sheet = LatheSheet.of(piece, units);
            pdf(name + "-lathe", piece.name() + ", lathe sheet", LathePage.pages(sheet, field));
            text(name + "-lathe.html", LatheHtml.of(sheet, field));
        }
        // What is not to be made has no buyer to instruct.
        if (!piece.stops().isEmpty()) {
            return;
        }
        if (formats.contains(Format.INSTRUCTIONS)) {
            InstructionSheet sheet = InstructionSheet.of(piece, units);
            pdf(
                    name + "-instructions",
                    piece.name() + ", instructions",
                    InstructionPages.pages(sheet, field));
            text(name + "-instructions.html", InstructionHtml.of(sheet, field));
        }
        if (formats.contains(Format.CARE)) {
            CareCard card = CareCard.of(piece);
            pdf(name + "-care", piece.name() + ", care card", CarePages.pages(card, field));
            text(name + "-care.html", CareHtml.of(card, field));
            text(name + "-care.txt", CareHtml.text(card));
        }
    }

    private void text(String name, String text) {
        files.add(OutputFile.text(name, text));
    }

    private void pdf(String name, String title, List<Drawing> pages) {
        files.add(new OutputFile(name + ".pdf", field.pdf(title, pages).content()));
    }
}
