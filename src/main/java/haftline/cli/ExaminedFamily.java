package haftline.cli;

import haftline.set.Family;
import java.util.List;

/**
 * The family of a set, worked out.
 *
 * @param family what its pieces have in common and what not
 * @param strays what falls out of it, gravest first
 */
record ExaminedFamily(Family family, List<Stray> strays) {
    ExaminedFamily {
        strays = List.copyOf(strays);
    }

    /** A piece that falls out of the family, with its words. */
    record Stray(Family.Stray stray, Told told) {}
}
