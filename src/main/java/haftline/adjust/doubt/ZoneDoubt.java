package haftline.adjust.doubt;

import haftline.figures.Zone;

/**
 * One zone's wall over many handles.
 *
 * @param zone where
 * @param limitMm the maker's limit, mm
 * @param under share of handles whose least wall there is under the limit
 */
public record ZoneDoubt(Zone zone, double limitMm, Share under) {}
