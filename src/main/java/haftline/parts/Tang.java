package haftline.parts;

import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The part of a blade that stands in the handle. Distances along it run from the seating face
 * towards its tip, in mm.
 *
 * <p>All cross sizes are at least {@value #LEAST} mm and at most {@value #WIDEST} mm, lengths at
 * most {@value #LONGEST} mm: limits of plausibility, not of the trade.
 */
public sealed interface Tang
        permits RoundTang, FlatTang, SquareTang, TaperedTang, BarbedTang, ThreadedTang {
    /** Least size that is taken as real, mm. */
    double LEAST = 0.1;

    /** Greatest cross size, mm. */
    double WIDEST = 60;

    /** Greatest length, mm. */
    double LONGEST = 400;

    /**
     * Length from the seating face to the tip.
     *
     * @return mm
     */
    Measured length();

    /**
     * Mass of the tang alone, where it was weighed.
     *
     * @return g, or empty
     */
    OptionalDouble massG();

    /**
     * Thickening at the root.
     *
     * @return the flare, or empty
     */
    Optional<Flare> flare();

    /**
     * Its measured cross sizes and whatever else its kind has, without length and flare.
     *
     * @return the sizes, each with its name
     */
    List<PartSize> ownSizes();

    /**
     * The word for this kind of tang, as it is written in documents.
     *
     * @return one lower-case word
     */
    String kind();

    /**
     * Diameter of the smallest round hole that lets every reading pass, at a distance from the
     * seating face: the largest reading's diameter, diagonal, barb or crest.
     *
     * @param fromSeatMm distance along the tang, mm, 0 to its length
     * @return mm
     */
    double envelopeMm(double fromSeatMm);

    /**
     * Area of the metal's mean cross section.
     *
     * @param fromSeatMm distance along the tang, mm, 0 to its length
     * @return mm²
     */
    double sectionMm2(double fromSeatMm);

    /**
     * Volume of metal between the seating face and a distance from it.
     *
     * @param toMm distance along the tang, mm, 0 to its length
     * @return mm³
     */
    default double volumeMm3(double toMm) {
        return sectionMm2(0) * toMm;
    }

    /**
     * First moment of that volume about the seating face.
     *
     * @param toMm distance along the tang, mm, 0 to its length
     * @return mm⁴
     */
    default double momentMm4(double toMm) {
        return sectionMm2(0) * toMm * toMm / 2;
    }
}
