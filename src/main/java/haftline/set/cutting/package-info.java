/**
 * The one-dimensional cutting-stock problem in whole numbers: lengths wanted, sticks to cut them
 * from, least cost. Knows nothing of handles; lengths and costs are in any unit.
 */
package haftline.set.cutting;
