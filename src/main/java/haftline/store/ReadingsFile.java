package haftline.store;

import haftline.adjust.takeoff.Reading;
import haftline.measure.Units;
import haftline.write.csv.CsvTable;
import haftline.write.csv.CsvTable.Column;
import haftline.write.csv.CsvWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Readings of a handle: a table of calliper readings, or an outline traced in an SVG or DXF file.
 */
public final class ReadingsFile {
    private ReadingsFile() {}

    /**
     * Whether a file's name says that it is a drawing, not a table.
     *
     * @param file the file
     * @return true of {@code .svg} and {@code .dxf}
     */
    public static boolean isTraced(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".svg") || name.endsWith(".dxf");
    }

    /**
     * Reads a file by its name's end: {@code .svg}, {@code .dxf}, else a table with commas.
     *
     * @param file the file
     * @param units unit of a table's lengths that its heading does not name, or empty for mm
     * @param tracing how a traced outline is to be read
     * @return the readings in the order of the file
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static List<Reading> read(Path file, Optional<Units> units, Tracing tracing)
            throws DocumentException {
        if (isTraced(file)) {
            return readTraced(file, tracing).readings();
        }
        Problems problems = new Problems(file.toString());
        Optional<String> text = SourceText.read(file, problems);
        problems.refuseIfAny();
        List<Reading> readings = new ReadingsTable(problems, units).read(text.orElseThrow());
        problems.refuseIfAny();
        return readings;
    }

    /**
     * Reads a traced outline.
     *
     * @param file the file, {@code .svg} or {@code .dxf}
     * @param tracing how it is to be read
     * @return the readings, and what the file says of its unit
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static Traced readTraced(Path file, Tracing tracing) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<String> text = SourceText.read(file, problems);
        problems.refuseIfAny();
        Traced traced;
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".svg")) {
            SvgTrace svg = new SvgTrace(problems);
            traced = new Traced(svg.read(text.orElseThrow(), tracing), svg.unit());
        } else {
            DxfTrace dxf = new DxfTrace(problems);
            traced = new Traced(dxf.read(text.orElseThrow(), tracing), dxf.unit());
        }
        problems.refuseIfAny();
        return traced;
    }

    /**
     * Saves readings as a table that {@link #read} takes, in mm to the hundredth.
     *
     * @param file the file; one of that name is kept as a backup
     * @param readings the readings, in order of x
     * @throws SaveException where it cannot be written; an old file is then as it was
     */
    public static void save(Path file, List<Reading> readings) throws SaveException {
        CsvTable table =
                new CsvTable(
                        List.of(Column.number("x", "mm", 2), Column.number("diameter", "mm", 2)),
                        readings.stream()
                                .map(r -> List.<Object>of(r.x(), r.diameterMm()))
                                .toList());
        AtomicSave.write(file, CsvWriter.write(table).getBytes(StandardCharsets.UTF_8));
    }
}
