/** Drawings on paper at full size: PDF sheets that a home printer prints true. */
package haftline.write.pdf;
