package haftline.sheet;

import haftline.figures.Station;
import haftline.figures.Stations;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * A place where a calliper is set, in reading order from the tenon's end to the butt. Texts are
 * without units.
 *
 * @param number its number, on the drawing too
 * @param name what is there
 * @param x from the shoulder, negative on the tenon
 * @param rough diameter of the sizing cut while roughing; empty where there is nothing to cut
 * @param turnTo diameter to turn to before sanding; empty where there is nothing to cut
 * @param finished finished diameter
 */
public record CalliperRow(
        int number, String name, String x, String rough, String turnTo, String finished) {
    /** Sizing cuts leave so much on the diameter; common practice, no source. */
    static final double ROUGH_OVER_MM = 1;

    /** A calliper is set for roughing in such steps, mm and in, always to the larger. */
    private static final double ROUGH_STEP_MM = 0.5;

    private static final double ROUGH_STEP_IN_MM = Units.INCH.millimetres() / 50;

    /** Less than this is the pole of a dome, not a diameter, mm. */
    private static final double POLE_MM = 1;

    private static final double ROUNDING = 1e-9;

    static List<CalliperRow> of(Handle handle, LengthText lengths) {
        List<CalliperRow> rows = new ArrayList<>();
        for (Station station : Stations.of(handle)) {
            boolean pole = station.diameterMm() < POLE_MM;
            rows.add(
                    new CalliperRow(
                            rows.size() + 1,
                            station.name(),
                            lengths.contour(station.x()),
                            pole ? "" : rough(station.turnToMm(), lengths),
                            pole ? "" : size(station, station.turnToMm(), lengths),
                            size(station, station.diameterMm(), lengths)));
        }
        return List.copyOf(rows);
    }

    /** What fits metal is turned finer than a contour. */
    private static String size(Station station, double mm, LengthText lengths) {
        boolean tenon = station.x() < 0 || station.name().startsWith("tenon");
        return tenon ? lengths.metal(mm) : lengths.contour(mm);
    }

    private static String rough(double turnToMm, LengthText lengths) {
        double step = lengths.units() == Units.MM ? ROUGH_STEP_MM : ROUGH_STEP_IN_MM;
        double mm = Math.ceil((turnToMm + ROUGH_OVER_MM) / step - ROUNDING) * step;
        return lengths.contour(mm);
    }
}
