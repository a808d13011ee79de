package haftline.ui.inspector;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.set.HandleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The measured sizes of a kit, each with the way to put another reading in its place. */
final class KitFields {
    /** Reads one size of a kit and puts it back changed. */
    record Size(String name, Reader read, Writer write) {}

    /** Reads a size. */
    interface Reader {
        Measured of(Kit kit);
    }

    /** Makes a kit with another size. */
    interface Writer {
        Kit with(Kit kit, Measured size);
    }

    private KitFields() {}

    static List<Size> of(Kit kit) {
        List<Size> sizes = new ArrayList<>();
        sizes.add(
                new Size(
                        "blade length",
                        k -> k.blade().length(),
                        (k, m) -> with(k, blade(k.blade(), m))));
        tang(kit.tang(), sizes);
        sizes.add(
                new Size(
                        "tang length",
                        k -> k.tang().length(),
                        (k, m) -> with(k, longer(k.tang(), m))));
        sizes.add(new Size("ferrule bore", k -> k.ferrule().bore(), KitFields::bored));
        sizes.add(new Size("ferrule outside", k -> k.ferrule().outside(), KitFields::outside));
        sizes.add(new Size("ferrule length", k -> k.ferrule().length(), KitFields::ferruleLength));
        if (kit.cap().isPresent()) {
            cap(sizes);
        }
        return sizes;
    }

    private static void cap(List<Size> sizes) {
        sizes.add(
                new Size(
                        "cap spigot",
                        k -> k.cap().orElseThrow().spigotDiameter(),
                        (k, m) -> {
                            EndCap c = k.cap().orElseThrow();
                            return with(
                                    k,
                                    cap(
                                            c,
                                            m,
                                            c.spigotLength(),
                                            c.headDiameter(),
                                            c.headThickness()));
                        }));
        sizes.add(
                new Size(
                        "spigot length",
                        k -> k.cap().orElseThrow().spigotLength(),
                        (k, m) -> {
                            EndCap c = k.cap().orElseThrow();
                            return with(
                                    k,
                                    cap(
                                            c,
                                            c.spigotDiameter(),
                                            m,
                                            c.headDiameter(),
                                            c.headThickness()));
                        }));
        sizes.add(
                new Size(
                        "cap head",
                        k -> k.cap().orElseThrow().headDiameter(),
                        (k, m) -> {
                            EndCap c = k.cap().orElseThrow();
                            return with(
                                    k,
                                    cap(
                                            c,
                                            c.spigotDiameter(),
                                            c.spigotLength(),
                                            m,
                                            c.headThickness()));
                        }));
    }

    private static void tang(Tang tang, List<Size> sizes) {
        if (tang instanceof RoundTang) {
            sizes.add(
                    new Size(
                            "tang, round",
                            k -> ((RoundTang) k.tang()).diameter(),
                            (k, m) -> {
                                RoundTang t = (RoundTang) k.tang();
                                return with(k, new RoundTang(m, t.length(), t.massG(), t.flare()));
                            }));
        } else if (tang instanceof SquareTang) {
            sizes.add(
                    new Size(
                            "tang, square",
                            k -> ((SquareTang) k.tang()).width(),
                            (k, m) -> {
                                SquareTang t = (SquareTang) k.tang();
                                return with(k, new SquareTang(m, t.length(), t.massG(), t.flare()));
                            }));
        } else if (tang instanceof FlatTang) {
            sizes.add(
                    new Size(
                            "tang width",
                            k -> ((FlatTang) k.tang()).width(),
                            (k, m) -> {
                                FlatTang t = (FlatTang) k.tang();
                                return with(
                                        k,
                                        new FlatTang(
                                                m,
                                                t.thickness(),
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
            sizes.add(
                    new Size(
                            "tang thickness",
                            k -> ((FlatTang) k.tang()).thickness(),
                            (k, m) -> {
                                FlatTang t = (FlatTang) k.tang();
                                return with(
                                        k,
                                        new FlatTang(
                                                t.width(), m, t.length(), t.massG(), t.flare()));
                            }));
        } else if (tang instanceof BarbedTang) {
            sizes.add(
                    new Size(
                            "tang core",
                            k -> ((BarbedTang) k.tang()).coreDiameter(),
                            (k, m) -> {
                                BarbedTang t = (BarbedTang) k.tang();
                                return with(
                                        k,
                                        new BarbedTang(
                                                m,
                                                t.barbDiameter(),
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
            sizes.add(
                    new Size(
                            "tang barbs",
                            k -> ((BarbedTang) k.tang()).barbDiameter(),
                            (k, m) -> {
                                BarbedTang t = (BarbedTang) k.tang();
                                return with(
                                        k,
                                        new BarbedTang(
                                                t.coreDiameter(),
                                                m,
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
        } else if (tang instanceof TaperedTang) {
            sizes.add(
                    new Size(
                            "tang root",
                            k -> ((TaperedTang) k.tang()).rootDiameter(),
                            (k, m) -> {
                                TaperedTang t = (TaperedTang) k.tang();
                                return with(
                                        k,
                                        new TaperedTang(
                                                m,
                                                t.tipDiameter(),
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
            sizes.add(
                    new Size(
                            "tang tip",
                            k -> ((TaperedTang) k.tang()).tipDiameter(),
                            (k, m) -> {
                                TaperedTang t = (TaperedTang) k.tang();
                                return with(
                                        k,
                                        new TaperedTang(
                                                t.rootDiameter(),
                                                m,
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
        } else if (tang instanceof ThreadedTang) {
            sizes.add(
                    new Size(
                            "thread crest",
                            k -> ((ThreadedTang) k.tang()).crestDiameter(),
                            (k, m) -> {
                                ThreadedTang t = (ThreadedTang) k.tang();
                                return with(
                                        k,
                                        new ThreadedTang(
                                                m,
                                                t.threadBoreMm(),
                                                t.clearanceBoreMm(),
                                                t.plainLength(),
                                                t.length(),
                                                t.massG(),
                                                t.flare()));
                            }));
        }
    }

    private static Tang longer(Tang tang, Measured m) {
        if (tang instanceof RoundTang t) {
            return new RoundTang(t.diameter(), m, t.massG(), t.flare());
        } else if (tang instanceof SquareTang t) {
            return new SquareTang(t.width(), m, t.massG(), t.flare());
        } else if (tang instanceof FlatTang t) {
            return new FlatTang(t.width(), t.thickness(), m, t.massG(), t.flare());
        } else if (tang instanceof BarbedTang t) {
            return new BarbedTang(t.coreDiameter(), t.barbDiameter(), m, t.massG(), t.flare());
        } else if (tang instanceof TaperedTang t) {
            return new TaperedTang(t.rootDiameter(), t.tipDiameter(), m, t.massG(), t.flare());
        }
        ThreadedTang t = (ThreadedTang) tang;
        return new ThreadedTang(
                t.crestDiameter(),
                t.threadBoreMm(),
                t.clearanceBoreMm(),
                t.plainLength(),
                m,
                t.massG(),
                t.flare());
    }

    private static Kit with(Kit kit, Tang tang) {
        return new Kit(kit.name(), kit.blade(), tang, kit.seatMm(), kit.ferrule(), kit.cap());
    }

    private static Kit with(Kit kit, Blade blade) {
        return new Kit(kit.name(), blade, kit.tang(), kit.seatMm(), kit.ferrule(), kit.cap());
    }

    private static Kit with(Kit kit, Ferrule ferrule) {
        return new Kit(kit.name(), kit.blade(), kit.tang(), kit.seatMm(), ferrule, kit.cap());
    }

    private static Kit with(Kit kit, EndCap cap) {
        return new Kit(
                kit.name(), kit.blade(), kit.tang(), kit.seatMm(), kit.ferrule(), Optional.of(cap));
    }

    private static Blade blade(Blade b, Measured length) {
        return new Blade(
                length,
                b.widthMm(),
                b.thicknessMm(),
                b.edgeBelowAxisMm(),
                b.material(),
                b.massG(),
                b.includesTang(),
                b.balanceMm());
    }

    private static Kit bored(Kit kit, Measured m) {
        return ferrule(kit, m, kit.ferrule().outside(), kit.ferrule().length());
    }

    private static Kit outside(Kit kit, Measured m) {
        return ferrule(kit, kit.ferrule().bore(), m, kit.ferrule().length());
    }

    private static Kit ferruleLength(Kit kit, Measured m) {
        return ferrule(kit, kit.ferrule().bore(), kit.ferrule().outside(), m);
    }

    private static Kit ferrule(Kit kit, Measured bore, Measured outside, Measured length) {
        Ferrule f = kit.ferrule();
        // A round ferrule stays round; the lesser axis of an oval one is measured apart.
        Measured least = f.outsideLeast().equals(f.outside()) ? outside : f.outsideLeast();
        return with(
                kit,
                new Ferrule(
                        bore,
                        outside,
                        least,
                        length,
                        f.lipMm(),
                        f.lipHoleMm(),
                        f.chamferMm(),
                        f.material(),
                        f.massG()));
    }

    private static EndCap cap(
            EndCap c, Measured spigot, Measured length, Measured head, Measured thickness) {
        return new EndCap(
                spigot, length, head, thickness, c.form(), c.material(), c.massG(), c.balanceMm());
    }

    /** The set with a kit of the batch in use replaced. */
    static HandleSet inSet(HandleSet set, Kit changed) {
        List<Batch> batches = new ArrayList<>();
        for (Batch batch : set.parts().batches()) {
            List<Kit> kits = new ArrayList<>(batch.kits());
            if (batch.id().equals(set.batch())) {
                kits.replaceAll(kit -> kit.name().equals(changed.name()) ? changed : kit);
            }
            batches.add(new Batch(batch.id(), batch.note(), kits));
        }
        return set.withBatch(
                new PartsList(set.parts().name(), set.parts().note(), batches), set.batch());
    }
}
