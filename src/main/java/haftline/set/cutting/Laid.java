package haftline.set.cutting;

/**
 * One stick with what is cut from it. Its array is never changed.
 *
 * @param stick index of the stick
 * @param counts how many of each merged item
 */
record Laid(int stick, int[] counts) {}
