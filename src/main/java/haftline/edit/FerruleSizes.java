package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import java.util.List;
import java.util.function.BiFunction;

/** The sizes of a ferrule in the order of measuring. */
final class FerruleSizes {
    private FerruleSizes() {}

    static List<KitSize> all() {
        return List.of(
                KitSize.readings(
                        "ferrule bore",
                        k -> k.ferrule().bore(),
                        with(
                                (f, m) ->
                                        new Ferrule(
                                                m,
                                                f.outside(),
                                                f.outsideLeast(),
                                                f.length(),
                                                f.lipMm(),
                                                f.lipHoleMm(),
                                                f.chamferMm(),
                                                f.material(),
                                                f.massG()))),
                KitSize.readings(
                        "ferrule outside", k -> k.ferrule().outside(), with(FerruleSizes::outside)),
                KitSize.readings(
                        "ferrule outside, lesser axis",
                        k -> k.ferrule().outsideLeast(),
                        with(
                                (f, m) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                m,
                                                f.length(),
                                                f.lipMm(),
                                                f.lipHoleMm(),
                                                f.chamferMm(),
                                                f.material(),
                                                f.massG()))),
                KitSize.readings(
                        "ferrule length",
                        k -> k.ferrule().length(),
                        with(
                                (f, m) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                f.outsideLeast(),
                                                m,
                                                f.lipMm(),
                                                f.lipHoleMm(),
                                                f.chamferMm(),
                                                f.material(),
                                                f.massG()))),
                KitSize.length(
                        "ferrule lip",
                        k -> k.ferrule().lipMm(),
                        with(
                                (f, mm) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                f.outsideLeast(),
                                                f.length(),
                                                mm,
                                                f.lipHoleMm(),
                                                f.chamferMm(),
                                                f.material(),
                                                f.massG()))),
                KitSizes.optional(
                        "hole in the lip",
                        KitSize.Kind.OPTIONAL_LENGTH,
                        k -> k.ferrule().lipHoleMm(),
                        with(
                                (f, mm) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                f.outsideLeast(),
                                                f.length(),
                                                f.lipMm(),
                                                mm,
                                                f.chamferMm(),
                                                f.material(),
                                                f.massG()))),
                KitSize.length(
                        "ferrule chamfer",
                        k -> k.ferrule().chamferMm(),
                        with(
                                (f, mm) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                f.outsideLeast(),
                                                f.length(),
                                                f.lipMm(),
                                                f.lipHoleMm(),
                                                mm,
                                                f.material(),
                                                f.massG()))),
                KitSizes.optional(
                        "ferrule mass",
                        KitSize.Kind.OPTIONAL_MASS,
                        k -> k.ferrule().massG(),
                        with(
                                (f, g) ->
                                        new Ferrule(
                                                f.bore(),
                                                f.outside(),
                                                f.outsideLeast(),
                                                f.length(),
                                                f.lipMm(),
                                                f.lipHoleMm(),
                                                f.chamferMm(),
                                                f.material(),
                                                g))));
    }

    /** A round ferrule stays round; the lesser axis of an oval one is measured by itself. */
    private static Ferrule outside(Ferrule f, Measured m) {
        boolean isRound = f.outsideLeast().equals(f.outside());
        return new Ferrule(
                f.bore(),
                m,
                isRound ? m : f.outsideLeast(),
                f.length(),
                f.lipMm(),
                f.lipHoleMm(),
                f.chamferMm(),
                f.material(),
                f.massG());
    }

    private static <V> BiFunction<Kit, V, Kit> with(BiFunction<Ferrule, V, Ferrule> change) {
        return (kit, v) -> kit.withFerrule(change.apply(kit.ferrule(), v));
    }
}
