/** The pieces of the set, each with its picture. */
package haftline.ui.pieces;
