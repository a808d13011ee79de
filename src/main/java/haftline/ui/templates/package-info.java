/** Gauges and templates of the set on their sheets, and the settings by which they are made. */
package haftline.ui.templates;
