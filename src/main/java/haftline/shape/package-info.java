/**
 * The style that a set shares, before any kit is known: nodes placed by proportion, joins, details
 * in turner's terms, the form of the butt.
 */
package haftline.shape;
