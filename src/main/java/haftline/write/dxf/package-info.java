/** Drawings as DXF in millimetres, for cutters and drawing programs. */
package haftline.write.dxf;
