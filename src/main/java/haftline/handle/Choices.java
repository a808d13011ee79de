package haftline.handle;

import haftline.measure.Checks;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What the maker decides over the rules, for a whole set or for one piece. Everything is optional;
 * what is empty follows from parts, stock, shape and rules.
 *
 * @param lengthRatio handle length as a multiple of the blade's
 * @param swellMm the set's common greatest diameter, mm
 * @param buttMm diameter of the butt where there is no cap, mm
 * @param fit pressed or bonded
 * @param tangDrillMm drill for the tang, mm; of a stepped bore the deepest one
 * @param tangDepthMm depth of the tang's bore to full diameter from the tenon's end, mm
 * @param capDrillMm drill for the cap's spigot, mm
 * @param capDepthMm depth of the cap's bore to full diameter from the butt, mm
 * @param tenonDiameterMm mm
 * @param tenonLengthMm mm
 * @param wander how far a bore may leave the axis
 * @param use how the piece is held
 * @param blankSideMm side of the square blank or diameter of the rod on hand, mm
 * @param blankLengthMm length of the blank on hand, mm
 * @param nodeDiametersMm diameters of nodes by name, mm
 * @param nodePlaces places of nodes by name, as shares of the visible wood; such a node no longer
 *     slides
 */
public record Choices(
        OptionalDouble lengthRatio,
        OptionalDouble swellMm,
        OptionalDouble buttMm,
        Optional<Fit> fit,
        OptionalDouble tangDrillMm,
        OptionalDouble tangDepthMm,
        OptionalDouble capDrillMm,
        OptionalDouble capDepthMm,
        OptionalDouble tenonDiameterMm,
        OptionalDouble tenonLengthMm,
        Optional<Wander> wander,
        Optional<Use> use,
        OptionalDouble blankSideMm,
        OptionalDouble blankLengthMm,
        Map<String, Double> nodeDiametersMm,
        Map<String, Double> nodePlaces) {

    /** Nothing decided: everything follows from the rules. */
    public static final Choices NONE = builder().build();

    /** Checks the ranges and copies the maps. */
    public Choices {
        lengthRatio.ifPresent(ratio -> Checks.within("length ratio", ratio, 0.1, 10));
        withinMm("swell", swellMm, 5, 200);
        withinMm("butt", buttMm, 2, 200);
        withinMm("tang drill", tangDrillMm, 0.3, 60);
        withinMm("tang depth", tangDepthMm, 1, 500);
        withinMm("cap drill", capDrillMm, 0.3, 60);
        withinMm("cap depth", capDepthMm, 0.5, 300);
        withinMm("tenon diameter", tenonDiameterMm, 1, 80);
        withinMm("tenon length", tenonLengthMm, 0.5, 100);
        withinMm("blank side", blankSideMm, 2, 300);
        withinMm("blank length", blankLengthMm, 5, 2000);
        nodeDiametersMm = sorted(nodeDiametersMm);
        nodePlaces = sorted(nodePlaces);
        nodeDiametersMm.forEach((name, d) -> Checks.withinMm("diameter of " + name, d, 1, 200));
        nodePlaces.forEach((name, share) -> Checks.within("place of " + name, share, 0, 1));
    }

    private static void withinMm(String field, OptionalDouble value, double low, double high) {
        value.ifPresent(v -> Checks.withinMm(field, v, low, high));
    }

    /** One order whatever the order typed, so that what is written does not depend on it. */
    private static Map<String, Double> sorted(Map<String, Double> map) {
        return java.util.Collections.unmodifiableMap(new TreeMap<>(map));
    }

    /**
     * These choices, with what they leave open taken from others: a piece's over its set's.
     *
     * @param common what applies where these are silent
     * @return the joined choices
     */
    public Choices over(Choices common) {
        Map<String, Double> diameters = new TreeMap<>(common.nodeDiametersMm);
        diameters.putAll(nodeDiametersMm);
        Map<String, Double> places = new TreeMap<>(common.nodePlaces);
        places.putAll(nodePlaces);
        return new Choices(
                first(lengthRatio, common.lengthRatio),
                first(swellMm, common.swellMm),
                first(buttMm, common.buttMm),
                fit.or(common::fit),
                first(tangDrillMm, common.tangDrillMm),
                first(tangDepthMm, common.tangDepthMm),
                first(capDrillMm, common.capDrillMm),
                first(capDepthMm, common.capDepthMm),
                first(tenonDiameterMm, common.tenonDiameterMm),
                first(tenonLengthMm, common.tenonLengthMm),
                wander.or(common::wander),
                use.or(common::use),
                first(blankSideMm, common.blankSideMm),
                first(blankLengthMm, common.blankLengthMm),
                diameters,
                places);
    }

    private static OptionalDouble first(OptionalDouble own, OptionalDouble common) {
        return own.isPresent() ? own : common;
    }

    /**
     * Starts from nothing decided.
     *
     * @return a new builder
     */
    public static ChoicesBuilder builder() {
        return new ChoicesBuilder();
    }

    /**
     * Starts from these choices.
     *
     * @return a new builder that holds them
     */
    public ChoicesBuilder toBuilder() {
        return new ChoicesBuilder(this);
    }
}
