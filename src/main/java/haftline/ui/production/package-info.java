/** A batch of pieces: what it takes, what it costs, how far it is. */
package haftline.ui.production;
