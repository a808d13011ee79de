package haftline.cli;

import haftline.drawing.Drawing;
import haftline.set.TemplateSettings;
import haftline.write.PlannedFile;
import haftline.write.dxf.DxfFile;
import haftline.write.pdf.PdfFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Sheets of gauges and copying templates as files. */
final class TemplateFiles {
    private TemplateFiles() {}

    /** One group a sheet. */
    static List<FileGroup> of(
            String begin, Templates.Sheets sheets, Set<Format> kinds, DrawingFiles writers) {
        List<FileGroup> groups = new ArrayList<>();
        for (int i = 0; i < sheets.drawings().size(); i++) {
            groups.add(sheet(begin + (i + 1), sheets.drawings().get(i), kinds, writers));
        }
        return groups;
    }

    private static FileGroup sheet(
            String stem, Drawing sheet, Set<Format> kinds, DrawingFiles writers) {
        FileGroup group = new FileGroup();
        if (kinds.contains(Format.SVG)) {
            group.add(writers.svg(stem, () -> sheet));
        }
        if (kinds.contains(Format.DXF)) {
            Supplier<DxfFile> file = new Once<>(() -> writers.dxfWriter().write(sheet));
            group.add(
                    PlannedFile.of(
                            stem + writers.ending(Format.DXF),
                            () -> sheet,
                            () -> DrawingFiles.bytes(file.get().text())),
                    () -> entities(file.get()));
        }
        if (kinds.contains(Format.PDF)) {
            Supplier<PdfFile> file = new Once<>(() -> writers.pdfWriter().write(sheet));
            group.add(
                    PlannedFile.of(
                            stem + writers.ending(Format.PDF),
                            () -> sheet,
                            () -> file.get().content()),
                    () -> pages(file.get()));
        }
        return group;
    }

    private static String entities(DxfFile file) {
        return file.report().entities().values().stream().mapToInt(n -> n).sum() + " entities";
    }

    private static String pages(PdfFile file) {
        return file.sheets() == 1 ? "" : file.sheets() + " pages";
    }

    /** What is on the sheets, so that files of a part do not take the place of all. */
    static String what(TemplateSettings settings) {
        TemplateSettings.Gauges gauges = settings.gauges();
        List<String> made = new ArrayList<>();
        if (gauges.profile()) {
            made.add("profile-gauges");
        }
        if (gauges.slots()) {
            made.add("slots");
        }
        if (gauges.storyRod()) {
            made.add("story-rods");
        }
        if (settings.copying().made()) {
            return made.isEmpty() ? "copying-templates" : "templates";
        }
        return made.size() == 1 ? made.get(0) : "gauges";
    }
}
