package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The sizes of each kind of tang. */
final class TangSizes {
    private TangSizes() {}

    /** The cross sizes and the length, in the order of measuring. */
    static List<KitSize> of(Tang tang) {
        if (tang instanceof RoundTang) {
            return List.of(
                    size(
                            RoundTang.class,
                            "tang diameter",
                            RoundTang::diameter,
                            (t, m) -> new RoundTang(m, t.length(), t.massG(), t.flare())),
                    size(
                            RoundTang.class,
                            "tang length",
                            RoundTang::length,
                            (t, m) -> new RoundTang(t.diameter(), m, t.massG(), t.flare())));
        }
        if (tang instanceof SquareTang) {
            return List.of(
                    size(
                            SquareTang.class,
                            "tang width",
                            SquareTang::width,
                            (t, m) -> new SquareTang(m, t.length(), t.massG(), t.flare())),
                    size(
                            SquareTang.class,
                            "tang length",
                            SquareTang::length,
                            (t, m) -> new SquareTang(t.width(), m, t.massG(), t.flare())));
        }
        if (tang instanceof FlatTang) {
            return List.of(
                    size(
                            FlatTang.class,
                            "tang width",
                            FlatTang::width,
                            (t, m) ->
                                    new FlatTang(
                                            m, t.thickness(), t.length(), t.massG(), t.flare())),
                    size(
                            FlatTang.class,
                            "tang thickness",
                            FlatTang::thickness,
                            (t, m) -> new FlatTang(t.width(), m, t.length(), t.massG(), t.flare())),
                    size(
                            FlatTang.class,
                            "tang length",
                            FlatTang::length,
                            (t, m) ->
                                    new FlatTang(
                                            t.width(), t.thickness(), m, t.massG(), t.flare())));
        }
        if (tang instanceof TaperedTang) {
            return List.of(
                    size(
                            TaperedTang.class,
                            "tang diameter at the root",
                            TaperedTang::rootDiameter,
                            (t, m) ->
                                    new TaperedTang(
                                            m, t.tipDiameter(), t.length(), t.massG(), t.flare())),
                    size(
                            TaperedTang.class,
                            "tang diameter at the tip",
                            TaperedTang::tipDiameter,
                            (t, m) ->
                                    new TaperedTang(
                                            t.rootDiameter(), m, t.length(), t.massG(), t.flare())),
                    size(
                            TaperedTang.class,
                            "tang length",
                            TaperedTang::length,
                            (t, m) ->
                                    new TaperedTang(
                                            t.rootDiameter(),
                                            t.tipDiameter(),
                                            m,
                                            t.massG(),
                                            t.flare())));
        }
        if (tang instanceof BarbedTang) {
            return List.of(
                    size(
                            BarbedTang.class,
                            "tang diameter between barbs",
                            BarbedTang::coreDiameter,
                            (t, m) ->
                                    new BarbedTang(
                                            m, t.barbDiameter(), t.length(), t.massG(), t.flare())),
                    size(
                            BarbedTang.class,
                            "tang diameter over barbs",
                            BarbedTang::barbDiameter,
                            (t, m) ->
                                    new BarbedTang(
                                            t.coreDiameter(), m, t.length(), t.massG(), t.flare())),
                    size(
                            BarbedTang.class,
                            "tang length",
                            BarbedTang::length,
                            (t, m) ->
                                    new BarbedTang(
                                            t.coreDiameter(),
                                            t.barbDiameter(),
                                            m,
                                            t.massG(),
                                            t.flare())));
        }
        return threaded();
    }

    private static List<KitSize> threaded() {
        return List.of(
                size(
                        ThreadedTang.class,
                        "diameter over the thread",
                        ThreadedTang::crestDiameter,
                        (t, m) ->
                                thread(
                                        t,
                                        m,
                                        t.threadBoreMm(),
                                        t.clearanceBoreMm(),
                                        t.plainLength(),
                                        t.length())),
                number(
                        "bore for the thread",
                        ThreadedTang::threadBoreMm,
                        (t, mm) ->
                                thread(
                                        t,
                                        t.crestDiameter(),
                                        mm,
                                        t.clearanceBoreMm(),
                                        t.plainLength(),
                                        t.length())),
                number(
                        "bore for the plain part",
                        ThreadedTang::clearanceBoreMm,
                        (t, mm) ->
                                thread(
                                        t,
                                        t.crestDiameter(),
                                        t.threadBoreMm(),
                                        mm,
                                        t.plainLength(),
                                        t.length())),
                size(
                        ThreadedTang.class,
                        "length of the plain part",
                        ThreadedTang::plainLength,
                        (t, m) ->
                                thread(
                                        t,
                                        t.crestDiameter(),
                                        t.threadBoreMm(),
                                        t.clearanceBoreMm(),
                                        m,
                                        t.length())),
                size(
                        ThreadedTang.class,
                        "tang length",
                        ThreadedTang::length,
                        (t, m) ->
                                thread(
                                        t,
                                        t.crestDiameter(),
                                        t.threadBoreMm(),
                                        t.clearanceBoreMm(),
                                        t.plainLength(),
                                        m)));
    }

    private static ThreadedTang thread(
            ThreadedTang tang,
            Measured crest,
            double threadBore,
            double clearance,
            Measured plain,
            Measured length) {
        return new ThreadedTang(
                crest, threadBore, clearance, plain, length, tang.massG(), tang.flare());
    }

    private static KitSize number(
            String words,
            Function<ThreadedTang, Double> read,
            BiFunction<ThreadedTang, Double, Tang> write) {
        return KitSize.length(
                words,
                kit -> read.apply((ThreadedTang) kit.tang()),
                (kit, mm) -> with(kit, write.apply((ThreadedTang) kit.tang(), mm)));
    }

    private static <T extends Tang> KitSize size(
            Class<T> kind,
            String words,
            Function<T, Measured> read,
            BiFunction<T, Measured, Tang> write) {
        return KitSize.readings(
                words,
                kit -> read.apply(kind.cast(kit.tang())),
                (kit, size) -> with(kit, write.apply(kind.cast(kit.tang()), size)));
    }

    static Kit with(Kit kit, Tang tang) {
        return new Kit(kit.name(), kit.blade(), tang, kit.seatMm(), kit.ferrule(), kit.cap());
    }

    /**
     * A tang of another kind and of about the same size, to be measured anew.
     *
     * @param tang the tang
     * @param kind word of the kind wanted
     */
    static Tang ofKind(Tang tang, String kind) {
        Measured across = Measured.exactly(tang.envelopeMm(0));
        Measured length = tang.length();
        double mm = across.mean();
        return switch (kind) {
            case "round" -> new RoundTang(across, length, tang.massG(), tang.flare());
            // The square or flat that just passes the same hole.
            case "square" ->
                    new SquareTang(
                            Measured.exactly(mm / Math.sqrt(2)),
                            length,
                            tang.massG(),
                            tang.flare());
            case "flat" ->
                    new FlatTang(
                            Measured.exactly(0.8 * mm),
                            Measured.exactly(0.6 * mm),
                            length,
                            tang.massG(),
                            tang.flare());
            case "tapered" ->
                    new TaperedTang(
                            across, Measured.exactly(mm / 2), length, tang.massG(), tang.flare());
            case "barbed" ->
                    new BarbedTang(
                            Measured.exactly(0.8 * mm), across, length, tang.massG(), tang.flare());
            case "threaded" ->
                    new ThreadedTang(
                            across,
                            0.85 * mm,
                            mm,
                            Measured.exactly(0),
                            length,
                            tang.massG(),
                            tang.flare());
            default ->
                    throw new IllegalArgumentException(
                            "tang "
                                    + kind
                                    + ": expected one of "
                                    + String.join(", ", KitSizes.TANG_KINDS));
        };
    }
}
