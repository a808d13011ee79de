package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Flare;
import haftline.parts.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The sizes of a kit in the order of measuring: blade, tang, ferrule, cap. */
public final class KitSizes {
    /** The kinds of tang, as documents call them. */
    public static final List<String> TANG_KINDS =
            List.of("round", "flat", "square", "tapered", "barbed", "threaded");

    private KitSizes() {}

    /**
     * The sizes that a kit has.
     *
     * @param kit the kit
     * @return its sizes, those that were not measured too
     */
    public static List<KitSize> of(Kit kit) {
        List<KitSize> sizes = new ArrayList<>();
        for (KitPart part : KitPart.values()) {
            sizes.addAll(of(kit, part));
        }
        return sizes;
    }

    /**
     * The sizes of one part.
     *
     * @param kit the kit
     * @param part which part
     * @return its sizes, none for a part that the kit lacks
     */
    public static List<KitSize> of(Kit kit, KitPart part) {
        return switch (part) {
            case BLADE -> blade();
            case TANG -> tang(kit);
            case FERRULE -> FerruleSizes.all();
            case CAP -> kit.cap().isPresent() ? cap() : List.of();
        };
    }

    private static List<KitSize> tang(Kit kit) {
        List<KitSize> sizes = new ArrayList<>(TangSizes.of(kit.tang()));
        sizes.add(
                KitSize.length(
                        "tang's seat behind the ferrule's face",
                        Kit::seatMm,
                        (k, mm) ->
                                new Kit(k.name(), k.blade(), k.tang(), mm, k.ferrule(), k.cap())));
        sizes.add(
                optional(
                        "tang mass",
                        KitSize.Kind.OPTIONAL_MASS,
                        k -> k.tang().massG(),
                        (k, g) ->
                                TangSizes.with(k, KitMakeUp.with(k.tang(), g, k.tang().flare()))));
        if (kit.tang().flare().isPresent()) {
            sizes.add(flare("flare diameter", Flare::diameter, (f, m) -> new Flare(m, f.length())));
            sizes.add(flare("flare length", Flare::length, (f, m) -> new Flare(f.diameter(), m)));
        }
        return sizes;
    }

    private static KitSize flare(
            String words,
            Function<Flare, Measured> read,
            BiFunction<Flare, Measured, Flare> change) {
        return KitSize.readings(
                words,
                k -> read.apply(flare(k)),
                (k, m) ->
                        TangSizes.with(
                                k,
                                KitMakeUp.with(
                                        k.tang(),
                                        k.tang().massG(),
                                        Optional.of(change.apply(flare(k), m)))));
    }

    private static Flare flare(Kit kit) {
        return kit.tang()
                .flare()
                .orElseThrow(() -> new IllegalArgumentException("the tang has no flare"));
    }

    private static List<KitSize> blade() {
        return List.of(
                KitSize.readings(
                        "blade length",
                        k -> k.blade().length(),
                        blade(
                                (b, m) ->
                                        new Blade(
                                                m,
                                                b.widthMm(),
                                                b.thicknessMm(),
                                                b.edgeBelowAxisMm(),
                                                b.material(),
                                                b.massG(),
                                                b.includesTang(),
                                                b.balanceMm()))),
                KitSize.length(
                        "blade width",
                        k -> k.blade().widthMm(),
                        blade(
                                (b, mm) ->
                                        new Blade(
                                                b.length(),
                                                mm,
                                                b.thicknessMm(),
                                                b.edgeBelowAxisMm(),
                                                b.material(),
                                                b.massG(),
                                                b.includesTang(),
                                                b.balanceMm()))),
                KitSize.length(
                        "blade thickness",
                        k -> k.blade().thicknessMm(),
                        blade(
                                (b, mm) ->
                                        new Blade(
                                                b.length(),
                                                b.widthMm(),
                                                mm,
                                                b.edgeBelowAxisMm(),
                                                b.material(),
                                                b.massG(),
                                                b.includesTang(),
                                                b.balanceMm()))),
                optional(
                        "blade mass",
                        KitSize.Kind.OPTIONAL_MASS,
                        k -> k.blade().massG(),
                        blade(
                                (b, g) ->
                                        new Blade(
                                                b.length(),
                                                b.widthMm(),
                                                b.thicknessMm(),
                                                b.edgeBelowAxisMm(),
                                                b.material(),
                                                g,
                                                b.includesTang(),
                                                b.balanceMm()))));
    }

    private static List<KitSize> cap() {
        return List.of(
                KitSize.readings(
                        "cap spigot diameter",
                        k -> cap(k).spigotDiameter(),
                        cap(
                                (c, m) ->
                                        new EndCap(
                                                m,
                                                c.spigotLength(),
                                                c.headDiameter(),
                                                c.headThickness(),
                                                c.form(),
                                                c.material(),
                                                c.massG(),
                                                c.balanceMm()))),
                KitSize.readings(
                        "cap spigot length",
                        k -> cap(k).spigotLength(),
                        cap(
                                (c, m) ->
                                        new EndCap(
                                                c.spigotDiameter(),
                                                m,
                                                c.headDiameter(),
                                                c.headThickness(),
                                                c.form(),
                                                c.material(),
                                                c.massG(),
                                                c.balanceMm()))),
                KitSize.readings(
                        "cap head diameter",
                        k -> cap(k).headDiameter(),
                        cap(
                                (c, m) ->
                                        new EndCap(
                                                c.spigotDiameter(),
                                                c.spigotLength(),
                                                m,
                                                c.headThickness(),
                                                c.form(),
                                                c.material(),
                                                c.massG(),
                                                c.balanceMm()))),
                KitSize.readings(
                        "cap head thickness",
                        k -> cap(k).headThickness(),
                        cap(
                                (c, m) ->
                                        new EndCap(
                                                c.spigotDiameter(),
                                                c.spigotLength(),
                                                c.headDiameter(),
                                                m,
                                                c.form(),
                                                c.material(),
                                                c.massG(),
                                                c.balanceMm()))),
                optional(
                        "cap mass",
                        KitSize.Kind.OPTIONAL_MASS,
                        k -> cap(k).massG(),
                        cap(
                                (c, g) ->
                                        new EndCap(
                                                c.spigotDiameter(),
                                                c.spigotLength(),
                                                c.headDiameter(),
                                                c.headThickness(),
                                                c.form(),
                                                c.material(),
                                                g,
                                                c.balanceMm()))));
    }

    private static EndCap cap(Kit kit) {
        return kit.cap().orElseThrow(() -> new IllegalArgumentException("the kit has no cap"));
    }

    static KitSize optional(
            String words,
            KitSize.Kind kind,
            Function<Kit, OptionalDouble> read,
            BiFunction<Kit, OptionalDouble, Kit> write) {
        return new KitSize(
                words,
                kind,
                kit -> read.apply(kit).stream().mapToObj(Measured::exactly).findFirst(),
                (kit, size) ->
                        write.apply(
                                kit,
                                size.map(m -> OptionalDouble.of(m.mean()))
                                        .orElseGet(OptionalDouble::empty)));
    }

    private static <V> BiFunction<Kit, V, Kit> blade(BiFunction<Blade, V, Blade> change) {
        return (kit, v) ->
                new Kit(
                        kit.name(),
                        change.apply(kit.blade(), v),
                        kit.tang(),
                        kit.seatMm(),
                        kit.ferrule(),
                        kit.cap());
    }

    private static <V> BiFunction<Kit, V, Kit> cap(BiFunction<EndCap, V, EndCap> change) {
        return (kit, v) ->
                new Kit(
                        kit.name(),
                        kit.blade(),
                        kit.tang(),
                        kit.seatMm(),
                        kit.ferrule(),
                        Optional.of(change.apply(cap(kit), v)));
    }
}
