package haftline.template;

import haftline.curve.Outline;
import haftline.curve.OutlineDeviation;
import haftline.measure.Checks;
import haftline.measure.LengthText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a gauge or template that was cut for one batch of parts still serves for another.
 *
 * <p>What gauges an outline is judged by the radius, square to the axis, which is never less than
 * the light gap that is seen; sizing slots by the diameter; the tenon's slots by their own go and
 * no-go; places along the axis by {@value #PLACE_MM} mm, or the tolerance where that is more.
 *
 * @param kind the gauge or template
 * @param cause what decides
 * @param offMm how far it is off where it is off most, mm
 * @param atX where that is, mm from the shoulder; not a number where it has no place
 * @param limitMm the most that still serves, mm
 */
public record StillServes(Kind kind, Cause cause, double offMm, double atX, double limitMm) {
    /** A pencil line at a station is put no truer, mm; common practice, no source. */
    static final double PLACE_MM = 0.5;

    /** What a turner tells by touch and eye, mm; common practice, no source. */
    public static final double USUAL_TOLERANCE_MM = 0.2;

    /** Differences under this are rounding, mm. */
    private static final double ROUNDING = 1e-9;

    /** What was cut. */
    public enum Kind {
        /** The negative half-profile. */
        PROFILE_GAUGE("profile gauge"),
        /** Open slots at the key diameters. */
        SIZING_SLOTS("sizing slots"),
        /** Go and no-go of the tenon. */
        TENON_SLOTS("tenon go / no-go"),
        /** Notches at the stations. */
        STORY_ROD("story rod"),
        /** The positive half-profile for a follower. */
        COPYING_TEMPLATE("copying template");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * Its name in the trade's words.
         *
         * @return lower case
         */
        public String words() {
            return words;
        }

        /**
         * Its name as other programs read it.
         *
         * @return lower-case words joined by hyphens
         */
        public String text() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What decides whether it serves. */
    public enum Cause {
        /** The outline's radius. */
        OUTLINE,
        /** A diameter. */
        DIAMETER,
        /** The tenon's diameter. */
        TENON,
        /** Where the wood ends. */
        END,
        /** The form of the butt. */
        BUTT,
        /** The ferrule does not pass under the gauge. */
        FERRULE,
        /** The place of a station. */
        PLACE,
        /** The places that are measured are others. */
        STATIONS;

        /**
         * Its name as other programs read it.
         *
         * @return one lower-case word
         */
        public String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Checks the ranges. */
    public StillServes {
        Checks.withinMm("off", offMm, 0, Double.MAX_VALUE);
        Checks.withinMm("limit", limitMm, 0, Double.MAX_VALUE);
    }

    /**
     * Whether it may be used on.
     *
     * @return false where it must be cut again
     */
    public boolean serves() {
        return offMm <= limitMm + ROUNDING;
    }

    /**
     * Judges what was cut for one work piece by another.
     *
     * @param cut the work piece that gauges and template were cut for
     * @param now the work piece of the new batch
     * @param rules how the gauges were made
     * @param toleranceMm the most that an outline or a diameter may be off, mm, over 0 to 5
     * @return one judgement for each gauge and template
     */
    public static List<StillServes> of(
            Workpiece cut, Workpiece now, GaugeRules rules, double toleranceMm) {
        Checks.withinMm("tolerance", toleranceMm, 1e-3, 5);
        return List.of(
                profile(cut, now, rules, toleranceMm),
                slots(cut, now, toleranceMm),
                new StillServes(
                        Kind.TENON_SLOTS,
                        Cause.TENON,
                        Math.abs(now.tenonDiameterMm() - cut.tenonDiameterMm()),
                        Double.NaN,
                        rules.tenonToleranceMm()),
                rod(cut, now, Math.max(toleranceMm, PLACE_MM)),
                template(cut, now, toleranceMm));
    }

    /** A gauge that bears on the ferrule's face moves with the ferrule's length. */
    private static StillServes profile(
            Workpiece cut, Workpiece now, GaugeRules rules, double toleranceMm) {
        boolean onFerrule = rules.register() == GaugeRules.Register.FERRULE_FACE;
        double moved = onFerrule ? cut.ferruleLengthMm() - now.ferruleLengthMm() : 0;
        List<StillServes> all = new ArrayList<>();
        Kind kind = Kind.PROFILE_GAUGE;
        all.add(outline(kind, cut, now, moved, toleranceMm));
        all.add(end(kind, cut.seatX() + moved, now.seatX(), toleranceMm));
        all.add(end(kind, cut.buttX() + moved, now.buttX(), toleranceMm));
        butt(kind, cut, now, toleranceMm).ifPresent(all::add);
        if (onFerrule) {
            double clear = NegativeEdge.FERRULE_CLEAR_MM;
            double more = (now.ferruleDiameterMm() - cut.ferruleDiameterMm()) / 2;
            all.add(
                    new StillServes(
                            kind, Cause.FERRULE, Math.max(0, more), -now.ferruleLengthMm(), clear));
        }
        return worst(all);
    }

    private static StillServes template(Workpiece cut, Workpiece now, double toleranceMm) {
        return worst(
                List.of(
                        outline(Kind.COPYING_TEMPLATE, cut, now, 0, toleranceMm),
                        end(
                                Kind.COPYING_TEMPLATE,
                                cut.seatX(),
                                now.seatX(),
                                Math.max(toleranceMm, PLACE_MM))));
    }

    private static StillServes outline(
            Kind kind, Workpiece cut, Workpiece now, double moved, double toleranceMm) {
        Outline old = moved == 0 ? cut.body() : cut.body().shifted(moved);
        double from = Math.max(old.startX(), 0);
        double to = Math.min(cut.seatX() + moved, now.seatX());
        if (to <= from) {
            // Moved so far that the gauge does not lie along the work at all.
            return end(kind, cut.seatX() + moved, now.seatX(), toleranceMm);
        }
        OutlineDeviation off = OutlineDeviation.between(old, now.body(), from, to);
        return new StillServes(kind, Cause.OUTLINE, Math.abs(off.mm()), off.atX(), toleranceMm);
    }

    private static StillServes end(Kind kind, double was, double is, double limitMm) {
        return new StillServes(kind, Cause.END, Math.abs(is - was), is, limitMm);
    }

    /** The forms of the butts, laid end on end: their lengths are judged elsewhere. */
    private static Optional<StillServes> butt(
            Kind kind, Workpiece cut, Workpiece now, double toleranceMm) {
        double shift = now.buttX() - cut.buttX();
        double from = Math.max(cut.seatX() + shift, now.seatX());
        if (from >= now.buttX()) {
            return Optional.empty();
        }
        // Shifted ends are no longer the same doubles.
        Outline old = cut.body().shifted(shift);
        double to = Math.min(old.endX(), now.body().endX());
        OutlineDeviation off = OutlineDeviation.between(old, now.body(), from, to);
        return Optional.of(
                new StillServes(kind, Cause.BUTT, Math.abs(off.mm()), off.atX(), toleranceMm));
    }

    private static StillServes slots(Workpiece cut, Workpiece now, double toleranceMm) {
        List<GaugeStation> old = cut.stations().stream().filter(GaugeStation::isKey).toList();
        StillServes worst =
                new StillServes(Kind.SIZING_SLOTS, Cause.DIAMETER, 0, Double.NaN, toleranceMm);
        for (GaugeStation station : now.stations()) {
            if (station.isKey()) {
                Optional<GaugeStation> was = named(old, station);
                if (was.isEmpty()) {
                    return strange(Kind.SIZING_SLOTS, station);
                }
                double off = Math.abs(station.diameterMm() - was.get().diameterMm());
                if (off > worst.offMm) {
                    worst =
                            new StillServes(
                                    Kind.SIZING_SLOTS,
                                    Cause.DIAMETER,
                                    off,
                                    station.x(),
                                    toleranceMm);
                }
            }
        }
        return worst;
    }

    private static StillServes rod(Workpiece cut, Workpiece now, double limitMm) {
        StillServes worst = new StillServes(Kind.STORY_ROD, Cause.PLACE, 0, Double.NaN, limitMm);
        for (GaugeStation station : now.stations()) {
            Optional<GaugeStation> was = named(cut.stations(), station);
            if (was.isEmpty()) {
                return strange(Kind.STORY_ROD, station);
            }
            double off = Math.abs(station.x() - was.get().x());
            if (off > worst.offMm) {
                worst = new StillServes(Kind.STORY_ROD, Cause.PLACE, off, station.x(), limitMm);
            }
        }
        return worst;
    }

    private static StillServes strange(Kind kind, GaugeStation station) {
        return new StillServes(kind, Cause.STATIONS, station.diameterMm(), station.x(), 0);
    }

    /** The station of the same name; of several, the nearest. */
    private static Optional<GaugeStation> named(List<GaugeStation> stations, GaugeStation sought) {
        return stations.stream()
                .filter(station -> station.name().equals(sought.name()))
                .min(
                        (a, b) ->
                                Double.compare(
                                        Math.abs(a.x() - sought.x()),
                                        Math.abs(b.x() - sought.x())));
    }

    /** The one that is furthest over its limit, or nearest to it. */
    private static StillServes worst(List<StillServes> all) {
        StillServes worst = all.get(0);
        for (StillServes each : all) {
            if (each.offMm / each.limitMm > worst.offMm / worst.limitMm) {
                worst = each;
            }
        }
        return worst;
    }

    /**
     * Why it serves or must be cut again.
     *
     * @param units unit of the lengths in it
     * @return a sentence's part in lower case, without a full stop
     */
    public String why(Units units) {
        LengthText lengths = new LengthText(units);
        String off = lengths.fine(offMm);
        String limit = lengths.fine(limitMm);
        return switch (cause) {
            case OUTLINE -> "the outline differs by " + off + " on the radius" + at(units, limit);
            case BUTT -> "the butt's form differs by " + off + " on the radius" + at(units, limit);
            case DIAMETER -> "the diameter differs by " + off + at(units, limit);
            case TENON -> "the tenon differs by " + off + ", go and no-go allow " + limit;
            case END -> "the wood ends " + off + " from where it did, limit " + limit;
            case FERRULE ->
                    "the ferrule stands " + off + " higher under it, where " + limit + " is clear";
            case PLACE -> "a station moves by " + off + at(units, limit);
            case STATIONS -> "there is a station" + at(units) + " that it does not have";
        };
    }

    private String at(Units units, String limit) {
        return at(units) + ", limit " + limit;
    }

    private String at(Units units) {
        if (Double.isNaN(atX)) {
            return "";
        }
        // Nearer than a pencil line it is the shoulder itself.
        return Math.abs(atX) < 0.05
                ? " at the shoulder"
                : " at " + new LengthText(units).withUnit(atX);
    }
}
