/** A set of pieces that is to read as one family: the document's content, free of any file. */
package haftline.set;
