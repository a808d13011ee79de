/**
 * Adjust: the least change of a set that meets chosen demands. docs/decisions/0007-adjust.md says
 * how change is measured and how it is found.
 */
package haftline.adjust.solve;
