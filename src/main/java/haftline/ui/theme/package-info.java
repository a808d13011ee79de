/**
 * Paper and slate: the colours of the drawing board and of the window round it, and the small parts
 * that its panels share.
 */
package haftline.ui.theme;
