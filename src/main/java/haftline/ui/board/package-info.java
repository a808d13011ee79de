/** The drawing board: one piece, its turned surface over the axis and its section under it. */
package haftline.ui.board;
