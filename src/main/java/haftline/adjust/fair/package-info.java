/** How fair a line runs: the variation of its curvature, and the comb that shows it. */
package haftline.adjust.fair;
