/** A batch to be made: blanks, drills, adhesive, parts, time, cost, price, and how far it is. */
package haftline.set.production;
