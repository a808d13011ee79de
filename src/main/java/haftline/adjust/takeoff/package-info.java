/**
 * Take-off: calliper readings of a handle that stands on the bench become a shape with few nodes,
 * its crisp places and details kept crisp, its stray readings named.
 */
package haftline.adjust.takeoff;
