/** What the engine works out for the maker: adjustment, fairing, take-off and doubt. */
package haftline.adjust;
