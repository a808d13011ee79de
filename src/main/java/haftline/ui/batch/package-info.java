/** A new batch of parts against the one in use. */
package haftline.ui.batch;
