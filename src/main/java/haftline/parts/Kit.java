package haftline.parts;

import haftline.measure.Checks;
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
        Checks.within("seat", seatMm, 0, ferrule.length().least());
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
