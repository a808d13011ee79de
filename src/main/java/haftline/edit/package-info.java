/**
 * An open document: its content, the commands that change it, the history of steps, saving,
 * recovery. Free of any toolkit.
 */
package haftline.edit;
