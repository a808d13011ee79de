package haftline.adjust.doubt;

/**
 * The wood left beyond the end of the tang's bore over many handles: the web between the two bores,
 * or what stands between the bore and the butt's face where there is no cap's bore.
 *
 * @param isWeb whether it is the web between two bores
 * @param limitMm the maker's limit, mm
 * @param under share of handles that have less there
 * @param stopped share with less than the least wall that is made at all
 * @param left what is left, mm; negative where the bores meet or the bore comes out
 */
public record EndDoubt(
        boolean isWeb, double limitMm, Proportion under, Proportion stopped, Spread left) {
    /**
     * Where it is, in words.
     *
     * @return to stand behind a length of wood
     */
    public String where() {
        return isWeb ? "between the two bores" : "between the bore and the butt";
    }
}
