/** All pieces of the set under each other at one scale. */
package haftline.ui.lineup;
