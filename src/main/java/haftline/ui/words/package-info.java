/** Numbers with their units as they stand on the screen. */
package haftline.ui.words;
