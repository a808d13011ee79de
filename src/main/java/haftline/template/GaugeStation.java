package haftline.template;

import haftline.figures.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A place at which the work is measured, as it is marked on a gauge: one of the stations of the
 * calliper table that stand far enough apart to be written beside one another.
 *
 * @param name what is there
 * @param x mm from the shoulder
 * @param diameterMm finished diameter there, mm; at a step the greater
 * @param kind what makes the place worth measuring
 */
public record GaugeStation(String name, double x, double diameterMm, Kind kind) {
    /** Stations closer than this would run into one another on a rod, mm. */
    private static final double CLOSEST_MM = 4;

    /** A slope under this is level: the place is a widest or a narrowest, degrees. */
    private static final double LEVEL_DEG = 0.5;

    private static final String MIDDLE = "mid-slope";

    /** What a station is; of two that are too close the one named first here is kept. */
    public enum Kind {
        /** The shoulder or the seat. */
        END,
        /** A widest or narrowest place. */
        EXTREME,
        /** Any other node, edge or joint. */
        EDGE,
        /** The middle of a slope. */
        SLOPE
    }

    /**
     * The stations of a calliper table that go on a gauge.
     *
     * @param table stations of the whole work, in rising x
     * @param seatX where the body ends and the form of the butt begins, mm
     * @return stations from the shoulder to the seat, in rising x
     */
    public static List<GaugeStation> of(List<Station> table, double seatX) {
        List<GaugeStation> kept = new ArrayList<>();
        table.stream()
                .filter(station -> station.x() >= 0 && station.x() <= seatX)
                .map(station -> of(station, seatX))
                // At a step the greater diameter comes first and is the one that is kept.
                .sorted(
                        Comparator.comparing(GaugeStation::kind)
                                .thenComparing(GaugeStation::x)
                                .thenComparing(station -> -station.diameterMm))
                .forEach(
                        station -> {
                            if (kept.stream()
                                    .noneMatch(k -> Math.abs(k.x - station.x) < CLOSEST_MM)) {
                                kept.add(station);
                            }
                        });
        kept.sort(Comparator.comparingDouble(GaugeStation::x));
        return List.copyOf(kept);
    }

    private static GaugeStation of(Station station, double seatX) {
        Kind kind = Kind.EDGE;
        if (station.name().equals(MIDDLE)) {
            kind = Kind.SLOPE;
        } else if (station.x() == seatX || isFirst(station)) {
            kind = Kind.END;
        } else if (Math.abs(station.slopeDeg()) < LEVEL_DEG) {
            kind = Kind.EXTREME;
        }
        return new GaugeStation(station.name(), station.x(), station.diameterMm(), kind);
    }

    /** The body's side of the shoulder; the tenon's side of it is no station of the body. */
    private static boolean isFirst(Station station) {
        return station.x() == 0;
    }

    /**
     * Whether its diameter is worth a sizing slot.
     *
     * @return true for ends and for widest and narrowest places
     */
    public boolean isKey() {
        return kind == Kind.END || kind == Kind.EXTREME;
    }
}
