/**
 * From a shape, measured parts, stock and rules to one handle that fits: bores, tenon, wander and
 * the outline, with the reason for every number that a rule fixed.
 */
package haftline.handle;
