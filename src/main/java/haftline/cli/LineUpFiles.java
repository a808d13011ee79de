package haftline.cli;

import haftline.drawing.Drawing;
import haftline.drawing.LineUpDrawing;
import haftline.drawing.SheetFormat;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.write.FileName;
import haftline.write.PlannedFile;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfPicture;
import haftline.write.pdf.PdfWriter;
import java.util.List;
import java.util.function.Supplier;

/** The line-up of a set as files: a picture file a sheet, and all sheets in one to print. */
final class LineUpFiles {
    private LineUpFiles() {}

    /** The group; without files where the pieces were not taken together or none can be drawn. */
    static FileGroup of(ExaminedSet set, Wanted wanted, DrawingFiles writers, Units units) {
        FileGroup group = new FileGroup();
        boolean svg = wanted.has(Part.DRAWINGS, Format.SVG);
        boolean pdf = wanted.has(Part.DRAWINGS, Format.PDF);
        boolean png = wanted.has(Part.PICTURES, Format.PNG);
        if (set.family().isEmpty() || !svg && !pdf && !png) {
            return group;
        }
        LineUpDrawing.Sheets drawn = drawn(set, set.family().get(), writers.format(units));
        List<Drawing> sheets = drawn.drawings();
        String scale =
                drawn.reduction() == 1
                        ? ""
                        : "reduced to 1:" + NumberText.upTo(drawn.reduction(), 0);
        String name = FileName.from(set.name()) + "-line-up";
        for (int i = 0; i < sheets.size() && svg; i++) {
            Supplier<Drawing> sheet = given(sheets.get(i));
            String stem = sheets.size() == 1 ? name : name + "-" + (i + 1);
            group.add(writers.framedSvg(stem, sheet), () -> pdf ? "" : scale);
        }
        if (pdf && !sheets.isEmpty()) {
            Drawing first = sheets.get(0);
            group.add(
                    PlannedFile.of(
                            name + writers.ending(Format.PDF),
                            given(first),
                            () -> writers.pdfWriter().write(first.title(), sheets).content()),
                    () -> scale);
        }
        if (png && !sheets.isEmpty()) {
            PdfOptions paper = PdfOptions.of(FileSettings.COMMON_PRACTICE.withPaper(drawn.paper()));
            group.add(
                    PlannedFile.of(
                            name + writers.ending(Format.PNG),
                            given(sheets.get(0)),
                            () -> picture(paper, sheets.get(0))));
        }
        return group;
    }

    private static byte[] picture(PdfOptions paper, Drawing sheet) {
        return PdfPicture.firstPage(new PdfWriter(paper).write(sheet).content());
    }

    private static LineUpDrawing.Sheets drawn(
            ExaminedSet set, ExaminedFamily family, SheetFormat format) {
        return LineUpDrawing.of(
                set.name(),
                set.batch(),
                family.family(),
                set.pieces().stream()
                        .filter(ExaminedPiece::isStopped)
                        .map(ExaminedPiece::name)
                        .toList(),
                format);
    }

    private static Supplier<Drawing> given(Drawing drawing) {
        return () -> drawing;
    }
}
