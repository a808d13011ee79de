/**
 * The finished handle's wood as a closed mesh of triangles, for printing in plastic and for view.
 */
package haftline.write.stl;
