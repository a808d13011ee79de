package haftline.cli;

import haftline.drawing.Drawing;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.set.production.BatchTable;
import haftline.set.production.BatchTables;
import haftline.set.production.Production;
import haftline.set.production.Progress;
import haftline.sheet.page.BatchPages;
import haftline.sheet.page.Field;
import haftline.write.FileName;
import haftline.write.OutputFile;
import haftline.write.csv.CsvTable;
import haftline.write.csv.CsvWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A batch with its progress, as it is shown and written.
 *
 * @param production the batch
 * @param progress how far it is, where it was begun
 * @param paper what its sheets are printed on
 */
record Batch(Production production, Optional<Progress> progress, FileSettings.Paper paper) {
    /** All tables, progress last. */
    List<BatchTable> tables(Units units) {
        List<BatchTable> tables = new ArrayList<>(BatchTables.of(production, units));
        progress.ifPresent(far -> tables.add(BatchTables.of(far)));
        return tables;
    }

    /** The files; tables in mm, the sheets for the workshop in the units asked for. */
    List<OutputFile> files(Set<Format> formats, Units units) {
        List<OutputFile> files = new ArrayList<>();
        if (formats.contains(Format.CSV)) {
            for (BatchTable table : tables(Units.MM)) {
                if (!table.rows().isEmpty()) {
                    files.add(OutputFile.text(name(table) + ".csv", CsvWriter.write(csv(table))));
                }
            }
        }
        if (formats.contains(Format.PDF)) {
            // Not corrected for the printer: nothing on these sheets is measured.
            Field field = new DrawingFiles(FileSettings.COMMON_PRACTICE.withPaper(paper)).field();
            List<Drawing> pages = BatchPages.of(production, progress, tables(units), units, field);
            files.add(
                    new OutputFile(
                            stem() + ".pdf",
                            field.pdf(production.set() + ", batch", pages).content()));
        }
        return files;
    }

    private String stem() {
        return FileName.from(production.set()) + "-batch";
    }

    private String name(BatchTable table) {
        return stem() + "-" + table.key().replace('_', '-');
    }

    private static CsvTable csv(BatchTable table) {
        List<CsvTable.Column> columns =
                table.columns().stream()
                        .map(c -> new CsvTable.Column(c.name(), c.unit(), c.decimals()))
                        .toList();
        return new CsvTable(columns, table.rows());
    }

    /**
     * What was written where, for the end of the page.
     *
     * @param folder where the tables went, if they were asked for
     * @param files the tables
     * @param kept where the progress is kept, if it was changed
     */
    static String written(
            Optional<Path> folder, List<OutputFile> files, Optional<Path> kept, Ink ink) {
        Paper paper = new Paper(ink, 0, 0);
        if (folder.isPresent() || kept.isPresent()) {
            paper.blank();
        }
        folder.ifPresent(
                where ->
                        paper.words(
                                "Written",
                                files.size()
                                        + (files.size() == 1 ? " file" : " files")
                                        + " into "
                                        + where));
        files.forEach(file -> paper.words("Written", file.name()));
        kept.ifPresent(where -> paper.words("Progress", "kept in " + where));
        return paper.text();
    }
}
