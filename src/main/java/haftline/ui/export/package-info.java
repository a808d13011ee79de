/** Which files are written where, and what came of it. */
package haftline.ui.export;
