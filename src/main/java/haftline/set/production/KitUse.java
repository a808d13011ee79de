package haftline.set.production;

/**
 * Metal parts for a batch.
 *
 * @param kit name of the kit
 * @param blades how many blades with their tangs, and as many ferrules
 * @param caps how many end caps
 */
public record KitUse(String kit, int blades, int caps) {}
