/**
 * What handles are made of and made with: woods, plastics, metals, adhesives, drills and racks,
 * hand sizes, grips, speeds, climates, and the figures of each with its source.
 *
 * <p>The catalogues are comma-separated files; {@link haftline.stock.CatalogueReader} is the only
 * door through which this package reads them. Figures of small clear specimens or generic grades
 * are for ranking and weighing, never design allowables.
 */
package haftline.stock;
