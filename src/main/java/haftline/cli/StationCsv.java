package haftline.cli;

import haftline.drawing.TitleBlock;
import haftline.figures.Station;
import haftline.figures.Stations;
import haftline.handle.Handle;
import haftline.write.csv.CsvTable;
import haftline.write.csv.CsvTable.Column;
import haftline.write.csv.CsvWriter;
import java.util.ArrayList;
import java.util.List;

/** The calliper table of a piece. */
final class StationCsv {
    /** A wall is rounded down to this, mm: none may be called thicker than it is. */
    private static final double WALL_STEP_MM = 0.01;

    private static final double ROUNDING = 1e-9;

    private StationCsv() {}

    static String of(Handle handle, boolean stopped) {
        List<List<Object>> rows = new ArrayList<>();
        for (Station station : Stations.of(handle)) {
            rows.add(
                    CsvTable.row(
                            station.name(),
                            station.x(),
                            station.diameterMm(),
                            station.turnToMm(),
                            station.wallMm().isPresent()
                                    ? (Object) floor(station.wallMm().getAsDouble())
                                    : null,
                            station.slopeDeg(),
                            null,
                            stopped ? TitleBlock.MARK : ""));
        }
        return CsvWriter.write(
                CsvTable.of(
                                Column.text("station"),
                                Column.number("from shoulder", "mm", 2),
                                Column.number("finished diameter", "mm", 2),
                                Column.number("turn to diameter", "mm", 2),
                                Column.number("wall at worst", "mm", 2),
                                Column.number("slope", "deg", 1),
                                // To be filled in at the lathe, for checkback.
                                Column.number("measured diameter", "mm", 2),
                                Column.text("mark"))
                        .withRows(rows));
    }

    private static double floor(double mm) {
        return Math.floor(mm / WALL_STEP_MM + ROUNDING) * WALL_STEP_MM;
    }
}
