/** The drawing of one piece as it will lie on paper, and its printing at full size. */
package haftline.ui.sheet;
