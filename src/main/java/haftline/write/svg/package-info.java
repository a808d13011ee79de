/** Drawings as SVG at full size: one user unit is one millimetre. */
package haftline.write.svg;
