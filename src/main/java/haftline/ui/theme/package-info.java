/** Paper and slate: the colours of the drawing board and of the window round it. */
package haftline.ui.theme;
