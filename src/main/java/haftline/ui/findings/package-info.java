/** What is found about the piece on the board, with remedies that can be applied. */
package haftline.ui.findings;
