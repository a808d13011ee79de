/**
 * What the editor's views show and do, free of any toolkit, so that it can be tested without one.
 * Views know view models; view models know {@code edit}.
 */
package haftline.ui.model;
