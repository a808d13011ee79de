/**
 * Lengths and their text, readings and the doubt that follows from them, numbers as they are
 * written to files, rows of numbers put in order.
 *
 * <p>Millimetres inside; inches only at the edges, 25.4 mm exactly.
 */
package haftline.measure;
