package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a kit is made up of, beside its sizes: metals, a flare at the root, the head's form. */
public final class KitMakeUp {
    /** A flare to begin with, to be measured over; invented. */
    private static final double FLARE_WIDER = 1.3;

    private static final double FLARE_LONG_MM = 4;

    private KitMakeUp() {}

    /**
     * The metal of a part.
     *
     * @param kit the kit
     * @param part blade, which the tang shares, ferrule or cap
     * @return key of the metal in the catalogue, empty for a part that the kit lacks
     */
    public static Optional<String> metal(Kit kit, KitPart part) {
        return switch (part) {
            case BLADE, TANG -> Optional.of(kit.blade().material());
            case FERRULE -> Optional.of(kit.ferrule().material());
            case CAP -> kit.cap().map(EndCap::material);
        };
    }

    /** A kit with a part of another metal. */
    static Kit withMetal(Kit kit, KitPart part, String metal) {
        Blade b = kit.blade();
        Ferrule f = kit.ferrule();
        return switch (part) {
            case BLADE, TANG ->
                    new Kit(
                            kit.name(),
                            new Blade(
                                    b.length(),
                                    b.widthMm(),
                                    b.thicknessMm(),
                                    b.edgeBelowAxisMm(),
                                    metal,
                                    b.massG(),
                                    b.includesTang(),
                                    b.balanceMm()),
                            kit.tang(),
                            kit.seatMm(),
                            f,
                            kit.cap());
            case FERRULE ->
                    kit.withFerrule(
                            new Ferrule(
                                    f.bore(),
                                    f.outside(),
                                    f.outsideLeast(),
                                    f.length(),
                                    f.lipMm(),
                                    f.lipHoleMm(),
                                    f.chamferMm(),
                                    metal,
                                    f.massG()));
            case CAP -> kit.cap().map(c -> kit.withCap(cap(c, c.form(), metal))).orElse(kit);
        };
    }

    /** A kit with the cap's head in another form. */
    static Kit withHead(Kit kit, EndCap.Form form) {
        return kit.cap().map(c -> kit.withCap(cap(c, form, c.material()))).orElse(kit);
    }

    private static EndCap cap(EndCap c, EndCap.Form form, String metal) {
        return new EndCap(
                c.spigotDiameter(),
                c.spigotLength(),
                c.headDiameter(),
                c.headThickness(),
                form,
                metal,
                c.massG(),
                c.balanceMm());
    }

    /** A kit whose tang has a flare at its root, to be measured, or none. */
    static Kit withFlare(Kit kit, boolean hasFlare) {
        if (kit.tang().flare().isPresent() == hasFlare) {
            return kit;
        }
        double wide = Math.min(60, FLARE_WIDER * kit.tang().envelopeMm(0));
        Flare flare = new Flare(Measured.exactly(wide), Measured.exactly(FLARE_LONG_MM));
        return TangSizes.with(
                kit,
                with(
                        kit.tang(),
                        kit.tang().massG(),
                        hasFlare ? Optional.of(flare) : Optional.empty()));
    }

    /** The same tang with another mass and flare. */
    static Tang with(Tang tang, OptionalDouble massG, Optional<Flare> flare) {
        if (tang instanceof RoundTang t) {
            return new RoundTang(t.diameter(), t.length(), massG, flare);
        }
        if (tang instanceof FlatTang t) {
            return new FlatTang(t.width(), t.thickness(), t.length(), massG, flare);
        }
        if (tang instanceof SquareTang t) {
            return new SquareTang(t.width(), t.length(), massG, flare);
        }
        if (tang instanceof TaperedTang t) {
            return new TaperedTang(t.rootDiameter(), t.tipDiameter(), t.length(), massG, flare);
        }
        if (tang instanceof BarbedTang t) {
            return new BarbedTang(t.coreDiameter(), t.barbDiameter(), t.length(), massG, flare);
        }
        ThreadedTang t = (ThreadedTang) tang;
        return new ThreadedTang(
                t.crestDiameter(),
                t.threadBoreMm(),
                t.clearanceBoreMm(),
                t.plainLength(),
                t.length(),
                massG,
                flare);
    }
}
