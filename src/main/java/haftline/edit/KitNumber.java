package haftline.edit;

import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A place on a part, which may lie on either side of where it is measured from, and may be left
 * open.
 *
 * @param words what it is, in the trade's words
 * @param ifOpen what stands for it where it is left open
 * @param read reads it, mm
 * @param write a kit with another one; refuses an impossible one
 */
public record KitNumber(
        String words,
        String ifOpen,
        Function<Kit, OptionalDouble> read,
        BiFunction<Kit, OptionalDouble, Kit> write) {
    /**
     * The places of a part.
     *
     * @param kit the kit
     * @param part which part
     * @return its places, none for a part that it lacks
     */
    public static List<KitNumber> of(Kit kit, KitPart part) {
        return switch (part) {
            case BLADE ->
                    List.of(
                            new KitNumber(
                                    "blade edge below the axis",
                                    "half of its width",
                                    k -> k.blade().edgeBelowAxisMm(),
                                    (k, mm) -> blade(k, mm, k.blade().balanceMm())),
                            new KitNumber(
                                    "blade balance in front of the seat",
                                    "reckoned from its sizes",
                                    k -> k.blade().balanceMm(),
                                    (k, mm) -> blade(k, k.blade().edgeBelowAxisMm(), mm)));
            case CAP ->
                    kit.cap().isEmpty()
                            ? List.of()
                            : List.of(
                                    new KitNumber(
                                            "cap balance behind its seat",
                                            "reckoned from its sizes",
                                            k -> k.cap().orElseThrow().balanceMm(),
                                            KitNumber::capBalance));
            default -> List.of();
        };
    }

    private static Kit blade(Kit kit, OptionalDouble edge, OptionalDouble balance) {
        Blade b = kit.blade();
        return new Kit(
                kit.name(),
                new Blade(
                        b.length(),
                        b.widthMm(),
                        b.thicknessMm(),
                        edge,
                        b.material(),
                        b.massG(),
                        b.includesTang(),
                        balance),
                kit.tang(),
                kit.seatMm(),
                kit.ferrule(),
                kit.cap());
    }

    private static Kit capBalance(Kit kit, OptionalDouble mm) {
        EndCap c = kit.cap().orElseThrow();
        return new Kit(
                kit.name(),
                kit.blade(),
                kit.tang(),
                kit.seatMm(),
                kit.ferrule(),
                Optional.of(
                        new EndCap(
                                c.spigotDiameter(),
                                c.spigotLength(),
                                c.headDiameter(),
                                c.headThickness(),
                                c.form(),
                                c.material(),
                                c.massG(),
                                mm)));
    }
}
