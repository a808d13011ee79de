/**
 * What is so about a resolved handle: walls, volume, mass and balance, split index, movement with
 * the seasons, adhesive, rest, grip, speeds. Figures only; whether a figure is good is said by the
 * findings.
 */
package haftline.figures;
