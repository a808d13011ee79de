/** The letters of papers and pictures: one free font that travels with the program. */
package haftline.write.lettering;
