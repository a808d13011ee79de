/**
 * Doubt: what becomes of a handle when parts, turning, drilling and stock are not quite as drawn,
 * by a seeded Monte-Carlo run.
 */
package haftline.adjust.doubt;
