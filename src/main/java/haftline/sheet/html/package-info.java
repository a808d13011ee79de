/**
 * Sheets for a browser: one file each that asks for nothing from outside, reads well on a small
 * screen and prints as the paper does.
 */
package haftline.sheet.html;
