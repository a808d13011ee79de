package haftline.parts;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The metal parts of one piece, as measured.
 *
 * @param name name of the kit within its batch
 * @param blade the blade
 * @param tang the tang
 * @param seatMm how far behind the ferrule's front face the tang's seating face lies, mm; 0 where
 *     it seats on the front face, the lip's thickness where it seats inside
 * @param ferrule the ferrule
 * @param cap the end cap, or empty
 */
public record Kit(
        String name, Blade blade, Tang tang, double seatMm, Ferrule ferrule, Optional<EndCap> cap) {
    /** Checks the ranges: the seat lies within the ferrule. */
    public Kit {
        Checks.named("kit name", name);
        Checks.withinMm("seat", seatMm, 0, ferrule.length().least());
    }

    /**
     * Every size that was measured, from blade to cap.
     *
     * @return the sizes, names unique; the lesser axis of a ferrule only where it was measured
     */
    public List<PartSize> sizes() {
        List<PartSize> sizes = new ArrayList<>(16);
        sizes.add(new PartSize(PartSize.Part.BLADE, "blade length", blade.length()));
        sizes.addAll(tang.ownSizes());
        sizes.add(new PartSize(PartSize.Part.TANG, "tang length", tang.length()));
        tang.flare()
                .ifPresent(
                        flare -> {
                            PartSize.Part part = PartSize.Part.TANG;
                            sizes.add(new PartSize(part, "tang's flare", flare.diameter()));
                            sizes.add(new PartSize(part, "length of the flare", flare.length()));
                        });
        PartSize.Part ring = PartSize.Part.FERRULE;
        sizes.add(new PartSize(ring, "ferrule bore", ferrule.bore()));
        sizes.add(new PartSize(ring, "ferrule outside", ferrule.outside()));
        if (!ferrule.outsideLeast().equals(ferrule.outside())) {
            sizes.add(new PartSize(ring, "ferrule's lesser outside", ferrule.outsideLeast()));
        }
        sizes.add(new PartSize(ring, "ferrule length", ferrule.length()));
        cap.ifPresent(
                c -> {
                    PartSize.Part part = PartSize.Part.CAP;
                    sizes.add(new PartSize(part, "cap spigot", c.spigotDiameter()));
                    sizes.add(new PartSize(part, "cap spigot's length", c.spigotLength()));
                    sizes.add(new PartSize(part, "cap head", c.headDiameter()));
                    sizes.add(new PartSize(part, "cap head's thickness", c.headThickness()));
                });
        return List.copyOf(sizes);
    }

    /**
     * The same kit with another ferrule.
     *
     * @param newFerrule the ferrule
     * @return the changed copy
     */
    public Kit withFerrule(Ferrule newFerrule) {
        return new Kit(name, blade, tang, seatMm, newFerrule, cap);
    }

    /**
     * The same kit with another cap.
     *
     * @param newCap the cap
     * @return the changed copy
     */
    public Kit withCap(EndCap newCap) {
        return new Kit(name, blade, tang, seatMm, ferrule, Optional.of(newCap));
    }
}
