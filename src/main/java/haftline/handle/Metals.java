package haftline.handle;

import haftline.stock.Metal;

/**
 * The metals of a kit's parts, looked up in the catalogue.
 *
 * @param blade metal of blade and tang
 * @param ferrule metal of the ferrule
 * @param cap metal of the cap; the ferrule's where there is no cap
 */
public record Metals(Metal blade, Metal ferrule, Metal cap) {}
