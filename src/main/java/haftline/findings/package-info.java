/**
 * What is wrong with a resolved handle, or worth knowing, ordered by gravity; and remedies whose
 * numbers were tried on the handle before they are named.
 */
package haftline.findings;
