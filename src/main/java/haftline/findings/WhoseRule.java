package haftline.findings;

import haftline.stock.Stock;
import java.util.stream.Collectors;

/** Whose rule a finding goes by, in words. */
public final class WhoseRule {
    private WhoseRule() {}

    /**
     * Whose rule a finding goes by.
     *
     * @param finding the finding
     * @param stock the stock of the handle, whose cautions have sources of their own
     * @return a published source, or common practice
     */
    public static String of(Finding finding, Stock stock) {
        return switch (finding.code()) {
            case SPLIT_INDEX ->
                    "screening figure from Wood Handbook (FPL-GTR-190) strengths and Lamé's thick wall; the limit is common practice";
            case FERRULE_LOOSE_IN_WINTER ->
                    "Wood Handbook (FPL-GTR-190), Eq. 13-2 and 4-5; the limit is common practice";
            case TOO_SLENDER, TOO_THICK, LENGTH_FOR_THE_HAND -> finding.subject();
            case READING_STANDS_APART ->
                    "Grubbs' test at 5 % (NIST/SEMATECH e-Handbook, 1.3.5.17.1)";
            case STOCK_IRRITATES -> cautionSources(stock);
            case TANG_LONGER_THAN_WOOD,
                    BORE_TOO_SHALLOW,
                    TANG_SHORT_OF_WOOD,
                    BORE_TIGHT,
                    TANG_WILL_NOT_PASS,
                    CANNOT_BE_DRAWN,
                    BORES_MEET ->
                    finding.gravity() == Gravity.STOP ? "geometry" : "common practice";
            case NO_FOOD_CLAIM, FIGURE_MISSING -> "what is not known is not claimed";
            default -> "common practice";
        };
    }

    private static String cautionSources(Stock stock) {
        return stock.cautions().stream()
                .map(caution -> caution.source().title())
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
