/**
 * What leaves the program: the folder that files are written to, their names, and one room per file
 * format.
 *
 * <p>Writers turn a value into text or bytes and touch no disk; {@link haftline.write.OutputFolder}
 * alone does, whole files or none. Numbers go through {@link haftline.measure.NumberText}, so that
 * a file is the same in every locale.
 */
package haftline.write;
