/**
 * The command line: thin commands over small services, the page that is read at the lathe and the
 * answer for other programs. The only place that prints.
 */
package haftline.cli;
