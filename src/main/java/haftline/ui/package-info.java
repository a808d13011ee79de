/**
 * The editor: a drawing board for handles. Pictures are drawn from what the engine resolved; what
 * is changed goes through the document model.
 */
package haftline.ui;
