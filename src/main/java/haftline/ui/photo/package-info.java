/** A photograph under the board, its points, and the outline that is traced over it. */
package haftline.ui.photo;
