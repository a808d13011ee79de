/**
 * Sheets set on paper: each page a drawing in mm from the lower left corner of the paper's field,
 * measured with the font it is printed in, so that nothing runs over an edge.
 */
package haftline.sheet.page;
