package haftline.sheet;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A size to make, and how it follows from what was measured.
 *
 * @param letter its letter on the drawing
 * @param what what is made
 * @param how the rule, in the letters of what is measured
 * @param wishMm what the rule gives for the batch at hand before a drill is chosen, mm; empty where
 *     no choice follows it
 * @param figure what is made in the batch at hand, without unit
 * @param spot where it is on the drawing; empty where the drawing does not show it
 */
public record Rule(
        String letter,
        String what,
        String how,
        OptionalDouble wishMm,
        String figure,
        Optional<Spot> spot) {}
