package haftline.adjust.doubt;

import haftline.figures.Zone;

/**
 * One zone's wall over many handles.
 *
 * @param zone where
 * @param limitMm the maker's limit, mm
 * @param under share of handles whose least wall there is under the limit
 */
public record ZoneDoubt(Zone zone, double limitMm, Proportion under) {
    /**
     * Where it is, in words.
     *
     * @return to stand behind "the rule"
     */
    public String where() {
        return switch (zone) {
            case TENON -> "on the tenon";
            case BODY -> "on the body";
            case CAP -> "over the cap's bore";
        };
    }
}
