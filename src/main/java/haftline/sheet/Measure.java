package haftline.sheet;

import java.util.Optional;

/**
 * A size that whoever buys the kit measures.
 *
 * @param letter its letter on the drawing
 * @param what what is measured and how
 * @param figure what it is in the batch at hand, without unit
 * @param spot where it is on the drawing; empty where the drawing does not show it
 */
public record Measure(String letter, String what, String figure, Optional<Spot> spot) {}
