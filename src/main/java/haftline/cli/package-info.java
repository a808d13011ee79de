/**
 * The command line: thin commands over the rooms above, one place for exit codes and for what is
 * printed.
 */
package haftline.cli;
