package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.Kit;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One size or mass of a kit, and how another is put in its place.
 *
 * @param words what it is, in the trade's words, such as {@code ferrule bore}
 * @param kind how it is measured
 * @param read reads it; empty where it was not measured
 * @param write a kit with another one; refuses an impossible one
 */
public record KitSize(
        String words,
        Kind kind,
        Function<Kit, Optional<Measured>> read,
        BiFunction<Kit, Optional<Measured>, Kit> write) {
    /** How a size is measured. */
    public enum Kind {
        /** Several readings, mm. */
        READINGS,
        /** One number, mm. */
        LENGTH,
        /** One number, mm, which may be left open. */
        OPTIONAL_LENGTH,
        /** One number, g, which may be left open. */
        OPTIONAL_MASS
    }

    static KitSize readings(
            String words, Function<Kit, Measured> read, BiFunction<Kit, Measured, Kit> write) {
        return new KitSize(
                words,
                Kind.READINGS,
                kit -> Optional.of(read.apply(kit)),
                (kit, size) -> write.apply(kit, required(words, size)));
    }

    static KitSize length(
            String words, Function<Kit, Double> read, BiFunction<Kit, Double, Kit> write) {
        return new KitSize(
                words,
                Kind.LENGTH,
                kit -> Optional.of(Measured.exactly(read.apply(kit))),
                (kit, size) -> write.apply(kit, required(words, size).mean()));
    }

    private static Measured required(String words, Optional<Measured> size) {
        return size.orElseThrow(
                () -> new IllegalArgumentException(words + ": a kit cannot do without it"));
    }

    /**
     * Whether it may be left open.
     *
     * @return true for what a kit can do without
     */
    public boolean isOptional() {
        return kind == Kind.OPTIONAL_LENGTH || kind == Kind.OPTIONAL_MASS;
    }
}
