/** Tables as CSV after RFC 4180, with units in the header. */
package haftline.write.csv;
