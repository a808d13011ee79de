/** The piece in figures, in the order of the job. */
package haftline.ui.inspector;
