/** The window: pieces, board, inspector and findings, and what ties them to the document. */
package haftline.ui.app;
