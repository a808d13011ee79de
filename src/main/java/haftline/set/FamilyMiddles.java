package haftline.set;

import haftline.figures.Figures;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The middle values of a family: of every trait and of the visible wood. They are kept in order, so
 * that what a middle becomes with one piece changed is found by halving and not by working out the
 * whole family anew: a set of thousands is looked through piece by piece.
 */
final class FamilyMiddles {
    private final Map<Trait, double[]> sorted = new EnumMap<>(Trait.class);
    private final double[] wood;

    FamilyMiddles(List<Family.Member> members) {
        for (Trait trait : Trait.values()) {
            double[] values =
                    members.stream()
                            .mapToDouble(member -> trait.of(member.figures()))
                            .filter(value -> !Double.isNaN(value))
                            .sorted()
                            .toArray();
            sorted.put(trait, values);
        }
        wood = members.stream().mapToDouble(member -> woodMm(member.figures())).sorted().toArray();
    }

    static double woodMm(Figures figures) {
        return figures.handle().buttX();
    }

    /** The middle of a trait; not a number where no piece has it. */
    double of(Trait trait) {
        return middle(sorted.get(trait), Double.NaN, Double.NaN);
    }

    /** The middle of the visible wood, mm. */
    double wood() {
        return middle(wood, Double.NaN, Double.NaN);
    }

    /** The middle of a trait if one piece had other figures. */
    double of(Trait trait, Figures now, Figures then) {
        return middle(sorted.get(trait), trait.of(now), trait.of(then));
    }

    /** The middle of the visible wood if one piece had other figures, mm. */
    double wood(Figures now, Figures then) {
        return middle(wood, woodMm(now), woodMm(then));
    }

    /** How many pieces would have a trait if one had other figures. */
    int count(Trait trait, Figures now, Figures then) {
        return sorted.get(trait).length + counted(trait.of(then)) - counted(trait.of(now));
    }

    private static int counted(double value) {
        return Double.isNaN(value) ? 0 : 1;
    }

    /** The median with one value taken out and one put in, either of which may be no number. */
    private static double middle(double[] values, double out, double in) {
        int count = values.length - counted(out) + counted(in);
        if (count == 0) {
            return Double.NaN;
        }
        int half = count / 2;
        double upper = at(values, half, out, in);
        return count % 2 == 1 ? upper : (at(values, half - 1, out, in) + upper) / 2;
    }

    /** The value at a place of the order, one taken out and one put in. */
    private static double at(double[] values, int place, double out, double in) {
        int gone = Double.isNaN(out) ? values.length : Arrays.binarySearch(values, out);
        int before = place(values, in);
        // Whatever stands behind the one taken out moves up by one.
        int newPlace = before - (gone < before ? 1 : 0);
        if (!Double.isNaN(in) && place == newPlace) {
            return in;
        }
        int left = !Double.isNaN(in) && place > newPlace ? place - 1 : place;
        return values[left >= gone ? left + 1 : left];
    }

    /** How many values are less than one that is put in; all where there is none. */
    private static int place(double[] values, double in) {
        if (Double.isNaN(in)) {
            return values.length;
        }
        int found = Arrays.binarySearch(values, in);
        return found >= 0 ? found : -found - 1;
    }
}
