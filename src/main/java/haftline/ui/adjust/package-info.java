/** The panels of what is worked out for the maker: adjusting, fairing, doubt, take-off. */
package haftline.ui.adjust;
