package haftline.set;

import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Turned pieces measured back at their stations: how far each is off its design, and which falls
 * out of the family.
 *
 * <p>Pieces that are all a little fat still match: a piece is held against the design, and against
 * the middle of what all came out as.
 *
 * @param toleranceMm the most that a diameter may be off, mm
 * @param pieces the measured pieces, in the set's order
 */
public record CheckBack(double toleranceMm, List<Measured> pieces) {
    /** Copies within this much look identical, on the diameter, mm; common practice, no source. */
    public static final double USUAL_TOLERANCE_MM = 0.3;

    /** Half the difference of a tenon's go and no-go, mm; common practice, no source. */
    public static final double TENON_TOLERANCE_MM = 0.05;

    /** A place is written to a hundredth; further out it is not on this piece, mm. */
    public static final double PLACE_ROUNDING_MM = 0.05;

    /** Differences under this are rounding, mm. */
    private static final double ROUNDING = 1e-9;

    /** Copies the list. */
    public CheckBack {
        Checks.withinMm("tolerance", toleranceMm, 1e-3, 5);
        pieces = List.copyOf(pieces);
    }

    /**
     * One reading.
     *
     * @param piece name of the piece
     * @param x mm from the shoulder
     * @param diameterMm measured diameter, mm
     * @param side which side of the step at the shoulder it was taken at, where the table says so
     */
    public record Reading(String piece, double x, double diameterMm, Optional<Side> side) {
        /**
         * A reading that does not say which side of a step it was taken at.
         *
         * @param piece name of the piece
         * @param x mm from the shoulder
         * @param diameterMm measured diameter, mm
         */
        public Reading(String piece, double x, double diameterMm) {
            this(piece, x, diameterMm, Optional.empty());
        }

        /** Checks the ranges. */
        public Reading {
            Checks.named("piece name", piece);
            Checks.within("place", x, -1000, 2000);
            Checks.withinMm("measured diameter", diameterMm, 0.5, 200);
        }
    }

    /** A side of the shoulder. */
    public enum Side {
        /** In front of it, where the ferrule goes. */
        TENON,
        /** Behind it. */
        WOOD
    }

    /**
     * A reading beside the design.
     *
     * @param x mm from the shoulder
     * @param designMm the finished diameter there, at a step the side that the reading is nearer
     *     to, mm
     * @param measuredMm the measured diameter, mm
     * @param onTenon whether it is the tenon that was measured
     * @param toleranceMm the most that it may be off, mm
     */
    public record Station(
            double x, double designMm, double measuredMm, boolean onTenon, double toleranceMm) {
        /**
         * How much too thick.
         *
         * @return mm on the diameter, negative where it is too thin
         */
        public double offMm() {
            return measuredMm - designMm;
        }

        /**
         * Whether it is as designed.
         *
         * @return true within the tolerance
         */
        public boolean isGood() {
            return Math.abs(offMm()) <= toleranceMm + ROUNDING;
        }
    }

    /**
     * One piece measured back.
     *
     * @param name its name
     * @param stations its readings in rising x, at least one
     * @param meanOffMm mean of how much the visible wood is too thick, mm; not a number where only
     *     the tenon was measured
     * @param familyOffMm the middle of the same of all pieces, of two pieces the other's, mm; not a
     *     number where there is no other
     * @param fallsOut whether it differs from that by more than the tolerance
     */
    public record Measured(
            String name,
            List<Station> stations,
            double meanOffMm,
            double familyOffMm,
            boolean fallsOut) {
        /** Copies the list. */
        public Measured {
            stations = List.copyOf(stations);
        }

        /**
         * The station that is off most.
         *
         * @param onTenon whether it is looked for on the tenon; else on the visible wood
         * @return the station, or empty where none was measured there
         */
        public Optional<Station> worst(boolean onTenon) {
            return stations.stream()
                    .filter(station -> station.onTenon() == onTenon)
                    .max(Comparator.comparingDouble(station -> Math.abs(station.offMm())));
        }

        /**
         * Stations that are not as designed.
         *
         * @return them, in rising x
         */
        public List<Station> off() {
            return stations.stream().filter(station -> !station.isGood()).toList();
        }
    }

    /**
     * Whether all is as it was meant to be.
     *
     * @return true where no station is off its design and no piece falls out of the family
     */
    public boolean isGood() {
        return pieces.stream().allMatch(piece -> piece.off().isEmpty() && !piece.fallsOut());
    }

    /**
     * Whether a place lies on a piece.
     *
     * @param handle the piece as designed
     * @param x mm from the shoulder
     * @return true from the tenon's end to the butt
     */
    public static boolean isOn(Handle handle, double x) {
        return x >= handle.outline().startX() - PLACE_ROUNDING_MM
                && x <= handle.outline().endX() + PLACE_ROUNDING_MM;
    }

    /**
     * Holds readings against their designs.
     *
     * @param handles the pieces as designed, in the set's order
     * @param readings the readings; those of no piece and no place on it are left out
     * @param toleranceMm the most that a diameter of the visible wood may be off, mm, 0.001 to 5
     * @return what was found
     */
    public static CheckBack of(List<Handle> handles, List<Reading> readings, double toleranceMm) {
        List<String> names = new ArrayList<>();
        List<List<Station>> stations = new ArrayList<>();
        for (Handle handle : handles) {
            List<Station> own = stations(handle, readings, toleranceMm);
            if (!own.isEmpty()) {
                names.add(handle.name());
                stations.add(own);
            }
        }
        double[] means = stations.stream().mapToDouble(CheckBack::mean).toArray();
        List<Measured> pieces = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            double family = middle(means, i);
            boolean out = Math.abs(means[i] - family) > toleranceMm + ROUNDING;
            pieces.add(new Measured(names.get(i), stations.get(i), means[i], family, out));
        }
        return new CheckBack(toleranceMm, pieces);
    }

    private static List<Station> stations(
            Handle handle, List<Reading> readings, double toleranceMm) {
        List<Station> stations = new ArrayList<>();
        readings.stream()
                .filter(r -> r.piece().equals(handle.name()) && isOn(handle, r.x()))
                .sorted((a, b) -> Double.compare(a.x(), b.x()))
                .forEach(reading -> stations.add(station(handle, reading, toleranceMm)));
        return stations;
    }

    private static Station station(Handle handle, Reading reading, double toleranceMm) {
        Outline outline = handle.outline();
        double x = Math.min(outline.endX(), Math.max(outline.startX(), reading.x()));
        double before = 2 * outline.rBefore(x);
        double after = 2 * outline.rAfter(x);
        double measured = reading.diameterMm();
        boolean nearer = Math.abs(measured - before) < Math.abs(measured - after);
        boolean first =
                x == 0 ? reading.side().map(side -> side == Side.TENON).orElse(nearer) : nearer;
        boolean tenon = x < 0 || x == 0 && first;
        return new Station(
                x,
                first ? before : after,
                measured,
                tenon,
                tenon ? TENON_TOLERANCE_MM : toleranceMm);
    }

    /** How much too thick the visible wood is on the mean; not a number where none was measured. */
    private static double mean(List<Station> stations) {
        return stations.stream()
                .filter(station -> !station.onTenon())
                .mapToDouble(Station::offMm)
                .average()
                .orElse(Double.NaN);
    }

    /**
     * The median of all, which one odd piece does not move; of two pieces the other one; not a
     * number where there is no other.
     */
    private static double middle(double[] means, int of) {
        List<Double> known = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            boolean itself = i == of;
            if (!Double.isNaN(means[i]) && !(itself && count(means) == 2)) {
                known.add(means[i]);
            }
        }
        if (count(means) < 2) {
            return Double.NaN;
        }
        known.sort(Comparator.naturalOrder());
        int half = known.size() / 2;
        return known.size() % 2 == 1
                ? known.get(half)
                : (known.get(half - 1) + known.get(half)) / 2;
    }

    private static long count(double[] means) {
        return Arrays.stream(means).filter(mean -> !Double.isNaN(mean)).count();
    }
}
